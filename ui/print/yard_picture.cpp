#include "ui/print/yard_picture.h"

#include "core/report/worksheet_words.h"
#include "ui/plan/camera.h"
#include "ui/plan/paint_scene.h"
#include "ui/plan/route.h"
#include "ui/print/font_measure.h"

#include <QPainter>

#include <algorithm>

namespace ui::print {

namespace {

constexpr double kMmPerPixel = 25.4 / 96; // the drawing's pens and gaps are made for pixels of a screen
constexpr double kMargin = 12;
constexpr double kRight = 54;  // the north arrow's
constexpr double kBottom = 46; // the scale bar's
constexpr double kNearest = 110;

QString lineOf(const core::rules::ColonyFacts& f, const core::report::Words& say) {
    if (f.strength) return say.frames(*f.strength);
    return f.noStrength == core::rules::NoStrength::NoBees ? say("no bees") : say("not counted");
}

QRectF bodiesOf(const plan::Layout& layout) {
    QRectF all;
    for (const plan::HivePlace& h : layout.hives) all |= h.box | h.label | h.line | h.badge | h.drop | h.laying;
    return all;
}

} // namespace

struct YardPicture::Drawn {
    plan::Scene scene;
    QFont font;
    plan::Texts texts;
    plan::Layout layout;
    plan::Camera camera;
    int unlabelled = 0;
    bool whole = true; ///< nothing was left out for want of room
};

YardPicture::YardPicture(const core::Snapshot& s, const core::rules::Plan& plan, core::YardIx yard,
                         core::report::Language language) {
    const core::report::Words say(language);
    const std::vector<core::rules::ColonyFacts> facts = core::rules::colonyFacts(s);
    m_scene = plan::sceneOf(s, yard, facts, plan.holds, &plan);
    for (const core::rules::ColonyFacts& f : facts)
        if (const auto at = m_scene.find(s.colony(f.colony).id)) m_scene.hives[*at].line = lineOf(f, say);
    m_gate = say("gate");
}

YardPicture::Drawn YardPicture::drawAt(const QSizeF& view, const QRectF& ground, int labelPixels, bool lines) const {
    plan::Scene scene = m_scene;
    if (!lines)
        for (plan::HiveMark& h : scene.hives) h.line.clear();
    const QFont font = paperFont(labelPixels, false);
    Drawn d{scene, font, plan::Texts(scene, font), {}, {}, 0, true};
    const QSizeF room(view.width() - kMargin - kRight, view.height() - kMargin - kBottom);
    d.camera.view = view;
    d.camera.fit(ground, kMargin, kNearest);
    const double magnified = plan::magnification(scene);
    const QRectF gate(scene.gate.x / 1000.0, -scene.gate.y / 1000.0, 1e-6, 1e-6);
    const bool gateSeen = ground.adjusted(-0.01, -0.01, 0.01, 0.01).contains(gate);
    QRectF all;
    for (int turn = 0; turn < 6; ++turn) {
        d.layout = plan::layOut(scene, d.texts, {d.camera.pixelsPerMetre, magnified, view}, std::nullopt);
        all = bodiesOf(d.layout);
        const double ppm = d.camera.pixelsPerMetre;
        if (gateSeen) all |= QRectF(gate.x() * ppm - 26, gate.y() * ppm - 14, 52, 40);
        const double fits = std::min(room.width() / all.width(), room.height() / all.height());
        if (fits >= 1) break;
        d.camera.pixelsPerMetre = std::max(ppm * std::max(fits, 0.5) * 0.995, plan::Camera::kLeast);
    }
    const QPointF middle(kMargin + room.width() / 2, kMargin + room.height() / 2);
    d.camera.centre = (all.center() + QPointF(view.width() / 2, view.height() / 2) - middle) / d.camera.pixelsPerMetre;
    for (size_t i = 0; i < d.layout.hives.size(); ++i) {
        const plan::HivePlace& h = d.layout.hives[i];
        d.unlabelled += h.label.isEmpty() ? 1 : 0;
        d.whole &= !h.label.isEmpty() && (!lines || !h.line.isEmpty()) &&
                   (!scene.hives[i].held() || !h.badge.isEmpty()) &&
                   (scene.hives[i].feedHalfLitres == 0 || !h.drop.isEmpty());
    }
    return d;
}

/// The largest type in which all finds room; 9 pt (12 pixels) at least, the lesser text too.
YardPicture::Drawn YardPicture::draw(const QSizeF& view, const QRectF& ground) const {
    std::optional<Drawn> found;
    for (const int pixels : {19, 17, 16, 15, 14}) {
        found.emplace(drawAt(view, ground, pixels, true));
        if (found->whole) break;
    }
    for (const int pixels : {16, 14, 13, 12}) {
        if (found->unlabelled == 0) break;
        found.emplace(drawAt(view, ground, pixels, false));
    }
    plan::routeArcs(found->scene, found->texts, found->layout);
    return std::move(*found);
}

void YardPicture::paint(QPainter& p, const QRectF& area, const QRectF& ground) const {
    const QSizeF view = area.size() / kMmPerPixel;
    const Drawn d = draw(view, ground);
    p.save();
    p.translate(area.topLeft());
    p.scale(kMmPerPixel, kMmPerPixel);
    p.setClipRect(QRectF(QPointF(), view), Qt::IntersectClip);
    p.setFont(d.font);
    plan::Sprites strokes(plan::Sprites::Kind::Strokes);
    plan::Shown shown;
    shown.gateWord = m_gate;
    plan::paintScene(p, d.scene, d.layout, d.texts, d.camera, shown, strokes, look::printColours());
    p.restore();
}

YardPicture::Fit YardPicture::fitOf(const QRectF& area, const QRectF& ground) const {
    const Drawn d = draw(area.size() / kMmPerPixel, ground);
    Fit fit;
    fit.pixelsPerMetre = d.camera.pixelsPerMetre;
    fit.labelPixels = d.font.pixelSize();
    fit.unlabelled = d.unlabelled;
    fit.leastPoints = d.texts.lineFont().pixelSize() * 72.0 / 96;
    return fit;
}

} // namespace ui::print
