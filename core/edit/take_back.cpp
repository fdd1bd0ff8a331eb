#include "core/edit/take_back.h"

#include "core/edit/change_writer.h"
#include "core/edit/edit_checks.h"
#include "core/edit/store_context.h"
#include "core/edit/survey.h"
#include "core/store/invariants.h"
#include "core/store/row_links.h"
#include "core/store/row_store.h"

#include <algorithm>
#include <map>

namespace core::edit {

namespace {

using store::HistoryKind;
using store::HistoryRow;
using store::IdRange;
using store::RowGroup;
using store::RowKey;

IdRange rangeOf(const RowRange& range) { return {range.table, range.firstId, range.count}; }

RowGroup groupOf(const HistoryRecord& record) {
    RowGroup group;
    for (const RowRange& range : record.inserted) group.ranges.push_back(rangeOf(range));
    for (const RowRange& range : record.deleted) group.ranges.push_back(rangeOf(range));
    for (const RowChange& row : record.rows) group.rows.emplace(row.table, row.id);
    return group;
}

bool overlap(const IdRange& a, const RowGroup& group) {
    const auto meets = [&](const IdRange& b) {
        return a.table == b.table && a.firstId < b.firstId + b.count && b.firstId < a.firstId + a.count;
    };
    if (std::any_of(group.ranges.begin(), group.ranges.end(), meets)) return true;
    const auto row = group.rows.lower_bound({a.table, a.firstId});
    return row != group.rows.end() && a.has(*row);
}

bool touches(const HistoryRecord& record, const RowGroup& group) {
    const auto meets = [&](const RowRange& range) { return overlap(rangeOf(range), group); };
    return std::any_of(record.rows.begin(), record.rows.end(),
                       [&](const RowChange& row) {
                           return group.has({row.table, row.id});
                       }) ||
           std::any_of(record.inserted.begin(), record.inserted.end(), meets) ||
           std::any_of(record.deleted.begin(), record.deleted.end(), meets);
}

/// The newest line after `last` that wrote one of these rows. What was done and taken back since is as if it had never
/// been.
std::optional<HistoryRow> laterLine(const store::Database& db, qint64 last, const RowGroup& rows) {
    std::set<qint64> known;
    std::optional<HistoryRow> found;
    store::eachHistoryBefore(db, std::nullopt, [&](const HistoryRow& line) {
        if (line.seq <= last) return false;
        const qint64 step = line.ofSeq.value_or(line.seq);
        if (!known.insert(step).second) return true; // a later line of the step has told
        if (line.kind == HistoryKind::Undo && step > last) return true;
        if (touches(decodeKeys(store::historyChanges(db, line.seq)), rows)) found = line;
        return !found;
    });
    return found;
}

/// "%1" of the sentence becomes what the line did that last wrote the row.
[[noreturn]] void refuseFor(const store::Database& db, qint64 last, const RowKey& row, const QString& sentence,
                            const QString& otherwise) {
    RowGroup group;
    group.rows.insert(row);
    if (const auto line = laterLine(db, last, group)) refuse(sentence.arg(line->sentence));
    refuse(otherwise);
}

class Footing {
public:
    Footing(const store::Database& db, qint64 last, const HistoryRecord& record)
        : m_db(db), m_last(last), m_record(record), m_own(groupOf(record)) {}

    /// Throws Error(BadData) where something rests on the line.
    void check() const {
        if (const auto line = laterLine(m_db, m_last, m_own))
            refuse(Edits::tr("Later changed: %1.").arg(line->sentence));
        for (const RowChange& row : m_record.rows) checkRow(row);
        for (const RowRange& range : m_record.inserted) checkGone(rangeOf(range));
    }

private:
    void checkRow(const RowChange& row) const {
        if (store::readRow(m_db, row.table, row.id) != row.after)
            refuse(Edits::tr("A record of this was changed since, past the history."));
        if (!row.before) return checkGone({row.table, row.id, 1});
        if (const auto target = store::missingTarget(m_db, row.table, *row.before, m_own))
            refuseFor(m_db, m_last, *target, Edits::tr("What it belongs to is no longer in the book: %1."),
                      Edits::tr("What it belongs to is no longer in the book."));
        if (const auto taken = store::rowInPlaceOf(m_db, {row.table, row.id}, *row.before, m_own))
            refuseFor(m_db, m_last, *taken, Edits::tr("Something else is in its place now: %1."),
                      Edits::tr("Something else is in its place now."));
    }
    void checkGone(const IdRange& rows) const {
        if (const auto child = store::rowPointingTo(m_db, rows, m_own))
            refuseFor(m_db, m_last, *child, Edits::tr("A later record rests on it: %1."),
                      Edits::tr("A later record rests on it."));
    }

    const store::Database& m_db;
    qint64 m_last;
    const HistoryRecord& m_record;
    RowGroup m_own;
};

/// The line that put its rows as they are: the `do` line or its latest redo. Or why there is none.
struct Standing {
    std::optional<HistoryRow> line;
    QString sentence;
    QString barred;
};

Standing standingOf(const store::Database& db, qint64 seq) {
    const auto done = store::readHistory(db, seq);
    if (!done) return {{}, {}, Edits::tr("The history has no such line.")};
    if (done->kind != HistoryKind::Do)
        return {{}, {}, Edits::tr("This line takes an edit back or does it again; take back the edit itself.")};
    auto latest = store::latestOfStep(db, seq);
    if (latest->kind == HistoryKind::Undo) return {{}, {}, Edits::tr("It is taken back already.")};
    return {std::move(latest), done->sentence, {}};
}

/// Stands put back where they were drawn before: another may have come there since.
void needStandsApart(const EditContext& c, const ChangeSet& change) {
    std::map<YardId, std::vector<Stand>> was;
    for (const RowChange& row : change.rows) {
        if (row.table != Table::Stand || !row.before || !row.after) continue;
        const auto before = fromRow<Stand>(row.id, *row.before);
        if (before.at != fromRow<Stand>(row.id, *row.after).at) was[before.yard].push_back(before);
    }
    for (const auto& [yard, stands] : was) needApart(c, yard, stands);
}

} // namespace

ChangeSet takeBackOf(const store::Database& db, qint64 seq) {
    const Standing standing = standingOf(db, seq);
    if (!standing.line) refuse(standing.barred);
    const qint64 last = standing.line->seq;
    Footing(db, last, decode(store::historyChanges(db, last))).check();
    ChangeSet change = reversal(db, last);
    change.text = Edits::tr("Taken back: %1").arg(standing.sentence);
    return change;
}

void needSoundBook(const store::Database& db, const ChangeSet& change, Day today) {
    std::set<Table> tables;
    for (const RowChange& row : change.rows) tables.insert(row.table);
    for (const BulkInsert& range : change.bulk) tables.insert(range.table);
    for (const BulkDelete& range : change.gone) tables.insert(range.table);
    if (const auto broken = store::firstBroken(db, tables)) refuse(*broken);
    const StoreContext c(db, today);
    needStandsApart(c, change);
    for (const RowChange& row : change.rows) {
        if (row.table != Table::Placement || !row.after) continue;
        const auto placement = fromRow<Placement>(row.id, *row.after);
        const auto stand = c.stand(placement.stand);
        if (placement.until || !stand) continue;
        // It stood there until then: from that day on the ground must be free again.
        const auto left = row.before ? fromRow<Placement>(row.id, *row.before).until : std::nullopt;
        needBareGround(c, c.standsOf(stand->yard), stand->at, {&placement.colony, 1}, left.value_or(placement.since));
    }
}

std::optional<QString> takeBackBarred(const store::Database& db, qint64 seq) {
    constexpr size_t kFewRows = 200;
    const Standing standing = standingOf(db, seq);
    if (!standing.line) return standing.barred;
    const HistoryRecord record = decode(store::historyChanges(db, standing.line->seq));
    for (size_t i = 0; i < record.rows.size() && i < kFewRows; ++i) {
        const RowChange& row = record.rows[i];
        if (store::readRow(db, row.table, row.id) == row.after) continue;
        RowGroup own;
        own.rows.emplace(row.table, row.id);
        const auto later = laterLine(db, standing.line->seq, own);
        return later ? Edits::tr("Later changed: %1.").arg(later->sentence)
                     : Edits::tr("A record of this was changed since, past the history.");
    }
    return std::nullopt;
}

} // namespace core::edit
