#include "ui/copies/copies_text.h"

#include "ui/history/history_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>
#include <QStringList>

namespace ui::copies {

namespace {

using core::edit::BooksCompared;
using core::edit::BooksStand;

struct Copies {
    Q_DECLARE_TR_FUNCTIONS(ui::copies::Copies)
};

QString countText(qint64 count) { return count == 1 ? Copies::tr("1 change") : Copies::tr("%1 changes").arg(count); }

QString sharedText(const BooksCompared& c) {
    if (c.shared == 0) return Copies::tr("Their histories have nothing in common.");
    if (!c.lastShared) return {};
    return Copies::tr("Both begin with the same %1, the last of them on %2.")
        .arg(countText(c.shared), stampText(c.lastShared->at));
}

QString sinceText(const BooksCompared& c) {
    switch (c.stand) {
    case BooksStand::Alike:
        return c.differ.isEmpty()
                   ? Copies::tr("Neither has any other: they hold the same.")
                   : Copies::tr("Neither has any other, and yet they differ in %1: one was changed by another program, "
                                "or is damaged. Check both.")
                         .arg(c.differ.join(QStringLiteral(", ")));
    case BooksStand::HereGoesOn:
        return Copies::tr("Since then this book has %1, and the copy none: the copy is an older state of this book.")
            .arg(countText(c.here.count));
    case BooksStand::ThereGoesOn:
        return Copies::tr("Since then the copy has %1, and this book none: this book is an older state of the copy.")
            .arg(countText(c.there.count));
    case BooksStand::Parted:
        return Copies::tr("Since then they went on apart: this book has %1 that the copy has not, and the copy has %2 "
                          "that this book has not.")
            .arg(countText(c.here.count), countText(c.there.count));
    case BooksStand::Strangers:
        return Copies::tr("They are two different books.");
    }
    return {};
}

void addLines(QStringList& all, const QString& title, const BooksCompared::Side& side) {
    all << QString() << title;
    if (side.lines.empty()) all << Copies::tr("    nothing");
    for (auto line = side.lines.rbegin(); line != side.lines.rend(); ++line) {
        QStringList parts{stampText(line->at), line->text};
        if (!line->by.isEmpty()) parts << Copies::tr("by %1").arg(line->by);
        if (const QString note = history::noteText(*line); !note.isEmpty()) parts << note;
        all << QStringLiteral("    ") + parts.join(QStringLiteral("  "));
    }
    if (const auto more = side.count - static_cast<qint64>(side.lines.size()); more > 0)
        all << Copies::tr("    and %1 earlier").arg(countText(more));
}

} // namespace

QString stampText(const QDateTime& utc) {
    return QLocale::c().toString(utc.toLocalTime(), QStringLiteral("yyyy-MM-dd HH:mm"));
}

QString standText(const core::edit::BookCopyFound& copy) {
    if (!copy.problem.isEmpty()) return Copies::tr("cannot be read");
    switch (copy.stand) {
    case BooksStand::Alike:
        return Copies::tr("the same changes");
    case BooksStand::HereGoesOn:
        return Copies::tr("an older state of this book");
    case BooksStand::ThereGoesOn:
        return Copies::tr("has changes that this book has not");
    case BooksStand::Parted:
        return Copies::tr("went on apart: each has changes of its own");
    case BooksStand::Strangers:
        return Copies::tr("another book");
    }
    return {};
}

QString newsText(const std::vector<core::edit::BookCopyFound>& news) {
    if (news.empty()) return {};
    const QString name = QFileInfo(news.front().path).fileName();
    if (news.size() > 1)
        return Copies::tr("%1 copies of this book lie beside it and may have changes that it has not, “%2” among them: "
                          "a sync program makes one where a book was changed in two places.")
            .arg(news.size())
            .arg(name);
    if (!news.front().problem.isEmpty())
        return Copies::tr("“%1” beside this book may be a copy of it, and cannot be read.").arg(name);
    return Copies::tr("“%1” beside this book is a copy of it with changes that this book has not: a sync program makes "
                      "one where a book was changed in two places.")
        .arg(name);
}

QString comparedText(const BooksCompared& c) {
    if (c.stand == BooksStand::Strangers) return sinceText(c);
    const QString text = sharedText(c) + u' ' + sinceText(c);
    if (c.here.version == c.there.version) return text;
    return text + u' ' +
           Copies::tr("The copy was written by another version of this program; its changes are listed by their "
                      "sentences alone.");
}

QString wholeText(const QString& copyName, const BooksCompared& c) {
    QStringList all{Copies::tr("This book and its copy “%1”").arg(copyName), comparedText(c)};
    addLines(all, Copies::tr("Only in this book:"), c.here);
    addLines(all, Copies::tr("Only in the copy:"), c.there);
    return all.join(u'\n') + u'\n';
}

} // namespace ui::copies
