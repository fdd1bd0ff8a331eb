// How large the area is that hits each hive, by real clicks.

#include "tests/ui/scattered_test.h"
#include "tests/ui/yard_of_test.h"
#include "ui/plan/plan_view.h"

#include <gtest/gtest.h>

#include <QTest>

namespace {

using ui::plan::PlanView;
using ui::plan::Scene;

/// Source: W3C, WCAG 2.2, success criterion 2.5.8: targets of at least 24 by 24 pixels.
constexpr int kTarget = 24;

std::optional<core::ColonyId> clicked(PlanView& view, const QPoint& at) {
    view.setChosen(std::nullopt);
    QTest::mouseClick(&view, Qt::LeftButton, {}, at);
    return view.chosenHive();
}

void expectLargeEnough(const Scene& scene, const char* yard) {
    PlanView view;
    view.resize(1100, 840);
    view.setScene(scene);
    view.show();
    for (const ui::plan::HiveMark& h : scene.hives) {
        const QPoint middle = view.viewPointOf(h.colony).toPoint();
        for (const int x : {-kTarget / 2 + 1, 0, kTarget / 2 - 1})
            for (const int y : {-kTarget / 2 + 1, 0, kTarget / 2 - 1})
                EXPECT_EQ(clicked(view, middle + QPoint(x, y)), h.colony)
                    << yard << ": " << h.label.toStdString() << " at " << x << ", " << y;
    }
}

TEST(HitTargets, Are24PixelsWhen60HivesFillTheView) {
    expectLargeEnough(tests::yardOf(60, 2.0, 5), "rows 2 m apart");
    expectLargeEnough(tests::yardOf(60, 1.2, 6), "rows 1.2 m apart");
    expectLargeEnough(tests::Scattered(60, 3).scene(), "strewn");
}

TEST(HitTargets, TheNearerOfTwoIsHit) {
    PlanView view;
    view.resize(1100, 840);
    Scene scene = tests::yardOf(2, 1.0, 1);
    scene.unions.clear();
    scene.hives[1].at = scene.hives[0].at + core::MmPoint{600, 0};
    view.setScene(scene);
    view.show();
    while (view.camera().pixelsPerMetre > 25) view.zoomOut(); // 15 pixels apart
    const QPointF a = view.viewPointOf({1});
    const QPointF b = view.viewPointOf({2});
    for (const double share : {0.1, 0.4}) {
        EXPECT_EQ(clicked(view, (a + (b - a) * share).toPoint()), core::ColonyId{1});
        EXPECT_EQ(clicked(view, (b + (a - b) * share).toPoint()), core::ColonyId{2});
    }
}

} // namespace
