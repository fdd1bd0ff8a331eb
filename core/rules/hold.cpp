#include "core/rules/hold.h"

#include "core/rules/hold_doubt.h"
#include "core/rules/hold_reasons.h"

#include <algorithm>
#include <array>
#include <set>

namespace core::rules {

namespace {

constexpr std::array kWords{"order",    "afb-confirmed", "afb-suspected", "afb-contact",
                            "afb-yard", "efb",           "brood-doubt",   "brood-not-checked"};
static_assert(kWords.size() == kHoldKindCount);
constexpr char kLetters[] = "OFSCYEDB";

template <class Fact> std::vector<ColonyIx> sourcesIn(std::span<const Fact> facts, const std::vector<Source>& sources) {
    std::set<ColonyIx> found;
    for (const Fact& fact : facts) found.insert(sources[static_cast<size_t>(fact.source)].colony);
    return {found.begin(), found.end()};
}

// Facts in the order of colonies; calls `tell` with those of one colony at a time.
template <class Fact, class Tell>
void addAll(std::vector<Fact> facts, HoldKind kind, std::vector<Hold>& holds, Tell tell) {
    std::stable_sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.colony < b.colony; });
    for (auto first = facts.begin(); first != facts.end();) {
        const auto last = std::find_if(first, facts.end(), [&](const Fact& f) { return f.colony != first->colony; });
        Told told = tell(std::span<const Fact>(first, last));
        holds.push_back({first->colony, kind, std::move(told.told), std::move(told.lift), std::move(told.why)});
        first = last;
    }
}

void addSick(const Evidence& e, std::vector<Hold>& holds) {
    for (size_t i = 0; i < e.s.livingCount(); ++i) {
        const ColonyIx ix{static_cast<qint32>(i)};
        const bool confirmed = isConfirmed(e, ix);
        if (!confirmed && !isSuspected(e, ix)) continue;
        Told told = confirmed ? confirmedReason(e, ix) : suspectedReason(e, ix);
        holds.push_back({ix, confirmed ? HoldKind::AfbConfirmed : HoldKind::AfbSuspected, std::move(told.told),
                         std::move(told.lift), std::move(told.why)});
    }
}

void addTraced(const Evidence& e, Spread& spread, std::vector<Hold>& holds) {
    const std::vector<Source> sources = sourcesOf(e);
    std::vector<ContactFact> contacts;
    std::vector<ReachFact> reaches;
    ContactTrace contact(e, spread);
    ReachTrace reach(e, spread);
    for (qint32 i = 0; i < static_cast<qint32>(sources.size()); ++i) {
        contact.trace(sources, i, contacts);
        reach.trace(sources, i, reaches);
    }
    std::vector<std::vector<ColonyIx>> tracedTo; // in the order of `holds`, from here on
    const size_t first = holds.size();
    addAll(std::move(contacts), HoldKind::AfbContact, holds, [&](std::span<const ContactFact> facts) {
        tracedTo.push_back(sourcesIn(facts, sources));
        return contactReason(e, sources, facts);
    });
    addAll(std::move(reaches), HoldKind::AfbYard, holds, [&](std::span<const ReachFact> facts) {
        tracedTo.push_back(sourcesIn(facts, sources));
        return reachReason(e, sources, facts);
    });
    for (size_t i = 0; i < tracedTo.size(); ++i) holds[first + i].sources = std::move(tracedTo[i]);
}

void addEvents(const Evidence& e, Spread& spread, std::vector<Hold>& holds) {
    std::vector<EventFact> efb;
    traceEfb(e, spread, efb);
    addAll(std::move(efb), HoldKind::Efb, holds,
           [&](std::span<const EventFact> facts) { return efbReason(e, facts.front()); });
    std::vector<EventFact> doubt;
    traceDoubt(e, spread, doubt);
    addAll(std::move(doubt), HoldKind::BroodDoubt, holds,
           [&](std::span<const EventFact> facts) { return doubtReason(e, facts.front()); });
}

} // namespace

QString holdWord(HoldKind kind) { return QString::fromLatin1(kWords[static_cast<size_t>(kind)]); }
QChar holdLetter(HoldKind kind) { return QLatin1Char(kLetters[static_cast<size_t>(kind)]); }

std::vector<Hold> holds(const Snapshot& s) {
    const Evidence e(s);
    Spread spread(e.gifts, s.colonies.size());
    std::vector<Hold> holds;
    std::vector<OrderFact> orders;
    traceOrders(e, spread, orders);
    addAll(std::move(orders), HoldKind::Order, holds,
           [&](std::span<const OrderFact> facts) { return orderReason(e, facts); });
    addSick(e, holds);
    addTraced(e, spread, holds);
    addEvents(e, spread, holds);
    std::vector<UncheckedFact> unchecked;
    traceUnchecked(e, unchecked);
    addAll(std::move(unchecked), HoldKind::BroodNotChecked, holds,
           [&](std::span<const UncheckedFact> facts) { return uncheckedReason(e, facts.front()); });
    std::stable_sort(holds.begin(), holds.end(), [](const Hold& a, const Hold& b) {
        return std::pair(a.colony, a.kind) < std::pair(b.colony, b.kind);
    });
    return holds;
}

} // namespace core::rules
