#include "core/rules/question.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Questions asked of the colonies. Source of the figures: own calculation, from the days and counts of each book.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

struct Book {
    explicit Book(const PlanBook& book, const QString& day = kFall) : s(book.on(day)), facts(colonyFacts(s)) {
        const auto held = holds(s);
        figures = colonyFigures(s, facts, held, {});
    }
    const ColonyFigures& of(const QString& label) const { return figures[static_cast<size_t>(named(s, label).value)]; }
    QString found(const Ask& ask) const {
        QStringList names;
        for (const ColonyIx ix : answer(s, figures, ask).found) names << s.colony(ix).label;
        return names.join(u' ');
    }
    int noFigure(const Ask& ask) const { return answer(s, figures, ask).noFigure; }

    Snapshot s;
    std::vector<ColonyFacts> facts;
    std::vector<ColonyFigures> figures;
};

/// Weighed, not weighed, weighed heavier.
PlanBook weights() {
    PlanBook book;
    book.colony("A").visit("A", "2026-09-10", {{"gross_kg", "31.99"}});
    book.colony("B").visit("B", "2026-09-10", {{"queen", "eggs"}});
    book.colony("C").visit("C", "2026-09-11", {{"gross_kg", "32"}});
    book.colony("D").visit("D", "2026-08-31", {{"gross_kg", "20"}});
    return book;
}

TEST(Question, AFigureThatIsNotRecordedIsNotNothing) {
    const Book book(weights());
    const Ask light{{AskWhat::Weight, AskHow::Below, 32}};
    EXPECT_EQ(book.found(light), "A D");
    EXPECT_EQ(book.noFigure(light), 1);
    EXPECT_EQ(book.found({{AskWhat::Weight, AskHow::NotRecorded, 0}}), "B");
    EXPECT_EQ(book.found({{AskWhat::Weight, AskHow::AtMost, 32}}), "A C D");
    EXPECT_EQ(book.found({{AskWhat::Weight, AskHow::AtLeast, 32}}), "C");
    EXPECT_EQ(book.found({{AskWhat::Weight, AskHow::Above, 32}}), "");
}

TEST(Question, AllConditionsMustHold) {
    const Book book(weights());
    const Ask september = readyAsk(ReadyAsk::LightInSeptember);
    EXPECT_EQ(book.found(september), "A") << "D was weighed in August";
    EXPECT_EQ(book.noFigure(september), 1) << "B alone: against D its month speaks";
    // Against a colony without the one figure another may speak.
    EXPECT_EQ(book.noFigure({{AskWhat::Weight, AskHow::Below, 32}, {AskWhat::Boxes, AskHow::Above, 1}}), 0);
    EXPECT_EQ(book.found({}), "") << "no condition, no answer";
}

TEST(Question, DaysWithoutAVisitCountFromTheBeginningWhereThereIsNone) {
    PlanBook book;
    book.unchecked("A", {{"since", "2026-09-02"}});
    book.unchecked("B", {{"since", "2026-08-01"}}).visit("B", "2026-09-01", {{"queen", "eggs"}});
    book.unchecked("C", {{"since", "2026-09-01"}});
    const Book on(book);
    EXPECT_EQ(on.of("A").daysUnvisited, 13);
    EXPECT_FALSE(on.of("A").visited);
    EXPECT_EQ(on.of("B").daysUnvisited, 14);
    EXPECT_EQ(on.found(readyAsk(ReadyAsk::NotVisited)), "") << "14 days are not more than 14";
    EXPECT_EQ(Book(book, "2026-09-16").found(readyAsk(ReadyAsk::NotVisited)), "B C");
}

TEST(Question, QueensAreAsOldAsTheYearsBetween) {
    PlanBook book;
    book.colony("A", {{"queen_born", "2023"}}).colony("B", {{"queen_born", "2024"}}).colony("C");
    const Book on(book);
    EXPECT_EQ(on.of("A").queenAge, 3);
    EXPECT_EQ(on.found(readyAsk(ReadyAsk::OldQueen)), "A");
    EXPECT_EQ(on.noFigure(readyAsk(ReadyAsk::OldQueen)), 1);
}

TEST(Question, ABroodCheckCountsAsTheHoldSays) {
    PlanBook book;
    book.colony("A").unchecked("B");
    book.unchecked("C").visit("C", "2026-09-01", {{"brood_frames", "6"}, {"brood_checked", "2"}});
    const Book on(book);
    const Ask none{{AskWhat::BroodCheckCounts, AskHow::Is, 0}};
    EXPECT_EQ(on.found(none), "B C");
    EXPECT_EQ(on.found(readyAsk(ReadyAsk::NoBroodCheck)), "B C");
    EXPECT_EQ(on.of("A").checked, parseIsoDay(kChecked));
    EXPECT_FALSE(on.of("C").checked) << "two of six frames are no clean check";
    // Rule 4.4.10: no older than 150 days, and from the season's start on (1 March) or 30 days old.
    EXPECT_EQ(on.of("A").checkUntil, parseIsoDay(kChecked).value() + 150);
    const Book last(book, isoText(parseIsoDay(kChecked).value() + 150));
    EXPECT_TRUE(last.of("A").checkCounts);
    const Book after(book, isoText(parseIsoDay(kChecked).value() + 151));
    EXPECT_FALSE(after.of("A").checkCounts) << "as the day said";
    EXPECT_FALSE(after.of("A").checkUntil);
}

TEST(Question, TheDayUntilWhichACheckCountsIsTheHoldsOwn) {
    PlanBook book;
    for (const char* checked : {"2025-09-20", "2026-01-31", "2026-02-20", "2026-03-01", "2026-05-05"}) {
        PlanBook one;
        one.unchecked("A", {{"since", "2025-01-01"}})
            .visit("A", checked, {{"brood_frames", "5"}, {"brood_checked", "5"}});
        const Day day = parseIsoDay(QString::fromLatin1(checked)).value();
        const auto until = Book(one, isoText(day)).of("A").checkUntil;
        ASSERT_TRUE(until) << checked;
        EXPECT_TRUE(Book(one, isoText(*until)).of("A").checkCounts)
            << checked << " to " << isoText(*until).toStdString();
        EXPECT_FALSE(Book(one, isoText(*until + 1)).of("A").checkCounts)
            << checked << " to " << isoText(*until).toStdString();
    }
}

TEST(Question, EndedColoniesAreNotAsked) {
    PlanBook book;
    book.unchecked("A", {{"since", "2026-01-01"}, {"ended", "2026-08-01"}, {"end", "dead"}}).unchecked("B");
    const Book on(book);
    EXPECT_EQ(on.figures.size(), 2u);
    EXPECT_EQ(on.found({{AskWhat::BroodCheckCounts, AskHow::Is, 0}}), "B");
}

TEST(Question, IsReadAsItWasWritten) {
    for (int i = 0; i < kReadyAskCount; ++i) {
        const Ask ask = readyAsk(static_cast<ReadyAsk>(i));
        EXPECT_EQ(readAsk(askJson(ask)), ask);
    }
    Ask all;
    for (int w = 0; w < kAskWhatCount; ++w) {
        const auto what = static_cast<AskWhat>(w);
        for (int h = 0; h < kAskHowCount; ++h) {
            const auto how = static_cast<AskHow>(h);
            const Ask one{{what, how, how == AskHow::NotRecorded ? 0 : askRange(what).most}};
            EXPECT_EQ(readAsk(askJson(one)).has_value(), fits(what, how)) << w << ' ' << h;
            if (fits(what, how)) {
                EXPECT_EQ(readAsk(askJson(one)), one);
            }
        }
    }
}

TEST(Question, OtherTextsAreNone) {
    for (const char* text :
         {"", "{}", "[]", "null", R"({"all":[]})", R"({"all":[{}]})", R"({"all":["weight"]})",
          R"({"all":[{"what":"weight","how":"below"}]})", R"({"all":[{"what":"weight","how":"below","than":"32"}]})",
          R"({"all":[{"what":"weight","how":"below","than":-1}]})",
          R"({"all":[{"what":"weight","how":"is","than":32}]})", R"({"all":[{"what":"queen","how":"is","than":1.5}]})",
          R"({"all":[{"what":"queen","how":"is","than":7}]})", R"({"all":[{"what":"honey","how":"above","than":1}]})"})
        EXPECT_FALSE(readAsk(QString::fromUtf8(text))) << text;
    EXPECT_FALSE(readAsk(askJson(Ask(kMostAskParts + 1, {AskWhat::Boxes, AskHow::Above, 1}))));
    EXPECT_TRUE(readAsk(askJson(Ask(kMostAskParts, {AskWhat::Boxes, AskHow::Above, 1}))));
}

} // namespace
