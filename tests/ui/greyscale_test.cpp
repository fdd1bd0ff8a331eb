// Every state of a hive is told from every other without colour and without its texts, near and far.

#include "ui/look/type.h"
#include "ui/plan/paint_scene.h"
#include "ui/plan/route.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>

#include <cstdlib>

namespace {

using namespace ui::plan;

constexpr QSize kArea(150, 150);

/// A hive in the middle of the picture; what else there is lies east of it.
struct State {
    const char* name;
    Scene scene;
    Shown shown;
};

HiveMark hive(int frames) {
    HiveMark m;
    m.colony = {1};
    m.bees = core::Quarters{4 * frames};
    return m;
}

State stateOf(const char* name, const HiveMark& mark) {
    State s{name, {}, {}};
    s.scene.blank = true;
    s.scene.hives = {mark};
    return s;
}

/// With another hive 3 m to the east.
State moveOf(const char* name, bool united, size_t from) {
    State s = stateOf(name, hive(5));
    HiveMark other = hive(5);
    other.colony = {2};
    other.at = {3000, 0};
    s.scene.hives.push_back(other);
    if (united) s.scene.unions.push_back({1, from, 1 - from, {}});
    if (!united) s.scene.shakes.push_back({from, 1 - from});
    return s;
}

std::vector<State> statesOf(double magnified) {
    std::vector<State> all;
    const auto marked = [&all](const char* name, const std::function<void(HiveMark&)>& set) {
        HiveMark m = hive(5);
        set(m);
        all.push_back(stateOf(name, m));
    };
    all.push_back(stateOf("weak", hive(2)));
    all.push_back(stateOf("medium", hive(5)));
    all.push_back(stateOf("strong", hive(9)));
    marked("not counted", [](HiveMark& m) { m.bees.reset(); });
    marked("no bees", [](HiveMark& m) { m.bees = core::Quarters{0}; });
    marked("two boxes", [](HiveMark& m) { m.boxes = 2; });
    marked("laying workers", [](HiveMark& m) { m.layingWorkers = true; });
    marked("feed", [](HiveMark& m) { m.feedHalfLitres = 7; });
    static constexpr const char* kHeld[] = {"O", "F", "S", "C", "Y", "E", "D", "B"};
    for (const char* letter : kHeld) marked(letter, [&](HiveMark& m) { m.holdLetters = QLatin1StringView(letter); });
    all.push_back(moveOf("moved", true, 0));
    all.push_back(moveOf("host", true, 1));
    all.push_back(moveOf("shaken out", false, 0));
    all.push_back(moveOf("takes a shake-out", false, 1));
    all.push_back(stateOf("chosen", hive(5)));
    all.back().shown.chosen = 0;
    all.push_back(stateOf("selected", hive(5)));
    all.back().shown.selected = {0};
    all.push_back({"empty stand", {}, {}});
    all.back().scene.blank = true;
    all.back().scene.stands.push_back({{1}, {}, {0, 0}});
    for (State& s : all) s.shown.magnified = magnified;
    return all;
}

QImage grey(const State& s, double pixelsPerMetre, bool dark, Detail detail) {
    const Texts texts(s.scene, ui::look::textFont(QApplication::font()));
    Camera camera;
    camera.view = kArea;
    camera.pixelsPerMetre = pixelsPerMetre;
    Layout layout = layOut(s.scene, texts, {pixelsPerMetre, s.shown.magnified, kArea, true}, s.shown.chosen);
    if (!s.scene.hives.empty()) {
        EXPECT_EQ(layout.detail, detail) << s.name;
    }
    routeArcs(s.scene, texts, layout);
    QImage picture(kArea, QImage::Format_RGB32);
    QPainter p(&picture);
    Sprites sprites;
    paintScene(p, s.scene, layout, texts, camera, s.shown, sprites, ui::look::colours(dark));
    p.end();
    return picture.convertToFormat(QImage::Format_Grayscale8);
}

/// Pixels that differ by a fifth of black to white: a difference that paper and a poor screen still show.
int differing(const QImage& a, const QImage& b) {
    int n = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) n += std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]) > 51 ? 1 : 0;
    return n;
}

struct Distance {
    double pixelsPerMetre;
    Detail detail;
    int least; ///< pixels
};

/// At least so many pixels: near, the stroke by which two letters of the badges differ (E and F: one of 4 × 2, its edge
/// half grey); far away, such a stroke of smaller type, or one row of a dot's four.
class TellsApart : public testing::TestWithParam<Distance> {};

TEST_P(TellsApart, InGreyscale) {
    const Distance at = GetParam();
    for (const bool dark : {false, true}) {
        const std::vector<State> states = statesOf(1.8);
        std::vector<QImage> pictures;
        for (const State& s : states) pictures.push_back(grey(s, at.pixelsPerMetre, dark, at.detail));
        int fewest = kArea.width() * kArea.height();
        for (size_t a = 0; a < states.size(); ++a)
            for (size_t b = a + 1; b < states.size(); ++b) {
                const int n = differing(pictures[a], pictures[b]);
                fewest = std::min(fewest, n);
                EXPECT_GE(n, at.least) << states[a].name << " and " << states[b].name << (dark ? ", dark" : "");
            }
        RecordProperty(dark ? "fewest_dark" : "fewest_light", fewest);
    }
}

INSTANTIATE_TEST_SUITE_P(Details, TellsApart,
                         testing::Values(Distance{60, Detail::Combs, 6}, Distance{22, Detail::Bar, 6},
                                         Distance{7, Detail::Dot, 4}));

} // namespace
