#include "core/report/page_code.h"
#include "core/rules/missing.h"
#include "tests/report/page_reading.h"
#include "tests/report/print_sample.h"

#include <gtest/gtest.h>

namespace {

using namespace core::report;
using namespace tests::report;

/// Tansy Lane in spring divides; with the stands and queens as said.
std::vector<Page> dividing(std::optional<core::DivideQueens> queens, Language language = Language::English) {
    const Sample sample = workedYard("tansy-lane", "Tansy Lane", "2026-05-05");
    EXPECT_FALSE(sample.plan.divides.empty());
    WorksheetOptions options;
    options.language = language;
    options.queens = queens;
    core::Stand stand;
    stand.id = {9001};
    stand.name = "free";
    stand.at = sample.s.placeOf(sample.plan.divides[0].colony)->at + core::MmPoint{0, 1500};
    options.stands = {stand};
    return worksheetPages(sample.s, sample.plan, sample.yard, options, EvenMeasure());
}

TEST(Worksheet, EveryDivideHasItsStripWithPlacesAndRoomForLabels) {
    const Sample sample = workedYard("tansy-lane", "Tansy Lane", "2026-05-05");
    const std::vector<Page> pages = dividing(core::DivideQueens::Cells);
    const std::vector<Zone> strips = zonesNamed(pages, "divide ");
    ASSERT_EQ(strips.size(), sample.plan.divides.size());
    const QString text = flowing(pages);
    int made = 0;
    for (size_t i = 0; i < strips.size(); ++i) {
        const core::rules::Divide& d = sample.plan.divides[i];
        EXPECT_TRUE(
            text.contains(QStringLiteral("%1: divide into %2").arg(sample.s.colony(d.colony).shown).arg(d.parts)));
        made += d.parts - 1;
    }
    EXPECT_TRUE(text.contains("on stand free, 1.5 m away"));
    EXPECT_EQ(text.count("on stand free, ") + text.count("on a new stand, "), made) << text.toStdString();
    EXPECT_TRUE(text.contains("Bees that have flown before go back to the old stand"));
}

// The days of core/rules/divide_dates.h from 2026-05-05: 8, 22 and 31 days; 17, 31 and 40; 5 and 14.
TEST(Worksheet, DividesSayTheirQueensAndTheDaysToLook) {
    const QString cells = flowing(dividing(core::DivideQueens::Cells));
    for (const char* part : {"a sealed queen cell for each new hive", "Wednesday 13 May:", "Wednesday 27 May:",
                             "Friday 5 June:", "MacFawn, Making Splits; swarm-control booklet"})
        EXPECT_TRUE(cells.contains(part)) << part << " in " << cells.toStdString();
    const QString bought = flowing(dividing(core::DivideQueens::Bought));
    for (const char* part :
         {"a bought queen for each new hive", "Sunday 10 May:", "Tuesday 19 May:", "common practice, no source"})
        EXPECT_TRUE(bought.contains(part)) << part << " in " << bought.toStdString();
    const QString own = flowing(dividing(std::nullopt));
    for (const char* part : {"not chosen yet", "Friday 22 May:", "Friday 5 June:", "Sunday 14 June:"})
        EXPECT_TRUE(own.contains(part)) << part << " in " << own.toStdString();
    const QString spanish = flowing(dividing(core::DivideQueens::Cells, Language::Spanish));
    for (const char* part : {"una celda real sellada", "rótulo", "miércoles"}) EXPECT_TRUE(spanish.contains(part));
    for (const char* english : {" the ", " queen", "look", "between"})
        EXPECT_FALSE(spanish.mid(spanish.indexOf("Dividir")).contains(english)) << english << spanish.toStdString();
}

TEST(Worksheet, LongLabelsOfDividesBreakWithinTheirStrip) {
    for (const Language language : {Language::English, Language::Spanish}) {
        Sample sample = workedYard("tansy-lane", "Tansy Lane", "2026-05-05");
        for (const core::rules::Divide& d : sample.plan.divides)
            sample.s.colonies[static_cast<size_t>(d.colony.value)].shown = QString(60, u'W');
        EXPECT_EQ(faultsOf(pagesFor(sample, language), EvenMeasure()).join("\n").toStdString(), "");
    }
}

/// Kiln Field four weeks after its visits: counts, queens and weights are too old.
Sample kilnFieldLater() { return workedYard("kiln-field", "Kiln Field", "2026-10-18"); }

TEST(Worksheet, TheWalkHasRoomForWhatIsMissingOfEachColony) {
    const Sample sample = kilnFieldLater();
    const auto missing = core::rules::missingIn(core::rules::viewOf(sample.s), sample.yard);
    ASSERT_GE(missing.size(), 8u);
    const auto pages = pagesFor(sample, Language::English, Paper::A4, {false, Sheet::Walk});
    const auto zones = zonesNamed(pages, "walk ");
    ASSERT_EQ(zones.size(), missing.size());
    for (size_t i = 0; i < zones.size(); ++i)
        EXPECT_EQ(zones[i].name, "walk " + sample.s.colony(missing[i].colony).shown) << "in walking order";
    const QString text = flowing(pages);
    for (const char* part :
         {"Before the merge day, Kiln Field", "K2 stand 2 Last: 4 frames of bees on 14 September",
          "27.0 kg on 14 September",
          "Missing: Bees counted on 2026-09-14, 34 days before; more than 30 days is too old.", "bees from above",
          "upper box: from above", "brood frames", "looked through", "weight without honey boxes"})
        EXPECT_TRUE(text.contains(part)) << part << "\nin:\n" << text.toStdString();
    const QString spanish = flowing(pagesFor(sample, Language::Spanish, Paper::A4, {false, Sheet::Walk}));
    EXPECT_TRUE(spanish.contains("Abejas contadas el 2026-09-14, 34 días antes"));
    for (const char* english : {" the ", " of ", " and ", " is ", "frames", "bees", "days"})
        EXPECT_FALSE(spanish.contains(english)) << english << "\nin:\n" << spanish.toStdString();
}

TEST(Worksheet, TheWalkListsWhatIsToBeBroughtDownToOneBox) {
    const QString text = flowing(pagesFor(kilnField(), Language::English, Paper::A4, {false, Sheet::Walk}));
    EXPECT_TRUE(text.contains("K6 4 frames of bees, for union 3 with K5.")) << text.toStdString();
}

TEST(Worksheet, AWalkWithNothingMissingSaysSo) {
    const Sample sample = workedYard("kiln-field", "Kiln Field", "2026-12-15"); // nothing is planned then
    const QString text = flowing(pagesFor(sample, Language::English, Paper::A4, {false, Sheet::Walk}));
    EXPECT_TRUE(text.contains("Nothing is missing")) << text.toStdString();
}

TEST(Worksheet, EachStripSaysWhoGoesWhereInWhatOrder) {
    Sample sample = kilnField();
    QString text = flowing(pagesFor(sample));
    EXPECT_TRUE(
        text.contains("1. Set K4's box aside, its lid on. 2. Carry K2 to stand 4; its box on the floor. 3. K2's "
                      "lid and inner cover off. 4. Newspaper with a few small slits over K2's frames; hold it "
                      "against the wind. 5. K4's box on it. 6. Both entrances to"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("7. Lid on. Mark the hive: K4 with K2, 15 September."));
    // the moved one's box on top: the host's stays on its floor, and the paper lies on its frames
    core::rules::Union& u = sample.plan.unions.front();
    std::swap(u.lower, u.upper);
    text = flowing(pagesFor(sample));
    EXPECT_TRUE(
        text.contains("1. Carry K2 beside stand 4. 2. K4's box stays on its floor: its lid and inner cover off. "
                      "3. Newspaper with a few small slits over K4's frames; hold it against the wind. 4. K2's "
                      "box off its floor and on it. 5. Both entrances to"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("K2 on top"));
    EXPECT_TRUE(text.contains("K4 below"));
}

TEST(Worksheet, AHiveThatWasNotWeighedIsSaidToBeHeavyAllTheSame) {
    Sample sample = kilnField();
    for (core::SnapLatest& latest : sample.s.latest) latest.weight.reset();
    EXPECT_TRUE(flowing(pagesFor(sample))
                    .contains("To lift: K2 and K4 not weighed: a full box can pass 25 kg, two people or a barrow."));
}

TEST(Worksheet, WhatComesFreeIsStoredInGoodOrder) {
    const QString text = flowing(pagesFor(kilnField(), Language::English, Paper::A4, {false, Sheet::Storing}));
    for (const char* part :
         {"Kit that comes free, Kiln Field", "K2, K3, K6, K9: 4 floors, lids and inner covers",
          "K6: 1 box with its combs", "K9: 1 box with its combs", "Nothing of a held colony comes into this pile"})
        EXPECT_TRUE(text.contains(part)) << part << "\nin:\n" << text.toStdString();
}

TEST(Worksheet, LayingWorkersHaveASheetOfCautions) {
    for (const Language language : {Language::English, Language::Spanish}) {
        const QString text = flowing(pagesFor(kilnField(), language, Paper::A4, {false, Sheet::LayingWorkers}));
        const bool english = language == Language::English;
        EXPECT_TRUE(text.contains(english ? "Never in a union" : "Nunca en una unión"));
        EXPECT_TRUE(text.contains("K8"));
        EXPECT_TRUE(
            text.contains("1. " + QString(english ? "Several eggs in one cell" : "Varios huevos en una celda")));
        EXPECT_FALSE(text.contains("K2"));
        if (english) continue;
        for (const char* word : {" the ", " of ", " and ", " is ", " not "})
            EXPECT_FALSE(text.contains(word)) << word << "\nin:\n" << text.toStdString();
    }
}

TEST(Worksheet, ChecksDueHaveASheetWithBoxesToTick) {
    Sample sample = kilnField();
    const auto here = [&](const char* label) {
        for (size_t i = 0; i < sample.s.colonies.size(); ++i)
            if (sample.s.colonies[i].shown == QLatin1StringView(label)) return core::ColonyIx{static_cast<qint32>(i)};
        return core::ColonyIx{0};
    };
    using core::rules::DueKind;
    const core::Day on = core::dayOf(2026, 9, 18);
    core::rules::Reason united{"4.14"};
    united.fact("united", on - 5).limit("4.14 listed_before").limit("4.14 union_check_for").limit("follow.union_days");
    core::rules::Reason treated{"4.14"};
    treated.fact("treated", on - 42).fact("product", QString("strips")).fact("days", qint64(42));
    sample.plan.due = {{here("K4"), DueKind::UnionCheck, on, united},
                       {here("K5"), DueKind::TakeOut, on, treated},
                       {here("K7"), DueKind::ResultAwaited, on, core::rules::Reason{"4.14"}}};
    sample.s.lineage.push_back({on - 5, core::LineageHow::United, here("K2"), here("K4")});
    for (const Language language : {Language::English, Language::Spanish}) {
        const auto pages = pagesFor(sample, language, Paper::A4, {false, Sheet::Checks});
        EXPECT_EQ(pages.size(), 1u);
        EXPECT_EQ(faultsOf(pages, EvenMeasure()).join("\n").toStdString(), "");
        const std::vector<Zone> rows = zonesNamed(pages, "check ");
        ASSERT_EQ(rows.size(), 3u);
        EXPECT_EQ(rows.front().name, "check K4");
        const QString text = flowing(pages);
        const bool english = language == Language::English;
        for (const char* part :
             {english ? "Look whether the union took, with K2." : "Ver si la unión prendió, con K2.",
              english ? "paper gone one queen eggs" : "papel quitado una reina huevos",
              english ? "all taken out" : "todo retirado", english ? "negative positive" : "negativo positivo"})
            EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << "\nin:\n" << text.toStdString();
    }
}

TEST(Worksheet, ShakeOutsHaveASheetOfTheirOwn) {
    const auto pages = pagesFor(kilnField(), Language::English, Paper::A4, {false, Sheet::ShakeOuts});
    EXPECT_EQ(pages.size(), 1u);
    EXPECT_EQ(zonesNamed(pages, "shake-out K9").size(), 1u);
    EXPECT_EQ(zonesNamed(pages, "union").size(), 0u);
}

TEST(Worksheet, SaysWhatWasAskedOfThePlan) {
    const Sample sample = kilnField();
    const auto id = [&](const char* label) {
        for (const core::SnapColony& c : sample.s.colonies)
            if (c.shown == QLatin1StringView(label)) return c.id;
        return core::ColonyId{0};
    };
    core::rules::MergeWish wish;
    wish.day.variant = 2;
    wish.day.revision = 5;
    wish.day.most = 2;
    wish.day.note = "two of us";
    wish.choices = {{{1}, {1}, core::MergeAsk::LeaveOut, id("K1"), {}, "weak queen"},
                    {{2}, {1}, core::MergeAsk::Forbid, id("K2"), id("K3"), {}},
                    {{3}, {1}, core::MergeAsk::LeaveOut, {99'999}, {}, "not here"}};
    WorksheetOptions options;
    options.wish = wish;
    options.unmet = {{{1}, {}, "K9 and K10 cannot be pinned any more."}};
    for (const Language language : {Language::English, Language::Spanish}) {
        options.language = language;
        const auto pages = worksheetPages(sample.s, sample.plan, sample.yard, options, EvenMeasure());
        const QString text = flowing(pages);
        const bool english = language == Language::English;
        for (const char* part :
             {english ? "two of us At most 2 unions, as asked." : "two of us Como mucho 2 uniones, como se pidió.",
              english ? "K1 left out, as asked. (weak queen)" : "K1 se deja fuera, como se pidió. (weak queen)",
              english ? "K2 and K3 not together, as asked." : "K2 y K3 no juntas, como se pidió.",
              "K9 and K10 cannot be pinned any more.", english ? "plan 2, revision 5" : "plan 2, revisión 5"})
            EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << "\nin:\n" << text.toStdString();
        EXPECT_FALSE(text.contains("not here"));
        EXPECT_EQ(faultsOf(pages, EvenMeasure()).join("\n").toStdString(), "");
    }
}

TEST(Worksheet, TheCodeOfEachPageIsThatOfItsMergeDay) {
    const Sample sample = kilnField();
    WorksheetOptions options;
    options.bookId = "b0a4f2c1-7f3e-4a55-9a0b-2f6f5a1f3c11";
    options.revision = 41;
    const auto codeOf = [&] {
        PageCode code;
        const auto pages = worksheetPages(sample.s, sample.plan, sample.yard, options, EvenMeasure());
        for (const Page& page : pages) code = std::get<PageCode>(readPageCode(textsOf(page).back().text));
        return code;
    };
    PageCode expected{bookMark(options.bookId), sample.s.yard(sample.yard).id.value, sample.plan.on, 0, 41,
                      Sheet::MergeDay};
    EXPECT_EQ(codeOf(), expected) << "no merge day is saved: the book's revision";
    core::rules::MergeWish wish;
    wish.day.variant = 2;
    wish.day.revision = 5;
    options.wish = wish;
    options.sheet = Sheet::Checks;
    expected.variant = 2;
    expected.revision = 5;
    expected.sheet = Sheet::Checks;
    EXPECT_EQ(codeOf(), expected);
}

} // namespace
