// What is drawn stands clear of all else, judged by the shapes themselves: turned outlines with entrance and second
// box, text rectangles, circles, and curves sampled each half pixel. The router's own grids are not asked.

#include "demo/demo_book.h"
#include "tests/ui/scattered_test.h"
#include "ui/desk/reading.h"
#include "ui/look/type.h"
#include "ui/plan/camera.h"
#include "ui/plan/curve.h"
#include "ui/plan/route.h"
#include "ui/plan/sprites.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineF>
#include <QTemporaryDir>

namespace {

using namespace ui::plan;

/// A convex shape that is drawn.
struct Shape {
    QPolygonF outline;
    std::string name;
    size_t hive;
    bool body = false;
};

QPolygonF circle(const QPointF& at, double r) {
    QPolygonF out;
    for (int i = 0; i < 24; ++i) out << at + r * QPointF(std::cos(i * M_PI / 12), std::sin(i * M_PI / 12));
    return out;
}

class Drawing {
public:
    Drawing(const Scene& scene, double pixelsPerMetre, const QFont& font)
        : m_scene(scene),
          m_texts(scene, font),
          m_layout(layOut(scene, m_texts, {pixelsPerMetre, magnification(scene), kWindow, true}, std::nullopt)) {
        routeArcs(scene, m_texts, m_layout);
        for (size_t i = 0; i < scene.hives.size(); ++i) addHive(i);
    }

    static constexpr QSizeF kWindow{1100, 840};

    void check(const std::string& where) const {
        checkShapes(where);
        for (size_t i = 0; i < m_layout.unions.size(); ++i) {
            const UnionMark& u = m_scene.unions[i];
            checkArc(where + ", union " + std::to_string(u.order), m_layout.unions[i], u.moved, u.host);
            checkSign(where, i);
        }
        for (size_t i = 0; i < m_layout.shakes.size(); ++i)
            checkArc(where + ", shake-out " + std::to_string(i), m_layout.shakes[i], m_scene.shakes[i].colony,
                     m_scene.shakes[i].into);
    }

    const Layout& layout() const { return m_layout; }

private:
    void addHive(size_t i) {
        const HivePlace& h = m_layout.hives[i];
        const HiveMark& m = m_scene.hives[i];
        const std::string name = m.label.toStdString();
        for (const QPolygonF& part : bodyShapes(h.centre, h.size, m.headingDeg, m.boxes))
            m_shapes.push_back({part, name, i, true});
        const auto text = [&](const QRectF& r, const char* what) {
            if (!r.isEmpty()) m_shapes.push_back({polygonOf(r), name + "'s " + what, i});
        };
        text(h.label, "label");
        text(h.line, "strength");
        if (h.badgeOn)
            m_shapes.push_back({polygonOf(h.badge), name + "'s letter", i, true}); // on the hive itself
        else
            text(h.badge, "hold letters");
        text(h.laying, "laying workers' letter");
        text(h.drop, "feed");
    }

    void checkShapes(const std::string& where) const {
        for (size_t a = 0; a < m_shapes.size(); ++a)
            for (size_t b = a + 1; b < m_shapes.size(); ++b) {
                if (m_shapes[a].body && m_shapes[b].body) continue; // hives stand where they stand
                EXPECT_FALSE(overlap(m_shapes[a].outline, m_shapes[b].outline))
                    << where << ": " << m_shapes[a].name << " over " << m_shapes[b].name;
            }
    }

    void checkArc(const std::string& where, const Arc& arc, size_t from, size_t to) const {
        ASSERT_GE(arc.points.size(), 4u) << where << " is not drawn";
        std::vector<QPointF> line;
        for (size_t p = 0; p + 3 < arc.points.size(); p += 3) {
            const Curve c{arc.points[p], arc.points[p + 1], arc.points[p + 2], arc.points[p + 3]};
            const int steps =
                2 + static_cast<int>(2 * (QLineF(c.from, c.control1).length() +
                                          QLineF(c.control1, c.control2).length() + QLineF(c.control2, c.to).length()));
            for (int k = 0; k <= steps; ++k) line.push_back(c.at(1.0 * k / steps));
        }
        for (const Shape& s : m_shapes) {
            const bool own = s.body && (s.hive == from || s.hive == to);
            size_t in = 0;
            for (const QPointF& p : line) in += s.outline.containsPoint(p, Qt::OddEvenFill) ? 1 : 0;
            EXPECT_EQ(in, 0u) << where << " runs " << (own ? "into its own " : "through ") << s.name;
        }
        checkEnd(where + " leaves", line.front(), from);
        checkEnd(where + " arrives", line.back(), to);
    }

    /// At most this far from the edge: twice what is left free between a hive and an arrow's tip.
    void checkEnd(const std::string& what, const QPointF& end, size_t hive) const {
        constexpr double kNear = 14;
        double nearest = 1e9;
        for (const Shape& s : m_shapes) {
            if (!s.body || s.hive != hive) continue;
            for (int i = 0; i < s.outline.size(); ++i) {
                const QLineF edge(s.outline[i], s.outline[(i + 1) % s.outline.size()]);
                for (int k = 0; k <= 40; ++k) nearest = std::min(nearest, QLineF(edge.pointAt(k / 40.0), end).length());
            }
        }
        EXPECT_LE(nearest, kNear) << what << " away from its hive " << m_scene.hives[hive].label.toStdString();
    }

    QPolygonF signOf(size_t i) const {
        const double r = signRadius(m_layout.detail == Detail::Combs ? m_texts.badgeFont() : m_texts.lineFont());
        return circle(m_layout.unions[i].sign, r);
    }

    void checkSign(const std::string& where, size_t i) const {
        const Arc& arc = m_layout.unions[i];
        const std::string name = where + ", number " + std::to_string(m_scene.unions[i].order);
        EXPECT_FALSE(arc.signHidden) << name << " is not shown";
        const auto clear = [&](const QPolygonF& mark, const std::string& what) {
            for (const Shape& s : m_shapes) EXPECT_FALSE(overlap(mark, s.outline)) << what << " over " << s.name;
            for (size_t other = 0; other < m_layout.unions.size(); ++other) {
                if (other == i) continue;
                EXPECT_FALSE(overlap(mark, signOf(other))) << what << " over number " << m_scene.unions[other].order;
                const QRectF& metres = m_layout.unions[other].metres;
                if (!metres.isEmpty()) {
                    EXPECT_FALSE(overlap(mark, polygonOf(metres))) << what << " over metres";
                }
            }
        };
        clear(signOf(i), name);
        if (!arc.metres.isEmpty()) clear(polygonOf(arc.metres), name + "'s metres");
    }

    const Scene& m_scene;
    Texts m_texts;
    Layout m_layout;
    std::vector<Shape> m_shapes;
};

/// As a yard is fitted into the window, and that many times nearer.
void checkFitted(const Scene& scene, const std::string& name) {
    const QFont font = ui::look::textFont(QApplication::font());
    Camera camera;
    camera.view = Drawing::kWindow;
    camera.fit(metresOf(scene), kFitMargin, kFitNearest);
    for (const double nearer : {1.0, 1.25, 1.5625, 2.5}) {
        const Drawing drawing(scene, camera.pixelsPerMetre * nearer, font);
        if (drawing.layout().detail != Detail::Combs) continue; // labels give way there
        const std::string where = name + " at " + std::to_string(camera.pixelsPerMetre * nearer) + " pixels a metre";
        drawing.check(where);
        for (size_t i = 0; i < scene.hives.size(); ++i)
            EXPECT_FALSE(drawing.layout().hives[i].label.isEmpty())
                << where << ": " << scene.hives[i].label.toStdString() << " has no label";
    }
}

class ClearOfAll : public testing::TestWithParam<int> {};

TEST_P(ClearOfAll, InStrewnYards) {
    const int seed = GetParam();
    const int hives = 12 + (seed * 48) / 49; // 12 to 60
    checkFitted(tests::Scattered(hives, static_cast<unsigned>(seed)).scene(), "yard " + std::to_string(seed));
}

INSTANTIATE_TEST_SUITE_P(Seeds, ClearOfAll, testing::Range(0, 50));

struct DemoClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(core::toDate(today()), QTime(9, 30), Qt::UTC); }
    core::Day today() const override { return demo::demoMergeDay(); }
};

TEST(ClearOfAll, InTheDemosYards) {
    QTemporaryDir folder;
    const DemoClock clock;
    const auto session = core::edit::Session::create(folder.filePath(QStringLiteral("demo.yardwright")), clock);
    demo::fillDemoBook(*session, {});
    const ui::desk::Reading r = ui::desk::readingOf(session->snapshot(demo::demoMergeDay()));
    size_t arcs = 0;
    for (int y = 0; y < static_cast<int>(r.snapshot.yards.size()); ++y) {
        const Scene scene = sceneOf(r.snapshot, core::YardIx{y}, r.facts, r.plan.holds, &r.plan);
        arcs += scene.unions.size() + scene.shakes.size();
        checkFitted(scene, scene.yard.toStdString());
    }
    EXPECT_GT(arcs, 10u);
}

} // namespace
