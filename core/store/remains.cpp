#include "core/store/remains.h"

#include "core/base/book_held.h"
#include "core/store/book_file.h"
#include "core/store/book_lock.h"
#include "core/store/hardening.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <sqlite3.h>

namespace core::store {

namespace {

bool somethingIn(const QString& path) { return QFileInfo(path).size() > 0; }

/// Lets SQLite play back what lies beside the copy. What it says of the rest does not matter.
void playBack(const QString& copy) {
    sqlite3* db = nullptr;
    if (sqlite3_open_v2(QFile::encodeName(copy).constData(), &db, SQLITE_OPEN_READWRITE, nullptr) == SQLITE_OK) {
        try {
            harden(db);
        } catch (const Error&) {
            // as far as it goes: its first read is what counts
        }
        sqlite3_exec(db, "PRAGMA wal_checkpoint(TRUNCATE); SELECT count(*) FROM sqlite_schema", nullptr, nullptr,
                     nullptr);
        sqlite3_exec(db, "SELECT count(*) FROM sqlite_schema", nullptr, nullptr, nullptr);
    }
    sqlite3_close(db);
}

Value valueOf(const RawValue& raw) {
    switch (raw.kind) {
    case RawValue::Kind::Integer:
        return raw.integer;
    case RawValue::Kind::Real:
        return raw.real;
    case RawValue::Kind::Text:
        return QString::fromUtf8(raw.bytes);
    case RawValue::Kind::Null:
    case RawValue::Kind::Blob:
        break;
    }
    return {};
}

std::optional<HistoryKind> lineKind(const QByteArray& word) {
    if (word == "do") return HistoryKind::Do;
    if (word == "undo") return HistoryKind::Undo;
    if (word == "redo") return HistoryKind::Redo;
    return std::nullopt;
}

void markTree(const RawPages& pages, qint64 root, UsedPages& used, int depth) {
    if (depth > 20 || !used.insert(root).second) return;
    const auto page = rawTablePage(pages, root);
    if (!page || page->leaf) return;
    for (const RawCell& cell : page->cells) markTree(pages, cell.child, used, depth + 1);
    markTree(pages, page->last, used, depth + 1);
}

/// Whether all ids of the leaf lie where rows of the table are missing.
bool fillsGap(const FoundTable& table, const std::map<qint64, FoundRow>& rows) {
    if (rows.empty()) return false;
    for (const IdSpan& span : table.lost)
        if (span.has(rows.begin()->first) && span.has(rows.rbegin()->first)) {
            const auto next = table.rows.lower_bound(rows.begin()->first);
            return next == table.rows.end() || next->first > rows.rbegin()->first;
        }
    return false;
}

} // namespace

Remains::Remains(const QString& path, const QString& like, const Progress& progress) {
    const BookFile file = lookAt(path, Access::ReadOnly);
    prepare(file.path);
    const RawPages pages(m_path);
    Roots roots;
    if (!like.isEmpty()) {
        const auto copy = Database::open(like, Access::ReadOnly);
        Statement row = copy->prepare("SELECT name, rootpage FROM sqlite_schema WHERE rootpage > 0");
        while (row.step()) roots.emplace(row.text(0), row.integer(1));
    }
    const RawLayout layout = readLayout(pages, shownPath(file.path), roots);
    read(pages, layout, progress);
    m_lock.reset(); // all of it is in memory now
    qint64 rows = std::ssize(m_history.rows);
    for (const FoundTable& table : m_tables) rows += std::ssize(table.rows);
    if (rows == 0)
        throw Error(Error::Kind::Book,
                    QStringLiteral("Nothing of a book can be read from %1.").arg(shownPath(file.path)));
}

Remains::~Remains() = default;

void Remains::prepare(const QString& path) {
    try {
        m_lock = std::make_unique<BookLock>(path);
    } catch (const BookHeld&) {
        throw;
    } catch (const Error&) {
        // a folder that cannot be written: nobody writes the book either
    }
    m_path = path;
    const QString journal = QStringLiteral("-journal");
    const QString wal = QStringLiteral("-wal");
    if (!somethingIn(path + journal) && !somethingIn(path + wal)) return;
    m_folder = std::make_unique<QTemporaryDir>();
    m_path = m_folder->filePath(QStringLiteral("copy"));
    bool copied = QFile::copy(path, m_path);
    for (const QString& end : {journal, wal})
        if (somethingIn(path + end)) copied = QFile::copy(path + end, m_path + end) && copied;
    if (!copied)
        throw Error(Error::Kind::Book,
                    QStringLiteral("%1 cannot be copied: is there room on the disk?").arg(shownPath(path)));
    for (const QString& end : {QString(), journal, wal})
        QFile::setPermissions(m_path + end, QFile::ReadOwner | QFile::WriteOwner);
    playBack(m_path);
    m_halfEditLeft = somethingIn(m_path + journal) || somethingIn(m_path + wal);
}

void Remains::read(const RawPages& pages, const RawLayout& layout, const Progress& progress) {
    m_guessed = layout.guessed;
    m_pageCount = pages.count();
    UsedPages used;
    qint64 asked = 0;
    const auto goOn = [&] {
        constexpr qint64 kApart = 256;
        ++asked;
        if (asked % kApart == 0) progress.at(static_cast<qint64>(used.size()), m_pageCount);
        return true;
    };
    markTree(pages, 1, used, 0);
    const auto walked = [&](const QString& name, FoundTable& table) {
        table.shape = recordShapes().at(name);
        const auto root = layout.roots.find(name);
        table.root = root == layout.roots.end() ? 0 : root->second;
        // An older book has not all tables; of a damaged one nobody knows.
        const bool never = table.root == 0 && !layout.guessed && layout.version > 0;
        if (!never) walkTable(pages, table, used, goOn);
        m_badPages += table.badPages;
    };
    walked(QStringLiteral("history"), m_history);
    for (int i = 0; i < kTableCount; ++i)
        walked(QLatin1String(tableName(static_cast<Table>(i))), m_tables[static_cast<size_t>(i)]);
    FoundTable book;
    walked(QStringLiteral("book"), book);
    if (book.rows.size() == 1 && book.rows.begin()->second.sure)
        if (const auto values = rawRecord(book.rows.begin()->second.record, book.shape))
            m_bookId = QString::fromLatin1(values->front().bytes);
    FoundTable parts;
    walked(QStringLiteral("history_part"), parts);
    readParts(parts);
    for (const auto& [name, root] : layout.roots)
        if (!recordShapes().contains(name)) markTree(pages, root, used, 0);
    readStrays(pages, std::move(used));
}

/// Leaves that nothing points to any more, since a page above them is lost; never pages that were given up. Where only
/// one table lacks such leaves and theirs they can be, they are its.
void Remains::readStrays(const RawPages& pages, UsedPages used) {
    std::vector<FoundTable*> lacking;
    for (FoundTable& table : m_tables)
        if (table.branchLost) lacking.push_back(&table);
    if (m_history.branchLost) lacking.push_back(&m_history);
    const auto free = freePages(pages);
    if (lacking.empty() || !free || m_guessed) return;
    used.insert(free->begin(), free->end());
    for (qint64 number = 2; number <= pages.count(); ++number) {
        if (used.contains(number)) continue;
        std::vector<std::pair<FoundTable*, std::map<qint64, FoundRow>>> fitting;
        for (FoundTable* table : lacking) {
            std::map<qint64, FoundRow> rows;
            UsedPages usedToo = used;
            if (wholeLeaf(pages, number, table->shape, rows, usedToo) && fillsGap(*table, rows))
                fitting.emplace_back(table, std::move(rows));
        }
        if (fitting.size() != 1) continue;
        fitting.front().first->rows.merge(fitting.front().second);
    }
}

void Remains::readParts(const FoundTable& table) {
    m_partsLost = !table.lost.empty();
    for (const auto& [id, row] : table.rows) {
        const auto values = rawRecord(row.record, table.shape);
        if (!values) continue;
        m_parts.push_back({(*values)[0].integer, static_cast<int>((*values)[1].integer),
                           static_cast<int>((*values)[2].integer), (*values)[3].bytes});
    }
}

std::optional<Row> Remains::row(Table table, qint64 id) const {
    const FoundTable& found = this->table(table);
    const auto at = found.rows.find(id);
    if (at == found.rows.end()) return std::nullopt;
    const auto values = rawRecord(at->second.record, found.shape);
    if (!values) return std::nullopt;
    Row row;
    for (const RawValue& value : *values) row.push_back(valueOf(value));
    return row;
}

bool Remains::sure(Table table, qint64 id) const {
    const auto at = this->table(table).rows.find(id);
    return at != this->table(table).rows.end() && at->second.sure;
}

std::optional<HistoryRow> Remains::line(qint64 seq) const {
    const auto at = m_history.rows.find(seq);
    if (at == m_history.rows.end()) return std::nullopt;
    const auto values = rawRecord(at->second.record, m_history.shape);
    if (!values) return std::nullopt;
    const auto text = [&](size_t i) { return QString::fromUtf8((*values)[i].bytes); };
    const auto kind = lineKind((*values)[4].bytes);
    if (!kind) return std::nullopt;
    HistoryRow line;
    line.seq = seq;
    line.at = text(0);
    line.by = text(1);
    line.sentence = text(2);
    line.reason = text(3);
    line.kind = *kind;
    if ((*values)[5].kind == RawValue::Kind::Integer) line.ofSeq = (*values)[5].integer;
    line.changes = (*values)[6].bytes;
    line.attachments = (*values)[7].bytes;
    return line;
}

} // namespace core::store
