#include "core/edit/inspection_rows.h"
#include "core/rules/medicine_days.h"

#include "core/edit/edit_checks.h"
#include "core/model/kit_words.h"

#include <algorithm>
#include <set>

namespace core::edit {

namespace {

std::vector<YardIx> yardsAsked(const Snapshot& s, const QStringList& names) {
    std::set<YardIx> yards;
    for (const QString& name : names) {
        const auto yard = s.yardNamed(name.trimmed());
        if (!yard) refuse(Edits::tr("“%1” is no yard of this book.").arg(name));
        yards.insert(*yard);
    }
    if (names.isEmpty())
        for (const SnapStay& stay : s.stays) yards.insert(stay.yard);
    return {yards.begin(), yards.end()};
}

/// All rows of a table dated in the period, by day.
template <class T> std::vector<T> between(const EditContext& c, Day from, Day until) {
    std::vector<T> rows;
    c.each<T>([&](T row) {
        if (row.day >= from && row.day <= until) rows.push_back(std::move(row));
    });
    std::ranges::stable_sort(rows, {}, &T::day);
    return rows;
}

/// Taken in the period; older ones that have no answer now and were not given up before it.
std::vector<Sample> samplesOf(const EditContext& c, Day from, Day until) {
    std::vector<Sample> rows;
    c.each<Sample>([&](const Sample& s) {
        const bool open = !s.result && (!s.lost || *s.lost >= from);
        if (s.day <= until && (s.day >= from || open)) rows.push_back(s);
    });
    std::ranges::stable_sort(rows, {}, &Sample::day);
    return rows;
}

/// Given on some day of the period, begun before it too.
std::vector<Treatment> treatmentsIn(const EditContext& c, Day from, Day until) {
    std::vector<Treatment> rows;
    c.each<Treatment>([&](const Treatment& t) {
        if (t.day <= until && rules::treatmentLastDay(t) >= from) rows.push_back(t);
    });
    std::ranges::stable_sort(rows, {}, &Treatment::day);
    return rows;
}

void readKit(const EditContext& c, rules::InspectionBook& rows) {
    std::vector<Kit> lots;
    c.each<Kit>([&](const Kit& kit) { lots.push_back(kit); });
    rows.kit = rules::kitPiles(lots, rules::kitHolds(rows.s, rules::coloniesOf(lots)));
    std::set<qint64> yards;
    for (const YardIx yard : rows.yards) yards.insert(rows.s.yard(yard).id.value);
    const auto elsewhere = [&](const std::optional<YardId>& yard) { return yard && !yards.contains(yard->value); };
    std::erase_if(rows.kit, [&](const rules::KitPile& p) {
        return p.place.state != kit::kQuarantined || p.count == 0 || elsewhere(p.place.yard);
    });
    rows.kitEnds = between<KitEnd>(c, rows.from, rows.s.on);
    std::erase_if(rows.kitEnds, [&](const KitEnd& e) { return elsewhere(e.yard); });
}

} // namespace

rules::InspectionBook inspectionRows(const Session& session, Day from, Day until, const QStringList& yards) {
    if (from > until)
        refuse(Edits::tr("The period begins on %1 and ends on %2: expected a first day on or before the last.")
                   .arg(isoText(from), isoText(until)));
    rules::InspectionBook rows{.from = from, .s = session.snapshot(until), .yards = {}};
    rows.yards = yardsAsked(rows.s, yards);
    rows.visits = session.visitsBetween(from, until, std::nullopt);
    rows.keeper = session.keeper();
    session.read([&](const EditContext& c) {
        rows.transfers = between<Transfer>(c, from, until);
        rows.lineage = between<Lineage>(c, from, until);
        rows.results = between<Result>(c, from, until);
        rows.treatments = treatmentsIn(c, from, until);
        rows.falls = between<MiteFall>(c, from, until);
        rows.samples = samplesOf(c, from, until);
        for (const Sample& s : rows.samples)
            if (s.result)
                if (auto answer = c.find<Result>(s.result->value)) rows.answers.push_back(*std::move(answer));
        for (const SnapColony& colony : rows.s.colonies)
            if (colony.since >= from)
                if (auto row = c.colony(colony.id)) rows.begun.push_back(*std::move(row));
        readKit(c, rows);
    });
    return rows;
}

} // namespace core::edit
