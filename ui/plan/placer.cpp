#include "ui/plan/placer.h"

#include "ui/plan/curve.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <span>

namespace ui::plan {

namespace {

constexpr double kLetterOnHive = 13; // pixels: a smaller letter is not read

class Placer {
public:
    Placer(const Scene& scene, const Texts& texts, Layout& out)
        : m_scene(scene), m_texts(texts), m_out(out), m_taken(out.bounds.adjusted(-40, -40, 40, 40), 48) {
        for (size_t i = 0; i < out.hives.size(); ++i) insertBody(i);
    }

    void placeAll() {
        const std::vector<size_t> order = byImportance();
        for (size_t i : order) placeBadge(i);
        if (m_out.detail == Detail::Dot && m_out.textsYield) { // a label here and there would say nothing
            if (m_out.chosen && *m_out.chosen < m_out.hives.size()) placeLabel(*m_out.chosen);
            return;
        }
        for (size_t i : order) placeLabel(i);
        if (m_out.detail == Detail::Dot) return;
        for (size_t i : order) placeDrop(i);
        for (size_t i : order)
            if (!m_out.textsYield || m_out.chosen == i) placeLine(i); // far away few would find room
    }

    void moveCrossed() {
        RectGrid arcs(m_out.bounds.adjusted(-60, -60, 60, 60), 24);
        for (const std::vector<Arc>* all : {&m_out.unions, &m_out.shakes})
            for (const Arc& arc : *all)
                eachStep(arc.points, [&](const QRectF& r) {
                    arcs.insert(r, 0);
                    m_taken.insert(r, -2);
                });
        std::vector<size_t> badges, labels, drops;
        for (size_t i = 0; i < m_out.hives.size(); ++i) {
            HivePlace& h = m_out.hives[i];
            const auto crossed = [&](const QRectF& r) { return !r.isEmpty() && !arcs.free(r); };
            if (crossed(h.badge) || crossed(h.laying)) h.badge = h.laying = {}, badges.push_back(i);
            if (crossed(h.label)) h.label = h.line = {}, labels.push_back(i);
            if (crossed(h.drop)) h.drop = {}, drops.push_back(i);
        }
        for (size_t i = 0; i < m_out.hives.size(); ++i) insertTexts(i);
        for (size_t i : badges) placeBadge(i);
        for (size_t i : labels) placeLabel(i);
        for (size_t i : drops) placeDrop(i);
        for (const HivePlace& h : m_out.hives)
            if (!h.line.isEmpty()) m_taken.insert(h.line, -2);
        for (size_t i : labels) placeLine(i);
    }

private:
    void insertTexts(size_t i) {
        const HivePlace& h = m_out.hives[i];
        for (const QRectF& r : {h.badge, h.laying, h.label, h.drop})
            if (!r.isEmpty()) m_taken.insert(r, owner(i));
    }

    static int owner(size_t hive) { return static_cast<int>(hive); }

    void insertBody(size_t i) {
        const double gap = m_out.detail == Detail::Dot ? 0.5 : 3;
        const HivePlace& h = m_out.hives[i];
        const auto add = [&](const QRectF& r) { m_taken.insert(r.adjusted(-gap, -gap, gap, gap), owner(i)); };
        if (m_out.detail != Detail::Combs) return add(h.body);
        const HiveMark& m = m_scene.hives[i];
        for (const QPolygonF& part : bodyShapes(h.centre, h.size, m.headingDeg, m.boxes)) eachStrip(part, add);
    }

    std::vector<size_t> byImportance() const {
        std::vector<int> weight(m_scene.hives.size(), 0);
        for (size_t i = 0; i < weight.size(); ++i) weight[i] = m_scene.hives[i].held() ? 2 : 0;
        for (const UnionMark& u : m_scene.unions) weight[u.moved] = weight[u.host] = 3;
        for (const ShakeMark& s : m_scene.shakes) weight[s.colony] = std::max(weight[s.colony], 1);
        if (m_out.chosen && *m_out.chosen < weight.size()) weight[*m_out.chosen] = 9;
        std::vector<size_t> order(weight.size());
        std::iota(order.begin(), order.end(), size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) { return weight[a] > weight[b]; });
        return order;
    }

    /// Takes the first of `spots` that is free, else none.
    QRectF take(size_t hive, std::span<const QRectF> spots) {
        for (const QRectF& spot : spots)
            if (m_taken.free(spot)) {
                m_taken.insert(spot, owner(hive));
                return spot;
            }
        return {};
    }

    /// Around the hive as near as it is free, beginning at the upper right.
    QRectF takeAround(size_t i, const QSizeF& size) {
        const HivePlace& h = m_out.hives[i];
        static constexpr QPointF kWays[] = {{1, -1}, {-1, -1}, {1, -0.4}, {-1, -0.4}, {0, -1}, {1, 0.5}, {-1, 0.5}};
        static constexpr QPointF kAbove[] = {{0, -1}}; // amid many it would seem another hive's
        const double most = std::hypot(h.body.width(), h.body.height()) / 2 + size.width();
        const std::vector<QPointF> others = near(i, 3 * most);
        for (const QPointF& way : m_out.textsYield ? std::span<const QPointF>(kAbove) : kWays)
            for (double out = h.size.width() / 3; out < most; out += 2) {
                const QPointF at = h.centre + way * out;
                const QRectF spot(at - QPointF(size.width() / 2, size.height() / 2), size);
                const auto nearer = [&](const QPointF& other) { return apart(at, other) < apart(at, h.centre); };
                if (std::ranges::any_of(others, nearer) || !m_taken.free(spot)) continue; // not another hive's letter
                m_taken.insert(spot, owner(i));
                return spot;
            }
        return {};
    }

    static double apart(const QPointF& a, const QPointF& b) { return std::hypot(a.x() - b.x(), a.y() - b.y()); }

    /// The middles of other hives within `reach` pixels.
    std::vector<QPointF> near(size_t i, double reach) const {
        std::vector<QPointF> out;
        for (size_t j = 0; j < m_out.hives.size(); ++j)
            if (j != i && apart(m_out.hives[j].centre, m_out.hives[i].centre) < reach)
                out.push_back(m_out.hives[j].centre);
        return out;
    }

    void placeBadge(size_t i) {
        const HiveMark& m = m_scene.hives[i];
        HivePlace& h = m_out.hives[i];
        h.badgeOn = false;
        const double side = m_texts.lineHeight() + 4;
        const double wide = side + (static_cast<double>(m.holdLetters.size()) - 1) * side * 0.62;
        if (m.held() && m_out.detail != Detail::Dot) h.badge = takeAround(i, QSizeF(wide, side));
        if (m.held() && h.badge.isEmpty()) placeOnHive(i);
        if (m.layingWorkers && m_out.detail != Detail::Dot) h.laying = takeAround(i, QSizeF(side, side));
    }

    /// The first letter alone, on the hive itself, where that covers no other hive.
    void placeOnHive(size_t i) {
        HivePlace& h = m_out.hives[i];
        const double half = std::clamp(h.size.width() / 2, kLetterOnHive / 2, m_texts.lineHeight() / 2);
        const QRectF spot = around(h.centre, half);
        h.badgeOn = m_taken.free(spot, owner(i));
        if (!h.badgeOn) return;
        h.badge = spot;
        m_taken.insert(spot, owner(i));
    }

    void placeLabel(size_t i) {
        HivePlace& h = m_out.hives[i];
        const QSizeF size = m_texts.labelSize(i);
        const double x = h.centre.x() - size.width() / 2;
        const double gap = m_out.detail == Detail::Combs ? 7 : 4;
        const QRectF below(QPointF(x, h.body.bottom() + gap), size);
        const QRectF above(QPointF(x, h.body.top() - gap - size.height()), size);
        const QRectF right(QPointF(h.body.right() + gap, h.centre.y() - size.height() / 2), size);
        const QRectF left(QPointF(h.body.left() - gap - size.width(), right.top()), size);
        std::vector<QRectF> spots{below};
        if (m_out.detail != Detail::Dot) spots.insert(spots.end(), {above, right, left});
        h.label = take(i, spots);
        if (h.label.isEmpty() && m_out.detail == Detail::Combs) {
            addCloser(spots, i, size);
            h.label = take(i, spots);
        }
        if (!h.label.isEmpty() || m_out.chosen != i) return;
        h.label = below;
        m_taken.insert(below, owner(i));
    }

    /// Nearer to the hive, and a little to either side: a label never gives way while combs are drawn.
    void addCloser(std::vector<QRectF>& spots, size_t i, const QSizeF& size) const {
        const HivePlace& h = m_out.hives[i];
        for (const double gap : {3.5, 9.0, 16.0})
            for (const double aside : {0.0, -0.3, 0.3, -0.6, 0.6, -0.9, 0.9}) {
                const double x = h.centre.x() + aside * (h.body.width() + size.width()) / 2 - size.width() / 2;
                const double y = h.centre.y() + aside * (h.body.height() + size.height()) / 2 - size.height() / 2;
                spots.emplace_back(QPointF(x, h.body.bottom() + gap), size);
                spots.emplace_back(QPointF(x, h.body.top() - gap - size.height()), size);
                spots.emplace_back(QPointF(h.body.right() + gap, y), size);
                spots.emplace_back(QPointF(h.body.left() - gap - size.width(), y), size);
            }
    }

    void placeDrop(size_t i) {
        const HiveMark& m = m_scene.hives[i];
        HivePlace& h = m_out.hives[i];
        if (m.feedHalfLitres <= 0) return;
        const double wide = std::max(22.0, m_texts.width(QStringLiteral("%1.5 L").arg(m.feedHalfLitres / 2)));
        const QSizeF size(wide, 18 + m_texts.lineHeight());
        const double y = h.centre.y() - size.height() / 2 + 4;
        std::vector<QRectF> spots;
        for (const double down : {0.0, -0.35, 0.35})
            for (const double gap : {6.0, 3.5}) {
                const double at = y + down * h.body.height();
                spots.emplace_back(QPointF(h.body.right() + gap, at), size);
                spots.emplace_back(QPointF(h.body.left() - gap - size.width(), at), size);
            }
        h.drop = take(i, spots);
    }

    void placeLine(size_t i) {
        HivePlace& h = m_out.hives[i];
        if (h.label.isEmpty()) return;
        for (const LineForm form : {LineForm::Whole, LineForm::Wrapped, LineForm::Brief}) {
            if (m_texts.line(i, form).text().isEmpty()) continue;
            const QRectF spot = lineSpot(h, m_texts.line(i, form).size());
            if (!m_taken.free(spot.adjusted(-2, 0.01, 2, 0))) continue;
            h.line = spot;
            h.lineForm = form;
            m_taken.insert(spot, owner(i));
            return;
        }
    }

    const Scene& m_scene;
    const Texts& m_texts;
    Layout& m_out;
    RectGrid m_taken;
};

} // namespace

QRectF lineSpot(const HivePlace& h, const QSizeF& size) {
    const bool above = h.label.bottom() < h.centre.y();
    const double y = above ? h.label.top() - size.height() : h.label.bottom();
    return {QPointF(h.label.center().x() - size.width() / 2, y), size};
}

void placeTexts(const Scene& scene, const Texts& texts, Layout& layout) { Placer(scene, texts, layout).placeAll(); }

void moveTexts(const Scene& scene, const Texts& texts, Layout& layout) { Placer(scene, texts, layout).moveCrossed(); }

} // namespace ui::plan
