#include "ui/visit/visit_draft.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using ui::visit::Field;
using ui::visit::VisitDraft;
using ui::visit::VisitPlace;

VisitPlace place() {
    VisitPlace p;
    p.colony = {7};
    p.label = QStringLiteral("K4");
    p.since = core::dayOf(2026, 5, 1);
    p.today = core::dayOf(2026, 9, 15);
    p.frames = 10;
    p.boxesNow = 1;
    p.visited = {core::dayOf(2026, 9, 1)};
    return p;
}

VisitDraft draft() {
    VisitDraft d;
    d.day = core::dayOf(2026, 9, 15);
    d[Field::BeesTop] = QStringLiteral("3¼");
    return d;
}

bool wrong(const VisitDraft& d, std::optional<Field> field, const VisitPlace& p = place()) {
    return std::ranges::any_of(ui::visit::problems(d, p), [&](const auto& problem) { return problem.field == field; });
}

TEST(VisitDraft, ADraftWithOneCountIsGood) { EXPECT_TRUE(ui::visit::problems(draft(), place()).empty()); }

TEST(VisitDraft, NothingSeenIsNoVisit) {
    VisitDraft d = draft();
    d[Field::BeesTop].clear();
    EXPECT_TRUE(wrong(d, std::nullopt));
}

TEST(VisitDraft, LimitsOfEachFieldAreThoseOfTheFiles) {
    struct Row {
        Field field;
        const char* good;
        const char* bad;
    };
    const Row rows[] = {{Field::BeesTop, "10", "10.25"},  {Field::BeesBottom, "0", "-1"},
                        {Field::Stores, "10", "11"},      {Field::Brood, "24", "25"},
                        {Field::Supers, "10", "11"},      {Field::Gross, "300", "300.01"},
                        {Field::Gross, "29,5", "29.505"}, {Field::Brood, "0", "1.5"}};
    for (const Row& row : rows) {
        VisitDraft d = draft();
        d[row.field] = QString::fromLatin1(row.good);
        EXPECT_FALSE(wrong(d, row.field)) << row.good;
        d[row.field] = QString::fromLatin1(row.bad);
        EXPECT_TRUE(wrong(d, row.field)) << row.bad;
    }
}

TEST(VisitDraft, MitesAndBeesComeTogether) {
    VisitDraft d = draft();
    d[Field::Mites] = QStringLiteral("12");
    EXPECT_TRUE(wrong(d, Field::Sample));
    d[Field::Sample] = QStringLiteral("300");
    EXPECT_TRUE(ui::visit::problems(d, place()).empty());
    d[Field::Mites].clear();
    EXPECT_TRUE(wrong(d, Field::Mites));
}

TEST(VisitDraft, NoMoreBroodIsCheckedThanThereIs) {
    VisitDraft d = draft();
    d[Field::Brood] = QStringLiteral("4");
    d[Field::Checked] = QStringLiteral("5");
    EXPECT_TRUE(wrong(d, Field::Checked));
    d[Field::Checked] = QStringLiteral("4");
    EXPECT_FALSE(wrong(d, Field::Checked));
}

TEST(VisitDraft, AnUpperBoxOnlyWhereThereAreTwo) {
    VisitDraft d = draft();
    d[Field::UpperTop] = QStringLiteral("2");
    EXPECT_TRUE(wrong(d, Field::UpperTop));
    d.boxes = 2;
    EXPECT_FALSE(wrong(d, Field::UpperTop));
    VisitPlace two = place();
    two.boxesNow = 2;
    d.boxes.reset();
    EXPECT_FALSE(wrong(d, Field::UpperTop, two));
}

TEST(VisitDraft, TheDayLiesInTheColonysLifeAndIsFree) {
    VisitDraft d = draft();
    for (const core::Day bad : {core::dayOf(2026, 9, 16), core::dayOf(2026, 4, 30), core::dayOf(2026, 9, 1)}) {
        d.day = bad;
        EXPECT_TRUE(wrong(d, Field::Day)) << core::isoText(bad).toStdString();
    }
    d.day = core::dayOf(2026, 5, 1);
    EXPECT_FALSE(wrong(d, Field::Day));
}

// 71.7 lb are 32.5226 kg, 661.3 lb 299.961 kg, 661.4 lb 300.006 kg: own calculation, times 0.45359237.
TEST(VisitDraft, TheWeightIsTypedInTheUnitShownAndKeptInKilograms) {
    VisitPlace p = place();
    p.weightUnit = core::WeightUnit::Pounds;
    VisitDraft d = draft();
    d[Field::Gross] = QStringLiteral("71,7");
    EXPECT_FALSE(wrong(d, Field::Gross, p));
    EXPECT_EQ(ui::visit::visitOf(d, p).gross, core::Decagrams{3252});
    for (const char* good : {"0", "300.5", "661.3"}) {
        d[Field::Gross] = QString::fromLatin1(good);
        EXPECT_FALSE(wrong(d, Field::Gross, p)) << good;
    }
    for (const char* bad : {"661.4", "71.75", "-1", "70 lb"}) {
        d[Field::Gross] = QString::fromLatin1(bad);
        EXPECT_TRUE(wrong(d, Field::Gross, p)) << bad;
    }
}

// 32.5 kg are 71.650 lb, shown as 71.7; 71.7 lb typed anew are 32.52 kg: own calculation.
TEST(VisitDraft, AWeightThatIsNotTouchedStaysAsItIsKept) {
    VisitPlace p = place();
    p.weightUnit = core::WeightUnit::Pounds;
    core::Visit was;
    was.colony = p.colony;
    was.gross = core::Decagrams{3250};
    p.was = was;
    VisitDraft d = ui::visit::draftOf(was, p.weightUnit);
    EXPECT_EQ(d[Field::Gross], QStringLiteral("71.7"));
    EXPECT_EQ(ui::visit::visitOf(d, p).gross, core::Decagrams{3250});
    d[Field::Gross] = QStringLiteral("71.8");
    EXPECT_EQ(ui::visit::visitOf(d, p).gross, core::Decagrams{3257});
    d[Field::Gross].clear();
    EXPECT_FALSE(ui::visit::visitOf(d, p).gross);
}

TEST(VisitDraft, TheVisitHasWhatWasTypedAndNoZeros) {
    VisitDraft d = draft();
    d.queen = core::QueenSeen::Eggs;
    d.signs.add(core::Sign::Chalkbrood);
    d[Field::Gross] = QStringLiteral("29,5");
    d[Field::Note] = QStringLiteral(" quiet ");
    const core::Visit v = ui::visit::visitOf(d, place());
    EXPECT_EQ(v.colony, core::ColonyId{7});
    EXPECT_EQ(v.beesTop, core::Quarters{13});
    EXPECT_FALSE(v.beesBottom);
    EXPECT_FALSE(v.broodFrames);
    EXPECT_EQ(v.gross, core::Decagrams{2950});
    EXPECT_EQ(v.queen, core::QueenSeen::Eggs);
    EXPECT_TRUE(v.signs.has(core::Sign::Chalkbrood));
    EXPECT_EQ(v.note, QStringLiteral("quiet"));
}

} // namespace
