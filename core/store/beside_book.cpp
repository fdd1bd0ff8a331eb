#include "core/store/beside_book.h"

#include "core/base/error.h"
#include "core/store/book_file.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include <numeric>

namespace core::store {

namespace {

constexpr char kMagic[] = "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7";
constexpr qint64 kTail = 16; ///< length of the name, its sum, the magic number

/// What stands at a journal's end where a commit is one of several files. Source: SQLite, "Database File Format",
/// section 3, and readSuperJournal() of its pager.
bool namesAnotherFile(const QString& journal) {
    QFile file(journal);
    if (!file.open(QIODevice::ReadOnly) || file.size() < kTail || !file.seek(file.size() - kTail)) return false;
    const QByteArray tail = file.read(kTail);
    if (tail.size() != kTail || !tail.endsWith(QByteArrayView(kMagic, 8))) return false;
    const qint64 length = qFromBigEndian<quint32>(tail.constData());
    if (length == 0 || length > file.size() - kTail || !file.seek(file.size() - kTail - length)) return false;
    const QByteArray name = file.read(length);
    const quint32 sum = std::accumulate(name.begin(), name.end(), quint32{0},
                                        [](quint32 so, char c) { return so + static_cast<quint32>(c); });
    return sum == qFromBigEndian<quint32>(tail.constData() + 4);
}

} // namespace

void needOwnFilesBeside(const QString& book) {
    for (const char* ending : {"-journal", "-wal", "-shm"}) {
        const QString path = book + QLatin1StringView(ending);
        const QFileInfo info(path);
        if (info.isSymLink() || (info.exists() && !info.isFile()))
            throw Error(Error::Kind::Book,
                        QStringLiteral("The book %1 is not opened: %2 beside it is a link or a folder, expected a "
                                       "plain file or none. Put it elsewhere.")
                            .arg(shownPath(book), info.fileName()));
    }
    if (namesAnotherFile(book + QStringLiteral("-journal")))
        throw Error(Error::Kind::Book,
                    QStringLiteral("The book %1 is not opened: %2-journal beside it names another file, which no "
                                   "journal of this program does. Put it elsewhere, or use a backup of the book.")
                        .arg(shownPath(book), QFileInfo(book).fileName()));
}

} // namespace core::store
