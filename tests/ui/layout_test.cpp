#include "tests/ui/yard_of_test.h"
#include "ui/plan/camera.h"
#include "ui/plan/curve.h"
#include "ui/plan/layout.h"
#include "ui/plan/paint_scene.h"
#include "ui/plan/route.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QPainter>

#include <algorithm>

namespace {

using namespace ui::plan;

Layout laidOut(const Scene& scene, double pixelsPerMetre, std::optional<size_t> chosen = {}) {
    const Texts texts(scene, QApplication::font());
    Layout out = layOut(scene, texts, {pixelsPerMetre, magnification(scene), {1000, 760}}, chosen);
    routeArcs(scene, texts, out);
    return out;
}

std::vector<QRectF> textsOf(const HivePlace& h) {
    std::vector<QRectF> out;
    for (const QRectF& r : {h.label, h.line, h.badge, h.laying, h.drop})
        if (!r.isEmpty()) out.push_back(r);
    return out;
}

TEST(PlanLayout, NoTextTouchesAnotherOrAnotherHive) {
    for (const double zoom : {8.0, 14.0, 25.0, 40.0, 65.0, 120.0}) {
        const Scene scene = tests::yardOf(120, 1.5, 11);
        const Layout layout = laidOut(scene, zoom);
        struct Named {
            QRectF rect;
            size_t hive;
        };
        std::vector<Named> all;
        for (size_t i = 0; i < layout.hives.size(); ++i)
            for (const QRectF& r : textsOf(layout.hives[i])) all.push_back({r, i});
        for (size_t a = 0; a < all.size(); ++a) {
            for (size_t b = a + 1; b < all.size(); ++b)
                EXPECT_FALSE(all[a].rect.intersects(all[b].rect))
                    << zoom << ": " << scene.hives[all[a].hive].label.toStdString() << " and "
                    << scene.hives[all[b].hive].label.toStdString();
            for (size_t h = 0; h < layout.hives.size(); ++h)
                if (h != all[a].hive) {
                    EXPECT_FALSE(overlap(polygonOf(all[a].rect), outlineOf(layout.hives[h].centre, layout.hives[h].size,
                                                                           scene.hives[h].headingDeg)))
                        << zoom << ": text of " << scene.hives[all[a].hive].label.toStdString() << " over "
                        << scene.hives[h].label.toStdString();
                }
        }
    }
}

TEST(PlanLayout, TheLesserTextGoesFirst) {
    const Scene scene = tests::yardOf(120, 1.5, 11);
    const auto shown = [&](double zoom) {
        size_t labels = 0;
        size_t lines = 0;
        for (const HivePlace& h : laidOut(scene, zoom).hives) {
            labels += !h.label.isEmpty();
            lines += !h.line.isEmpty();
        }
        return std::pair(labels, lines);
    };
    const auto near = shown(110);
    const auto far = shown(28);
    EXPECT_EQ(near.first, scene.hives.size());
    EXPECT_EQ(near.second, scene.hives.size());
    EXPECT_GT(far.first, far.second);
}

TEST(PlanLayout, TheChosenHiveAlwaysHasItsLabel) {
    const Scene scene = tests::yardOf(400, 1.0, 3);
    for (const double zoom : {3.0, 9.0, 20.0})
        for (const size_t chosen : {size_t{0}, size_t{77}, size_t{399}})
            EXPECT_FALSE(laidOut(scene, zoom, chosen).hives[chosen].label.isEmpty());
}

TEST(PlanLayout, FarHivesAreDrawnMorePlainly) {
    EXPECT_EQ(detailOf(30, 12), Detail::Combs);
    EXPECT_EQ(detailOf(12, 12), Detail::Bar);
    EXPECT_EQ(detailOf(4, 12), Detail::Dot);
    EXPECT_EQ(detailOf(30, 900), Detail::Bar) << "many in view";
}

TEST(PlanLayout, HivesAreDrawnLargerOnlyWhileTheyStayApart) {
    EXPECT_DOUBLE_EQ(magnification(tests::yardOf(12, 4.0, 1)), 1.8);
    EXPECT_DOUBLE_EQ(magnification(tests::yardOf(12, 0.6, 1)), 1.0);
    const Scene close = tests::yardOf(60, 1.2, 5);
    const double m = magnification(close);
    for (size_t a = 0; a < close.hives.size(); ++a)
        for (size_t b = a + 1; b < close.hives.size(); ++b) {
            const double apart =
                std::sqrt(static_cast<double>(core::squaredDistance(close.hives[a].at, close.hives[b].at)));
            if (m > 1) {
                EXPECT_GT(apart, m * std::hypot(413, 505)) << a << ' ' << b;
            }
        }
}

double insideShare(const Arc& arc, const QPolygonF& shape) {
    int in = 0;
    int all = 0;
    for (size_t i = 0; i + 3 < arc.points.size(); i += 3) {
        const Curve c{arc.points[i], arc.points[i + 1], arc.points[i + 2], arc.points[i + 3]};
        for (int k = 0; k <= 60; ++k, ++all) in += shape.containsPoint(c.at(k / 60.0), Qt::OddEvenFill);
    }
    return all == 0 ? 0 : 1.0 * in / all;
}

TEST(PlanRoute, ArcsRunClearOfOtherHivesAndOfLabels) {
    for (const unsigned seed : {1u, 2u, 3u}) {
        const Scene scene = tests::yardOf(60, 2.0, seed);
        const Layout layout = laidOut(scene, 60);
        ASSERT_EQ(layout.unions.size(), scene.unions.size());
        for (size_t u = 0; u < layout.unions.size(); ++u) {
            ASSERT_GE(layout.unions[u].points.size(), 4u);
            for (size_t h = 0; h < layout.hives.size(); ++h) {
                const HivePlace& place = layout.hives[h];
                EXPECT_EQ(insideShare(layout.unions[u], polygonOf(place.label)), 0)
                    << seed << ": arc " << u << ", label " << h;
                EXPECT_EQ(insideShare(layout.unions[u], polygonOf(place.line)), 0)
                    << seed << ": arc " << u << ", line " << h;
                if (h != scene.unions[u].moved && h != scene.unions[u].host) {
                    const QPolygonF outline = outlineOf(place.centre, place.size, scene.hives[h].headingDeg);
                    EXPECT_EQ(insideShare(layout.unions[u], outline), 0) << seed << ": arc " << u << ", hive " << h;
                }
            }
        }
    }
}

TEST(PlanRoute, FarAwayLabelsMakeRoomForArcsAndNumbers) {
    const Scene scene = tests::yardOf(400, 1.2, 6);
    const Texts texts(scene, QApplication::font());
    const size_t chosen = 57;
    Layout layout = layOut(scene, texts, {20, magnification(scene), {1000, 760}, true}, chosen);
    ASSERT_EQ(layout.detail, Detail::Bar);
    size_t before = 0;
    for (const HivePlace& h : layout.hives) before += !h.label.isEmpty();
    routeArcs(scene, texts, layout);
    size_t after = 0;
    for (size_t h = 0; h < layout.hives.size(); ++h) {
        const QRectF& label = layout.hives[h].label;
        if (label.isEmpty()) continue;
        ++after;
        for (size_t u = 0; u < layout.unions.size(); ++u) {
            if (h != chosen) {
                EXPECT_EQ(insideShare(layout.unions[u], polygonOf(label)), 0) << "arc " << u << ", label " << h;
            }
            const QPointF off = layout.unions[u].sign - label.center();
            EXPECT_TRUE(layout.unions[u].signHidden || std::abs(off.x()) > label.width() / 2 ||
                        std::abs(off.y()) > label.height() / 2)
                << "number " << u << ", label " << h;
        }
    }
    EXPECT_LT(after, before);
    EXPECT_FALSE(layout.hives[chosen].label.isEmpty());
}

TEST(PlanRoute, ArcsLeaveAndArriveAtTheEdges) {
    const Scene scene = tests::yardOf(60, 2.0, 4);
    const Layout layout = laidOut(scene, 60);
    for (size_t u = 0; u < layout.unions.size(); ++u) {
        const HivePlace& from = layout.hives[scene.unions[u].moved];
        const HivePlace& to = layout.hives[scene.unions[u].host];
        EXPECT_TRUE(from.box.adjusted(-16, -16, 16, 16).contains(layout.unions[u].points.front())) << u;
        EXPECT_TRUE(to.box.adjusted(-16, -16, 16, 16).contains(layout.unions[u].points.back())) << u;
        const bool within = outlineOf(to.centre, to.size, scene.hives[scene.unions[u].host].headingDeg)
                                .containsPoint(layout.unions[u].points.back(), Qt::OddEvenFill);
        EXPECT_FALSE(within) << u;
    }
}

TEST(PlanRoute, ZoomedArcsAreTheSameArcs) {
    const Scene scene = tests::yardOf(30, 2.0, 4);
    const Texts texts(scene, QApplication::font());
    const Layout routed = laidOut(scene, 60);
    Layout twice = layOut(scene, texts, {120, magnification(scene), {1000, 760}}, {});
    scaleArcs(routed, texts, twice);
    ASSERT_EQ(twice.unions.size(), routed.unions.size());
    for (size_t u = 0; u < routed.unions.size(); ++u)
        for (size_t p = 0; p < routed.unions[u].points.size(); ++p)
            EXPECT_EQ(twice.unions[u].points[p], routed.unions[u].points[p] * 2);
}

TEST(PlanCamera, TheGroundUnderThePointerStaysWhileZooming) {
    Camera camera;
    camera.view = {1000, 700};
    camera.centre = {3, -2};
    const QPointF pointer(240, 530);
    const core::MmPoint before = camera.toPlan(pointer);
    for (const double factor : {1.3, 1.3, 0.4, 2.0}) {
        camera.zoomBy(factor, pointer);
        const core::MmPoint now = camera.toPlan(pointer);
        EXPECT_NEAR(now.x, before.x, 1000 / camera.pixelsPerMetre + 1);
        EXPECT_NEAR(now.y, before.y, 1000 / camera.pixelsPerMetre + 1);
    }
}

TEST(PlanCamera, ThereAndBackIsTheSamePlace) {
    Camera camera;
    camera.view = {1000, 700};
    camera.pixelsPerMetre = 500;
    const core::MmPoint at{1234, -4321};
    const core::MmPoint back = camera.toPlan(camera.toView(at));
    EXPECT_NEAR(back.x, at.x, 2);
    EXPECT_NEAR(back.y, at.y, 2);
}

} // namespace
