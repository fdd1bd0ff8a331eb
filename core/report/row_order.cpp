#include "core/report/row_order.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace core::report {

namespace {

constexpr size_t kMostSifted = 200; ///< rows; beyond that only neighbours are swapped

bool there(const TimeRow& row, Day day) { return row.from <= day && day <= row.until; }

/// Rows in an order, and the strokes of each.
class Rows {
public:
    Rows(std::span<const TimeRow> rows, std::span<const TimeStroke> strokes)
        : m_rows(rows), m_strokes(strokes), m_order(rows.size()), m_place(rows.size()), m_of(rows.size()) {
        std::iota(m_order.begin(), m_order.end(), size_t{0});
        std::iota(m_place.begin(), m_place.end(), size_t{0});
        for (size_t i = 0; i < strokes.size(); ++i) {
            m_of[strokes[i].a].push_back(i);
            m_of[strokes[i].b].push_back(i);
        }
    }

    size_t count() const { return m_order.size(); }
    size_t placeOf(size_t row) const { return m_place[row]; }
    std::vector<size_t> order() && { return std::move(m_order); }

    /// Swaps the row at `place` with the one below it; how many crossings are more.
    int swapDown(size_t place) {
        const size_t upper = m_order[place], lower = m_order[place + 1];
        const int more = change(upper, lower, true) + change(lower, upper, false);
        std::swap(m_order[place], m_order[place + 1]);
        std::swap(m_place[upper], m_place[lower]);
        return more;
    }

    bool swapWhereBetter() {
        bool better = false;
        for (size_t place = 0; place + 1 < count(); ++place) {
            if (swapDown(place) < 0)
                better = true;
            else
                swapDown(place); // back
        }
        return better;
    }

    /// Takes the row through all places and leaves it in the best (of equals the one it had).
    bool sift(size_t row) {
        const size_t had = m_place[row];
        int now = 0;
        while (m_place[row] > 0) now += swapDown(m_place[row] - 1);
        size_t best = had;
        int least = 0;
        for (size_t place = 0;; ++place) {
            if (now < least) {
                least = now;
                best = place;
            }
            if (place + 1 == count()) break;
            now += swapDown(place);
        }
        while (m_place[row] > best) swapDown(m_place[row] - 1);
        return least < 0;
    }

private:
    /// Crossings of `other`'s line by strokes of `row`, more by their swap. `down`: the row goes below the other.
    int change(size_t row, size_t other, bool down) const {
        int more = 0;
        for (const size_t i : m_of[row]) {
            const TimeStroke& s = m_strokes[i];
            const size_t end = s.a == row ? s.b : s.a;
            if (end == other || !there(m_rows[other], s.day)) continue;
            const bool leadsDown = m_place[end] > m_place[row];
            more += leadsDown == down ? -1 : 1;
        }
        return more;
    }

    std::span<const TimeRow> m_rows;
    std::span<const TimeStroke> m_strokes;
    std::vector<size_t> m_order; ///< row by place
    std::vector<size_t> m_place; ///< place by row
    std::vector<std::vector<size_t>> m_of;
};

} // namespace

int crossingsOf(std::span<const TimeRow> rows, std::span<const TimeStroke> strokes, std::span<const size_t> order) {
    std::vector<size_t> place(rows.size());
    for (size_t i = 0; i < order.size(); ++i) place[order[i]] = i;
    int crossings = 0;
    for (const TimeStroke& s : strokes) {
        const auto [upper, lower] = std::minmax(place[s.a], place[s.b]);
        for (size_t i = upper + 1; i < lower; ++i) crossings += there(rows[order[i]], s.day);
    }
    return crossings;
}

std::vector<size_t> quietOrder(std::span<const TimeRow> rows, std::span<const TimeStroke> strokes) {
    Rows drawn(rows, strokes);
    for (bool better = drawn.count() <= kMostSifted; better;) {
        better = false;
        for (size_t row = 0; row < drawn.count(); ++row) better = drawn.sift(row) || better;
    }
    while (drawn.swapWhereBetter()) {
    }
    return std::move(drawn).order();
}

} // namespace core::report
