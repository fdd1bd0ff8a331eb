#include "tests/ui/yard_of_test.h"
#include "ui/look/colours.h"
#include "ui/plan/plan_view.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QMouseEvent>
#include <QTest>

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <string>

namespace {

constexpr int kFrames = 480;
constexpr int kLookEach = 20; // frames: their picture is looked at, outside the time

bool alike(QRgb a, const QColor& b) {
    return std::abs(qRed(a) - b.red()) + std::abs(qGreen(a) - b.green()) + std::abs(qBlue(a) - b.blue()) < 60;
}

int pixelsLike(const QImage& picture, const QRect& area, const QColor& colour) {
    const QRect in = area.intersected(picture.rect());
    int n = 0;
    for (int y = in.top(); y <= in.bottom(); ++y)
        for (int x = in.left(); x <= in.right(); ++x) n += alike(picture.pixel(x, y), colour) ? 1 : 0;
    return n;
}

QRect square(const QPointF& middle, int half) {
    return {middle.toPoint() - QPoint(half, half), QSize(2 * half + 1, 2 * half + 1)};
}

/// A plan of 1,000 hives and about 130 unions at 1100 × 840 pixels, as it stands in the window.
struct ShownPlan {
    ui::plan::PlanView view;
    const ui::look::Colours colours = ui::look::colours(false);
    std::string wrong; ///< what a picture did not show

    ShownPlan() {
        view.setPalette(ui::look::paletteOf(colours));
        view.resize(1100, 840);
        view.setScene(tests::yardOf(1000, 1.2, 5));
        view.show();
        benchmark::DoNotOptimize(QTest::qWaitForWindowExposed(&view));
        view.setFocus();
    }

    void need(bool shown, const char* what) {
        if (!shown && wrong.empty()) wrong = what;
    }

    /// Milliseconds of each frame: what `step` asks for, and its painting. `look` judges some of the pictures.
    std::vector<double> frames(const std::function<void(int)>& step, const std::function<void(const QImage&)>& look) {
        std::vector<double> out;
        QElapsedTimer clock;
        for (int i = 0; i < kFrames; ++i) {
            clock.start();
            step(i);
            view.repaint();
            out.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
            if (i % kLookEach == 0) look(view.grab().toImage());
        }
        std::ranges::sort(out);
        return out;
    }
};

/// The plus and minus keys, from all 1,000 in view to two dozen and back, again and again.
std::vector<double> zoomFrames(std::string& wrong) {
    ShownPlan plan;
    const auto out =
        plan.frames([&](int i) { QTest::keyClick(&plan.view, i % 24 < 12 ? Qt::Key_Plus : Qt::Key_Minus); },
                    [&](const QImage& picture) {
                        int hives = 0;
                        int drawn = 0;
                        for (const ui::plan::HiveMark& h : plan.view.scene().hives) {
                            const QPointF at = plan.view.viewPointOf(h.colony);
                            if (!QRectF(plan.view.rect()).adjusted(20, 20, -140, -80).contains(at)) continue;
                            ++hives;
                            const int half = static_cast<int>(plan.view.camera().pixelsPerMetre * 0.3) + 3;
                            drawn += pixelsLike(picture, square(at, half), plan.colours.ink) > 8 ? 1 : 0;
                        }
                        plan.need(hives > 5, "no hives in view");
                        plan.need(drawn > hives * 8 / 10, "hives that are not drawn"); // those held are orange
                    });
    wrong = plan.wrong;
    return out;
}

/// One of them carried about among the others, exactly where the pointer is.
std::vector<double> dragFrames(std::string& wrong) {
    ShownPlan plan;
    const core::ColonyId carried{500};
    const QPointF from = plan.view.viewPointOf(carried).toPoint();
    QPointF at = from;
    QTest::mousePress(&plan.view, Qt::LeftButton, {}, from.toPoint());
    const auto out = plan.frames(
        [&](int i) {
            at = from + QPointF(20 + i % 200, i % 70);
            QMouseEvent move(QEvent::MouseMove, at, plan.view.mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                             Qt::AltModifier);
            QApplication::sendEvent(&plan.view, &move);
        },
        [&](const QImage& picture) {
            plan.need(plan.view.carrying(), "nothing is carried");
            plan.need(pixelsLike(picture, picture.rect(), plan.colours.ink) > 20'000, "hives that are not drawn");
            const bool there = pixelsLike(picture, square(at, 16), plan.colours.planned) +
                                   pixelsLike(picture, square(at, 16), plan.colours.warn) >
                               30;
            plan.need(there, "the carried hive is not where the pointer is");
        });
    QTest::keyClick(&plan.view, Qt::Key_Escape);
    wrong = plan.wrong;
    return out;
}

double median(const std::vector<double>& sorted) { return sorted[sorted.size() / 2]; }
double percentile99(const std::vector<double>& sorted) { return sorted[sorted.size() * 99 / 100]; }

void report(benchmark::State& state, std::vector<double> (*frames)(std::string&),
            double (*of)(const std::vector<double>&)) {
    for (auto _ : state) {
        std::string wrong;
        state.counters["value"] = of(frames(wrong));
        if (!wrong.empty()) state.SkipWithError(wrong.c_str());
    }
}

// Milliseconds a frame of 1,000 hives, the median and the 99th percentile; the budgets are 8 and 16.
void drag_1000_ms_p50(benchmark::State& state) { report(state, dragFrames, median); }
void drag_1000_ms_p99(benchmark::State& state) { report(state, dragFrames, percentile99); }
void zoom_1000_ms_p50(benchmark::State& state) { report(state, zoomFrames, median); }
void zoom_1000_ms_p99(benchmark::State& state) { report(state, zoomFrames, percentile99); }
BENCHMARK(drag_1000_ms_p50)->Iterations(1);
BENCHMARK(drag_1000_ms_p99)->Iterations(1);
BENCHMARK(zoom_1000_ms_p50)->Iterations(1);
BENCHMARK(zoom_1000_ms_p99)->Iterations(1);

} // namespace
