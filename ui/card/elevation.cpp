#include "ui/card/elevation.h"

#include "ui/look/queen_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/type.h"
#include "ui/look/words.h"

#include <QPainter>

#include <algorithm>

namespace ui::card {

namespace {

constexpr double kWide = 168; // of a box
constexpr double kHigh = 74;
constexpr double kTop = 30; // above the boxes: roof and queen

SideBox boxOf(const desk::Reading& r, core::ColonyIx colony, bool upper) {
    const auto& f = r.factsOf(colony);
    SideBox box;
    box.combs = r.snapshot.boxKindOf(colony).frames;
    box.bees = upper ? f.upperBees : f.lowerBees;
    box.stores = upper ? f.upperStores : f.stores;
    return box;
}

/// One box of a union: a colony brought down to one box holds all of its bees in it.
SideBox unitedBox(const desk::Reading& r, core::ColonyIx colony, core::Quarters frames) {
    SideBox box = boxOf(r, colony, false);
    box.bees = frames;
    const auto& f = r.factsOf(colony);
    if (f.boxes == 2) box.stores = f.stores && f.upperStores ? std::optional(*f.stores + *f.upperStores) : std::nullopt;
    return box;
}

QString wordsOf(const SideBox& box) {
    const QString bees = box.bees ? ElevationView::tr("%1 of bees").arg(core::framesText(*box.bees))
                                  : ElevationView::tr("bees not recorded");
    const QString stores = box.stores ? ElevationView::tr("%1 of stores").arg(core::framesText(*box.stores))
                                      : ElevationView::tr("stores not recorded");
    return bees + QStringLiteral("\n") + stores;
}

/// Bees that were not counted are not none.
void paintQuestion(QPainter& p, const QRectF& box, const look::Colours& c) {
    QFont font = p.font();
    font.setBold(true);
    font.setPixelSize(static_cast<int>(box.height() * 0.4));
    const double half = box.height() * 0.26;
    p.fillRect(QRectF(box.center() - QPointF(half, half), QSizeF(2 * half, 2 * half)), c.paper);
    p.setFont(font);
    p.setPen(c.ink);
    p.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
}

void paintBox(QPainter& p, const QRectF& rect, const SideBox& box, const look::Colours& c) {
    p.fillRect(rect, c.paper);
    const double step = rect.width() / (box.combs + 0.4);
    const auto share = [&box](const std::optional<core::Quarters>& q) {
        return q ? std::clamp(q->value / (4.0 * std::max(box.combs, 1)), 0.0, 1.0) : 0.0;
    };
    const QRectF inner = rect.adjusted(0, 7, 0, -6);
    const double bees = inner.height() * share(box.bees);
    const double stores = inner.height() * share(box.stores);
    for (int i = 0; i < box.combs; ++i) {
        const double x = rect.left() + step * (i + 0.7);
        p.fillRect(QRectF(x - 0.6, inner.top(), 1.2, inner.height()), c.pale);
        p.fillRect(QRectF(x - step * 0.27, inner.top(), step * 0.54, stores), c.pale);
        p.fillRect(QRectF(x - step * 0.2, inner.bottom() - bees, step * 0.4, bees), c.ink);
    }
    p.setPen(QPen(c.ink, 1.6));
    p.setBrush(Qt::NoBrush);
    p.drawRect(rect);
    if (!box.bees) paintQuestion(p, rect, c);
}

/// Seen from the south: east is at the right.
void paintEntrance(QPainter& p, const QRectF& box, int headingDeg, const look::Colours& c) {
    const int h = (headingDeg % 360 + 360) % 360;
    p.setPen(QPen(c.ink, 1.4));
    p.setBrush(c.ink);
    if (h > 30 && h < 150)
        p.drawRect(QRectF(box.right(), box.bottom() - 11, 6, 7));
    else if (h > 210 && h < 330)
        p.drawRect(QRectF(box.left() - 6, box.bottom() - 11, 6, 7));
    else {
        const QRectF front(box.center().x() - 22, box.bottom() - 5, 44, 5);
        if (h <= 30 || h >= 330) p.setBrush(c.paper); // at the back
        p.drawRect(front);
    }
}

void paintRoof(QPainter& p, const QRectF& box, const look::Colours& c) {
    p.fillRect(QRectF(box.left() - 6, box.top() - 8, box.width() + 12, 7), c.ink);
}

/// Her year and its colour, then how she is marked: "queen of 2024, green, marked, disc 17".
QString queenWords(const Side& side) {
    QStringList parts;
    if (side.queenBorn)
        parts << ElevationView::tr("queen of %1").arg(QString::number(*side.queenBorn))
              << look::queenMark(*side.queenBorn).name;
    else
        parts << ElevationView::tr("queen: year not recorded");
    if (side.queenMark == core::QueenMark::Unmarked)
        parts << look::markText(*side.queenMark);
    else if (side.queenMark)
        parts << (side.queenBorn && look::markMismatch(side.queenBorn, side.queenMark).isEmpty()
                      ? ElevationView::tr("marked")
                      : ElevationView::tr("marked %1").arg(look::markText(*side.queenMark)));
    if (!side.queenTag.isEmpty()) parts << ElevationView::tr("disc %1").arg(side.queenTag);
    return parts.join(QStringLiteral(", "));
}

/// Filled: the colour of her year. A ring in it: not marked. Two dots: painted in another colour than that.
void paintQueen(QPainter& p, const QPointF& at, const Side& side, const QFont& font, const look::Colours& c) {
    constexpr double kDot = 5.5;
    const bool known = side.queenBorn || side.queenMark;
    const bool bare = side.queenMark == core::QueenMark::Unmarked;
    const QColor paint = side.queenMark && !bare ? look::paintOf(*side.queenMark)
                         : side.queenBorn        ? look::queenMark(*side.queenBorn).colour
                                                 : QColor();
    p.setPen(QPen(known ? c.ink : c.quiet, 1.4, known ? Qt::SolidLine : Qt::DotLine));
    p.setBrush(paint.isValid() ? QBrush(paint) : QBrush(Qt::NoBrush));
    p.drawEllipse(at, kDot, kDot);
    if (bare) {
        p.setBrush(c.paper);
        p.drawEllipse(at, kDot / 2, kDot / 2);
    }
    double x = 12;
    if (side.queenBorn && !look::markMismatch(side.queenBorn, side.queenMark).isEmpty()) {
        p.setBrush(look::queenMark(*side.queenBorn).colour);
        p.drawEllipse(at + QPointF(13, 0), kDot, kDot);
        x += 13;
    }
    p.setFont(font);
    p.setPen(known ? c.ink : c.quiet);
    const QFontMetricsF metrics(font); // with large type what is too long is cut; the facts say it whole
    const QString words = metrics.elidedText(queenWords(side), Qt::ElideRight, p.window().width() - at.x() - x);
    p.drawText(at + QPointF(x, metrics.ascent() / 2 - 1), words);
}

QString entranceWords(const Side& side) {
    const QString way = look::compassText(side.headingDeg);
    return side.entranceInEach ? ElevationView::tr("entrances %1").arg(way) : ElevationView::tr("entrance %1").arg(way);
}

QString spokenOf(const Side& side) {
    QStringList parts;
    for (auto it = side.boxes.rbegin(); it != side.boxes.rend(); ++it)
        parts << it->title + QStringLiteral(": ") + wordsOf(*it).replace(u'\n', QStringLiteral(", "));
    parts << entranceWords(side);
    if (side.queen) parts << queenWords(side);
    return parts.join(QStringLiteral("; "));
}

} // namespace

Side sideOf(const desk::Reading& r, core::ColonyIx colony) {
    Side side;
    const auto& f = r.factsOf(colony);
    side.boxes.push_back(boxOf(r, colony, false));
    side.boxes.front().title = f.boxes == 2 ? ElevationView::tr("Lower box") : ElevationView::tr("One box");
    if (f.boxes == 2) {
        side.boxes.push_back(boxOf(r, colony, true));
        side.boxes.back().title = ElevationView::tr("Upper box");
    }
    if (const core::SnapStay* stay = r.snapshot.placeOf(colony)) side.headingDeg = stay->headingDeg;
    side.queen = true;
    side.queenBorn = r.snapshot.colony(colony).queenBorn;
    return side;
}

Side unitedSideOf(const desk::Reading& r, const core::rules::Union& u) {
    Side side;
    const auto frames = [&u](core::ColonyIx c) { return c == u.moved ? u.movedFrames : u.hostFrames; };
    side.boxes = {unitedBox(r, u.lower, frames(u.lower)), unitedBox(r, u.upper, frames(u.upper))};
    side.boxes[0].title = ElevationView::tr("%1 below").arg(r.snapshot.colony(u.lower).shown);
    side.boxes[1].title = ElevationView::tr("%1 on top").arg(r.snapshot.colony(u.upper).shown);
    side.headingDeg = u.headingDeg;
    side.entranceInEach = true;
    side.newspaper = true;
    return side;
}

ElevationView::ElevationView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ElevationView::setSide(const Side& side) {
    m_side = side;
    setAccessibleName(tr("The hive from the side"));
    setAccessibleDescription(spokenOf(side));
    updateGeometry();
    update();
}

/// Of a box: the words beside it have room, and the newspaper's below them.
double ElevationView::high() const {
    const double words = QFontMetricsF(font()).height() * 1.15 +
                         QFontMetricsF(look::lesserFont(font())).height() * (m_side.newspaper ? 3.1 : 2);
    return std::max<double>(kHigh, words);
}

QSize ElevationView::sizeHint() const {
    const double boxes = static_cast<double>(std::max<size_t>(m_side.boxes.size(), 1));
    const double under = 10 + QFontMetricsF(look::lesserFont(font())).height();
    return {320, static_cast<int>(kTop + boxes * (high() + 3) + under)};
}

QSize ElevationView::minimumSizeHint() const { return {240, sizeHint().height()}; }

void ElevationView::paintEvent(QPaintEvent*) {
    if (m_side.boxes.empty()) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing, true);
    const look::Colours c = look::coloursOf(*this);
    const QFont lesser = look::lesserFont(font());
    QFont bold = font();
    bold.setBold(true);
    const double boxHigh = high();
    double bottom = kTop + static_cast<double>(m_side.boxes.size()) * (boxHigh + 3) - 3;
    p.fillRect(QRectF(2, bottom + 1, kWide + 20, 5), c.ink); // the floor
    p.setFont(lesser);
    p.setPen(c.quiet);
    p.drawText(QPointF(12, bottom + 8 + QFontMetricsF(lesser).ascent()), entranceWords(m_side));
    for (size_t i = 0; i < m_side.boxes.size(); ++i) {
        const QRectF box(12, bottom - boxHigh, kWide, boxHigh);
        paintBox(p, box, m_side.boxes[i], c);
        if (i == 0 || m_side.entranceInEach) paintEntrance(p, box, m_side.headingDeg, c);
        const double x = box.right() + 16;
        const double line = QFontMetricsF(bold).height();
        p.setFont(bold);
        p.setPen(c.ink);
        p.drawText(QPointF(x, box.top() + line * 0.9), m_side.boxes[i].title);
        p.setFont(lesser);
        p.setPen(c.quiet);
        p.drawText(QRectF(x, box.top() + line * 1.15, width() - x, boxHigh), Qt::AlignLeft | Qt::AlignTop,
                   wordsOf(m_side.boxes[i]));
        if (i == 0 && m_side.newspaper && m_side.boxes.size() > 1) {
            p.setPen(QPen(c.planned, 2, Qt::DashLine));
            p.drawLine(QPointF(4, box.top() - 1.5), QPointF(box.right() + 10, box.top() - 1.5));
            p.setPen(c.planned);
            p.drawText(QPointF(x, box.top() - 2), tr("newspaper"));
        }
        bottom -= boxHigh + 3;
        if (i + 1 == m_side.boxes.size()) paintRoof(p, box, c);
    }
    if (m_side.queen) paintQueen(p, QPointF(20, 10), m_side, lesser, c);
}

} // namespace ui::card
