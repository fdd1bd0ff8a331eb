#include "core/edit/medicine_guard.h"

#include "core/edit/edit_checks.h"
#include "core/edit/store_context.h"
#include "core/model/row_codec.h"
#include "core/model/setting_table.h"
#include "core/rules/medicine_days.h"
#include "core/store/row_store.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

namespace core::edit {

namespace {

/// Every cell that said something says the same afterwards.
bool onlyFillsBlanks(const Row& before, const Row& after) {
    const auto blank = [](const Value& v) { return std::holds_alternative<std::monostate>(v); };
    return std::equal(before.begin(), before.end(), after.begin(), after.end(),
                      [&](const Value& was, const Value& is) { return blank(was) || was == is; });
}

class Altered {
public:
    Altered(const store::Database& db, Day today)
        : m_context(db, today), m_today(today), m_years(m_context.settings().recordsYears) {}

    void take(qint64 id, const Row& before, bool goes) {
        const auto treatment = fromRow<Treatment>(id, before);
        const Day until = rules::medicineKeptUntil(treatment, m_years, lastOut(treatment.id));
        if (m_today >= until) return;
        if (m_first && m_first->id.value == id) m_goes = m_goes || goes;
        if (!m_seen.insert(id).second) return;
        ++m_count;
        if (m_first) return;
        m_first = treatment;
        m_goes = goes;
        m_until = until;
    }

    /// Of strips that are out: the day they came out is part of the entry.
    void takeStrips(qint64 id, const Row& before) {
        const auto treatment = m_context.find<Treatment>(fromRow<StripsOut>(id, before).treatment.value);
        if (treatment) take(treatment->id.value, toRow(*treatment), false);
    }

    QString sentence() const {
        if (!m_first) return {};
        const QString name = nameOf(*m_first);
        const QString what = m_count > 1 ? Edits::tr("%1, and %2 more").arg(name).arg(m_count - 1) : name;
        const QString said =
            m_goes
                ? Edits::tr("The medicine book must keep %1, until %2: it stays to be read, struck through.")
                : Edits::tr("The medicine book must keep what it says of %1, until %2: the old words stay to be read.");
        return said.arg(what, isoText(m_until)) + QLatin1Char(' ') +
               Edits::tr("That is a correction of the record: give a reason and a name.");
    }

private:
    std::optional<Day> lastOut(TreatmentId id) {
        if (!m_out) {
            m_out.emplace();
            m_context.each<StripsOut>([&](const StripsOut& s) {
                Day& day = m_out->try_emplace(s.treatment, s.day).first->second;
                day = std::max(day, s.day);
            });
        }
        const auto at = m_out->find(id);
        return at == m_out->end() ? std::nullopt : std::optional(at->second);
    }
    QString nameOf(const Treatment& t) const {
        const auto yard = t.yard ? m_context.yard(*t.yard) : std::nullopt;
        const auto colony = t.colony ? m_context.colony(*t.colony) : std::nullopt;
        const QString of = yard ? yard->name : colony ? shownName(m_context, *colony, t.day) : QString();
        return Edits::tr("the treatment of %1 with %2 on %3").arg(of, t.product, isoText(t.day));
    }

    StoreContext m_context;
    Day m_today;
    int m_years;
    std::optional<std::map<TreatmentId, Day>> m_out; ///< the last day on which strips came out
    std::set<qint64> m_seen;
    int m_count = 0;
    std::optional<Treatment> m_first;
    bool m_goes = false;
    Day m_until;
};

bool ofBook(Table table) { return table == Table::Treatment || table == Table::StripsOut; }

bool ofMedicine(const ChangeSet& change) {
    return std::any_of(change.rows.begin(), change.rows.end(),
                       [](const RowChange& r) { return ofBook(r.table) && r.before; }) ||
           std::any_of(change.gone.begin(), change.gone.end(), [](const BulkDelete& r) { return ofBook(r.table); });
}

/// The years of the setting that a row of it gives; of no row, or of another setting, the default.
int yearsOf(const std::optional<Row>& row) {
    Settings settings;
    if (row) applySetting(settings, std::get<QString>(row->at(0)), std::get<QString>(row->at(1)));
    return settings.recordsYears;
}

/// With fewer years, entries could be erased that must stay now.
QString yearsLowered(const ChangeSet& change) {
    for (const RowChange& row : change.rows) {
        if (row.table != Table::Setting || yearsOf(row.after) >= yearsOf(row.before)) continue;
        return Edits::tr("The medicine book would be kept for %1 years and no longer for %2: entries could be erased "
                         "sooner. Local law says how long it must be kept. That is a correction of the record: give a "
                         "reason and a name.")
            .arg(yearsOf(row.after))
            .arg(yearsOf(row.before));
    }
    return {};
}

} // namespace

QString medicineAltered(const store::Database& db, const ChangeSet& change, Day today) {
    if (const QString lowered = yearsLowered(change); !lowered.isEmpty()) return lowered;
    if (!ofMedicine(change)) return {};
    Altered altered(db, today);
    const auto take = [&](Table table, qint64 id, const Row& before, bool goes) {
        table == Table::Treatment ? altered.take(id, before, goes) : altered.takeStrips(id, before);
    };
    for (const RowChange& row : change.rows) {
        if (!ofBook(row.table) || !row.before) continue;
        if (!row.after || !onlyFillsBlanks(*row.before, *row.after)) take(row.table, row.id, *row.before, !row.after);
    }
    for (const BulkDelete& range : change.gone)
        if (ofBook(range.table))
            store::eachRowIn(db, range.table, range.firstId, range.count,
                             [&](qint64 id, Row&& row) { take(range.table, id, row, true); });
    return altered.sentence();
}

} // namespace core::edit
