#include "core/rules/contacts.h"
#include "demo/chance.h"

#include <benchmark/benchmark.h>

#include <algorithm>

// A trace in a book that is read already: 20,000 colonies in 400 yards, 200,000 gifts of ten years between any two of
// them, from the colony that gave most often. What the page of contacts does when a colony is typed.

namespace {

using namespace core;
using namespace core::rules;

constexpr int kColonies = 20'000;
constexpr int kYards = 400;
constexpr int kTransfers = 200'000;
constexpr int kDays = 3650;
constexpr std::uint64_t kSeed = 11;

int some(int range, int n, std::uint64_t what) {
    return demo::chance(range, kSeed, static_cast<std::uint64_t>(n), what);
}

Day dayAt(int n) { return dayOf(2016, 10, 1) + n; }

Snapshot bookOfGifts() {
    Snapshot s;
    s.on = dayAt(kDays);
    s.yards.resize(kYards);
    for (int i = 0; i < kColonies; ++i) {
        SnapColony colony;
        colony.id = {i + 1};
        colony.label = QString::number(i + 1);
        colony.shown = colony.label;
        colony.since = dayAt(0);
        s.colonies.push_back(colony);
        SnapStay stay;
        stay.colony = {i};
        stay.yard = {i % kYards};
        stay.since = colony.since;
        s.stays.push_back(stay);
    }
    for (int n = 0; n < kTransfers; ++n) {
        SnapTransfer t;
        t.day = dayAt(n * kDays / kTransfers);
        t.from = {some(kColonies, n, 1)};
        t.to = {(t.from.value + 1 + some(kColonies - 1, n, 2)) % kColonies};
        t.what = n % 3 == 0 ? TransferKind::Frames : TransferKind::Brood;
        s.transfers.push_back(t);
    }
    return s;
}

/// It gave most often.
ColonyIx busiest(const Snapshot& s) {
    std::vector<int> given(kColonies, 0);
    for (const SnapTransfer& t : s.transfers) ++given[static_cast<size_t>(t.from.value)];
    return {static_cast<qint32>(std::ranges::max_element(given) - given.begin())};
}

/// All gifts put in order, both ways followed, the chain to the farthest colony, and who stood beside it.
size_t trace(const Snapshot& s, ColonyIx colony) {
    const Gifts gifts(s);
    const Standing standing(s, gifts);
    size_t found = yardContactsOf(standing, colony, dayAt(0), s.on).size();
    for (const ContactWay way : {ContactWay::Onwards, ContactWay::Back}) {
        const Contacts contacts = contactsOf(gifts, s.colonies.size(), colony, dayAt(0), s.on, way);
        found += contacts.reached.size();
        if (!contacts.reached.empty()) found += contacts.chainTo(contacts.reached.back()).size();
    }
    return found;
}

void trace_ms(benchmark::State& state) {
    const Snapshot s = bookOfGifts();
    const ColonyIx colony = busiest(s);
    if (trace(s, colony) < kColonies) state.SkipWithError("the colony is not well connected");
    for (auto _ : state) benchmark::DoNotOptimize(trace(s, colony));
}
BENCHMARK(trace_ms)->Unit(benchmark::kMillisecond);

} // namespace
