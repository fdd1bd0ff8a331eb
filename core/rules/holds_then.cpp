#include "core/rules/holds_then.h"

#include <algorithm>

namespace core::rules {

namespace {

/// Colonies in the order of a day (the living first), and where each of the whole book's is among them.
struct Order {
    std::vector<ColonyIx> whole; ///< by the new position
    std::vector<qint32> then;    ///< by the old one; -1: not begun

    ColonyIx at(ColonyIx ix) const { return {ix.value < 0 ? -1 : then[static_cast<size_t>(ix.value)]}; }
};

bool livesOn(const SnapColony& c, Day on) { return !c.ended || *c.ended > on; }

Order orderOn(const Snapshot& whole, Day on) {
    Order order;
    order.then.assign(whole.colonies.size(), -1);
    for (const bool living : {true, false})
        for (size_t i = 0; i < whole.colonies.size(); ++i) {
            const SnapColony& c = whole.colonies[i];
            if (c.since > on || livesOn(c, on) != living) continue;
            order.then[i] = static_cast<qint32>(order.whole.size());
            order.whole.push_back({static_cast<qint32>(i)});
        }
    return order;
}

SnapColony colonyThen(SnapColony c, Day on) {
    if (livesOn(c, on)) {
        c.ended.reset();
        c.end = EndKind::Dead;
    }
    return c;
}

/// The last stay of the day has no end yet, but that of the colony.
void addStays(Snapshot& s, std::span<const SnapStay> whole, ColonyIx colony) {
    for (const SnapStay& stay : whole) {
        if (stay.since > s.on) break;
        s.stays.push_back(stay);
        s.stays.back().colony = colony;
    }
    if (!s.stays.empty() && s.stays.back().colony == colony) s.stays.back().until = s.colony(colony).ended;
}

/// Rows of one colony up to the day.
template <class T> void addRows(std::vector<T>& to, std::span<const T> whole, ColonyIx colony, Day on) {
    for (const T& row : whole) {
        if (row.day > on) break;
        to.push_back(row);
        to.back().colony = colony;
    }
}

/// Rows of two colonies, both begun.
template <class T>
void addPairs(std::vector<T>& to, const std::vector<T>& whole, ColonyIx T::*one, ColonyIx T::*other, const Order& order,
              Day on) {
    for (const T& row : whole) {
        if (row.day > on) break;
        const ColonyIx a = order.at(row.*one);
        const ColonyIx b = order.at(row.*other);
        if (a.value < 0 || b.value < 0) continue;
        to.push_back(row);
        to.back().*one = a;
        to.back().*other = b;
    }
}

/// Rows of a colony that has begun, or of a yard.
template <class T> void addSubjects(std::vector<T>& to, const std::vector<T>& whole, const Order& order, Day on) {
    for (const T& row : whole) {
        if (row.day > on) break;
        const ColonyIx colony = order.at(row.colony);
        if (row.colony.value >= 0 && colony.value < 0) continue;
        to.push_back(row);
        to.back().colony = colony;
    }
}

} // namespace

Snapshot forHoldsThen(const Snapshot& whole, Day on) {
    Snapshot s;
    s.on = on;
    s.settings = whole.settings;
    s.yards = whole.yards;
    s.boxKinds = whole.boxKinds;
    const Order order = orderOn(whole, on);
    s.colonies.reserve(order.whole.size());
    for (const ColonyIx was : order.whole) {
        const ColonyIx now{static_cast<qint32>(s.colonies.size())};
        s.colonies.push_back(colonyThen(whole.colony(was), on));
        addStays(s, whole.staysOf(was), now);
        addRows(s.checks, whole.checksOf(was), now, on);
        addRows(s.signs, whole.signsOf(was), now, on);
    }
    addPairs(s.transfers, whole.transfers, &SnapTransfer::from, &SnapTransfer::to, order, on);
    addPairs(s.lineage, whole.lineage, &SnapLineage::colony, &SnapLineage::into, order, on);
    addSubjects(s.results, whole.results, order, on);
    addSubjects(s.treatments, whole.treatments, order, on);
    return s;
}

std::vector<HeldThen> holdsThen(const Snapshot& whole, Day on) {
    const Snapshot then = forHoldsThen(whole, on);
    std::vector<HeldThen> out;
    for (const Hold& hold : holds(then)) out.push_back({then.colony(hold.colony).id, hold.kind});
    return out;
}

} // namespace core::rules
