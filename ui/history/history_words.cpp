#include "ui/history/history_words.h"

#include "ui/look/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::history {

namespace {

struct History {
    Q_DECLARE_TR_FUNCTIONS(History)
};

} // namespace

QString whenText(const QDateTime& at, const QDateTime& now) {
    const QDateTime local = at.toLocalTime();
    const QDate day = local.date();
    const qint64 ago = day.daysTo(now.toLocalTime().date());
    const QString time = local.time().toString(QStringLiteral("HH:mm"));
    if (ago == 0) return History::tr("today %1").arg(time);
    if (ago == 1) return History::tr("yesterday %1").arg(time);
    return look::dayText(core::dayOf(day.year(), day.month(), day.day())) + u' ' + time;
}

QString noteText(const core::edit::HistoryLine& line) {
    QStringList notes;
    if (line.takenBack) notes << History::tr("taken back");
    if (!line.reason.isEmpty()) notes << History::tr("correction: %1").arg(line.reason);
    return notes.join(QStringLiteral("; "));
}

QString spokenText(const core::edit::HistoryLine& line, const QDateTime& now) {
    QStringList parts{line.text, whenText(line.at, now)};
    if (!line.by.isEmpty()) parts << History::tr("by %1").arg(line.by);
    if (const QString note = noteText(line); !note.isEmpty()) parts << note;
    return parts.join(QStringLiteral(", "));
}

} // namespace ui::history
