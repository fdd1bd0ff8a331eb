#include "core/edit/session.h"

#include "core/base/damaged.h"
#include "core/edit/change_writer.h"
#include "core/edit/correction_check.h"
#include "core/edit/edit_checks.h"
#include "core/edit/kit_guard.h"
#include "core/edit/medicine_guard.h"
#include "core/edit/medicine_lines.h"
#include "core/edit/session_private.h"
#include "core/edit/store_context.h"
#include "core/store/row_store.h"

#include <QScopeGuard>

#include <utility>

namespace core::edit {

namespace {

/// A change with ranges writes much at once: more of the file is then kept in memory.
constexpr int kManyRowsCacheMb = 128;
constexpr int kCacheMb = 16;

class RoomForRanges {
public:
    RoomForRanges(const store::Database& db, const ChangeSet& change)
        : m_db(db), m_many(!change.bulk.empty() || !change.gone.empty()) {
        if (m_many) m_db.setCacheMegabytes(kManyRowsCacheMb);
    }
    ~RoomForRanges() {
        try {
            if (m_many) m_db.setCacheMegabytes(kCacheMb);
        } catch (const Error& e) {
            qWarning("%s", e.what());
        }
    }
    RoomForRanges(const RoomForRanges&) = delete;
    RoomForRanges& operator=(const RoomForRanges&) = delete;

private:
    const store::Database& m_db;
    bool m_many;
};

void needReason(const Correction& why) {
    if (why.by.trimmed().isEmpty() || why.reason.trimmed().isEmpty())
        throw Error(Error::Kind::BadData, Edits::tr("A correction of the record needs a reason and a name."));
}

/// The rows of all edits, each of which finds those before it written, and what stands against them; the book is as it
/// was afterwards.
ChangeSet allInTurn(const store::Database& db, Day today, const QString& text, const std::vector<Edit>& edits) {
    ChangeSet all;
    all.text = text;
    QStringList against;
    db.exec("SAVEPOINT in_turn");
    const auto forget = qScopeGuard([&db] {
        if (!db.inTransaction()) return; // a failing disk has ended it
        try {
            db.exec("ROLLBACK TO in_turn");
            db.exec("RELEASE in_turn");
        } catch (const Error& e) {
            qWarning("%s", e.what()); // the whole transaction goes then
        }
    });
    for (const Edit& edit : edits) {
        const StoreContext context(db, today);
        const ChangeSet change = edit(context);
        Q_ASSERT(change.bulk.empty() && change.gone.empty());
        if (change.against) against << change.against(context);
        for (const RowChange& row : change.rows) store::writeRow(db, row);
        all.rows.insert(all.rows.end(), change.rows.begin(), change.rows.end());
    }
    against.removeAll(QString());
    if (!against.isEmpty()) all.against = [against](const EditContext&) { return against.join(u' '); };
    return all;
}

void needNothingAgainst(const QString& sentence) {
    if (!sentence.isEmpty()) throw Error(Error::Kind::Correction, sentence);
}

void writeLine(const store::Database& db, const ChangeSet& change, store::HistoryRow& line, const Progress& progress) {
    line.seq = writeChange(db, change, line, progress);
    noteMedicine(db, line.seq, line.kind, change);
}

/// An older book as it is; nullptr: it is none, or opening it says what is wrong.
std::unique_ptr<store::Database> olderAsItIs(const QString& path) {
    try {
        return store::Database::isOlder(path) ? store::Database::open(path, store::Access::ReadAsItIs) : nullptr;
    } catch (const Error&) {
        return nullptr;
    }
}

/// A book whose history cannot be read is refused before it is brought up to date, not afterwards.
void needHistoryOfOlder(const QString& path) {
    const auto older = olderAsItIs(path);
    if (!older) return;
    try {
        needMedicineLines(*older);
    } catch (const Damaged&) {
        throw;
    } catch (const Error& e) {
        qWarning("%s", e.what()); // the opening says it
    }
}

/// What listeners are told: of inserted ranges the table and ids.
ChangeSet told(ChangeSet change) {
    for (BulkInsert& range : change.bulk) range.row = nullptr;
    change.attachments.clear();
    change.against = nullptr;
    return change;
}

} // namespace

void Session::Private::needWritable() const {
    if (db->readOnly())
        throw Error(Error::Kind::Book, Edits::tr("The book is open for reading only: nothing can be changed here."));
}

const UndoTops& Session::Private::undoTops() const {
    if (db->readOnly()) tops.reset(); // another may be writing
    if (!tops) tops = edit::undoTops(*db);
    return *tops;
}

HistoryLine Session::Private::write(const ChangeSet& change, store::HistoryKind kind, std::optional<qint64> of,
                                    const std::optional<Correction>& why, const std::function<void()>& written) {
    store::HistoryRow line;
    line.at = clock->nowUtc().toUTC().toString(Qt::ISODateWithMs);
    line.by = why ? why->by.trimmed() : author;
    line.reason = why ? why->reason.trimmed() : QString();
    line.kind = kind;
    line.ofSeq = of;
    line.sentence = change.text;
    const RoomForRanges room(*db, change);
    if (why) {
        needReason(*why);
        writeLine(*db, change, line, progress);
        if (written) written();
        return shownLine(line);
    }
    // All that a correction would answer for is said at once: a hold never goes behind another question.
    QStringList asked{keptApartLost(StoreContext(*db, clock->today()), change),
                      medicineAltered(*db, change, clock->today())};
    const CorrectionCheck check(*db, change, clock->today());
    writeLine(*db, change, line, progress);
    if (written) written();
    asked.push_front(check.afterwards());
    asked.removeAll(QString());
    needNothingAgainst(asked.join(u' '));
    return shownLine(line);
}

void Session::Private::commit(store::Transaction& transaction) const {
    progress.pastStopping(Edits::tr("Writing…"));
    transaction.commit();
}

Session::Session(std::unique_ptr<Private> own) : d(std::move(own)) {}

Session::~Session() = default;

std::unique_ptr<Session> Session::create(const QString& path, const Clock& clock) {
    auto own = std::make_unique<Private>();
    own->clock = &clock;
    own->begin(store::Database::create(path));
    return std::unique_ptr<Session>(new Session(std::move(own)));
}

std::unique_ptr<Session> Session::open(const QString& path, const Clock& clock, Access access) {
    if (access == Access::ReadWrite) needHistoryOfOlder(path);
    auto own = std::make_unique<Private>();
    own->clock = &clock;
    own->begin(
        store::Database::open(path, access == Access::ReadWrite ? store::Access::ReadWrite : store::Access::ReadOnly));
    return std::unique_ptr<Session>(new Session(std::move(own)));
}

std::optional<HistoryLine> Session::apply(const Edit& edit, const std::optional<Correction>& correction) {
    return applyWhat([&] { return edit(StoreContext(*d->db, d->clock->today())); }, correction);
}

std::optional<HistoryLine> Session::applyInTurn(const QString& text, const std::vector<Edit>& edits,
                                                const std::optional<Correction>& correction) {
    return applyWhat([&] { return allInTurn(*d->db, d->clock->today(), text, edits); }, correction);
}

std::optional<HistoryLine> Session::applyWhat(const std::function<ChangeSet()>& what,
                                              const std::optional<Correction>& correction) {
    d->needWritable();
    d->needFile();
    ChangeSet change;
    HistoryLine line;
    {
        store::Transaction transaction(*d->db);
        change = what();
        if (change.empty()) return std::nullopt;
        if (change.against && !correction) needNothingAgainst(change.against(StoreContext(*d->db, d->clock->today())));
        line = d->write(change, store::HistoryKind::Do, std::nullopt, correction);
        d->commit(transaction);
    }
    d->wrote(line);
    emit changed(told(std::move(change)));
    return line;
}

} // namespace core::edit
