#include "core/store/book_copy.h"

#include "core/store/sqlite_error.h"
#include "core/store/watched.h"

#include <QElapsedTimer>
#include <QFile>

#include <chrono>
#include <sqlite3.h>

namespace core::store {

namespace {

constexpr int kPagesAtOnce = 64;

/// Whether the copy can be trusted; the last line of its history. Given up once `stop` is set.
qint64 checkedCopy(const BookFile& part, const QString& bookId, std::atomic<bool>& stop) {
    const auto copy = Database::openCopy(part);
    const Watched watched(copy->handle(),
                          Progress([&stop](const QString&, double) { return !stop; }, [&stop] { return stop.load(); }));
    Statement check = copy->prepare("PRAGMA integrity_check(1)");
    if (!check.step() || check.text(0) != QLatin1String("ok") || copy->bookId() != bookId)
        throw Error(Error::Kind::Book,
                    QStringLiteral("The copy is not sound, so it was removed again. Is the disk failing?"));
    return copy->number("SELECT max(seq) FROM history");
}

} // namespace

BookCopy::BookCopy(const QString& from, const QString& to)
    : m_from(Database::open(from, Access::ReadOnly)), m_file(to) {
    begin();
}

BookCopy::~BookCopy() {
    m_stop = true;
    if (m_checking.valid()) m_checking.wait();
    end();
}

void BookCopy::begin() {
    const QByteArray path = QFile::encodeName(m_file.part().path);
    const int opened = sqlite3_open_v2(path.constData(), &m_to, SQLITE_OPEN_READWRITE, nullptr);
    if (opened == SQLITE_OK) m_backup = sqlite3_backup_init(m_to, "main", m_from->handle(), "main");
    if (m_backup) return;
    try {
        throwSqlite(m_to, opened == SQLITE_OK ? sqlite3_errcode(m_to) : opened, m_file.part().path);
    } catch (const Error&) {
        end();
        throw;
    }
}

void BookCopy::end() {
    sqlite3_backup_finish(m_backup);
    m_backup = nullptr;
    sqlite3_close(m_to);
    m_to = nullptr;
}

bool BookCopy::step(int milliseconds) {
    if (m_backup && copySome(milliseconds)) return true;
    if (m_backup) check();
    if (m_checking.wait_for(std::chrono::milliseconds(milliseconds)) != std::future_status::ready) return true;
    m_lastSeq = m_checking.get();
    m_file.keep();
    return false;
}

bool BookCopy::copySome(int milliseconds) {
    QElapsedTimer since;
    since.start();
    do {
        const int code = sqlite3_backup_step(m_backup, kPagesAtOnce);
        if (code == SQLITE_DONE) return false;
        if (code == SQLITE_BUSY || code == SQLITE_LOCKED) return true; // someone writes: later
        if (code != SQLITE_OK) throwSqlite(nullptr, code, m_file.part().path);
    } while (milliseconds > 0 && !since.hasExpired(milliseconds));
    return true;
}

void BookCopy::check() {
    const int code = sqlite3_backup_finish(m_backup);
    m_backup = nullptr;
    const int closed = sqlite3_close(m_to);
    m_to = nullptr;
    if (code != SQLITE_OK || closed != SQLITE_OK)
        throwSqlite(nullptr, code != SQLITE_OK ? code : closed, m_file.part().path);
    m_checking = std::async(std::launch::async, [part = m_file.part(), id = m_from->bookId(), this] {
        return checkedCopy(part, id, m_stop);
    });
}

double BookCopy::share() const {
    if (!m_backup) return 1;
    const int all = sqlite3_backup_pagecount(m_backup);
    return all == 0 ? 0 : 1 - static_cast<double>(sqlite3_backup_remaining(m_backup)) / all;
}

} // namespace core::store
