#include "core/store/own_file.h"

#include "core/store/sqlite_error.h"

#include <QFile>

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::store {

namespace {

using How = BookReplaced::How;

QString sentenceFor(How how) {
    switch (how) {
    case How::Gone:
        return movedSentence();
    case How::Other:
        return QStringLiteral("The book's file was replaced by another one while it was open: nothing was written.");
    case How::Rewritten:
        return QStringLiteral("Another program wrote over the book's file while it was open: nothing was written.");
    }
    return {};
}

/// The last line of the history in words that no other line has; empty where there is none, as in what is no book.
/// nullopt: the disk does not say.
std::optional<QString> lastLineOf(sqlite3* db) {
    constexpr const char* kAsk = "SELECT seq || ' ' || at || ' ' || sentence FROM history ORDER BY seq DESC LIMIT 1";
    sqlite3_stmt* ask = nullptr;
    QString line;
    int code = sqlite3_prepare_v2(db, kAsk, -1, &ask, nullptr);
    if (code == SQLITE_OK) code = sqlite3_step(ask);
    if (code == SQLITE_ROW) line = QString::fromUtf8(reinterpret_cast<const char*>(sqlite3_column_text(ask, 0)));
    sqlite3_finalize(ask);
    for (const int noBook : {SQLITE_ROW, SQLITE_DONE, SQLITE_ERROR, SQLITE_NOTADB, SQLITE_CORRUPT})
        if ((code & 0xff) == noBook) return line;
    return {};
}

/// Past the pages that the open connection holds: they may be of before.
std::optional<QString> lastLineOnDisk(const QByteArray& path) {
    sqlite3* fresh = nullptr;
    std::optional<QString> line;
    if (sqlite3_open_v2(path.constData(), &fresh, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK) line = lastLineOf(fresh);
    sqlite3_close(fresh);
    return line;
}

} // namespace

OwnFile::OwnFile(const QString& path, sqlite3* handle)
    : m_path(QFile::encodeName(path)), m_handle(handle), m_self(open(m_path.constData(), O_PATH | O_CLOEXEC)) {
    noteNextLine();
    noteWritten();
}

OwnFile::~OwnFile() {
    if (m_self >= 0) close(m_self);
}

std::optional<OwnFile::Mark> OwnFile::markOf(const QByteArray& path) {
    struct stat found {};
    if (stat(path.constData(), &found) != 0) return {};
    constexpr qint64 kSecond = 1'000'000'000;
    return Mark{found.st_dev, found.st_ino, found.st_size, found.st_ctim.tv_sec * kSecond + found.st_ctim.tv_nsec};
}

bool OwnFile::moved() const {
    int elsewhere = 0;
    return sqlite3_file_control(m_handle, "main", SQLITE_FCNTL_HAS_MOVED, &elsewhere) == SQLITE_OK && elsewhere != 0;
}

QString OwnFile::nowAt() const {
    struct stat self {};
    if (m_self < 0 || fstat(m_self, &self) != 0 || self.st_nlink == 0) return {};
    return QFile::symLinkTarget(QStringLiteral("/proc/self/fd/%1").arg(m_self));
}

BookReplaced OwnFile::replaced(How how) const {
    return {how, nowAt(), sentenceFor(how), QString::fromLocal8Bit(m_path)};
}

void OwnFile::noteNextLine() { m_nextLine = lastLineOf(m_handle).value_or(QString()); }

void OwnFile::noteWritten() {
    m_line = m_nextLine;
    m_mark = markOf(m_path);
}

void OwnFile::needPlace() const {
    if (moved()) throw replaced(markOf(m_path) ? How::Other : How::Gone);
}

void OwnFile::need() {
    const auto now = markOf(m_path);
    if (now == m_mark) return;
    needPlace();
    const auto line = lastLineOnDisk(m_path);
    // A commit that failed may have been one all the same.
    if (line && *line != m_line && *line != m_nextLine) throw replaced(How::Rewritten);
    if (line) m_mark = now;
}

} // namespace core::store
