#include "ui/print/plan_sheet.h"

#include "ui/print/measures.h"

#include "ui/look/colours.h"
#include "ui/look/words.h"
#include "ui/plan/camera.h"
#include "ui/plan/paint_scene.h"
#include "ui/plan/route.h"
#include "ui/plan/sprites.h"
#include "ui/print/font_measure.h"
#include "ui/print/plan_words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace ui::print {

namespace {

constexpr double kEdge = 10;  // mm of paper around everything
constexpr double kHead = 21;  // mm
constexpr double kLine = 4.6; // of the foot
constexpr double kFootPoints = 9;
constexpr double kRow = 12;        // mm, of the list
constexpr double kHiveMm = 6;      // long on the paper; smaller ones are drawn larger than life
constexpr double kLength = 0.505;  // m, of a usual hive (common practice, no source)
constexpr double kNearGate = 2.25; // a gate that makes the ground larger than so many times is left out
constexpr int kScales[] = {50, 100, 200, 250, 500, 1000};

struct Type {
    int pixels;
    bool lines; ///< the text below the label
};
constexpr Type kTypes[] = {{19, true},  {17, true},  {15, true},  {14, true}, {16, false},
                           {14, false}, {12, false}, {10, false}, {8, false}};

/// What found no room: labels weigh most, then letters of holds.
int wanting(const plan::Scene& scene, const plan::Layout& layout) {
    int out = 0;
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        out += layout.hives[i].label.isEmpty() ? 1000 : 0;
        out += scene.hives[i].held() && layout.hives[i].badge.isEmpty() ? 100 : 0;
        out += !scene.hives[i].line.isEmpty() && layout.hives[i].line.isEmpty() ? 1 : 0;
    }
    return out;
}

/// The ground that must be on the sheet, in metres.
QRectF groundOf(const plan::Scene& scene) {
    QRectF hives;
    for (const plan::HiveMark& h : scene.hives)
        hives |= QRectF(h.at.x / 1000.0 - 0.4, -h.at.y / 1000.0 - 0.4, 0.8, 0.8);
    for (const plan::StandMark& s : scene.stands)
        hives |= QRectF(s.at.x / 1000.0 - 0.4, -s.at.y / 1000.0 - 0.4, 0.8, 0.8);
    const QRectF gate(scene.gate.x / 1000.0 - 0.4, -scene.gate.y / 1000.0 - 0.4, 0.8, 0.8);
    const QRectF both = hives | gate;
    const bool near = both.width() * both.height() <= kNearGate * std::max(hives.width() * hives.height(), 60.0);
    return near || hives.isEmpty() ? both : hives;
}

} // namespace

struct PlanSheet::Drawn {
    plan::Scene scene;
    QFont font;
    plan::Texts texts;
    plan::Layout layout;
    plan::Camera camera;
    double magnified = 1;
    std::optional<int> scale;
    int wanting = 0;
    bool fits = false;

    Drawn(plan::Scene s, const QFont& f, const QSizeF& view) : scene(std::move(s)), font(f), texts(scene, font) {
        camera.view = view;
    }
    void lay(double pixelsPerMetre, const QRectF& ground);
    void finish();
    QSizeF room() const { return {camera.view.width() - kMargin - kRight, camera.view.height() - kMargin - kBottom}; }
    QRectF all; ///< drawn, in layout pixels
};

void PlanSheet::Drawn::lay(double pixelsPerMetre, const QRectF& ground) {
    camera.pixelsPerMetre = pixelsPerMetre;
    const double real = kLength * pixelsPerMetre * kMmPerPixel; // mm
    magnified = std::min(plan::magnification(scene), std::max(1.0, kHiveMm / real));
    layout = plan::layOut(scene, texts, {pixelsPerMetre, magnified, camera.view}, std::nullopt);
    all = bodiesOf(layout) | QRectF(ground.topLeft() * pixelsPerMetre, ground.size() * pixelsPerMetre);
    fits = all.width() <= room().width() && all.height() <= room().height();
    wanting = print::wanting(scene, layout);
}

/// The middle of what is drawn into the middle of the room, and the arcs within it.
void PlanSheet::Drawn::finish() {
    const QPointF middle(kMargin + room().width() / 2, kMargin + room().height() / 2);
    const QPointF shift = all.center() - middle;
    const QSizeF view = camera.view;
    layout.within = QRectF(shift + QPointF(16, 16), QSizeF(view.width() - kRight - 10, view.height() - kBottom - 16));
    plan::routeArcs(scene, texts, layout);
    wanting = print::wanting(scene, layout); // arcs may have moved texts away
    camera.centre = (shift + QPointF(view.width() / 2, view.height() / 2)) / camera.pixelsPerMetre;
}

PlanSheet::PlanSheet(PlanSheetJob job) : m_job(std::move(job)) {
    requireFonts();
    auto upright = drawIn(false);
    auto across = drawIn(true);
    const auto rank = [](const Drawn& d) {
        return std::tuple(!d.scale, d.wanting / 100, -d.camera.pixelsPerMetre, d.wanting);
    };
    m_landscape = rank(*across) < rank(*upright);
    m_drawn = std::move(m_landscape ? across : upright);
    m_drawn->finish();
}

PlanSheet::~PlanSheet() = default;

QSizeF PlanSheet::sizeMm() const { return paper(m_landscape); }

QPageLayout PlanSheet::pageLayout() const {
    const bool letter = m_job.paper == core::report::Paper::Letter;
    return QPageLayout(QPageSize(letter ? QPageSize::Letter : QPageSize::A4),
                       m_landscape ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(0, 0, 0, 0));
}

QSizeF PlanSheet::paper(bool landscape) const {
    QSizeF upright = m_job.paper == core::report::Paper::Letter ? QSizeF(215.9, 279.4) : QSizeF(210, 297);
    for (int i = 0; i < m_job.larger; ++i) upright = QSizeF(upright.height(), 2 * upright.width());
    return landscape ? upright.transposed() : upright;
}

QRectF PlanSheet::area(bool landscape) const {
    const QSizeF all = paper(landscape);
    const double foot = 2 + kLine * static_cast<double>(footLines(all.width() - 2 * kEdge).size());
    return QRectF(QPointF(), all).adjusted(kEdge, kEdge + kHead, -kEdge, -kEdge - foot);
}

/// The largest scale that leaves room for every label; else as large as fits.
std::unique_ptr<PlanSheet::Drawn> PlanSheet::drawIn(bool landscape) const {
    const QSizeF view = area(landscape).size() / kMmPerPixel;
    const QRectF ground = groundOf(m_job.scene);
    std::vector<std::unique_ptr<Drawn>> types;
    for (const Type& t : kTypes) {
        plan::Scene scene = m_job.scene;
        for (plan::HiveMark& h : scene.hives)
            if (!t.lines) h.line.clear();
        types.push_back(std::make_unique<Drawn>(std::move(scene), paperFont(t.pixels, false), view));
    }
    for (const int scale : kScales) {
        std::unique_ptr<Drawn>* best = nullptr;
        for (auto& d : types) {
            d->lay(1000.0 / scale / kMmPerPixel, ground);
            if (d->fits && d->wanting < 100 && (!best || d->wanting < (*best)->wanting)) best = &d;
        }
        if (!best) continue;
        (*best)->scale = scale;
        return std::move(*best);
    }
    const double most =
        std::min(types.back()->room().width() / ground.width(), types.back()->room().height() / ground.height());
    std::unique_ptr<Drawn>* best = nullptr;
    for (auto& d : types) {
        double ppm = std::max(most, plan::Camera::kLeast);
        for (int turn = 0; turn < 12; ++turn, ppm *= 0.97) {
            d->lay(ppm, ground);
            if (d->fits) break;
        }
        if (!best || d->wanting < (*best)->wanting) best = &d;
    }
    return std::move(*best);
}

std::optional<int> PlanSheet::scale() const { return m_drawn->scale; }

double PlanSheet::mmPerMetre() const { return m_drawn->camera.pixelsPerMetre * kMmPerPixel; }

int PlanSheet::unlabelled() const { return m_drawn->wanting / 1000; }

QPointF PlanSheet::placeOf(core::ColonyId colony) const {
    const auto hive = m_drawn->scene.find(colony);
    if (!hive) return {};
    return area(m_landscape).topLeft() + m_drawn->camera.toView(m_drawn->scene.hives[*hive].at) * kMmPerPixel;
}

int PlanSheet::rowsAPage() const {
    return std::max(1, static_cast<int>((sizeMm().height() - 2 * kEdge - kHead) / kRow));
}

int PlanSheet::pages() const {
    const int rows = m_job.listed ? static_cast<int>(m_job.selected.size()) : 0;
    return 1 + (rows + rowsAPage() - 1) / rowsAPage();
}

QString PlanSheet::scaleText() const {
    return m_drawn->scale ? PlanWords::tr("1:%1").arg(*m_drawn->scale) : PlanWords::tr("not to scale");
}

void PlanSheet::paint(QPainter& p, int page) const {
    p.setRenderHint(QPainter::Antialiasing, true);
    paintHead(p);
    if (page > 0) return paintList(p, page);
    paintFoot(p);
    const Drawn& d = *m_drawn;
    const QRectF to = area(m_landscape);
    p.save();
    p.translate(to.topLeft());
    p.scale(kMmPerPixel, kMmPerPixel);
    p.setClipRect(QRectF(QPointF(), d.camera.view), Qt::IntersectClip);
    p.setFont(d.font);
    plan::Sprites strokes(plan::Sprites::Kind::Strokes);
    plan::Shown shown;
    shown.magnified = d.magnified;
    for (const core::ColonyId colony : m_job.selected)
        if (const auto hive = d.scene.find(colony)) shown.selected.push_back(*hive);
    plan::paintScene(p, d.scene, d.layout, d.texts, d.camera, shown, strokes, look::printColours());
    p.restore();
    p.setPen(QPen(Qt::black, 0.3));
    p.setBrush(Qt::NoBrush);
    p.drawRect(to);
}

void PlanSheet::paintHead(QPainter& p) const {
    const QRectF head(kEdge, kEdge, sizeMm().width() - 2 * kEdge, kHead);
    paintText(p, head.topLeft() + QPointF(0, 6.5),
              m_job.part.isEmpty() ? m_job.scene.yard : m_job.scene.yard + QStringLiteral(", ") + m_job.part, 16, true);
    paintText(p, head.topRight() + QPointF(0, 6.5), scaleText(), 16, true, Qt::AlignRight);
    paintText(p, head.topLeft() + QPointF(0, 12.5), dayLine(m_job), 9.5, false);
    if (unlabelled() > 0)
        paintText(
            p, head.topLeft() + QPointF(0, 17.5),
            PlanWords::tr("No room here for the labels of %1 hives: see the parts that follow, or a larger sheet.")
                .arg(unlabelled()),
            9.5, true);
    const double times = std::round(m_drawn->magnified * 10) / 10;
    const QString hives = times > 1 ? PlanWords::tr("hives drawn %1 times their size").arg(times) : QString();
    paintText(p, head.topRight() + QPointF(0, 12.5), hives, 9.5, false, Qt::AlignRight);
    if (!m_drawn->scale)
        paintText(p, head.topRight() + QPointF(0, 17.5), PlanWords::tr("measure by the scale bar"), 9.5, false,
                  Qt::AlignRight);
}

QStringList PlanSheet::footLines(double widthMm) const {
    QStringList lines{lettersLine(m_job.scene)};
    QStringList labels;
    for (const core::ColonyId colony : m_job.selected)
        if (const auto hive = m_job.scene.find(colony)) labels << m_job.scene.hives[*hive].label;
    if (!labels.isEmpty())
        lines << fitted(PlanWords::tr("Framed: %1").arg(labels.join(QStringLiteral(", "))), kFootPoints, widthMm);
    return wrapped(lines + cautionLines(), kFootPoints, widthMm);
}

void PlanSheet::paintFoot(QPainter& p) const {
    double y = area(m_landscape).bottom() + 5;
    for (const QString& line : footLines(sizeMm().width() - 2 * kEdge)) {
        paintText(p, {kEdge, y}, line, kFootPoints, false);
        y += kLine;
    }
}

/// A box to tick, the label, what is known, and a line to write on.
void PlanSheet::paintList(QPainter& p, int page) const {
    const int first = (page - 1) * rowsAPage();
    const int last = std::min(first + rowsAPage(), static_cast<int>(m_job.selected.size()));
    const double right = sizeMm().width() - kEdge;
    const double middle = kEdge + (right - kEdge) * 0.56;
    for (int i = first; i < last; ++i) {
        const double y = kEdge + kHead + kRow * (i - first) + 8;
        p.setPen(QPen(Qt::black, 0.3));
        p.setBrush(Qt::NoBrush);
        p.drawRect(QRectF(kEdge, y - 4, 4.4, 4.4));
        p.drawLine(QPointF(middle, y + 0.6), QPointF(right, y + 0.6));
        const auto hive = m_drawn->scene.find(m_job.selected[static_cast<size_t>(i)]);
        if (!hive) continue;
        const plan::HiveMark& mark = m_job.scene.hives[*hive];
        paintText(p, {kEdge + 8, y}, fitted(mark.label, 14, 24), 14, true);
        const QStringList known = QStringList{mark.line} + mark.holdWords;
        paintText(p, {kEdge + 34, y}, fitted(known.join(QStringLiteral(" · ")), 10, middle - kEdge - 37), 10, false);
    }
}

} // namespace ui::print
