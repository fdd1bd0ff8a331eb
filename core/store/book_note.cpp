#include "core/store/book_note.h"

#include <QCryptographicHash>
#include <QSysInfo>

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
    return QStringLiteral("who=%1\nhost=%2\nsince=%3\nmachine=%4\n")
        .arg(shownName(holder.who), shownName(holder.host), holder.since.toUTC().toString(Qt::ISODate),
             shownName(holder.machine))
        .toUtf8();
}

BookHolder holderIn(const QByteArray& note) {
    BookHolder holder;
    for (const QString& line : QString::fromUtf8(note.left(kLongestNote)).split(u'\n')) {
        const qsizetype at = line.indexOf(u'=');
        const QString value = line.mid(at + 1);
        if (line.startsWith(QLatin1String("who="))) holder.who = shownName(value);
        if (line.startsWith(QLatin1String("host="))) holder.host = shownName(value);
        if (line.startsWith(QLatin1String("machine="))) holder.machine = shownName(value);
        if (line.startsWith(QLatin1String("since="))) holder.since = QDateTime::fromString(value, Qt::ISODate);
    }
    return holder;
}

QString thisMachine() {
    const QByteArray number = QSysInfo::machineUniqueId();
    if (number.isEmpty()) return {};
    constexpr qsizetype kDigits = 16;
    const QByteArray hash = QCryptographicHash::hash("yardwright " + number, QCryptographicHash::Sha256);
    return QString::fromLatin1(hash.toHex().left(kDigits));
}

bool ofAnotherMachine(const BookHolder& holder) {
    const QString own = thisMachine();
    if (!holder.machine.isEmpty() && !own.isEmpty()) return holder.machine != own;
    return !holder.host.isEmpty() && holder.host != shownName(QSysInfo::machineHostName());
}

} // namespace core::store
