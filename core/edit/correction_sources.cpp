#include "core/edit/correction_sources.h"

#include "core/edit/correction_guard.h"
#include "core/model/row_codec.h"
#include "core/rules/hold.h"
#include "core/store/reads.h"
#include "core/store/trouble_days.h"

#include <algorithm>

namespace core::edit {

namespace {

using rules::HoldKind;

constexpr int kMostOfRanges = 8;

class Beginnings {
public:
    explicit Beginnings(const store::Database& db) : m_db(db) {}

    void take(const RowChange& change) {
        if (!change.before || !rowMatters(change, true)) return;
        if (change.table == Table::VisitSign) takeSign(*change.before);
        if (change.table == Table::Visit)
            if (const auto visit = store::visit(m_db, VisitId{change.id})) takeSigns(*visit);
        if (change.table == Table::Result) takeResult(fromRow<Result>(change.id, *change.before));
    }
    void take(const BulkDelete& range) {
        if (range.table != Table::VisitSign && range.table != Table::Result) return;
        const qint64 last = range.firstId + range.count - 1;
        for (const qint64 id : store::troubleRows(m_db, range.table, range.firstId, last, kMostOfRanges))
            take(RowChange{range.table, id, store::readRow(m_db, range.table, id), std::nullopt});
    }
    std::vector<Beginning> found() const { return m_found; }

private:
    void takeSign(const Row& row) {
        const auto* id = std::get_if<qint64>(&row.at(0));
        auto visit = id ? store::find<Visit>(m_db, *id) : std::nullopt;
        const auto* text = std::get_if<QString>(&row.at(1));
        const auto sign = text ? fromWord<Sign>(*text) : std::nullopt;
        if (!visit || !sign) return;
        visit->signs.add(*sign);
        takeSigns(*visit);
    }
    void takeSigns(const Visit& v) {
        const bool answered = negativeOn(v.colony, v.day);
        if (v.signs.has(Sign::Afb) && !answered) add(v.colony, HoldKind::AfbSuspected, v.day);
        if (v.signs.has(Sign::Efb)) add(v.colony, HoldKind::Efb, v.day);
        if (v.signs.has(Sign::BroodDoubt) && !answered) add(v.colony, HoldKind::BroodDoubt, v.day);
    }
    void takeResult(const Result& r) {
        if (r.verdict == Verdict::Order && !releasedOn(r)) addOrder(r);
        if (r.verdict != Verdict::Positive || !r.colony) return;
        if (r.disease == Disease::Efb)
            add(*r.colony, HoldKind::Efb, r.day);
        else if (r.method != Method::Field)
            add(*r.colony, HoldKind::AfbConfirmed, r.day);
        else if (!negativeOn(*r.colony, r.day))
            add(*r.colony, HoldKind::AfbSuspected, r.day);
    }
    bool negativeOn(ColonyId colony, Day day) const {
        const auto results = store::resultsOf(m_db, colony);
        return std::any_of(results.begin(), results.end(), [&](const Result& r) {
            return r.day == day && r.disease == Disease::Afb && r.verdict == Verdict::Negative &&
                   r.method != Method::Field;
        });
    }
    bool releasedOn(const Result& order) const {
        const auto results = order.colony ? store::resultsOf(m_db, *order.colony) : store::resultsOf(m_db, *order.yard);
        return std::any_of(results.begin(), results.end(), [&](const Result& r) {
            return r.day == order.day && r.disease == order.disease && r.verdict == Verdict::Release;
        });
    }
    void addOrder(const Result& r) {
        if (r.colony) return add(*r.colony, HoldKind::Order, r.day);
        if (const auto yard = store::find<Yard>(m_db, r.yard->value)) add(yard->name, HoldKind::Order, r.day);
    }
    void add(ColonyId id, HoldKind kind, Day day) {
        if (const auto colony = store::find<Colony>(m_db, id.value)) add(colony->label, kind, day);
    }
    void add(const QString& name, HoldKind kind, Day day) {
        m_found.push_back({QStringLiteral("%1: %2").arg(name, rules::holdWord(kind)), day});
    }

    const store::Database& m_db;
    std::vector<Beginning> m_found;
};

} // namespace

std::vector<Beginning> beginningsIn(const store::Database& db, const ChangeSet& change) {
    Beginnings beginnings(db);
    for (const RowChange& row : change.rows) beginnings.take(row);
    for (const BulkDelete& range : change.gone) beginnings.take(range);
    return beginnings.found();
}

} // namespace core::edit
