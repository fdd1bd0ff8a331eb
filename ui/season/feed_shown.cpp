#include "core/rules/limits.h"
#include "core/rules/season_feed.h"
#include "ui/look/words.h"
#include "ui/season/shown.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace ui::season {

namespace rules = core::rules;
using core::FeedKind;

namespace {

struct FeedWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::FeedWords)
};

/// Kinds whose sugar no source tells: shown by weight, as they were given.
constexpr FeedKind kByWeight[] = {FeedKind::Fondant, FeedKind::Honey, FeedKind::Pollen, FeedKind::Other};

QString kindText(FeedKind kind) {
    const QString words[] = {FeedWords::tr("syrup"), FeedWords::tr("fondant"), FeedWords::tr("sugar"),
                             FeedWords::tr("honey"), FeedWords::tr("pollen"),  FeedWords::tr("other")};
    return words[static_cast<size_t>(kind)];
}

class Given {
public:
    explicit Given(SeasonDesk& desk)
        : m_desk(desk),
          m_units(desk.reading().snapshot.settings.shown()),
          m_weeks(rules::feedByWeek(desk.book())),
          m_all(rules::feedGiven(desk.book())) {}

    QString sentence() const {
        if (m_all.feedings == 0) return FeedWords::tr("%1: no feed noted.").arg(m_desk.spanText());
        QString text = FeedWords::tr("%1: %2 fed, %3 feedings noted. Sugar in syrup and dry: %4.")
                           .arg(m_desk.spanText(), hivesText(m_all.colonies))
                           .arg(m_all.feedings)
                           .arg(weightText(m_all.sugarKg));
        if (m_all.sugarUnknown > 0)
            text +=
                FeedWords::tr(" Feedings whose sugar is not known, as no mix or weight is recorded: %1; left out, not "
                              "counted as 0.")
                    .arg(m_all.sugarUnknown);
        return text;
    }

    chart::Chart chart() const {
        chart::Chart chart;
        chart.title = FeedWords::tr("Feed given, %1").arg(m_desk.where());
        chart.valueTitle = FeedWords::tr("%1 a week").arg(core::unitSign(m_units.weight));
        chart.unit = core::unitSign(m_units.weight);
        chart.decimals = 1;
        chart.whereTitle = FeedWords::tr("week to");
        chart.first = m_desk.from();
        chart.last = m_desk.day();
        chart.none = FeedWords::tr("No feed noted in this time.");
        addSugar(chart);
        for (const FeedKind kind : kByWeight) addWeighed(chart, kind);
        for (const rules::FeedWeek& week : m_weeks) addColumns(chart, week);
        chart.source = FeedWords::tr("Sugar of syrup by its mix by mass, volumes at 20 °C (CRC Handbook of Chemistry "
                                     "and Physics, sucrose). Weeks without a feeding noted are left out.");
        return chart;
    }

private:
    double shown(double kg) const { return kg / core::kilogramsIn(m_units.weight); }
    QString weightText(double kg) const {
        //: A number and its unit
        return FeedWords::tr("%1 %2").arg(numberText(shown(kg), 1), core::unitSign(m_units.weight));
    }

    void addSugar(chart::Chart& chart) const {
        chart::Series bars{FeedWords::tr("sugar"), chart::Kind::Bars, {}};
        for (const rules::FeedWeek& week : m_weeks) {
            const auto& given = week.given;
            // Where no amount is known there is none to show.
            const bool known = given.sugarKg > 0;
            bars.points.push_back({week.days.last.number,
                                   known ? std::optional(shown(given.sugarKg)) : std::nullopt,
                                   {},
                                   {},
                                   FeedWords::tr("%1 fed").arg(hivesText(given.colonies))});
        }
        chart.series.push_back(std::move(bars));
    }
    void addWeighed(chart::Chart& chart, FeedKind kind) const {
        const auto at = static_cast<size_t>(kind);
        if (m_all.decagrams[at] == 0) return;
        chart::Series bars{kindText(kind), chart::Kind::Bars, {}};
        for (const rules::FeedWeek& week : m_weeks)
            if (const qint64 weight = week.given.decagrams[at]; weight > 0)
                bars.points.push_back({week.days.last.number, shown(static_cast<double>(weight) / 100), {}, {}, {}});
        chart.series.push_back(std::move(bars));
    }
    void addColumns(chart::Chart& chart, const rules::FeedWeek& week) const {
        const auto add = [&](const QString& name, const QString& text) {
            columnOf(chart, name).cells.emplace_back(week.days.last.number, text);
        };
        add(FeedWords::tr("hives fed"), QString::number(week.given.colonies));
        add(FeedWords::tr("feedings"), QString::number(week.given.feedings));
        const auto litres = [&](size_t kind) { return static_cast<double>(week.given.millilitres[kind]) / 1000; };
        for (size_t kind = 0; kind < rules::kFeedKinds; ++kind) {
            if (m_all.millilitres[kind] == 0) continue;
            // Half litres are what a volume is shown by; here twice a thousandth of them.
            const double volume = litres(kind) / (m_units.volume == core::VolumeUnit::Quarts ? kLitresAQuart : 1);
            add(FeedWords::tr("%1, %2").arg(kindText(static_cast<FeedKind>(kind)), core::unitSign(m_units.volume)),
                volume > 0 ? numberText(volume, 1) : QString());
        }
        add(FeedWords::tr("sugar not known"), QString::number(week.given.sugarUnknown));
    }
    static constexpr double kLitresAQuart = 0.946352946;

    SeasonDesk& m_desk;
    core::ShownUnits m_units;
    std::vector<rules::FeedWeek> m_weeks;
    rules::FeedGiven m_all;
};

class Needed {
public:
    explicit Needed(SeasonDesk& desk)
        : m_desk(desk),
          m_s(desk.reading().snapshot),
          m_units(m_s.settings.shown()),
          m_needs(rules::feedNeeds(m_s, desk.reading().facts, desk.reading().plan, desk.yard())) {}

    QString sentence() const {
        const QString day = look::dayText(m_s.on);
        if (!m_needs.asked)
            return FeedWords::tr("On %1 rule 4.12 does not ask for feed: it does from %2 to %3 (settings).")
                .arg(day, rules::limitText(m_s.settings, "season.fall_start", southern()),
                     rules::limitText(m_s.settings, "season.fall_end", southern()));
        const QString weighed =
            FeedWords::tr("%1 of %2 with a valid weight").arg(m_needs.weighed).arg(hivesText(m_needs.living));
        if (m_needs.needs.empty()) return FeedWords::tr("On %1: %2, none of them too light.").arg(day, weighed);
        return FeedWords::tr(
                   "On %1: %2. Still needed: %3 of stores in %4, %5 of 2:1 syrup. Feed given since a hive was "
                   "weighed shows only once it is weighed again.")
            .arg(day, weighed, look::shortWeightOf(m_needs.shortMillionthsKg, m_units.weight),
                 hivesText(static_cast<int>(m_needs.needs.size())), look::feedOf(m_needs.halfLitres, m_units.volume));
    }

    /// Of one yard by hive, of all by yard; what lacks most first.
    chart::Chart chart() const {
        chart::Chart chart;
        chart.title = FeedWords::tr("Feed still needed, %1").arg(m_desk.where());
        chart.valueTitle = FeedWords::tr("%1 of stores that are missing").arg(core::unitSign(m_units.weight));
        chart.unit = core::unitSign(m_units.weight);
        chart.decimals = 1;
        chart.none = m_needs.asked ? FeedWords::tr("No hive that was weighed lacks stores.")
                                   : FeedWords::tr("On this day rule 4.12 does not ask for feed.");
        chart.whereTitle = m_desk.yard() ? FeedWords::tr("hive") : FeedWords::tr("yard");
        chart.series.push_back({{}, chart::Kind::Bars, {}});
        for (const Row& row : rows()) add(chart, row);
        chart.source =
            FeedWords::tr("Rule 4.12. To weigh in one brood box: %1; in two: %2. A weight counts for %3. Stores "
                          "from a litre of syrup: %4.")
                .arg(value("stores.single_kg"), value("stores.double_kg"), value("weigh.max_age_days"),
                     value("syrup.stores_kg_per_l"));
        return chart;
    }

private:
    struct Row {
        QString name;
        int hives = 0;
        qint64 shortBy = 0;
        int halfLitres = 0;
        QString weighed;
    };

    QString value(const char* name) const { return settingText(m_s.settings, name); }
    bool southern() const {
        const auto yard = m_desk.yard();
        return yard && m_s.yard(*yard).southern();
    }

    std::vector<Row> rows() const {
        std::vector<Row> rows;
        std::map<core::YardIx, size_t> of;
        for (const rules::FeedNeed& need : m_needs.needs) {
            size_t at = rows.size();
            if (!m_desk.yard()) at = of.try_emplace(need.yard, at).first->second;
            if (at == rows.size())
                rows.push_back(m_desk.yard() ? Row{hive(need), 0, 0, 0, weighed(need)} : yardRow(need));
            ++rows[at].hives;
            rows[at].shortBy += need.feed->shortMillionthsKg;
            rows[at].halfLitres += need.feed->halfLitres;
        }
        std::ranges::stable_sort(rows, std::ranges::greater(), &Row::shortBy);
        return rows;
    }
    QString hive(const rules::FeedNeed& need) const { return m_s.colony(need.feed->colony).shown; }
    Row yardRow(const rules::FeedNeed& need) const { return {m_s.yard(need.yard).name, 0, 0, 0, {}}; }
    QString weighed(const rules::FeedNeed& need) const {
        return need.weighed ? look::dayText(*need.weighed) : FeedWords::tr("a union of the plan: both");
    }

    void add(chart::Chart& chart, const Row& row) const {
        const int at = static_cast<int>(chart.names.size());
        chart.names.push_back(row.name);
        const double kg = static_cast<double>(row.shortBy) / 1e6;
        chart.series.front().points.push_back({at, kg / core::kilogramsIn(m_units.weight), {}, {}, {}});
        const auto more = [&](const QString& name, const QString& text) {
            columnOf(chart, name).cells.emplace_back(at, text);
        };
        if (!m_desk.yard()) more(FeedWords::tr("hives"), QString::number(row.hives));
        more(FeedWords::tr("2:1 syrup"), look::feedOf(row.halfLitres, m_units.volume));
        if (m_desk.yard()) more(FeedWords::tr("weighed"), row.weighed);
    }

    SeasonDesk& m_desk;
    const core::Snapshot& m_s;
    core::ShownUnits m_units;
    rules::FeedNeeds m_needs;
};

} // namespace

Shown feedShown(SeasonDesk& desk) {
    const Given given(desk);
    const Needed needed(desk);
    return {{given.sentence(), needed.sentence()},
            {{FeedWords::tr("Given"), given.chart()}, {FeedWords::tr("Still needed"), needed.chart()}}};
}

} // namespace ui::season
