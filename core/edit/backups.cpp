#include "core/edit/backups.h"

#include "core/edit/change_fields.h"
#include "core/edit/change_writer.h"
#include "core/edit/compare_books.h"
#include "core/edit/edit_checks.h"
#include "core/edit/holds_gone.h"
#include "core/edit/session.h"
#include "core/edit/session_private.h"
#include "core/edit/whole_book.h"
#include "core/store/book_copy.h"
#include "core/store/book_lock.h"
#include "core/store/history_rows.h"
#include "core/store/part_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <algorithm>
#include <set>

namespace core::edit {

namespace {

constexpr size_t kNewest = 10;
constexpr int kDays = 30;
constexpr int kMonths = 12;
constexpr char kStamp[] = "yyyy-MM-dd'T'HHmmss'Z'";

QString idOf(const QString& bookId) { return bookId.left(8); }

/// TITLE.ID.TIME.LINE.yardwright
QString nameOf(const QString& title, const QString& bookId, const QDateTime& at, qint64 seq) {
    return QStringLiteral("%1.%2.%3.%4.yardwright")
        .arg(title, idOf(bookId), at.toString(QLatin1StringView(kStamp)), QString::number(seq));
}

/// Of any book where `bookId` is empty.
std::optional<Backup> backupNamed(const QFileInfo& file, const QString& bookId) {
    static const QRegularExpression form(
        QStringLiteral("^(.+)\\.([0-9a-f]{8})\\.(\\d{4}-\\d\\d-\\d\\dT\\d{6}Z)\\.(\\d{1,18})\\.yardwright$"));
    const auto found = form.match(file.fileName());
    if (!found.hasMatch() || (!bookId.isEmpty() && found.captured(2) != idOf(bookId))) return {};
    QDateTime at = QDateTime::fromString(found.captured(3), QLatin1StringView(kStamp));
    at.setTimeSpec(Qt::UTC);
    if (!at.isValid()) return {};
    return Backup{file.absoluteFilePath(), found.captured(1), at, found.captured(4).toLongLong(), file.size()};
}

/// What a program that was killed left of its copying.
void dropHalfMade(const QString& folder, const QDateTime& now) {
    for (const QFileInfo& file : QDir(folder).entryInfoList(store::namesInTheMaking(), QDir::Files | QDir::Hidden))
        if (file.lastModified().daysTo(now) >= 1) QFile::remove(file.absoluteFilePath());
}

int monthOf(const QDate& day) { return day.year() * 12 + day.month(); }

} // namespace

std::vector<size_t> outlived(const std::vector<QDateTime>& at, const QDateTime& now) {
    std::vector<size_t> order(at.size());
    for (size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::ranges::stable_sort(order, [&](size_t a, size_t b) { return at[a] > at[b]; });
    const QDate today = now.date();
    std::set<QDate> days;
    std::set<int> months;
    std::vector<size_t> gone;
    for (size_t place = 0; place < order.size(); ++place) {
        const QDate day = at[order[place]].date();
        const bool ofDay = day.daysTo(today) < kDays && days.insert(day).second;
        const bool ofMonth = monthOf(today) - monthOf(day) < kMonths && months.insert(monthOf(day)).second;
        if (place >= kNewest && !ofDay && !ofMonth) gone.push_back(order[place]);
    }
    return gone;
}

std::vector<Backup> backupsIn(const QString& folder, const QString& bookId) {
    std::vector<Backup> all;
    for (const QFileInfo& file : QDir(folder).entryInfoList({QStringLiteral("*.yardwright")}, QDir::Files))
        if (auto backup = backupNamed(file, bookId)) all.push_back(*std::move(backup));
    std::ranges::stable_sort(all, [](const Backup& a, const Backup& b) { return a.at > b.at; });
    return all;
}

std::vector<Backup> backupsTitled(const QString& folder, const QString& title) {
    std::vector<Backup> all = backupsIn(folder, {});
    std::erase_if(all, [&](const Backup& b) { return b.title != title; });
    return all;
}

namespace {

QString copyIn(const QString& folder, const QString& backup, const QString& sentence) {
    const QString copy = QDir(folder).filePath(QFileInfo(backup).fileName());
    QFile::remove(copy);
    if (!QFile::copy(backup, copy) || !QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner))
        throw Error(Error::Kind::Book, sentence.arg(store::shownPath(backup)));
    return copy;
}

} // namespace

QString upToDate(const QString& backup, const QString& folder, const Progress& progress) {
    if (!store::Database::isOlder(backup)) return backup;
    const QString copy = copyIn(folder, backup,
                                QStringLiteral("%1 was made by an older version, and cannot be copied to bring it up "
                                               "to date: is there room on the disk?"));
    bringUpToDate(copy, progress.part(0, 0.3).inner());
    return copy;
}

BackupRun::BackupRun(const Session& session, const QString& folder)
    : m_folder(folder), m_bookId(session.bookId()), m_now(session.clock().nowUtc()) {
    session.needOwnFile(); // else another book, or what a sync program wrote, would be kept as this one
    if (!QDir().mkpath(folder))
        throw Error(Error::Kind::Book,
                    QStringLiteral("The folder %1 cannot be made: choose another one, or put its disk back.")
                        .arg(store::shownPath(folder)));
    m_made.title = session.bookTitle();
    m_made.at = m_now;
    // The copy's last line is known once it is made; it gets its name then.
    m_part = store::partOf(QDir(folder).filePath(nameOf(m_made.title, m_bookId, m_now, 0)));
    QFile::remove(m_part);
    m_copy = std::make_unique<store::BookCopy>(session.path(), m_part);
}

BackupRun::~BackupRun() {
    m_copy.reset();
    QFile::remove(m_part);
}

bool BackupRun::step(int milliseconds) {
    if (m_copy->step(milliseconds)) return true;
    m_made.seq = m_copy->lastSeq();
    m_made.path = QDir(m_folder).filePath(nameOf(m_made.title, m_bookId, m_now, m_made.seq));
    m_copy.reset();
    store::putAt(m_part, m_made.path); // one of the same second and line has the same content
    m_made.bytes = QFileInfo(m_made.path).size();
    clear();
    dropHalfMade(m_folder, m_now);
    return false;
}

double BackupRun::share() const { return m_copy ? m_copy->share() : 1; }

/// Those of this title that are outlived go: the new one is there and checked.
void BackupRun::clear() const {
    std::vector<Backup> all = backupsIn(m_folder, m_bookId);
    std::erase_if(all, [&](const Backup& b) { return b.title != m_made.title; });
    std::vector<QDateTime> at;
    for (const Backup& b : all) at.push_back(b.at);
    for (const size_t i : outlived(at, m_now))
        if (all[i].path != m_made.path) QFile::remove(all[i].path);
}

namespace {

/// By its id and the last line of its history: a name tells neither a book from its copy that went on, nor whole ids.
bool holdsTheSame(const Session& session, const QString& backup) {
    try {
        const auto there = store::Database::open(backup, store::Access::ReadAsItIs);
        return session.standTo(*there) == BooksStand::Alike;
    } catch (const Error&) {
        return false; // damaged, or gone meanwhile
    }
}

} // namespace

bool backupNeeded(const Session& session, const QString& folder) {
    const auto newest = session.history(1);
    if (newest.empty()) return false;
    return std::ranges::none_of(backupsIn(folder, session.bookId()), [&](const Backup& b) {
        return b.title == session.bookTitle() && b.seq == newest.front().seq && holdsTheSame(session, b.path);
    });
}

namespace {

constexpr size_t kLinesShown = 200;

void compareHistory(const store::Database& book, const store::Database& backup, BackupCompared& compared) {
    const qint64 last = lastLine(backup);
    compared.earlier = bothHave(book, backup, last);
    if (const auto line = store::readHistory(backup, last)) compared.lastEdit = shownLine(*line).at;
    store::eachHistoryBefore(book, {}, [&](const store::HistoryRow& row) {
        if (compared.earlier && row.seq <= last) return false;
        ++compared.lost;
        if (compared.lostLines.size() < kLinesShown) compared.lostLines.push_back(shownLine(row));
        return true;
    });
}

} // namespace

BackupCompared compareWith(const Session& session, const QString& of, const Progress& progress) {
    constexpr double kChecked = 0.9; // of the way, as measured on a book of 20,000 colonies
    progress.at(0);
    const QTemporaryDir folder;
    const QString backup = upToDate(of, folder.path(), progress);
    const auto there = store::Database::open(backup, store::Access::ReadOnly);
    BackupCompared compared;
    compared.sameBook = there->bookId() == session.bookId();
    compared.problems = bookProblems(*there, progress.part(0, kChecked));
    const Progress comparing = progress.part(kChecked, 1, Edits::tr("Comparing the backup with the book"));
    comparing.at(0);
    const auto here = store::Database::open(session.path(), store::Access::ReadOnly);
    compareHistory(*here, *there, compared);
    if (compared.sameBook && compared.problems.isEmpty())
        compared.holds = holdsGone(*here, *there, compared.earlier, session.clock().today());
    for (int i = 0; i < kTableCount; ++i) {
        comparing.at(i, kTableCount);
        const auto table = static_cast<Table>(i);
        const std::string sql = std::string("SELECT count(*) FROM ") + tableName(table);
        const qint64 now = here->number(sql);
        const qint64 then = there->number(sql);
        if (now != then) compared.counts.push_back({recordsText(table, now), recordsText(table, then)});
    }
    return compared;
}

namespace {

/// A copy whose history says who put it back, why, and which holds went.
QString withReason(const QString& backup, const QString& folder, const PutBack& why) {
    const QString copy = copyIn(
        folder, backup, Edits::tr("%1 cannot be copied to write the reason into it: is there room on the disk?"));
    const auto db = store::Database::open(copy, store::Access::ReadWrite);
    store::Transaction transaction(*db);
    ChangeSet change;
    change.text = why.holds.isEmpty()
                      ? Edits::tr("Put this backup in the place of a book that could not be read")
                      : Edits::tr("Put this backup in the book's place. Holds that went: %1").arg(fewHolds(why.holds));
    if (!why.holds.isEmpty())
        change.attachments.push_back(
            {QStringLiteral("holds that went.txt"), why.holds.join(u'\n').toUtf8() + QByteArrayLiteral("\n")});
    store::HistoryRow line;
    line.at = why.at.toUTC().toString(Qt::ISODateWithMs);
    line.by = why.by.trimmed();
    line.reason = why.reason.trimmed();
    writeChange(*db, change, line);
    transaction.commit();
    return copy;
}

} // namespace

void putInPlace(const QString& of, const QString& book, const QString& aside, const Progress& progress,
                const std::optional<PutBack>& why) {
    if (why && (why->by.trimmed().isEmpty() || why->reason.trimmed().isEmpty()))
        throw Error(Error::Kind::BadData, Edits::tr("A correction of the record needs a reason and a name."));
    progress.at(0);
    const QTemporaryDir folder;
    const QTemporaryDir reasons; // its copy has the same name
    QString backup = upToDate(of, folder.path(), progress);
    if (why) backup = withReason(backup, reasons.path(), *why);
    const store::BookLock lock(book);
    {
        store::BookCopy copy(backup, aside);
        constexpr int kSlice = 50;
        constexpr double kCopied = 0.5; // of the way; then it is checked
        const Progress copying = progress.part(0, kCopied, Edits::tr("Copying the backup"));
        copying.at(0);
        while (copy.step(kSlice)) copying.at(copy.share());
    }
    try {
        progress.pastStopping(Edits::tr("Putting it in the book's place…"));
    } catch (const Stopped&) {
        QFile::remove(aside);
        throw;
    }
    store::takePlace(aside, book);
}

} // namespace core::edit
