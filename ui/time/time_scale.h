#pragma once

#include "core/base/day.h"

#include <QString>

#include <functional>
#include <optional>
#include <vector>

namespace ui::time {

/// A line across the strip, and what is written below it (empty: nothing).
struct ScaleMark {
    double x = 0;
    QString text;
    bool year = false; ///< a year begins
};

/// Which days a strip of some width shows: zoomed and scrolled between the first day and the last. A day lies in the
/// middle of its room.
class TimeScale {
public:
    /// The days that can be shown; what is in view stays as far as it can.
    void setDays(core::Day first, core::Day last);
    /// In pixels, and free at either end.
    void setWidth(double width, double margin);
    core::Day first() const { return m_first; }
    core::Day last() const { return m_last; }

    double xOf(core::Day day) const;
    /// The nearest; never outside of first and last.
    core::Day dayAt(double x) const;
    double pixelsPerDay() const { return m_room / m_days; }
    core::Day from() const; ///< in view
    core::Day to() const;

    void showAll();
    /// `days` of them, so that `in` is in view; towards its end where there is room.
    void showDays(int days, core::Day in);
    void zoomBy(double factor, double at);
    void scrollBy(double pixels);
    void bringIntoView(core::Day day);

    /// Days, months, quarters or years, whichever are the finest that leave their texts room; no text over another.
    std::vector<ScaleMark> marks(const std::function<double(const QString&)>& widthOf) const;

private:
    double allDays() const { return m_last - m_first + 1; }
    void keepInside();

    core::Day m_first, m_last;
    double m_left = 0; ///< at the left end, in days after m_first
    double m_days = 1; ///< in view
    double m_room = 1;
    double m_margin = 0;
};

} // namespace ui::time
