#include "ui/health/mite_shown.h"
#include "ui/look/words.h"
#include "ui/season/mite_words.h"

#include <QCoreApplication>

#include <set>

namespace ui::health {

namespace rules = core::rules;
namespace calc = core::rules::calc;
using season::oneDecimal;

namespace {

struct Treatments {
    Q_DECLARE_TR_FUNCTIONS(ui::health::Treatments)
};

/// More would be no drawing; said of the rest.
constexpr size_t kMostTreatments = 24;
constexpr size_t kMostSaid = 4;

/// "+0.4", "−6.8"
QString signedText(double value) {
    return (value < 0 ? QString(QChar(0x2212)) : QStringLiteral("+")) + oneDecimal(std::abs(value));
}

QString sideText(const calc::YardMites& side) {
    return side.interval ? QStringLiteral("%1 (%2)").arg(oneDecimal(side.mean), season::rangeText(*side.interval))
                         : oneDecimal(side.mean);
}

QString changeText(const calc::MiteChange& c) {
    if (!c.interval) return signedText(c.change);
    return Treatments::tr("%1 (%2 to %3)")
        .arg(signedText(c.change), signedText(c.interval->low), signedText(c.interval->high));
}

QString saidText(calc::Change said) {
    switch (said) {
    case calc::Change::Fell:
        return Treatments::tr("fewer");
    case calc::Change::Rose:
        return Treatments::tr("more");
    case calc::Change::Open:
        break;
    }
    return Treatments::tr("not decided");
}

/// "22 hives, 8.9 (7.1 to 10.3) in 100 before, 2.1 (1.2 to 3.0) after: change −6.8 (−8.0 to −5.4), fewer"
QString pairText(const calc::MiteChange& c) {
    return Treatments::tr("%1, %2 in 100 before, %3 after: change %4, %5")
        .arg(season::hivesText(c.colonies), sideText(c.before), sideText(c.after), changeText(c),
             c.said == calc::Change::Open ? Treatments::tr("which these washes do not decide") : saidText(c.said));
}

QString daysText(const rules::TreatmentSeen& t) {
    if (!t.daysKnown) return Treatments::tr("its days are not recorded");
    return t.days.last == t.days.first ? Treatments::tr("one day")
                                       : Treatments::tr("to %1").arg(look::dayText(t.days.last));
}

QString treatmentSaid(const core::Snapshot& s, const rules::TreatmentSeen& t) {
    QStringList parts;
    if (t.washes) parts << Treatments::tr("treated: %1").arg(pairText(*t.washes));
    if (t.mixed > 0)
        parts << Treatments::tr("%1 treated otherwise as well between the two washes, left out")
                     .arg(season::hivesText(t.mixed));
    if (t.washes && t.untreated) parts << Treatments::tr("not treated, same days: %1").arg(pairText(*t.untreated));
    if (t.fallen)
        parts << Treatments::tr("natural fall of %1: %2 a day before, %3 after")
                     .arg(season::hivesText(t.fallen->colonies), oneDecimal(t.fallen->before),
                          oneDecimal(t.fallen->after));
    if (t.boardsDuring > 0)
        parts << Treatments::tr("while it worked %1 a day fell, which is no natural fall")
                     .arg(oneDecimal(t.fallenDuring));
    return Treatments::tr("%1, %2, %3 (%4): %5.")
        .arg(look::dayText(t.days.first), s.yard(t.yard).name, t.treatment.product, daysText(t),
             parts.join(QStringLiteral("; ")));
}

bool isSeen(const rules::TreatmentSeen& t) { return t.washes || t.fallen || t.boardsDuring > 0 || t.mixed > 0; }

chart::Point pointOf(int at, const calc::YardMites& side, const calc::MiteChange& c) {
    chart::Point point{at, side.mean, {}, {}, season::hivesText(c.colonies)};
    if (side.interval) point.lower = side.interval->low;
    if (side.interval) point.upper = side.interval->high;
    return point;
}

void addRow(chart::Chart& chart, const core::Snapshot& s, const rules::TreatmentSeen& t, int at) {
    const auto add = [&](const QString& name, const QString& text) {
        season::columnOf(chart, name).cells.emplace_back(at, text);
    };
    add(Treatments::tr("yard"), s.yard(t.yard).name);
    add(Treatments::tr("product"), t.treatment.product);
    add(Treatments::tr("last day"), t.daysKnown ? look::dayText(t.days.last) : look::dash());
    add(Treatments::tr("hives treated"), QString::number(t.treated));
    add(Treatments::tr("washed twice"), QString::number(t.washes->colonies));
    add(Treatments::tr("change in 100"), changeText(*t.washes));
    add(Treatments::tr("says"), saidText(t.washes->said));
    add(Treatments::tr("left out"), QString::number(t.mixed));
    add(Treatments::tr("not treated"), t.untreated ? QString::number(t.untreated->colonies) : QStringLiteral("0"));
    add(Treatments::tr("their change"), t.untreated ? changeText(*t.untreated) : look::dash());
}

chart::Chart treatmentsChart(const season::SeasonDesk& desk, const std::vector<rules::TreatmentSeen>& all) {
    const core::Snapshot& s = desk.reading().snapshot;
    chart::Chart chart;
    chart.title = Treatments::tr("Before and after treatments, %1").arg(desk.where());
    chart.valueTitle = Treatments::tr("mites in 100 bees, 95 % interval");
    chart.unit = Treatments::tr("in 100");
    chart.decimals = 1;
    chart.whereTitle = Treatments::tr("treatment");
    chart.none = Treatments::tr("No treatment of this time has washes before and after it.");
    chart.source =
        Treatments::tr(
            "Own windows, assumptions: the latest wash of the %1 days before, the first one %2 to %3 days after "
            "the last day. Change: the wider of Student's t over the hives and the exact intervals of all "
            "their bees (Newcombe 1998); of a single hive nothing is said while its two intervals meet.")
            .arg(rules::kBeforeTreating)
            .arg(rules::kAfterFirst)
            .arg(rules::kAfterLast);
    chart::Series series[4] = {{Treatments::tr("before"), chart::Kind::Dots, {}},
                               {Treatments::tr("after"), chart::Kind::Dots, {}},
                               {Treatments::tr("not treated, before"), chart::Kind::Dots, {}},
                               {Treatments::tr("not treated, after"), chart::Kind::Dots, {}}};
    for (const rules::TreatmentSeen& t : all) {
        if (!t.washes || chart.names.size() == kMostTreatments) continue;
        const int at = static_cast<int>(chart.names.size());
        chart.names.push_back(desk.yard()
                                  ? look::dayText(t.days.first)
                                  : Treatments::tr("%1, %2").arg(look::dayText(t.days.first), s.yard(t.yard).name));
        series[0].points.push_back(pointOf(at, t.washes->before, *t.washes));
        series[1].points.push_back(pointOf(at, t.washes->after, *t.washes));
        if (t.untreated) {
            series[2].points.push_back(pointOf(at, t.untreated->before, *t.untreated));
            series[3].points.push_back(pointOf(at, t.untreated->after, *t.untreated));
        }
        addRow(chart, s, t, at);
    }
    for (chart::Series& one : series)
        if (!one.points.empty()) chart.series.push_back(std::move(one));
    return chart;
}

} // namespace

season::Part treatmentsPart(season::SeasonDesk& desk, const MiteRows& rows) {
    const core::Snapshot& s = desk.reading().snapshot;
    const auto all = rules::treatmentsSeen(treatmentBook(desk, rows));
    QStringList said;
    size_t shown = 0, seen = 0;
    for (const rules::TreatmentSeen& t : all) {
        if (!isSeen(t)) continue;
        if (++seen > kMostSaid) continue;
        said << treatmentSaid(s, t);
        ++shown;
    }
    if (seen > shown) said << Treatments::tr("%1 earlier ones: see the table (T).").arg(seen - shown);
    if (all.empty())
        said << Treatments::tr("No treatment in this time (antibiotics are none against mites).");
    else if (all.size() > seen)
        said << Treatments::tr("%1 of %2 treatments have no counts of mites before and after them.")
                    .arg(all.size() - seen)
                    .arg(all.size());
    said << Treatments::tr(
        "A change says nothing of its cause: season, brood and flight weigh too. Hives that were not "
        "treated show them best.");
    return {Treatments::tr("Treatments"), treatmentsChart(desk, all), said};
}

} // namespace ui::health
