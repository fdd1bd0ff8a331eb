#include "tests/bench/scratch_book.h"

#include "core/pairing/matching.h"
#include "core/rules/pairs.h"
#include "core/rules/plan.h"
#include "tests/pairing/greedy.h"

#include <benchmark/benchmark.h>

// The plan of a book that is read already, holds included, and what greed would lose of the unions' gain.

namespace {

constexpr demo::DemoSize plainBook(int colonies, int yardSize) {
    return {.colonies = colonies, .years = 2, .seed = 3, .yardSize = yardSize, .story = false};
}

core::Snapshot snapshotOf(const QString& name, const demo::DemoSize& size) {
    return bench::openBook(name, size)->snapshot(demo::demoMergeDay());
}

core::Snapshot yardOf1000() { return snapshotOf(QStringLiteral("yard1000"), plainBook(1000, 1000)); }
core::Snapshot bigBook() { return bench::openBigBook()->snapshot(demo::demoMergeDay()); }

void plan(benchmark::State& state, const core::Snapshot& s) {
    for (auto _ : state) benchmark::DoNotOptimize(core::rules::advise(s, {}));
}

void plan_yard_60_ms(benchmark::State& state) { plan(state, snapshotOf(QStringLiteral("yard60"), plainBook(60, 60))); }
void plan_yard_1000_ms(benchmark::State& state) { plan(state, yardOf1000()); }
/// Whole books in yards of 50.
void plan_1000_ms(benchmark::State& state) { plan(state, snapshotOf(QStringLiteral("book1000"), plainBook(1000, 50))); }
void plan_5000_ms(benchmark::State& state) { plan(state, snapshotOf(QStringLiteral("book5000"), plainBook(5000, 50))); }
void plan_20000_ms(benchmark::State& state) { plan(state, bigBook()); }
BENCHMARK(plan_yard_60_ms)->Unit(benchmark::kMillisecond);
BENCHMARK(plan_yard_1000_ms)->Unit(benchmark::kMillisecond);
BENCHMARK(plan_1000_ms)->Unit(benchmark::kMillisecond);
BENCHMARK(plan_5000_ms)->Unit(benchmark::kMillisecond);
BENCHMARK(plan_20000_ms)->Unit(benchmark::kMillisecond);

/// The pairs that may unite: the nodes are the living colonies.
std::vector<core::pairing::Edge> candidates(const core::rules::DayView& view) {
    std::vector<core::pairing::Edge> edges;
    const auto count = static_cast<qint32>(view.facts.size());
    for (qint32 a = 0; a < count; ++a)
        for (qint32 b = a + 1; b < count; ++b) {
            if (view.of({a}).yard != view.of({b}).yard) continue;
            const auto judged = core::rules::judgePair(view, {a}, {b});
            if (judged.may()) edges.push_back({a, b, *judged.gain});
        }
    return edges;
}

/// What always taking the best union that is left loses, in percent of the greatest gain.
void greedyLoss(benchmark::State& state, const core::Snapshot& s) {
    const core::rules::DayView view = core::rules::viewOf(s);
    const auto edges = candidates(view);
    const auto colonies = static_cast<int>(view.facts.size());
    const auto best = static_cast<double>(core::pairing::maxWeightMatching(colonies, edges).weight);
    for (auto _ : state) {
        const auto greedy = static_cast<double>(tests::pairing::greedySum(colonies, edges));
        state.counters["value"] = 100 * (best - greedy) / best;
    }
}

void greedy_loss_book_percent(benchmark::State& state) { greedyLoss(state, bigBook()); }
void greedy_loss_yard_1000_percent(benchmark::State& state) { greedyLoss(state, yardOf1000()); }
BENCHMARK(greedy_loss_book_percent)->Iterations(1);
BENCHMARK(greedy_loss_yard_1000_percent)->Iterations(1);

} // namespace
