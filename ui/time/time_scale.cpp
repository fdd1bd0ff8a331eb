#include "ui/time/time_scale.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace ui::time {

namespace {

constexpr double kLeastDays = 28; // in view
constexpr double kTextGap = 12;   // pixels between two texts
constexpr double kDaysAMonth = 30.44;

/// Marks so many months apart, or within each month on its 1st, 8th, 15th and 22nd.
struct Step {
    int months = 1; ///< 0: weeks of a month
    double days = kDaysAMonth;
};
constexpr Step kSteps[] = {{0, 7},    {1, 28},    {3, 90},     {6, 181},    {12, 365},
                           {24, 730}, {60, 1826}, {120, 3652}, {240, 7305}, {600, 18262}};

QString textOf(const QDate& date, const Step& step) {
    if (step.months > 0 && date.month() == 1) return QString::number(date.year());
    if (step.months >= 12) return QString::number(date.year());
    return QLocale().toString(date, step.months == 0 ? QStringLiteral("d MMM") : QStringLiteral("MMM"));
}

QDate firstOf(const QDate& from, const Step& step) {
    if (step.months == 0) return QDate(from.year(), from.month(), 1);
    if (step.months >= 12) {
        const int years = step.months / 12;
        return QDate(std::max(1, from.year() / years * years), 1, 1);
    }
    return QDate(from.year(), (from.month() - 1) / step.months * step.months + 1, 1);
}

QDate nextOf(const QDate& date, const Step& step) {
    if (step.months > 0) return date.addMonths(step.months);
    return date.day() < 22 ? date.addDays(7) : QDate(date.year(), date.month(), 1).addMonths(1);
}

/// Where the text of a step is widest: months by their own names, days by two figures.
double widest(const Step& step, const std::function<double(const QString&)>& widthOf) {
    double most = widthOf(QStringLiteral("2000"));
    if (step.months >= 12) return most;
    for (int month = 1; month <= 12; ++month) most = std::max(most, widthOf(textOf(QDate(2001, month, 22), step)));
    return most;
}

} // namespace

void TimeScale::setDays(core::Day first, core::Day last) {
    m_left += m_first - first;
    m_first = first;
    m_last = std::max(last, first + 1);
    keepInside();
}

void TimeScale::setWidth(double width, double margin) {
    m_margin = margin;
    m_room = std::max(1.0, width - 2 * margin);
    keepInside();
}

void TimeScale::keepInside() {
    m_days = std::clamp(m_days, std::min(kLeastDays, allDays()), allDays());
    m_left = std::clamp(m_left, 0.0, allDays() - m_days);
}

double TimeScale::xOf(core::Day day) const { return m_margin + (day - m_first + 0.5 - m_left) * pixelsPerDay(); }

core::Day TimeScale::dayAt(double x) const {
    const double day = std::floor((x - m_margin) / pixelsPerDay() + m_left);
    return m_first + static_cast<int>(std::clamp(day, 0.0, allDays() - 1));
}

core::Day TimeScale::from() const { return dayAt(m_margin); }
core::Day TimeScale::to() const { return dayAt(m_margin + m_room - 0.01); }

void TimeScale::showAll() {
    m_left = 0;
    m_days = allDays();
    keepInside();
}

void TimeScale::showDays(int days, core::Day in) {
    m_days = days;
    keepInside();
    m_left = in - m_first + 1 + std::min(m_days / 12, 14.0) - m_days;
    keepInside();
}

void TimeScale::zoomBy(double factor, double at) {
    const double share = (at - m_margin) / m_room;
    const double day = m_left + share * m_days;
    m_days /= factor;
    m_days = std::clamp(m_days, std::min(kLeastDays, allDays()), allDays());
    m_left = day - share * m_days;
    keepInside();
}

void TimeScale::scrollBy(double pixels) {
    m_left += pixels / pixelsPerDay();
    keepInside();
}

void TimeScale::bringIntoView(core::Day day) {
    const double at = day - m_first;
    const double edge = std::min(m_days / 10, 10.0);
    if (at < m_left + edge) m_left = at - edge;
    if (at + 1 > m_left + m_days - edge) m_left = at + 1 - m_days + edge;
    keepInside();
}

std::vector<ScaleMark> TimeScale::marks(const std::function<double(const QString&)>& widthOf) const {
    const Step* step = std::ranges::find_if(
        kSteps, [&](const Step& s) { return s.days * pixelsPerDay() >= widest(s, widthOf) + kTextGap; });
    if (step == std::end(kSteps)) --step;
    std::vector<ScaleMark> out;
    double free = -1e9; // from here on nothing is written yet
    const QDate end = core::toDate(to());
    for (QDate date = firstOf(core::toDate(from()), *step); date <= end; date = nextOf(date, *step)) {
        if (core::dayOf(date) < from()) continue;
        ScaleMark mark{xOf(core::dayOf(date)) - pixelsPerDay() / 2, textOf(date, *step),
                       date.month() == 1 && date.day() == 1};
        const double half = widthOf(mark.text) / 2;
        const bool room = mark.x - half >= free && mark.x + half <= m_room + 2 * m_margin && mark.x >= half;
        if (room)
            free = mark.x + half + kTextGap / 2;
        else
            mark.text.clear();
        out.push_back(std::move(mark));
    }
    return out;
}

} // namespace ui::time
