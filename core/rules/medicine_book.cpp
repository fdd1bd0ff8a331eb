#include "core/rules/medicine_book.h"

#include "core/base/natural_order.h"
#include "core/rules/medicine_days.h"

#include <algorithm>
#include <set>
#include <utility>

namespace core::rules {

namespace {

constexpr int kStripsAskedFor = 365; // an assumption: days after the last day of a treatment

template <class T, class Key> std::map<Key, const T*> indexed(const std::vector<T>& rows, Key T::*key) {
    std::map<Key, const T*> index;
    for (const T& row : rows) index.emplace(row.*key, &row);
    return index;
}

/// Something was left in the hive that comes out again. An antibiotic is fed (common practice, no source).
bool leavesStrips(const Treatment& t) { return !t.antibiotic && t.days.value_or(0) > 0; }

} // namespace

MedicineBook::MedicineBook(MedicineRows rows, Day today) : m_rows(std::move(rows)), m_today(today) {
    m_treatments = indexed(m_rows.treatments, &Treatment::id);
    m_colonies = indexed(m_rows.colonies, &Colony::id);
    m_yards = indexed(m_rows.yards, &Yard::id);
    m_stands = indexed(m_rows.stands, &Stand::id);
    for (const MedicineChange& change : m_rows.changes) m_changes[change.treatment].push_back(change);
    for (const StripsOut& out : m_rows.stripsOut) m_out[out.treatment].push_back(out);
    for (auto& [treatment, out] : m_out)
        std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    for (const Colony& colony : m_rows.colonies) m_byLabel[folded(colony.label)].push_back(&colony);
    for (auto& [label, all] : m_byLabel)
        std::sort(all.begin(), all.end(), [](const Colony* a, const Colony* b) { return a->since < b->since; });
    for (const Placement& place : m_rows.placements) m_places[place.colony].push_back(place);
    for (auto& [colony, places] : m_places) {
        std::sort(places.begin(), places.end(), [](const Placement& a, const Placement& b) {
            return std::pair(a.since, !a.first) < std::pair(b.since, !b.first);
        });
        for (const Placement& place : places)
            if (const Stand* at = stand(place.stand)) m_ofYard[at->yard].push_back(place);
    }
    for (const Lineage& row : m_rows.lineage)
        if (row.how == LineageHow::United) m_unitedInto.emplace(row.colony, row);
}

const Yard* MedicineBook::yard(YardId id) const {
    const auto at = m_yards.find(id);
    return at == m_yards.end() ? nullptr : at->second;
}

const Colony* MedicineBook::colony(ColonyId id) const {
    const auto at = m_colonies.find(id);
    return at == m_colonies.end() ? nullptr : at->second;
}

const Stand* MedicineBook::stand(StandId id) const {
    const auto at = m_stands.find(id);
    return at == m_stands.end() ? nullptr : at->second;
}

QString MedicineBook::name(ColonyId id, Day day) const {
    const Colony* of = colony(id);
    if (!of) return QString();
    const Colony* named = nullptr;
    for (const Colony* other : m_byLabel.at(folded(of->label)))
        if (other->since <= day) named = other;
    return named == of ? of->label : of->label + u'@' + isoText(of->since);
}

QString MedicineBook::yardName(YardId id) const {
    const Yard* of = yard(id);
    return of ? of->name : QString();
}

QString MedicineBook::yardNow(ColonyId id) const {
    const auto places = m_places.find(id);
    if (places == m_places.end()) return QString();
    const Stand* at = stand(places->second.back().stand);
    return at ? yardName(at->yard) : QString();
}

QString MedicineBook::subject(const Treatment& t) const { return t.yard ? yardName(*t.yard) : name(*t.colony, t.day); }

bool MedicineBook::stoodThen(const Placement& p, Day day) const {
    if (day < p.since || (p.until && day > *p.until)) return false;
    if (!p.until || day < *p.until) return true;
    // Its last day there: the day of a carry counts for the new place alone (rule 4.0).
    const Colony* of = colony(p.colony);
    return of && of->ended == day;
}

std::vector<ColonyId> MedicineBook::treated(const Treatment& t) const {
    if (t.colony) return {*t.colony};
    std::set<ColonyId> found;
    if (const auto all = m_ofYard.find(t.yard.value_or(YardId{})); all != m_ofYard.end())
        for (const Placement& p : all->second)
            if (stoodThen(p, t.day)) found.insert(p.colony);
    std::vector<ColonyId> colonies(found.begin(), found.end());
    std::sort(colonies.begin(), colonies.end(), [&](ColonyId a, ColonyId b) {
        const int order = naturalCompare(colony(a)->label, colony(b)->label);
        return order != 0 ? order < 0 : a < b;
    });
    return colonies;
}

std::optional<ColonyId> MedicineBook::hiveOn(ColonyId id, Day day) const {
    std::set<ColonyId> passed;
    for (const Colony* at = colony(id); at && passed.insert(at->id).second;) {
        if (!at->ended || day < *at->ended) return at->id;
        const auto united = m_unitedInto.find(at->id);
        // A hive on its own last day is there still, unless it was set onto another.
        if (united == m_unitedInto.end()) return day == *at->ended ? std::optional(at->id) : std::nullopt;
        at = colony(united->second.into);
    }
    return std::nullopt;
}

bool MedicineBook::isOut(TreatmentId treatment, ColonyId colony) const {
    const auto out = m_out.find(treatment);
    return out != m_out.end() &&
           std::any_of(out->second.begin(), out->second.end(), [&](const StripsOut& s) { return s.colony == colony; });
}

std::vector<StripsIn> MedicineBook::stripsIn() const {
    std::vector<StripsIn> found;
    for (const Treatment& t : m_rows.treatments) {
        if (!leavesStrips(t)) continue;
        const Day due = treatmentLastDay(t);
        if (m_today < t.day || m_today > due + kStripsAskedFor) continue;
        for (const ColonyId treatedOne : treated(t)) {
            const auto hive = hiveOn(treatedOne, m_today);
            const Colony* living = hive ? colony(*hive) : nullptr;
            if (!living || (living->ended && *living->ended <= m_today) || isOut(t.id, treatedOne)) continue;
            found.push_back({t.id, treatedOne, *hive, due});
        }
    }
    std::stable_sort(found.begin(), found.end(), [&](const StripsIn& a, const StripsIn& b) {
        if (a.due != b.due) return a.due < b.due;
        return naturalCompare(colony(a.hive)->label, colony(b.hive)->label) < 0;
    });
    return found;
}

bool MedicineBook::anyIn(const MedicineEntry& entry) const {
    if (entry.struck || !leavesStrips(entry.row)) return false;
    return std::any_of(entry.colonies.begin(), entry.colonies.end(), [&](ColonyId c) {
        const auto hive = hiveOn(c, m_today);
        const Colony* living = hive ? colony(*hive) : nullptr;
        return living && (!living->ended || m_today < *living->ended) && !isOut(entry.row.id, c);
    });
}

void MedicineBook::count(MedicineEntry& entry) const {
    const Treatment& t = entry.row;
    entry.lastDay = treatmentLastDay(t);
    for (const StripsOut& out : entry.out) entry.lastDay = std::max(entry.lastDay, out.day);
    const std::optional<Day> lastOut = entry.out.empty() ? std::nullopt : std::optional(entry.out.back().day);
    entry.keptUntil = medicineKeptUntil(t, m_rows.settings.recordsYears, lastOut);
    if (!t.withdrawalDays)
        entry.withdrawal = Withdrawal::NotRecorded;
    else if (!t.days && entry.out.size() < entry.colonies.size())
        entry.withdrawal = Withdrawal::LastDayUnknown;
    else if (m_today > treatmentLastDay(t) && m_today <= treatmentLastDay(t) + kStripsAskedFor && anyIn(entry))
        entry.withdrawal = Withdrawal::StillIn;
    else {
        entry.withdrawal = Withdrawal::Counted;
        entry.honeyFrom = entry.lastDay + *t.withdrawalDays;
    }
}

void MedicineBook::addPlaces(MedicineEntry& entry) const {
    const Day last = std::max(entry.lastDay + entry.row.withdrawalDays.value_or(0), entry.row.day);
    for (const ColonyId id : entry.colonies) {
        const auto places = m_places.find(id);
        if (places == m_places.end()) continue;
        for (const Placement& p : places->second)
            if (p.since <= last && (stoodThen(p, entry.row.day) || (!p.until || *p.until > entry.row.day)))
                entry.places.push_back({id, p.stand, std::max(p.since, entry.row.day), p.until});
    }
}

MedicineEntry MedicineBook::entryOf(const Treatment& row, bool struck, std::vector<MedicineChange> changes) const {
    MedicineEntry entry;
    entry.row = row;
    entry.struck = struck;
    entry.changes = std::move(changes);
    entry.colonies = treated(row);
    if (const auto out = m_out.find(row.id); !struck && out != m_out.end()) entry.out = out->second;
    count(entry);
    addPlaces(entry);
    return entry;
}

/// A number may have been given again after its treatment was taken back: a change of it that follows a removal is the
/// next treatment's, unless the first was put back.
void MedicineBook::addOfTreatment(TreatmentId id, std::vector<MedicineEntry>& entries) const {
    std::vector<MedicineChange> own;
    std::optional<Treatment> gone;
    const auto strike = [&] {
        if (gone) entries.push_back(entryOf(*gone, true, std::move(own)));
        if (gone) own.clear();
        gone.reset();
    };
    if (const auto changes = m_changes.find(id); changes != m_changes.end())
        for (const MedicineChange& change : changes->second) {
            if (change.before) strike();
            own.push_back(change);
            gone = change.after ? std::nullopt : change.before;
        }
    strike();
    if (const auto row = m_treatments.find(id); row != m_treatments.end())
        entries.push_back(entryOf(*row->second, false, std::move(own)));
}

bool MedicineBook::fits(const MedicineEntry& entry, const MedicineAsked& asked) const {
    const Treatment& t = entry.row;
    if (asked.until && t.day > *asked.until) return false;
    if (asked.from && entry.lastDay < *asked.from) return false;
    if (asked.colony && std::find(entry.colonies.begin(), entry.colonies.end(), *asked.colony) == entry.colonies.end())
        return false;
    if (!asked.yard || t.yard == asked.yard) return true;
    const auto all = m_ofYard.find(*asked.yard);
    return t.colony && all != m_ofYard.end() &&
           std::any_of(all->second.begin(), all->second.end(),
                       [&](const Placement& p) { return p.colony == *t.colony && stoodThen(p, t.day); });
}

std::vector<MedicineEntry> MedicineBook::entries(const MedicineAsked& asked) const {
    std::set<TreatmentId> ids;
    for (const Treatment& t : m_rows.treatments) ids.insert(t.id);
    for (const auto& [id, changes] : m_changes) ids.insert(id);
    std::vector<MedicineEntry> all;
    for (const TreatmentId id : ids) addOfTreatment(id, all);
    std::erase_if(all, [&](const MedicineEntry& entry) { return !fits(entry, asked); });
    std::stable_sort(all.begin(), all.end(),
                     [](const MedicineEntry& a, const MedicineEntry& b) { return a.row.day < b.row.day; });
    return all;
}

} // namespace core::rules
