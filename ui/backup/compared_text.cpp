#include "ui/backup/compared_text.h"

#include "core/edit/holds_gone.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace ui::backup {

namespace {

struct Compared {
    Q_DECLARE_TR_FUNCTIONS(ui::backup::Compared)
};

QString soundText(const core::edit::BackupCompared& c) {
    if (c.problems.isEmpty()) return Compared::tr("The backup is in order.");
    return Compared::tr("The backup has %1 faults: %2").arg(c.problems.size()).arg(c.problems.front());
}

QString lossText(const core::edit::BackupCompared& c) {
    if (!c.sameBook) return Compared::tr("It is a backup of another book.");
    if (c.lost == 0) return Compared::tr("It has every change that the book has.");
    if (!c.earlier)
        return Compared::tr("It is of the same book but went its own way: its changes are not those of the book. "
                            "Changes of the book that are not in it: %1.")
            .arg(c.lost);
    return Compared::tr(
               "Changes since then that would be gone from the book (they stay in the book of now, which is kept "
               "beside it): %1.")
        .arg(c.lost);
}

QString holdsText(const core::edit::BackupCompared& c) {
    constexpr qsizetype kMost = 40;
    if (c.holds.isEmpty()) return Compared::tr("No hold would go.");
    return Compared::tr(
               "Holds that would go: %1. Putting it in the book's place is a correction: a reason and a name are "
               "asked for.")
        .arg(core::edit::fewHolds(c.holds, kMost));
}

} // namespace

QString stampText(const QDateTime& utc) {
    return QLocale::c().toString(utc.toLocalTime(), QStringLiteral("yyyy-MM-dd HH:mm:ss"));
}

QString comparedText(const core::edit::BackupCompared& c) {
    QStringList lines{soundText(c)};
    if (c.lastEdit.isValid()) lines << Compared::tr("Last change in it: %1.").arg(stampText(c.lastEdit));
    if (c.sameBook && c.problems.isEmpty()) lines << holdsText(c);
    for (const auto& count : c.counts) lines << Compared::tr("Now %1, then %2.").arg(count.now, count.then);
    lines << lossText(c);
    for (const core::edit::HistoryLine& line : c.lostLines)
        lines << QStringLiteral("    %1  %2%3")
                     .arg(stampText(line.at), line.text,
                          line.by.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(line.by));
    const auto more = c.lost - static_cast<int>(c.lostLines.size());
    if (more > 0) lines << Compared::tr("    and %1 earlier ones").arg(more);
    return lines.join(u'\n');
}

QString holdsQuestion(const QStringList& holds) {
    return Compared::tr(
               "The backup has not all that holds rest on. With it in the book's place these would be gone: %1. "
               "That is a correction of the record: give a reason and a name. The records stay in the book of "
               "now, which is kept beside it: enter them again.")
        .arg(core::edit::fewHolds(holds));
}

} // namespace ui::backup
