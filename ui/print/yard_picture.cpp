#include "ui/print/yard_picture.h"

#include "ui/print/measures.h"

#include "core/report/worksheet_words.h"
#include "ui/plan/camera.h"
#include "ui/plan/curve.h"
#include "ui/plan/paint_scene.h"
#include "ui/plan/route.h"
#include "ui/plan/sprites.h"
#include "ui/print/font_measure.h"

#include <QPainter>

#include <algorithm>

namespace ui::print {

namespace {

constexpr double kNearest = 110;

QString lineOf(const core::rules::ColonyFacts& f, const core::report::Words& say) {
    if (f.strength) return say.frames(*f.strength);
    return f.noStrength == core::rules::NoStrength::NoBees ? say("no bees") : say("not counted");
}

} // namespace

struct YardPicture::Drawn {
    plan::Scene scene;
    QFont font;
    plan::Texts texts;
    plan::Layout layout;
    plan::Camera camera;
    int unlabelled = 0;
    double faults = 0; ///< what found no room, or stands on something else; and what smaller type loses
};

namespace {

/// All hives and texts, each as rectangles that nothing may run across.
std::vector<QRectF> takenBy(const plan::HivePlace& h) {
    std::vector<QRectF> out{h.box};
    for (const QRectF& r : {h.label, h.line, h.badge, h.drop, h.laying})
        if (!r.isEmpty()) out.push_back(r);
    return out;
}

double arcFaults(const plan::Layout& layout, const plan::Texts& texts) {
    double faults = 0;
    const double r = plan::signRadius(texts.badgeFont());
    for (const plan::Arc& arc : layout.unions) {
        const QRectF sign(arc.sign - QPointF(r, r), QSizeF(2 * r, 2 * r));
        faults += arc.metres.isEmpty() ? 1 : 0;
        for (const plan::HivePlace& h : layout.hives)
            for (const QRectF& taken : takenBy(h)) faults += taken.intersects(sign) ? 4 : 0;
    }
    return faults;
}

/// How often arcs run across hives and texts.
double crossings(const plan::Layout& layout) {
    double crossed = 0;
    for (const auto* arcs : {&layout.unions, &layout.shakes})
        for (const plan::Arc& arc : *arcs)
            for (size_t i = 0; i + 3 < arc.points.size(); i += 3) {
                const plan::Curve c{arc.points[i], arc.points[i + 1], arc.points[i + 2], arc.points[i + 3]};
                for (int k = 1; k < 40; ++k)
                    for (const plan::HivePlace& h : layout.hives)
                        for (const QRectF& taken : takenBy(h)) crossed += taken.contains(c.at(k / 40.0)) ? 1 : 0;
            }
    return crossed;
}

double textFaults(const plan::Scene& scene, const plan::Layout& layout, bool lines) {
    double faults = 0;
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        const plan::HivePlace& h = layout.hives[i];
        const plan::HiveMark& m = scene.hives[i];
        faults += h.label.isEmpty() ? 100 : 0;
        faults += m.held() && h.badge.isEmpty() ? 10 : 0;
        faults += m.layingWorkers && h.laying.isEmpty() ? 10 : 0;
        faults += m.feedHalfLitres > 0 && h.drop.isEmpty() ? 3 : 0;
        faults += lines && h.line.isEmpty() ? 2 : 0;
    }
    return faults;
}

double arcsOutside(const plan::Layout& layout) {
    double outside = 0;
    for (const auto* arcs : {&layout.unions, &layout.shakes})
        for (const plan::Arc& arc : *arcs)
            for (const QPointF& p : arc.points) outside += layout.within.contains(p) ? 0 : 1;
    return outside;
}

} // namespace

/// A gate amid hives and texts is left out.
bool YardPicture::hideGateOnText(Drawn& d, const QRectF& gate) {
    const double ppm = d.camera.pixelsPerMetre;
    const QRectF drawn(gate.x() * ppm - 26, gate.y() * ppm - 14, 52, 36);
    for (const plan::HivePlace& h : d.layout.hives)
        for (const QRectF& taken : takenBy(h))
            if (taken.intersects(drawn)) {
                d.scene.gate = {100'000'000, 100'000'000};
                return true;
            }
    return false;
}

YardPicture::YardPicture(const core::Snapshot& s, const core::rules::Plan& plan, core::YardIx yard,
                         core::report::Language language, const std::vector<core::FixedThing>& fixed) {
    const core::report::Words say(language, s.settings.shown());
    const std::vector<core::rules::ColonyFacts> facts = core::rules::colonyFacts(s);
    m_scene = plan::sceneOf(s, yard, facts, plan.holds, &plan);
    for (const core::rules::ColonyFacts& f : facts)
        if (const auto at = m_scene.find(s.colony(f.colony).id)) m_scene.hives[*at].line = lineOf(f, say);
    m_scene.fixed = plan::fixedMarks(fixed);
    for (plan::FixedMark& f : m_scene.fixed)
        if (!f.named) f.word = say(core::wordsOf<core::FixedKind>()[static_cast<size_t>(f.kind)]);
    m_gate = say("gate");
}

YardPicture::Drawn YardPicture::drawAt(const QSizeF& view, const QRectF& ground, int labelPixels, bool lines) const {
    plan::Scene scene = m_scene;
    if (!lines)
        for (plan::HiveMark& h : scene.hives) h.line.clear();
    const QFont font = paperFont(labelPixels, false);
    Drawn d{scene, font, plan::Texts(scene, font), {}, {}, 0, 0};
    const QSizeF room(view.width() - kMargin - kRight, view.height() - kMargin - kBottom);
    d.camera.view = view;
    d.camera.fit(ground, kMargin, kNearest);
    const double magnified = plan::magnification(scene);
    const QRectF gate(scene.gate.x / 1000.0, -scene.gate.y / 1000.0, 1e-6, 1e-6);
    const bool gateSeen = ground.adjusted(-0.01, -0.01, 0.01, 0.01).contains(gate);
    QRectF all;
    for (int turn = 0; turn < 8; ++turn) {
        const double ppm = d.camera.pixelsPerMetre;
        d.layout = plan::layOut(scene, d.texts, {ppm, magnified, view}, std::nullopt);
        all = bodiesOf(d.layout);
        if (gateSeen) all |= QRectF(gate.x() * ppm - 26, gate.y() * ppm - 14, 52, 40);
        const double fits = std::min(room.width() / all.width(), room.height() / all.height());
        if (fits >= 1) break;
        d.camera.pixelsPerMetre = std::max(ppm * std::max(fits, 0.5) * 0.995, plan::Camera::kLeast);
    }
    const QPointF middle(kMargin + room.width() / 2, kMargin + room.height() / 2);
    const QPointF shift = all.center() - middle;
    d.layout.within = QRectF(shift + QPointF(16, 16), QSizeF(view.width() - kRight - 10, view.height() - kBottom - 16));
    plan::routeArcs(scene, d.texts, d.layout);
    d.camera.centre = (shift + QPointF(view.width() / 2, view.height() / 2)) / d.camera.pixelsPerMetre;
    for (const plan::HivePlace& h : d.layout.hives) d.unlabelled += h.label.isEmpty() ? 1 : 0;
    d.faults =
        textFaults(scene, d.layout, lines) + arcFaults(d.layout, d.texts) + crossings(d.layout) + arcsOutside(d.layout);
    if (gateSeen && hideGateOnText(d, gate)) d.faults += 3;
    return d;
}

/// The largest type in which all finds room, else that with the fewest faults; 9 pt (12 pixels) at least.
YardPicture::Drawn YardPicture::draw(const QSizeF& view, const QRectF& ground) const {
    struct Try {
        int pixels;
        bool lines;
        double worse; ///< how much is lost by it, in faults
    };
    static constexpr Try kTries[] = {{19, true, 0},  {17, true, 1},  {15, true, 2}, {14, true, 3},
                                     {16, false, 3}, {14, false, 4}, {12, false, 5}};
    std::optional<Drawn> best;
    for (const Try& t : kTries) {
        if (best && best->faults <= t.worse) break;
        Drawn d = drawAt(view, ground, t.pixels, t.lines);
        d.faults += t.worse;
        if (!best || d.faults < best->faults) best.emplace(std::move(d));
    }
    return std::move(*best);
}

void YardPicture::paint(QPainter& p, const QRectF& area, const QRectF& ground, double enlarged) const {
    const double mmPerPixel = kMmPerPixel * enlarged;
    const QSizeF view = area.size() / mmPerPixel;
    const Drawn d = draw(view, ground);
    p.save();
    p.translate(area.topLeft());
    p.scale(mmPerPixel, mmPerPixel);
    p.setClipRect(QRectF(QPointF(), view), Qt::IntersectClip);
    p.setFont(d.font);
    plan::Sprites strokes(plan::Sprites::Kind::Strokes);
    plan::Shown shown;
    shown.gateWord = m_gate;
    plan::paintScene(p, d.scene, d.layout, d.texts, d.camera, shown, strokes, look::printColours());
    p.restore();
}

YardPicture::Fit YardPicture::fitOf(const QRectF& area, const QRectF& ground, double enlarged) const {
    const Drawn d = draw(area.size() / (kMmPerPixel * enlarged), ground);
    Fit fit;
    fit.pixelsPerMetre = d.camera.pixelsPerMetre;
    fit.labelPixels = d.font.pixelSize();
    fit.unlabelled = d.unlabelled;
    fit.leastPoints = d.texts.lineFont().pixelSize() * 72.0 / 96 * enlarged;
    return fit;
}

} // namespace ui::print
