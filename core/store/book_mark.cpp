#include "core/store/book_mark.h"

#include "core/store/database.h"
#include "core/store/hardening.h"

#include <QFile>
#include <QUrl>

#include <array>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::store {

namespace {

constexpr size_t kHeader = 100;
constexpr size_t kApplicationIdAt = 68;
constexpr QLatin1StringView kBegins("SQLite format 3"); // and a zero
constexpr int kStepsMost = 100'000;                     // of a file that was made to waste time

/// By the first bytes of a plain file: no link is followed, nothing is waited for.
bool looksLikeBook(const QByteArray& path) {
    const int file = open(path.constData(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
    if (file < 0) return false;
    struct stat found {};
    std::array<char, kHeader> head{};
    const bool read = fstat(file, &found) == 0 && S_ISREG(found.st_mode) &&
                      ::read(file, head.data(), head.size()) == static_cast<ssize_t>(head.size());
    close(file);
    if (!read || QByteArrayView(head.data(), kBegins.size() + 1) != QByteArrayView("SQLite format 3\0", 16))
        return false;
    qint32 id = 0;
    for (size_t i = 0; i < 4; ++i) id = id << 8 | static_cast<unsigned char>(head[kApplicationIdAt + i]);
    return id == kApplicationId;
}

int giveUp(void*) { return 1; }

QString askedId(const QByteArray& uri) {
    sqlite3* db = nullptr;
    sqlite3_stmt* ask = nullptr;
    QString id;
    if (sqlite3_open_v2(uri.constData(), &db, SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, nullptr) == SQLITE_OK) {
        try {
            harden(db);
            sqlite3_progress_handler(db, kStepsMost, giveUp, nullptr);
            if (sqlite3_prepare_v2(db, "SELECT uuid FROM book WHERE id = 1", -1, &ask, nullptr) == SQLITE_OK &&
                sqlite3_step(ask) == SQLITE_ROW)
                id = QString::fromUtf8(reinterpret_cast<const char*>(sqlite3_column_text(ask, 0)));
        } catch (const Error& e) {
            qWarning("%s", e.what());
        }
    }
    sqlite3_finalize(ask);
    sqlite3_close(db);
    return id;
}

} // namespace

std::optional<QString> bookIdIn(const QString& path) {
    if (!looksLikeBook(QFile::encodeName(path))) return {};
    // Without locks: what is asked for never changes in a book, and a journal beside it is nobody's to play back here.
    return askedId(QUrl::fromLocalFile(path).toEncoded(QUrl::FullyEncoded) + "?mode=ro&immutable=1");
}

bool sameFile(const QString& a, const QString& b) {
    struct stat one {};
    struct stat other {};
    return stat(QFile::encodeName(a).constData(), &one) == 0 && stat(QFile::encodeName(b).constData(), &other) == 0 &&
           one.st_dev == other.st_dev && one.st_ino == other.st_ino;
}

} // namespace core::store
