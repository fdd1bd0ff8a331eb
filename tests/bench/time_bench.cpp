#include "tests/bench/scratch_book.h"
#include "ui/plan/plan_view.h"
#include "ui/time/glance.h"

#include <benchmark/benchmark.h>

#include <QElapsedTimer>
#include <QTest>

#include <algorithm>

namespace {

constexpr int kDays = 200;

double msOf(const QElapsedTimer& clock) { return static_cast<double>(clock.nsecsElapsed()) / 1e6; }

/// A hand on the date bar of one yard of the big book: each step reads the hives of another day and what is held, and
/// draws them.
struct Scrub {
    std::unique_ptr<core::edit::Session> session = bench::openBigBook();
    ui::time::Glance glance{*session};
    ui::plan::PlanView view;
    core::YardId yard = session->yards().at(7).id;

    Scrub() {
        view.resize(1100, 760);
        view.show();
        benchmark::DoNotOptimize(QTest::qWaitForWindowExposed(&view));
    }
    double step(core::Day day) {
        QElapsedTimer clock;
        clock.start();
        view.setScene(glance.sceneOf(yard, day));
        view.repaint();
        return msOf(clock);
    }
};

/// The median step, and the first one, which reads what holds rest on.
void day_step_ms(benchmark::State& state) {
    for (auto _ : state) {
        Scrub scrub;
        const core::Day last = core::dayOf(2026, 9, 20);
        scrub.step(last);
        if (scrub.view.scene().hives.empty()) return state.SkipWithError("no hives");
        std::vector<double> steps;
        for (int i = 1; i <= kDays; ++i) steps.push_back(scrub.step(last - i * 3));
        std::ranges::sort(steps);
        state.counters["value"] = steps[steps.size() / 2];
    }
}
void day_first_ms(benchmark::State& state) {
    for (auto _ : state) {
        Scrub scrub;
        state.counters["value"] = scrub.step(core::dayOf(2026, 9, 20));
    }
}
BENCHMARK(day_step_ms)->Iterations(1);
BENCHMARK(day_first_ms)->Iterations(1);

} // namespace
