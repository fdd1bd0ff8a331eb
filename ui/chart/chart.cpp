#include "ui/chart/chart.h"

#include "ui/look/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <set>

namespace ui::chart {

namespace {

struct ChartWords {
    Q_DECLARE_TR_FUNCTIONS(ui::chart::ChartWords)
};

QString pointText(const Chart& chart, const Point& p) {
    if (!p.value) return ChartWords::tr("not recorded");
    QString text = unitText(chart, *p.value);
    if (p.lower && p.upper)
        text += ChartWords::tr(" (%1 to %2)").arg(valueText(chart, *p.lower), valueText(chart, *p.upper));
    if (!p.note.isEmpty()) text += QStringLiteral(", ") + p.note;
    return text;
}

/// "12 times from 1 May 2026 to 3 Sep 2026, last eggs seen."
QString levelsText(const Chart& chart, const Series& s) {
    if (s.points.empty()) return ChartWords::tr("nothing recorded.");
    const Point& last = s.points.back();
    return ChartWords::tr("%1 times from %2 to %3, last %4.")
        .arg(QString::number(s.points.size()), whereText(chart, s.points.front().at), whereText(chart, last.at),
             last.value ? valueText(chart, *last.value) : ChartWords::tr("not recorded"));
}

/// "Top: 8 values from 1 May 2026 to 3 Sep 2026, least 2, most 9.5, last 4."
QString seriesText(const Chart& chart, const Series& s) {
    if (!chart.levels.empty()) return levelsText(chart, s);
    const Point *least = nullptr, *most = nullptr, *first = nullptr, *last = nullptr;
    int count = 0;
    for (const Point& p : s.points) {
        if (!p.value) continue;
        ++count;
        if (!first) first = &p;
        last = &p;
        if (!least || *p.value < *least->value) least = &p;
        if (!most || *p.value > *most->value) most = &p;
    }
    const QString name = s.name.isEmpty() || chart.series.size() == 1 ? QString() : s.name + QStringLiteral(": ");
    if (!first) return name + ChartWords::tr("nothing recorded.");
    if (count == 1)
        return name +
               ChartWords::tr("one value, %1 on %2.").arg(unitText(chart, *first->value), whereText(chart, first->at));
    return name + ChartWords::tr("%1 values from %2 to %3, least %4, most %5, last %6.")
                      .arg(QString::number(count), whereText(chart, first->at), whereText(chart, last->at),
                           unitText(chart, *least->value), unitText(chart, *most->value),
                           unitText(chart, *last->value));
}

} // namespace

bool isEmpty(const Chart& chart) {
    return std::ranges::none_of(chart.series, [](const Series& s) {
        return std::ranges::any_of(s.points, [](const Point& p) { return p.value.has_value(); });
    });
}

bool hasIntervals(const Series& series) {
    return std::ranges::any_of(series.points, [](const Point& p) { return p.lower && p.upper; });
}

QString valueText(const Chart& chart, double value) {
    if (!chart.levels.empty()) {
        const auto level = static_cast<qsizetype>(std::lround(value));
        return level >= 0 && level < static_cast<qsizetype>(chart.levels.size())
                   ? chart.levels[static_cast<size_t>(level)]
                   : QString();
    }
    QString text = QString::number(value, 'f', chart.decimals);
    if (text.contains(u'.')) {
        while (text.endsWith(u'0')) text.chop(1);
        if (text.endsWith(u'.')) text.chop(1);
    }
    return text == QStringLiteral("-0") ? QStringLiteral("0") : text;
}

QString unitText(const Chart& chart, double value) {
    const QString number = valueText(chart, value);
    return chart.unit.isEmpty() ? number : number + u' ' + chart.unit;
}

QString whereText(const Chart& chart, int at) {
    if (!chart.hasNames()) return look::dayText(core::Day{at});
    return at >= 0 && static_cast<size_t>(at) < chart.names.size() ? chart.names[static_cast<size_t>(at)] : QString();
}

QString markText(const Mark& mark) {
    if (!mark.to || *mark.to <= mark.from) return mark.text;
    return ChartWords::tr("%1, %2 to %3").arg(mark.text, look::dayText(mark.from), look::dayText(*mark.to));
}

std::vector<int> stopsOf(const Chart& chart) {
    std::set<int> stops;
    for (const Series& s : chart.series)
        for (const Point& p : s.points) stops.insert(p.at);
    if (!chart.hasNames())
        for (const Mark& m : chart.marks) stops.insert(m.from.number);
    return {stops.begin(), stops.end()};
}

QString spoken(const Chart& chart, int at) {
    QStringList parts;
    for (const Series& s : chart.series) {
        const auto p = std::ranges::find(s.points, at, &Point::at);
        if (p == s.points.end()) continue;
        const bool named = chart.series.size() > 1 && !s.name.isEmpty();
        parts << (named ? ChartWords::tr("%1 %2").arg(s.name, pointText(chart, *p)) : pointText(chart, *p));
    }
    if (!chart.hasNames())
        for (const Mark& m : chart.marks)
            if (m.from.number == at || (m.to && m.from.number <= at && at <= m.to->number)) parts << markText(m);
    return ChartWords::tr("%1: %2").arg(whereText(chart, at), parts.join(QStringLiteral(" · ")));
}

QString summary(const Chart& chart) {
    if (isEmpty(chart)) return chart.none;
    QStringList parts;
    for (const Series& s : chart.series) parts << seriesText(chart, s);
    for (const Threshold& t : chart.thresholds)
        parts << ChartWords::tr("A line at %1: %2.").arg(unitText(chart, t.value), t.text);
    if (!chart.marks.empty()) parts << ChartWords::tr("Marks: %1.").arg(chart.marks.size());
    return parts.join(u' ');
}

} // namespace ui::chart
