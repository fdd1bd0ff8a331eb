#include "ui/health/sign_records.h"

#include "core/edit/edit_context.h"

#include <algorithm>
#include <tuple>

namespace ui::health {

using core::Row;
using core::Table;
using core::edit::EditContext;

namespace {

constexpr qint64 kRowByRow = 2000; // of a longer range the table is read through once

std::optional<SignRecord> ofResult(const core::Result& r) {
    if (r.verdict != core::Verdict::Positive || !r.colony) return std::nullopt;
    SignRecord out;
    out.colony = *r.colony;
    out.day = r.day;
    out.what = r.disease == core::Disease::Efb ? core::Sign::Efb : core::Sign::Afb;
    out.found = r.method == core::Method::Laboratory || r.method == core::Method::Inspector;
    return out;
}

class Brought {
public:
    explicit Brought(const EditContext& c) : m_c(c) {}

    void row(const core::RowChange& change) {
        if (!change.after) return;
        if (!change.before) return row(change.table, change.id, *change.after);
        if (change.table != Table::Result) return;
        const auto now = ofResult(core::fromRow<core::Result>(change.id, *change.after));
        if (now && now != ofResult(core::fromRow<core::Result>(change.id, *change.before))) m_out.push_back(*now);
    }
    void row(Table table, qint64 id, const Row& cells) {
        if (table == Table::VisitSign) sign(cells);
        if (table == Table::Result)
            if (const auto record = ofResult(core::fromRow<core::Result>(id, cells))) m_out.push_back(*record);
    }
    void range(const core::edit::BulkInsert& made) {
        if (made.table != Table::VisitSign && made.table != Table::Result) return;
        const qint64 end = made.firstId + made.count;
        if (made.count > kRowByRow) {
            m_c.eachRow(made.table, [&](qint64 id, Row&& cells) {
                if (id >= made.firstId && id < end) row(made.table, id, cells);
            });
            return;
        }
        for (qint64 id = made.firstId; id < end; ++id)
            if (const auto cells = m_c.row(made.table, id)) row(made.table, id, *cells);
    }
    std::vector<SignRecord> take() {
        std::ranges::sort(m_out, {}, [](const SignRecord& r) { return std::tuple(r.what, !r.found, r.day, r.colony); });
        m_out.erase(std::unique(m_out.begin(), m_out.end()), m_out.end());
        return std::move(m_out);
    }

private:
    void sign(const Row& cells) {
        const auto what = core::fromWord<core::Sign>(std::get<QString>(cells.at(1)));
        core::Signs one;
        if (what) one.add(*what);
        if (!one.broodTrouble()) return;
        if (const auto visit = m_c.visit({std::get<qint64>(cells.at(0))}))
            m_out.push_back({visit->colony, visit->day, *what, false});
    }

    const EditContext& m_c;
    std::vector<SignRecord> m_out;
};

} // namespace

std::vector<SignRecord> signsBrought(const core::edit::ChangeSet& change, const core::edit::Session& book) {
    std::vector<SignRecord> out;
    book.read([&](const EditContext& c) {
        Brought brought(c);
        for (const core::RowChange& row : change.rows) brought.row(row);
        for (const core::edit::BulkInsert& made : change.bulk) brought.range(made);
        out = brought.take();
    });
    return out;
}

bool stands(const SignRecord& record, const core::edit::Session& book) {
    bool there = false;
    book.read([&](const EditContext& c) {
        const auto visit = c.visitOn(record.colony, record.day);
        there = visit && visit->signs.has(record.what);
        for (const core::Result& r : c.resultsOf(record.colony)) {
            const auto of = ofResult(r);
            there = there || (of && of->day == record.day && of->what == record.what);
        }
    });
    return there;
}

} // namespace ui::health
