#pragma once

#include "ui/plan/hive_shape.h"
#include "ui/plan/rect_grid.h"
#include "ui/plan/scene.h"

#include <QFont>
#include <QPointF>
#include <QRectF>
#include <QStaticText>

#include <array>
#include <optional>
#include <vector>

// Where everything of a scene is drawn at one zoom, in pixels from the yard's origin: x right (east), y down (south).
// Scrolling only moves the whole of it.

namespace ui::plan {

/// What is drawn of a hive, by its size on the screen.
enum class Detail { Combs, Bar, Dot };

/// How a strength is written: "5.25 frames", in two lines where it is long, or "5.25" alone.
enum class LineForm { Whole, Wrapped, Brief };

struct HivePlace {
    QPointF centre;
    QSizeF size;  ///< drawn, across and along the combs
    QRectF box;   ///< bounds of the turned outline
    QRectF body;  ///< and of its entrance and second box
    QRectF label; ///< empty: hidden, there was no room
    QRectF line;
    LineForm lineForm = LineForm::Whole;
    QRectF badge;         ///< hold letters
    bool badgeOn = false; ///< there was no room beside it: the first letter stands on the hive itself
    QRectF laying;
    QRectF drop;
};

/// A curve from one hive's edge to another's, as cubic pieces: from, (control, control, to) again and again.
struct Arc {
    std::vector<QPointF> points;
    QPointF sign;            ///< the middle of its number, on the curve
    QRectF metres;           ///< empty: hidden
    bool signHidden = false; ///< there was no room for the number
};

struct Layout {
    double pixelsPerMetre = 60;
    Detail detail = Detail::Combs;
    std::vector<HivePlace> hives;
    std::vector<Arc> unions;
    std::vector<Arc> shakes;
    QRectF bounds;           ///< of all that is drawn
    bool textsYield = false; ///< labels make room for arcs, not arcs for labels
    std::optional<size_t> chosen;
    QRectF within; ///< where arcs must stay; empty: anywhere
};

/// The sizes and cached shapes of a scene's texts in one font; made once a scene.
class Texts {
public:
    Texts(const Scene& scene, const QFont& font);
    const QFont& labelFont() const { return m_labelFont; }
    const QFont& lineFont() const { return m_lineFont; }
    const QFont& badgeFont() const { return m_badgeFont; }
    const QStaticText& label(size_t hive) const { return m_labels[hive]; }
    QSizeF labelSize(size_t hive) const { return m_labelSizes[hive]; }
    /// Empty where it has no such form.
    const QStaticText& line(size_t hive, LineForm form) const;
    double lineHeight() const { return m_lineHeight; } ///< of the lesser text
    double width(const QString& lesserText) const;

private:
    QFont m_labelFont, m_lineFont, m_badgeFont;
    double m_lineHeight = 14;
    std::vector<QStaticText> m_labels;
    std::vector<QSizeF> m_labelSizes;
    std::vector<std::array<QString, 3>> m_lineTexts;
    mutable std::vector<std::array<std::optional<QStaticText>, 3>> m_lines; ///< shaped when first asked for
};

/// The zoom, how much larger than life hives are, and the size of the window: many hives are drawn more plainly.
struct View {
    double pixelsPerMetre = 60;
    double magnified = 1;
    QSizeF size{800, 600};
    bool textsYield = false; ///< once hives are drawn as bars or dots
};

/// Places hives, then the letters of holds, labels and lesser text, each only where it touches nothing placed before;
/// `chosen` comes first. Arcs are left empty (see routeArcs). Linear in the number of hives.
Layout layOut(const Scene& scene, const Texts& texts, const View& view, std::optional<size_t> chosen);

/// The detail at which so many hives, each `across` pixels wide, are drawn.
Detail detailOf(double across, double hivesInView);

enum class Obstacles { All, Bodies, Texts };
/// What arcs keep clear of, each grown by `gap`: hives (owner: their position) and texts but strengths (owner: their
/// position + number of hives).
RectGrid obstaclesOf(const Scene& scene, const Layout& layout, double gap, Obstacles which = Obstacles::All);

/// Nearer than `gap` to what is drawn of the hive's body.
bool insideBody(const HiveMark& mark, const HivePlace& place, const QPointF& point, double gap);

/// All that is drawn of the hives: bodies, labels, strengths, letters, feed.
QRectF bodiesOf(const Layout& layout);

/// Where a strength of this size stands: below the label, or above one that stands above its hive.
QRectF lineSpot(const HivePlace& hive, const QSizeF& size);

} // namespace ui::plan
