#include "core/rules/season_queens.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/season/shown.h"

#include <QCoreApplication>

namespace ui::season {

namespace rules = core::rules;

namespace {

struct QueenWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::QueenWords)
};

QString agesText(const rules::QueenAges& ages, core::Day on) {
    const QString day = look::dayText(on);
    if (ages.living == 0) return QueenWords::tr("On %1 no hive lives here.").arg(day);
    const int year = core::toDate(on).year();
    int young = 0, old = 0;
    for (const rules::QueensOfYear& of : ages.years) (year - of.born >= 2 ? old : young) += of.colonies;
    return QueenWords::tr("On %1, of %2: %3 with a queen of this year or the last, %4 with an older one, %5 whose "
                          "queen's year is not recorded, %6 without a queen.")
        .arg(day, hivesText(ages.living))
        .arg(young)
        .arg(old)
        .arg(ages.notRecorded)
        .arg(ages.noQueen);
}

} // namespace

Shown queensShown(SeasonDesk& desk) {
    const auto& s = desk.reading().snapshot;
    const auto ages = rules::queenAges(s, desk.reading().facts, desk.queens(), desk.yard());
    const int year = core::toDate(s.on).year();
    chart::Chart chart;
    chart.title = QueenWords::tr("Queens by the year they were born, %1").arg(desk.where());
    chart.valueTitle = QueenWords::tr("hives");
    chart.unit = QueenWords::tr("hives");
    chart.decimals = 0;
    chart.whereTitle = QueenWords::tr("queen born");
    chart.none = QueenWords::tr("No hive lives here on this day.");
    chart.series.push_back({{}, chart::Kind::Bars, {}});
    const auto add = [&](const QString& name, int hives, const QString& age, const QString& mark) {
        const int at = static_cast<int>(chart.names.size());
        chart.names.push_back(name);
        chart.series.front().points.push_back({at, hives, {}, {}, {}});
        columnOf(chart, QueenWords::tr("age in years")).cells.emplace_back(at, age);
        columnOf(chart, QueenWords::tr("colour of that year")).cells.emplace_back(at, mark);
    };
    if (ages.living > 0) {
        for (const rules::QueensOfYear& of : ages.years)
            add(QString::number(of.born), of.colonies, QString::number(year - of.born), look::queenMark(of.born).name);
        add(QueenWords::tr("not recorded"), ages.notRecorded, {}, {});
        add(QueenWords::tr("no queen"), ages.noQueen, {}, {});
    }
    chart.source =
        QueenWords::tr("Years as they are recorded: of the queen's own record, else of the hive's. No queen: "
                       "none, or laying workers, by the latest visit that tells (rule 4.2). Age: years since "
                       "the year of birth.");
    return {{agesText(ages, s.on)}, {{{}, std::move(chart)}}};
}

} // namespace ui::season
