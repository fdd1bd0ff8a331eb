#include "ui/chart/chart_layout.h"

#include "ui/time/time_scale.h"

#include <QFontInfo>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace ui::chart {

namespace {

constexpr double kGap = 6;     // between texts and lines
constexpr double kEdge = 10;   // days keep away from the ends of the plot
constexpr int kLeastDays = 28; // of an axis
constexpr int kMostLanes = 3;  // of marks' words
constexpr double kSmall = 420; // narrower than this, marks show their signs alone
constexpr double kWidestName = 0.34;
constexpr double kLoneBar = 40;
constexpr int kPlaces = 10; // along the line of a limit, for its words
constexpr int kParts = 8;   // of a line, where texts look for free ground

QFont inPixels(QFont font) {
    font.setPixelSize(QFontInfo(font).pixelSize());
    return font;
}

/// As look::lesserFont, of a font sized in pixels.
QFont lesserOf(QFont font) {
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(0.87 * font.pixelSize()))));
    return font;
}

struct Extent {
    double least = 0, most = 0;
    bool any = false;
    void take(double v) {
        least = any ? std::min(least, v) : v;
        most = any ? std::max(most, v) : v;
        any = true;
    }
};

class Maker {
public:
    Maker(const Chart& chart, const QSizeF& size, const QFont& font)
        : m_chart(chart), m_font(inPixels(font)), m_lesser(lesserOf(m_font)), m_text(m_font), m_small(m_lesser) {
        m_out.size = size;
        m_out.font = m_font;
        m_out.lesser = m_lesser;
    }

    ChartLayout make() {
        placeHead();
        m_out.empty = isEmpty(m_chart);
        if (m_out.empty) {
            m_out.none = {QRectF(0, m_top, m_out.size.width(), std::max(0.0, m_out.size.height() - m_top)),
                          m_chart.none};
            return std::move(m_out);
        }
        placeFoot();
        settleAcross();
        placeMarks();
        settlePlot();
        placeValueTicks();
        placeWhereTicks();
        placePoints();
        placeThresholds();
        placeNames();
        return std::move(m_out);
    }

private:
    double lane() const { return std::ceil(m_small.height()) + 2; }
    double small(const QString& text) const { return std::ceil(m_small.horizontalAdvance(text)) + 1; }
    double wide() const { return m_out.size.width(); }

    void placeHead() {
        QFont bold = m_font;
        bold.setBold(true);
        const QFontMetricsF title(bold);
        if (!m_chart.title.isEmpty()) {
            m_out.title = {QRectF(0, 0, wide(), title.height()),
                           title.elidedText(m_chart.title, Qt::ElideRight, wide())};
            m_top = title.height() + 2;
        }
        if (m_chart.valueTitle.isEmpty() || isEmpty(m_chart)) return;
        // Beside the title where both have room, else below it.
        const double room = wide() - (m_out.title.text.isEmpty() ? 0 : title.horizontalAdvance(m_out.title.text) + 12);
        const double width = small(m_chart.valueTitle);
        if (!m_out.title.text.isEmpty() && width <= room) {
            m_out.valueTitle = {QRectF(wide() - room, title.ascent() - m_small.ascent(), width, m_small.height()),
                                m_chart.valueTitle};
            m_out.title.box.setRight(wide() - room);
        } else {
            m_out.valueTitle = {QRectF(0, m_top, wide(), m_small.height()),
                                m_small.elidedText(m_chart.valueTitle, Qt::ElideRight, wide())};
            m_top += lane();
        }
        m_top += 2;
    }

    void placeFoot() {
        m_bottom = m_out.size.height();
        if (!m_chart.source.isEmpty() && wide() >= kSmall) {
            const QRectF needed = m_small.boundingRect(QRectF(0, 0, wide(), 1e4), Qt::TextWordWrap, m_chart.source);
            const double high = std::ceil(needed.height()) + 2;
            m_out.source = {QRectF(0, m_bottom - high, wide(), high), m_chart.source};
            m_bottom -= high + kGap;
        }
    }

    void findDays() {
        int first = 0, last = 0;
        bool any = false;
        const auto take = [&](int at) {
            first = any ? std::min(first, at) : at;
            last = any ? std::max(last, at) : at;
            any = true;
        };
        for (const Series& s : m_chart.series)
            for (const Point& p : s.points)
                if (p.value) take(p.at);
        if (m_chart.first) take(m_chart.first->number);
        if (m_chart.last) take(m_chart.last->number);
        for (const Mark& m : m_chart.marks) take(m.from.number);
        if (last - first < kLeastDays) {
            const int more = kLeastDays - (last - first);
            first -= more / 2;
            last += more - more / 2;
        }
        m_scale.setDays({first}, {last});
    }

    void findValues() {
        Extent e;
        for (const Series& s : m_chart.series)
            for (const Point& p : s.points) {
                for (const auto& v : {p.value, p.lower, p.upper})
                    if (v) e.take(*v);
            }
        for (const Threshold& t : m_chart.thresholds) e.take(t.value);
        if (!m_chart.levels.empty()) {
            m_out.axis = {-0.5, static_cast<double>(m_chart.levels.size()) - 0.5, 1};
            return;
        }
        const double high = std::max(20.0, m_bottom - m_top - (m_chart.marks.empty() ? 1 : 2.5) * lane());
        const int steps = std::clamp(static_cast<int>(high / (m_small.height() * 1.9)), 1, 6);
        m_out.axis = valueAxis(e.least, e.most, m_chart.fromZero, steps, m_chart.decimals);
    }

    double namesWide() const {
        if (m_chart.series.size() < 2) return 0;
        double most = 0;
        for (const Series& s : m_chart.series) most = std::max(most, small(s.name));
        return std::min(most, wide() * kWidestName - kSample) + kSample + kGap;
    }

    void settleAcross() {
        findValues();
        double left = 0;
        for (const double v : ticks()) left = std::max(left, small(tickText(v)));
        m_left = left + kGap + 2;
        m_right = wide() - std::max(namesWide(), 4.0);
        if (m_chart.hasNames()) return;
        findDays();
        m_scale.setWidth(std::max(10.0, m_right - m_left), kEdge);
        m_scale.showAll();
    }

    std::vector<double> ticks() const {
        if (m_chart.levels.empty()) return m_out.axis.ticks();
        std::vector<double> out;
        for (size_t i = 0; i < m_chart.levels.size(); ++i) out.push_back(static_cast<double>(i));
        return out;
    }

    QString tickText(double value) const { return valueText(m_chart, value); }

    double xOf(int at) const {
        if (!m_chart.hasNames()) return m_left + m_scale.xOf({at});
        return m_left + (at + 0.5) * (m_right - m_left) / static_cast<double>(m_chart.names.size());
    }

    // Marks: words in lanes above the plot, where they have no room their sign, else nothing (the line stays).
    void placeMarks() {
        if (m_chart.hasNames()) return;
        std::vector<size_t> order(m_chart.marks.size());
        for (size_t i = 0; i < order.size(); ++i) order[i] = i;
        std::ranges::stable_sort(order, {}, [&](size_t i) { return m_chart.marks[i].from; });
        const bool words = wide() >= kSmall;
        std::vector<double> free; // by lane, from where on it is
        for (const size_t i : order) {
            const Mark& m = m_chart.marks[i];
            PlacedMark placed{i, xOf(m.from.number), xOf(m.from.number), {}};
            if (m.to) placed.to = std::min(m_right, xOf(std::max(*m.to, m.from).number));
            if (!(words && placeLabel(placed, m.text, free, kMostLanes)))
                placeLabel(placed, m.sign, free, words ? kMostLanes : 2);
            m_out.marks.push_back(placed);
        }
        m_lanes = free.size();
    }

    bool placeLabel(PlacedMark& placed, const QString& text, std::vector<double>& free, size_t most) const {
        if (text.isEmpty()) return false;
        const double width = small(text);
        const double left = std::min(placed.from + (placed.to > placed.from ? 0 : -3), wide() - width);
        if (width > wide()) return false;
        size_t lane = 0;
        while (lane < free.size() && free[lane] > left) ++lane;
        if (lane >= most) return false;
        if (lane == free.size()) free.push_back(0);
        free[lane] = left + width + kGap;
        placed.label = {QRectF(left, static_cast<double>(lane), width, m_small.height()), text};
        return true;
    }

    void settlePlot() {
        const double top = m_top + std::max(static_cast<double>(m_lanes) * lane() + 4, std::ceil(m_small.height() / 2));
        double bottom = m_bottom - lane() - 2;
        m_where = m_chart.whereTitle;
        if (!m_chart.hasNames() && m_where.isEmpty()) m_where = yearsUnsaid();
        if (!m_where.isEmpty()) bottom -= lane();
        m_out.plot = QRectF(QPointF(m_left, top), QPointF(m_right, std::max(top + 10, bottom)));
        // The first lane lies lowest, next to its line.
        for (PlacedMark& m : m_out.marks)
            if (!m.label.text.isEmpty()) m.label.box.moveTop(top - 3 - (m.label.box.top() + 1) * lane());
    }

    std::vector<time::ScaleMark> dayMarks() const {
        return m_scale.marks([this](const QString& text) { return small(text); });
    }

    /// The year or years, where no tick names one.
    QString yearsUnsaid() const {
        for (const time::ScaleMark& m : dayMarks())
            if (m.year && !m.text.isEmpty()) return {};
        const int from = core::toDate(m_scale.from()).year(), to = core::toDate(m_scale.to()).year();
        return from == to ? QString::number(from) : QStringLiteral("%1–%2").arg(from).arg(to);
    }

    void placeValueTicks() {
        double free = m_out.plot.bottom() + m_small.height(); // upwards
        for (const double v : ticks()) {
            PlacedTick tick;
            tick.at = m_out.yOf(v);
            const QString text = tickText(v);
            const double width = small(text);
            tick.label = {QRectF(m_left - kGap - width, tick.at - m_small.height() / 2, width, m_small.height()), text};
            if (tick.label.box.bottom() > free + 3)
                tick.label.text.clear();
            else
                free = tick.label.box.top();
            m_out.valueTicks.push_back(tick);
        }
    }

    void placeWhereTicks() {
        const double top = m_out.plot.bottom() + 4;
        const auto add = [&](double x, const QString& text, bool strong) {
            const double width = small(text);
            m_out.whereTicks.push_back({x, {QRectF(x - width / 2, top, width, m_small.height()), text}, strong});
        };
        if (m_chart.hasNames()) {
            placeNamedTicks(add);
        } else {
            for (const time::ScaleMark& m : dayMarks()) add(m_left + m.x, m.text, m.year);
        }
        if (!m_where.isEmpty())
            m_out.whereTitle = {QRectF(m_left, top + lane(), m_right - m_left, m_small.height()),
                                m_small.elidedText(m_where, Qt::ElideRight, m_right - m_left)};
    }

    /// Every name, or every second, third, … as there is room.
    template <class Add> void placeNamedTicks(const Add& add) {
        double widest = 1;
        for (const QString& name : m_chart.names) widest = std::max(widest, small(name));
        const double each = (m_right - m_left) / static_cast<double>(m_chart.names.size());
        const bool few = m_chart.names.size() <= 4; // rather shortened than left out
        const size_t every = few ? 1 : static_cast<size_t>(std::max(1.0, std::ceil((widest + kGap) / each)));
        for (size_t i = 0; i < m_chart.names.size(); ++i) {
            const QString& name = m_chart.names[i];
            const QString shown = few ? m_small.elidedText(name, Qt::ElideRight, each - kGap) : name;
            add(xOf(static_cast<int>(i)), i % every == 0 ? shown : QString(), false);
        }
    }

    void placePoints() {
        for (const Series& s : m_chart.series) {
            auto& points = m_out.points.emplace_back();
            auto& runs = m_out.runs.emplace_back();
            bool open = false;
            for (const Point& p : s.points) {
                if (!p.value) {
                    open = false;
                    continue;
                }
                PlacedPoint placed{p.at, QPointF(xOf(p.at), m_out.yOf(*p.value)), 0, 0, p.lower && p.upper};
                if (placed.interval) {
                    placed.lower = m_out.yOf(*p.lower);
                    placed.upper = m_out.yOf(*p.upper);
                }
                points.push_back(placed);
                if (!open) runs.push_back(0);
                ++runs.back();
                open = true;
            }
        }
        placeBars();
        for (const int at : stopsOf(m_chart)) m_out.stops.emplace_back(at, xOf(at));
    }

    /// Beside each other where several series are bars.
    void placeBars() {
        m_out.bars.resize(m_chart.series.size());
        int count = 0;
        for (const Series& s : m_chart.series) count += s.kind == Kind::Bars;
        if (count == 0) return;
        double apart = m_chart.hasNames() ? (m_right - m_left) / static_cast<double>(m_chart.names.size()) : kLoneBar;
        for (size_t i = 0; i < m_chart.series.size(); ++i)
            if (m_chart.series[i].kind == Kind::Bars && !m_chart.hasNames())
                for (size_t k = 1; k < m_out.points[i].size(); ++k)
                    apart = std::min(apart, m_out.points[i][k].where.x() - m_out.points[i][k - 1].where.x());
        const double all = std::clamp(apart * 0.72, 2.0 * count, 64.0);
        const double width = all / count;
        int nth = 0;
        for (size_t i = 0; i < m_chart.series.size(); ++i) {
            if (m_chart.series[i].kind != Kind::Bars) continue;
            for (PlacedPoint& p : m_out.points[i]) {
                const double left = p.where.x() - all / 2 + nth * width;
                const double from = std::max(left, m_left), to = std::min(left + width, m_right);
                m_out.bars[i].push_back(
                    QRectF(QPointF(from, p.where.y()), QPointF(to, m_out.yOf(std::max(0.0, m_out.axis.low))))
                        .normalized());
                p.where.setX((from + to) / 2);
            }
            ++nth;
        }
    }

    /// Where its line is farthest from points and lines: at the left rather than at the right, above rather than below.
    void placeThresholds() {
        for (const Threshold& t : m_chart.thresholds) {
            const double y = m_out.yOf(t.value);
            const QString text = m_small.elidedText(t.text, Qt::ElideRight, m_out.plot.width() - 2 * kGap);
            const double width = small(text), high = m_small.height();
            QRectF best;
            double bestDistance = -1;
            const double room = m_out.plot.width() - 2 * kGap - width;
            for (const double top : {y - high - 1, y + 1})
                for (int place = 0; place <= kPlaces; ++place) {
                    const QRectF box(m_out.plot.left() + kGap + room * place / kPlaces, top, width, high);
                    if (box.top() < m_out.plot.top() || box.bottom() > m_out.plot.bottom()) continue;
                    const double distance = clearance(box);
                    if (distance > bestDistance * 1.3 + 0.5) {
                        bestDistance = distance;
                        best = box;
                    }
                }
            m_out.thresholds.push_back({y, {best, bestDistance < 0 ? QString() : text}, false});
        }
    }

    /// To the nearest point or line, in pixels; 0 over a text that is there already.
    double clearance(const QRectF& box) const {
        for (const PlacedTick& t : m_out.thresholds)
            if (t.label.box.intersects(box)) return 0;
        double least = 1e4;
        const auto take = [&](const QPointF& p) {
            const double dx = std::max({box.left() - p.x(), 0.0, p.x() - box.right()});
            const double dy = std::max({box.top() - p.y(), 0.0, p.y() - box.bottom()});
            least = std::min(least, std::hypot(dx, dy));
        };
        for (const auto& points : m_out.points)
            for (size_t i = 0; i < points.size(); ++i) {
                take(points[i].where);
                for (int part = 0; points[i].interval && part <= kParts; ++part)
                    take({points[i].where.x(), points[i].lower + (points[i].upper - points[i].lower) * part / kParts});
                for (int part = 1; i > 0 && part < kParts; ++part)
                    take(points[i - 1].where + (points[i].where - points[i - 1].where) * part / kParts);
            }
        return least;
    }

    /// At the right, each at the height of its last point; pushed apart.
    void placeNames() {
        m_out.names.resize(m_chart.series.size());
        if (m_chart.series.size() < 2) return;
        std::vector<size_t> order;
        for (size_t i = 0; i < m_chart.series.size(); ++i)
            if (!m_out.points[i].empty()) order.push_back(i);
        const auto wanted = [&](size_t i) { return m_out.points[i].back().where.y(); };
        std::ranges::stable_sort(order, {}, wanted);
        const double high = m_small.height(), left = m_right + kGap + kSample;
        double free = m_out.plot.top() - high / 2;
        for (const size_t i : order) {
            const double top = std::max(free, wanted(i) - high / 2);
            const double width = wide() - left;
            m_out.names[i] = {QRectF(left, top, width, high),
                              m_small.elidedText(m_chart.series[i].name, Qt::ElideRight, width)};
            free = top + high;
        }
        double ceiling = m_out.plot.bottom() + high / 2;
        for (auto i = order.rbegin(); i != order.rend(); ++i) {
            QRectF& box = m_out.names[*i].box;
            box.moveBottom(std::min(box.bottom(), ceiling));
            ceiling = box.top();
        }
    }

    const Chart& m_chart;
    QFont m_font, m_lesser;
    QFontMetricsF m_text, m_small;
    time::TimeScale m_scale;
    ChartLayout m_out;
    double m_top = 0, m_bottom = 0, m_left = 0, m_right = 0;
    size_t m_lanes = 0;
    QString m_where;
};

} // namespace

double ChartLayout::yOf(double value) const {
    return plot.bottom() - (value - axis.low) / (axis.high - axis.low) * plot.height();
}

std::optional<size_t> ChartLayout::stopAt(double x) const {
    if (stops.empty()) return std::nullopt;
    const auto nearest = std::ranges::min_element(stops, {}, [x](const auto& s) { return std::abs(s.second - x); });
    return static_cast<size_t>(nearest - stops.begin());
}

ChartLayout layOut(const Chart& chart, const QSizeF& size, const QFont& font) {
    return Maker(chart, size, font).make();
}

} // namespace ui::chart
