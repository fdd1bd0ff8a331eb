#include "tests/ui/yard_of_test.h"
#include "ui/look/sheet.h"
#include "ui/plan/plan_view.h"

#include <benchmark/benchmark.h>

#include <QElapsedTimer>
#include <QTest>

#include <algorithm>
#include <functional>

namespace {

constexpr int kFrames = 300;

/// A plan of 1,000 hives and about 130 unions at 1100 × 840 pixels, as it stands in the window.
struct ShownPlan {
    ui::plan::PlanView view;
    ShownPlan() {
        view.resize(1100, 840);
        view.setScene(tests::yardOf(1000, 1.2, 5));
        view.show();
        benchmark::DoNotOptimize(QTest::qWaitForWindowExposed(&view));
    }
    /// Milliseconds of each frame: what `step` asks for, and its painting.
    std::vector<double> frames(const std::function<void(int)>& step) {
        std::vector<double> out;
        QElapsedTimer clock;
        for (int i = 0; i < kFrames; ++i) {
            clock.start();
            step(i);
            view.repaint();
            out.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
        }
        std::ranges::sort(out);
        return out;
    }
};

std::vector<double> zoomFrames() {
    ShownPlan plan;
    return plan.frames([&](int i) { i % 24 < 12 ? plan.view.zoomIn() : plan.view.zoomOut(); });
}

std::vector<double> dragFrames() {
    ShownPlan plan;
    const QPoint from = plan.view.viewPointOf({500}).toPoint();
    QTest::mousePress(&plan.view, Qt::LeftButton, {}, from);
    auto out = plan.frames([&](int i) { QTest::mouseMove(&plan.view, from + QPoint(20 + i % 200, i % 70)); });
    QTest::keyClick(&plan.view, Qt::Key_Escape);
    return out;
}

double median(const std::vector<double>& sorted) { return sorted[sorted.size() / 2]; }
double percentile99(const std::vector<double>& sorted) { return sorted[sorted.size() * 99 / 100]; }

void report(benchmark::State& state, double (*of)(const std::vector<double>&)) {
    for (auto _ : state) state.counters["value"] = std::max(of(zoomFrames()), of(dragFrames()));
}

/// The slower of a zoom's and a drag's median frame, and of their 99th percentiles.
void draw_1000_ms(benchmark::State& state) { report(state, median); }
void draw_1000_p99_ms(benchmark::State& state) { report(state, percentile99); }
BENCHMARK(draw_1000_ms)->Iterations(1);
BENCHMARK(draw_1000_p99_ms)->Iterations(1);

} // namespace
