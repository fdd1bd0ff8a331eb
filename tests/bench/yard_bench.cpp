#include "tests/bench/scratch_book.h"

#include "core/rules/plan.h"

#include <benchmark/benchmark.h>

namespace {

const demo::DemoSize kYardOf60{.colonies = 60, .years = 2, .seed = 3, .yardSize = 60, .story = false};

void plan_yard_60_ms(benchmark::State& state) {
    const auto session = bench::openBook("yard60", kYardOf60);
    const core::Snapshot snapshot = session->snapshot(core::dayOf(2026, 9, 20));
    for (auto _ : state) benchmark::DoNotOptimize(core::rules::advise(snapshot, {}));
}
BENCHMARK(plan_yard_60_ms)->Unit(benchmark::kMillisecond);

} // namespace
