#include "core/store/book_note.h"

namespace core::store {

namespace {

constexpr qsizetype kLongestName = 60;

/// One line, of letters that can be shown.
QString shownName(const QString& text) {
    QString out = text.simplified().left(kLongestName);
    out.removeIf([](QChar c) { return !c.isPrint(); });
    return out;
}

} // namespace

QByteArray noteOf(const BookHolder& holder) {
    return QStringLiteral("who=%1\nhost=%2\nsince=%3\n")
        .arg(shownName(holder.who), shownName(holder.host), holder.since.toUTC().toString(Qt::ISODate))
        .toUtf8();
}

BookHolder holderIn(const QByteArray& note) {
    BookHolder holder;
    for (const QString& line : QString::fromUtf8(note.left(kLongestNote)).split(u'\n')) {
        const qsizetype at = line.indexOf(u'=');
        const QString value = line.mid(at + 1);
        if (line.startsWith(QLatin1String("who="))) holder.who = shownName(value);
        if (line.startsWith(QLatin1String("host="))) holder.host = shownName(value);
        if (line.startsWith(QLatin1String("since="))) holder.since = QDateTime::fromString(value, Qt::ISODate);
    }
    return holder;
}

} // namespace core::store
