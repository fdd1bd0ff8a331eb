#include "core/model/setting_table.h"
#include "core/rules/explain.h"
#include "core/rules/finding_words.h"
#include "core/rules/limits.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include <functional>
#include <ostream>
#include <set>

// Each limit of rules 4.1 to 4.14, setting or fixed number, is named in the reason of a finding that it causes, and the
// words show its value: by default, and as changed. Source of the books: own calculation from the rules' text.

namespace tests::rules {

using namespace core;
using namespace core::rules;

namespace {

/// One finding: its reason and what it says.
struct Told {
    Reason why;
    QString text;
};

Told nothing(const char* what) {
    ADD_FAILURE() << "no " << what;
    return {};
}

template <class T> Told firstOf(const Snapshot& s, const std::vector<T>& findings, const char* what) {
    return findings.empty() ? nothing(what) : Told{findings.front().why, textOf(sentencesOf(s, findings.front()))};
}

using Teller = std::function<Told(const Snapshot&)>;

Teller alone() {
    return [](const Snapshot& s) { return firstOf(s, advise(s, {}).alone, "colony alone"); };
}
Teller fed() {
    return [](const Snapshot& s) { return firstOf(s, advise(s, {}).feed, "feed"); };
}
Teller divided() {
    return [](const Snapshot& s) { return firstOf(s, advise(s, {}).divides, "divide"); };
}
Teller due() {
    return [](const Snapshot& s) { return firstOf(s, advise(s, {}).due, "check due"); };
}
Teller unresolved() {
    return [](const Snapshot& s) {
        const Plan plan = advise(s, {});
        if (plan.unresolved.empty()) return nothing("unresolved colony");
        return Told{plan.unresolved.front().reason, textOf(sentencesOf(s, plan.unresolved.front()))};
    };
}
Teller boxes() {
    return [](const Snapshot& s) {
        const Plan plan = advise(s, {});
        if (plan.boxOrder.empty()) return nothing("order of boxes");
        return Told{plan.boxOrder.front().why, plan.boxOrder.front().because};
    };
}
Teller shaken() {
    return [](const Snapshot& s) {
        const Plan plan = advise(s, {});
        if (plan.shakeOuts.empty()) return nothing("shake-out");
        return Told{plan.shakeOuts.front().why, plan.shakeOuts.front().because};
    };
}
Teller united() {
    return [](const Snapshot& s) {
        const Plan plan = advise(s, {});
        if (plan.unions.empty()) return nothing("union");
        const Union& u = plan.unions.front();
        return Told{u.why, u.because.join(u' ') + u.steps.join(u' ')};
    };
}
Teller held(const char* label, HoldKind kind) {
    return [=](const Snapshot& s) {
        for (const Hold& h : holds(s))
            if (h.kind == kind && s.colony(h.colony).label == QLatin1StringView(label)) return Told{h.why, h.because()};
        return nothing("hold");
    };
}
Teller minded(CautionKind kind) {
    return [=](const Snapshot& s) {
        const Plan plan = advise(s, {});
        for (const ColonyCaution& c : plan.cautions)
            if (c.caution.kind == kind) return Told{c.caution.why, c.caution.because};
        for (const Union& u : plan.unions)
            for (const Caution& c : u.cautions)
                if (c.kind == kind) return Told{c.why, c.because};
        return nothing("caution");
    };
}
Teller barred(const char* rule) {
    return [=](const Snapshot& s) {
        for (const Objection& o : explain(s, named(s, "A"), named(s, "B")).objections)
            if (o.rule == QLatin1StringView(rule)) return Told{o.why, o.because};
        return nothing("objection");
    };
}

// --- books ---

PlanBook strong(Cells more = {}) { return PlanBook().colony("A").bees("A", "9", more); }
PlanBook single(const char* frames, Cells more = {}) { return PlanBook().colony("A").bees("A", frames, more); }
PlanBook pair(const char* a, const char* b, Cells moreA = {}, Cells moreB = {}, Cells colonyA = {}) {
    return PlanBook().colony("A", colonyA).colony("B").bees("A", a, moreA).bees("B", b, moreB);
}
PlanBook doubled(const char* lower, const char* upper, Cells more = {}) {
    more["upper_bees_top"] = upper;
    return PlanBook().colony("A", {{"brood_boxes", "2"}}).bees("A", lower, more);
}
PlanBook queenlessPair(const char* metres) { return pair("3", "4", {{"queen", "none"}}, {}, {{"x_m", metres}}); }
PlanBook checked(const char* date, const char* examined) {
    return PlanBook().unchecked("A").visit("A", date, {{"brood_frames", "7"}, {"brood_checked", examined}});
}
/// S has American foulbrood and gave E frames; S ended, E stands in another yard.
PlanBook contact(bool treated) {
    PlanBook book;
    book.yard("Y").yard("Z");
    book.unchecked("S", {{"ended", "2026-07-16"}, {"end", "destroyed"}}).unchecked("E", {{"yard", "Z"}});
    book.row("results", {{"colony", "S"},
                         {"date", "2026-07-14"},
                         {"disease", "afb"},
                         {"result", "positive"},
                         {"method", "laboratory"},
                         {"by", "l"}});
    book.row("transfers", {{"date", "2026-07-01"}, {"from", "S"}, {"to", "E"}, {"what", "frames"}});
    if (treated)
        book.row(
            "treatments",
            {{"colony", "S"}, {"date", "2026-06-01"}, {"product", "p"}, {"substance", "s"}, {"antibiotic", "yes"}});
    return book.unchecked("B");
}
/// B received brood from A, which showed the sign ten days later.
PlanBook soonAfter(const char* sign) {
    return PlanBook()
        .unchecked("A")
        .unchecked("B")
        .visit("A", "2026-08-20", {{"signs", sign}})
        .row("transfers", {{"date", "2026-08-10"}, {"from", "A"}, {"to", "B"}, {"what", "brood"}});
}
PlanBook mites(const char* day) {
    return PlanBook().unchecked("A").visit("A", day, {{"mites", "30"}, {"mite_sample", "300"}, {"queen", "eggs"}});
}
PlanBook near() {
    PlanBook book;
    book.yard("Y", {{"latitude_deg", "0"}, {"longitude_deg", "0"}});
    book.yard("Z", {{"latitude_deg", "0.008"}, {"longitude_deg", "0"}});
    return book.colony("A").bees("A", "9").unchecked("S", {{"yard", "Z"}}).visit("S", "2026-07-01", {{"signs", "afb"}});
}
PlanBook spring() {
    return PlanBook().unchecked("A").visit(
        "A", "2026-05-09", {{"bees_top", "10"}, {"queen", "eggs"}, {"brood_frames", "9"}, {"brood_checked", "5"}});
}
PlanBook unitedOnce() {
    PlanBook book;
    book.colony("A").unchecked("B", {{"ended", "2026-09-10"}, {"end", "united"}});
    return book.row("lineage", {{"date", "2026-09-10"}, {"how", "united"}, {"colony", "B"}, {"into", "A"}});
}
PlanBook treatedFor30() {
    return PlanBook().colony("A").row(
        "treatments", {{"colony", "A"}, {"date", "2026-08-20"}, {"product", "p"}, {"substance", "s"}, {"days", "30"}});
}
PlanBook endedSuspect() {
    return PlanBook()
        .unchecked("A", {{"ended", "2026-09-01"}, {"end", "dead"}})
        .visit("A", "2026-08-20", {{"signs", "afb"}});
}
PlanBook upstairs() {
    return PlanBook()
        .unchecked("A", {{"brood_boxes", "2"}})
        .visit("A", "2026-04-10", {{"bees_top", "0"}, {"upper_bees_top", "6"}, {"queen", "eggs"}});
}
PlanBook emptiedNextToHeld() { return pair("3", "4", {}, {}, {{"x_m", "100"}}).unchecked("C", {{"x_m", "102"}}); }

constexpr char kTable[] = "0 50 120 345 480 640 750 820 880 905 920 928 934";
constexpr char kDivided[] = "0 0 0 0 0 0 0 400 777 900 1000 1000 1000";

struct Case {
    const char* limit;
    std::function<PlanBook()> book;
    const char* day;
    Teller tell;
    const char* shown;                ///< what the words say by default
    const char* changed = nullptr;    ///< the setting's other value
    const char* shownAfter = nullptr; ///< what they say then
};
void PrintTo(const Case& c, std::ostream* out) { *out << c.limit; }

const char kFallDay[] = "2026-09-15";
const char kSpringDay[] = "2026-05-10";

const Case kCases[] = {
    // 4.1 to 4.3
    {"strength.judge",
     [] {
         return single("3", {{"bees_bottom", "2"}});
     },
     kFallDay, alone(), "the mean is taken", "top", "the one from the top is taken"},
    {"strength.max_age_days",
     [] {
         return PlanBook().colony("A").visit("A", "2026-08-01", {{"bees_top", "4"}});
     },
     kFallDay, unresolved(), "45 days old; more than 30 days is too old", "17", "more than 17 days is too old"},
    {"class.shake_out_max", [] { return single("1"); }, kFallDay, unresolved(), "(up to 2)", "1.5", "(up to 1.5)"},
    {"class.medium_min", [] { return single("3"); }, kFallDay, alone(), "below 5)", "6.25", "below 6.25)"},
    {"class.strong_min", [] { return strong(); }, kFallDay, alone(), "strong (from 8)", "8.75", "strong (from 8.75)"},
    {"queen.max_age_days",
     [] {
         return strong({{"queen", ""}}).visit("A", "2026-07-02", {{"queen", "eggs"}});
     },
     kFallDay, minded(CautionKind::QueenUnknown), "75 days ago; more than 45 is", "33", "more than 33 is"},
    {"weigh.max_age_days",
     [] {
         return strong({{"gross_kg", "20"}});
     },
     kFallDay, fed(), "counts for 30 days", "19", "counts for 19 days"},
    {"season.fall_start",
     [] {
         return strong({{"gross_kg", "20"}});
     },
     kFallDay, fed(), "from 20 August", "08-11", "from 11 August"},
    {"season.fall_end",
     [] {
         return strong({{"gross_kg", "20"}});
     },
     kFallDay, fed(), "to 20 October", "10-27", "to 27 October"},
    {"season.start", [] { return queenlessPair("0"); }, kFallDay, united(), "from 1 May to", "04-17",
     "from 17 April to"},
    // 4.4
    {"check.min_frames", [] { return checked("2026-09-01", "2"); }, kFallDay, held("A", HoldKind::BroodNotChecked),
     "it takes 3,", "5", "it takes 5,"},
    {"check.full_frames", [] { return soonAfter("efb"); }, kFallDay, held("A", HoldKind::Efb), "at least 3,", "4",
     "at least 4,"},
    {"check.max_age_days", [] { return checked("2026-04-01", "7"); }, kFallDay, held("A", HoldKind::BroodNotChecked),
     "more than 150 days old", "120", "more than 120 days old"},
    {"check.grace_days", [] { return checked("2026-04-01", "7"); }, kSpringDay, held("A", HoldKind::BroodNotChecked),
     "is more than 30 days old", "21", "is more than 21 days old"},
    {"4.4.10 season_start", [] { return checked("2026-04-01", "7"); }, kSpringDay, held("A", HoldKind::BroodNotChecked),
     "before the season that began on 2026-05-01"},
    {"trace.days", [] { return contact(false); }, kFallDay, held("E", HoldKind::AfbContact), "365 days before", "433",
     "433 days before"},
    {"trace.masked_days", [] { return contact(true); }, kFallDay, held("E", HoldKind::AfbContact), "548 days before",
     "601", "601 days before"},
    {"afb.own_result_days", [] { return contact(false); }, "2026-08-01", held("E", HoldKind::AfbContact),
     "(42 days on)", "47", "(47 days on)"},
    {"afb.recheck_days", [] { return contact(false); }, "2026-08-01", held("E", HoldKind::AfbContact), "(60 days on)",
     "66", "(66 days on)"},
    {"afb.yard_back_days", [] { return contact(false); }, "2026-08-01", held("B", HoldKind::AfbYard), "60 days before",
     "71", "71 days before"},
    {"afb.yard_after_days", [] { return contact(false); }, "2026-08-01", held("B", HoldKind::AfbYard),
     "to 365 days after", "399", "to 399 days after"},
    {"efb.clear_days", [] { return soonAfter("efb"); }, kFallDay, held("A", HoldKind::Efb), "(42 days on)", "49",
     "(49 days on)"},
    {"efb.back_days", [] { return soonAfter("efb"); }, kFallDay, held("B", HoldKind::Efb), "up to 42 days before", "50",
     "up to 50 days before"},
    {"doubt.recheck_days", [] { return soonAfter("brood-doubt"); }, "2026-08-25", held("A", HoldKind::BroodDoubt),
     "(21 days on)", "26", "(26 days on)"},
    {"doubt.back_days", [] { return soonAfter("brood-doubt"); }, "2026-08-25", held("B", HoldKind::BroodDoubt),
     "up to 42 days before", "53", "up to 53 days before"},
    // 4.5
    {"mites.spring", [] { return mites("2026-05-09"); }, kSpringDay, minded(CautionKind::MitesHigh), "above 2.", "1.25",
     "above 1.25."},
    {"mites.fall", [] { return mites("2026-09-14"); }, kFallDay, minded(CautionKind::MitesHigh), "above 3.", "2.75",
     "above 2.75."},
    {"4.5 spring_months", [] { return mites("2026-05-09"); }, kSpringDay, minded(CautionKind::MitesHigh),
     "from January to July"},
    {"4.5 fall_months", [] { return mites("2026-09-14"); }, kFallDay, minded(CautionKind::MitesHigh),
     "from August to December"},
    {"4.5 sample_days", [] { return mites("2026-09-14"); }, kFallDay, minded(CautionKind::MitesHigh), "for 45 days"},
    {"4.5 heavier_frames",
     [] {
         return pair("3", "4", {{"stores_frames", "6"}}, {{"stores_frames", "3"}});
     },
     kFallDay, minded(CautionKind::LowerHeavier), "From 2 frames more on"},
    {"afb.near_m", [] { return near(); }, kFallDay, minded(CautionKind::NearAfb), "within 1000 m", "950",
     "within 950 m"},
    {"move.drift_m", [] { return emptiedNextToHeld(); }, kFallDay, minded(CautionKind::DriftToHeld), "up to 3 m", "4.5",
     "up to 4.5 m"},
    // 4.6
    {"value.winter", [] { return single("3"); }, kFallDay, alone(), "300 in 1000", kTable, "345 in 1000"},
    {"value.divide", [] { return single("8"); }, kFallDay, alone(), "800 in 1000", kDivided, "777 in 1000"},
    {"4.6 most_frames", [] { return doubled("9", "5"); }, kFallDay, alone(), "More than 12 frames"},
    // 4.7
    {"4.7.7 boxes", [] { return doubled("9", "5").colony("B").bees("B", "4"); }, kFallDay, barred("4.7.7"),
     "do not fit into one"},
    {"4.7.8 boxes", [] { return doubled("9", "8").colony("B").bees("B", "4"); }, kFallDay, barred("4.7.8"),
     "more than two boxes"},
    {"gain.min",
     [] {
         return pair("3", "4", {}, {}, {{"x_m", "320"}});
     },
     kFallDay, barred("4.7.10"), "the limit 50 ", "61", "the limit 61 "},
    {"gain.min_queen", [] { return queenlessPair("670"); }, kFallDay, barred("4.7.10"), "the limit 1 ", "7",
     "the limit 7 "},
    {"carry.per_m", [] { return pair("3", "4"); }, kFallDay, united(), "(1 a metre)", "2.5", "(2.5 a metre)"},
    {"order", [] { return pair("3", "4"); }, kFallDay, united(), "in the better box (a setting", "weaker-on-top",
     "the weaker colony above, as your setting says"},
    {"queen.weaker", [] { return pair("3", "4"); }, kFallDay, united(), "Both queens are left", "remove",
     "removed, as your setting says"},
    // 4.9
    {"shake.per_host", [] { return pair("1.5", "6"); }, kFallDay, shaken(), "at most 1 colony", "2",
     "at most 2 colonies"},
    {"4.9 union_thousandths", [] { return pair("3", "4").colony("C").bees("C", "1.5"); }, kFallDay, shaken(),
     "200 thousandths"},
    // 4.11
    {"4.11 reverse_from", [] { return upstairs(); }, "2026-04-20", boxes(), "from 15 March"},
    {"4.11 reverse_to", [] { return upstairs(); }, "2026-04-20", boxes(), "to 31 May"},
    // 4.12
    {"stores.single_kg",
     [] {
         return strong({{"gross_kg", "20"}});
     },
     kFallDay, fed(), "winter at 32 kg", "33.5", "winter at 33.5 kg"},
    {"stores.double_kg",
     [] {
         return doubled("5", "4", {{"gross_kg", "20"}});
     },
     kFallDay, fed(), "winter at 45 kg", "47.25", "winter at 47.25 kg"},
    {"syrup.stores_kg_per_l",
     [] {
         return strong({{"gross_kg", "20"}});
     },
     kFallDay, fed(), "1.078 kg a litre", "1.2", "1.2 kg a litre"},
    {"tare.floor_lid_kg",
     [] {
         return pair("3", "4", {{"gross_kg", "20"}}, {{"gross_kg", "20"}});
     },
     kFallDay, fed(), "less 5 kg for floor and lid", "4.25", "less 4.25 kg for floor and lid"},
    {"tare.box_kg",
     [] {
         return pair("3", "4", {{"gross_kg", "20"}, {"upper_bees_top", "0"}}, {{"gross_kg", "20"}},
                     {{"brood_boxes", "2"}});
     },
     kFallDay, fed(), "and 5 kg for each", "4.75", "and 4.75 kg for each"},
    // 4.13
    {"divide.brood_per_part", [] { return spring(); }, kSpringDay, divided(), "needs 4 brood frames", "3",
     "needs 3 brood frames"},
    {"divide.bees_per_part", [] { return spring(); }, kSpringDay, divided(), "and 5 frames of bees", "4",
     "and 4 frames of bees"},
    {"4.13 divide_from", [] { return spring(); }, kSpringDay, divided(), "from 20 April"},
    {"4.13 divide_to", [] { return spring(); }, kSpringDay, divided(), "to 15 June"},
    {"4.13 brood_days", [] { return spring(); }, kSpringDay, divided(), "brood counts for 30 days"},
    {"4.13 parts", [] { return spring(); }, kSpringDay, divided(), "2 parts at least"},
    // 4.14
    {"follow.union_days", [] { return unitedOnce(); }, kFallDay, due(), "looked at after 5 days", "8",
     "looked at after 8 days"},
    {"4.14 listed_before", [] { return unitedOnce(); }, kFallDay, due(), "from 30 days before"},
    {"4.14 union_check_for", [] { return unitedOnce(); }, kFallDay, due(), "to 60 days after"},
    {"4.14 take_out_for", [] { return treatedFor30(); }, kFallDay, due(), "to 30 days past it"},
    {"4.14 result_for", [] { return endedSuspect(); }, kFallDay, due(), "for 60 days more"},
};

class EachLimit : public testing::TestWithParam<Case> {};

void expectTold(const Told& told, const Case& c, const char* shown) {
    EXPECT_TRUE(told.why.names(c.limit)) << c.limit << " is not named: " << told.text.toStdString();
    EXPECT_TRUE(told.text.contains(QString::fromUtf8(shown))) << shown << " is not in: " << told.text.toStdString();
    EXPECT_FALSE(told.text.contains(QRegularExpression(QStringLiteral("%\\d")))) << told.text.toStdString();
    EXPECT_STRNE(told.why.rule, "");
    EXPECT_FALSE(told.why.facts.empty());
}

TEST_P(EachLimit, IsNamedAndShownWhereItDecides) {
    const Case& c = GetParam();
    const Snapshot s = c.book().on(QLatin1StringView(c.day));
    expectTold(c.tell(s), c, c.shown);
    const Limit limit = limitOf(s.settings, c.limit);
    EXPECT_FALSE(limit.value.isEmpty());
    EXPECT_FALSE(limit.source.isEmpty());
    EXPECT_FALSE(limit.meaning.isEmpty());
    EXPECT_EQ(limit.isSetting, settingNamed(QString::fromUtf8(c.limit)) != nullptr);
    EXPECT_EQ(limit.isSetting, c.changed != nullptr) << "a setting is changed, a fixed number is not";
    if (!c.changed) return;
    const Snapshot changed =
        c.book().set(QLatin1StringView(c.limit), QLatin1StringView(c.changed)).on(QLatin1StringView(c.day));
    const Told after = c.tell(changed);
    expectTold(after, c, c.shownAfter);
    EXPECT_FALSE(after.text.contains(QString::fromUtf8(c.shown))) << after.text.toStdString();
    EXPECT_NE(limitText(changed.settings, c.limit), limit.value);
}

INSTANTIATE_TEST_SUITE_P(Section4, EachLimit, testing::ValuesIn(kCases));

TEST(Limits, NoneIsMissingFromTheTable) {
    std::set<QString> here;
    for (const Case& c : kCases) here.insert(QLatin1StringView(c.limit));
    const std::set<QString> elsewhere{"move.step_m", "move.far_m",    "crew.minutes_per_union",
                                      "crew.people", "drop.summer",   "drop.late",
                                      "afb.rob_m",   "records.years", "sample.late_days"}; // of rules beyond 4.14
    for (const SettingInfo& setting : settingTable())
        EXPECT_TRUE(setting.name.startsWith("show.") || elsewhere.contains(setting.name) || here.contains(setting.name))
            << setting.name.toStdString();
    for (const char* name : fixedLimitNames()) EXPECT_TRUE(here.contains(QLatin1StringView(name))) << name;
}

TEST(Limits, AnAssumptionIsCalledOneAndAPublishedFigureIsNot) {
    const Settings s;
    for (const char* name : {"value.winter", "value.divide", "gain.min", "tare.box_kg", "4.5 sample_days",
                             "divide.brood_per_part", "class.medium_min", "trace.masked_days"})
        EXPECT_TRUE(limitOf(s, name).assumption) << name;
    for (const char* name : {"stores.single_kg", "efb.clear_days", "syrup.stores_kg_per_l", "follow.union_days"})
        EXPECT_FALSE(limitOf(s, name).assumption) << name;
}

TEST(Limits, DaysMoveByHalfAYearInTheSouth) {
    const Settings s;
    EXPECT_EQ(limitText(s, "season.fall_start", true), "20 February");
    EXPECT_EQ(limitText(s, "4.11 reverse_to", true), "30 November"); // no 31 November
    EXPECT_EQ(limitText(s, "4.5 fall_months", true), "February to June");
    PlanBook south;
    south.yard("Y", {{"latitude_deg", "-41"}, {"longitude_deg", "170"}});
    south.colony("A").visit("A", "2026-03-14", {{"bees_top", "9"}, {"queen", "eggs"}, {"gross_kg", "20"}});
    const Told told = fed()(south.on("2026-03-15"));
    EXPECT_TRUE(told.text.contains("from 20 February to 20 April")) << told.text.toStdString();
}

// 32 kg are 70.55 lb, 1000 m 3280.84 ft, 1 a metre 0.3048 a foot; 1.078 kg a litre are 2.249 lb a quart: by the factors
// of tests/base/shown_units_test.cpp.
TEST(Limits, AreShownInTheUnitsOfTheBook) {
    Settings s;
    s.showWeight = WeightUnit::Pounds;
    s.showVolume = VolumeUnit::Quarts;
    s.showLength = LengthUnit::Feet;
    EXPECT_EQ(limitText(s, "stores.single_kg"), "70.5 lb");
    EXPECT_EQ(limitText(s, "afb.near_m"), "3280.8 ft");
    EXPECT_EQ(limitText(s, "carry.per_m"), "0.305 a foot");
    EXPECT_EQ(limitText(s, "syrup.stores_kg_per_l"), "2.249 lb a quart");
}

TEST(Sentences, KeepAPercentSignOfALabel) {
    EXPECT_EQ(filled("%1 and %2", {"A%2", "B"}), "A%2 and B");
    EXPECT_EQ(filled("100 % of %1, %9", {"A"}), "100 % of A, %9");
}

TEST(Reasons, AColonysCautionsKnowWhoseTheyAre) {
    const Plan plan = pair("3", "4", {{"queen", "unknown"}}, {{"queen", "unknown"}}).plan(kFall);
    ASSERT_EQ(plan.unions.size(), 1U);
    ASSERT_EQ(plan.unions[0].cautions.size(), 1U);
    EXPECT_EQ(plan.unions[0].cautions[0].colonies, (std::vector{plan.unions[0].moved, plan.unions[0].host}));
}

TEST(Reasons, FactsAreNamedValues) {
    const Snapshot s = single("3").on(kFall);
    const Plan plan = advise(s, {});
    ASSERT_EQ(plan.alone.size(), 1U);
    const Reason& why = plan.alone[0].why;
    ASSERT_TRUE(why.find<Day>("counted"));
    EXPECT_EQ(isoText(*why.find<Day>("counted")), kCounted);
    ASSERT_TRUE(why.find<qint64>("alive in 1000"));
    EXPECT_EQ(*why.find<qint64>("alive in 1000"), 300);
    EXPECT_FALSE(why.find<Day>("frames"));
    for (const Fact& f : why.facts) EXPECT_FALSE(factText(s, f).isEmpty()) << f.name;
}

} // namespace
} // namespace tests::rules
