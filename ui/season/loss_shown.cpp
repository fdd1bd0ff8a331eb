#include "core/report/ledger_table.h"
#include "core/rules/calc/loss.h"
#include "core/rules/season_loss.h"
#include "ui/look/words.h"
#include "ui/season/shown.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::season {

namespace rules = core::rules;

namespace {

struct LossWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::LossWords)
};

QString winterText(const rules::WinterOf& winter, bool bothHalves) {
    const QString year = core::report::winterName(winter.year, winter.southern);
    if (!bothHalves) return year;
    return winter.southern ? LossWords::tr("%1, south").arg(year) : LossWords::tr("%1, north").arg(year);
}

QString percentText(double share) { return numberText(100 * share, 0); }

QString lostText(const rules::calc::ClusteredShare& loss) {
    return LossWords::tr("%1 of %2 at risk").arg(loss.found).arg(loss.of);
}

QString sentenceOf(const rules::WinterOf& winter, const QString& name) {
    if (!winter.over)
        return LossWords::tr("Winter %1 is over on %2; until then it has no figure. So far %3 of %4 died.")
            .arg(name, look::dayText(winter.until))
            .arg(winter.lost)
            .arg(hivesText(winter.atStart));
    if (!winter.loss) return LossWords::tr("Winter %1: no hive was at risk.").arg(name);
    return LossWords::tr("Winter %1 took %2: %3 % (95 % interval %4 to %5 %). United or shaken out in the fall before: "
                         "%6, no losses.")
        .arg(name, lostText(*winter.loss))
        .arg(rules::calc::wholePercent(winter.loss->found, winter.loss->of))
        .arg(percentText(winter.loss->interval.low), percentText(winter.loss->interval.high))
        .arg(winter.givenUpBefore);
}

chart::Chart frame(const QString& title, const QString& where) {
    chart::Chart chart;
    chart.title = title;
    chart.valueTitle = LossWords::tr("% of the hives at risk, 95 % interval");
    chart.unit = QStringLiteral("%");
    chart.decimals = 1;
    chart.whereTitle = where;
    chart.none = LossWords::tr("No winter is over yet.");
    chart.series.push_back({{}, chart::Kind::Dots, {}});
    return chart;
}

void add(chart::Chart& chart, const QString& name, const rules::WinterOf& winter) {
    const int at = static_cast<int>(chart.names.size());
    chart.names.push_back(name);
    const auto& loss = winter.loss;
    chart::Point point{at, {}, {}, {}, loss ? lostText(*loss) : QString()};
    if (loss) {
        point.value = 100 * loss->share();
        point.lower = 100 * loss->interval.low;
        point.upper = 100 * loss->interval.high;
    }
    chart.series.front().points.push_back(std::move(point));
    const auto more = [&](const QString& column, int hives) {
        columnOf(chart, column).cells.emplace_back(at, QString::number(hives));
    };
    more(LossWords::tr("at its start"), winter.atStart);
    more(LossWords::tr("dead or destroyed"), winter.lost);
    more(LossWords::tr("gone otherwise"), winter.givenUp);
    more(LossWords::tr("given up in fall"), winter.givenUpBefore);
}

QString sourceText(bool yardByYard) {
    return (yardByYard ? LossWords::tr("Interval of one yard: exact (Clopper and Pearson).")
                       : LossWords::tr("Interval over yards that differ (van der Zee et al. 2013).")) +
           LossWords::tr(" Lost of those at risk: dead or destroyed (COLOSS BEEBOOK, survey 10.3.2); who was united, "
                         "shaken out, sold or carried away was not at risk. Winter as in the ledger of colonies.");
}

/// The last winter that is over, yard by yard.
chart::Chart byYard(SeasonDesk& desk, const std::vector<rules::WinterOf>& together) {
    const auto last = std::ranges::find_if(together.rbegin(), together.rend(), &rules::WinterOf::over);
    chart::Chart chart = frame(LossWords::tr("Winter loss by yard"), LossWords::tr("yard"));
    chart.source = sourceText(true);
    if (last == together.rend()) return chart;
    chart.title = LossWords::tr("Winter loss by yard, %1").arg(core::report::winterName(last->year, last->southern));
    const auto& s = desk.reading().snapshot;
    for (size_t i = 0; i < s.yards.size(); ++i)
        for (const rules::WinterOf& winter : rules::winters(desk.ledger(), core::YardIx{static_cast<qint32>(i)}))
            if (winter.year == last->year && winter.southern == last->southern) add(chart, s.yards[i].name, winter);
    return chart;
}

} // namespace

Shown lossShown(SeasonDesk& desk) {
    const auto winters = rules::winters(desk.ledger(), desk.yard());
    const bool both = !winters.empty() && winters.front().southern != winters.back().southern;
    chart::Chart chart = frame(LossWords::tr("Winter loss, %1").arg(desk.where()), LossWords::tr("winter"));
    for (const rules::WinterOf& winter : winters)
        if (winter.over) add(chart, winterText(winter, both), winter);
    chart.source = sourceText(desk.yard().has_value());
    Shown shown;
    const size_t told = 2; // the last, and one that is not over
    for (size_t i = winters.size() - std::min(told, winters.size()); i < winters.size(); ++i)
        shown.sentences.prepend(sentenceOf(winters[i], winterText(winters[i], both)));
    if (winters.empty()) shown.sentences << LossWords::tr("No winter is in the book yet.");
    shown.parts.push_back({LossWords::tr("By winter"), std::move(chart)});
    if (!desk.yard() && desk.reading().snapshot.yards.size() > 1)
        shown.parts.push_back({LossWords::tr("By yard"), byYard(desk, winters)});
    return shown;
}

} // namespace ui::season
