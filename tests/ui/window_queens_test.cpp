#include "tests/ui/recording.h"

#include "core/edit/edits.h"
#include "core/edit/queens.h"
#include "ui/card/elevation.h"
#include "ui/window/top_bar.h"

namespace {

using tests::Recording;
namespace edit = core::edit;

struct QueensAndFeed : Recording {
    core::edit::Session& session() const { return window->desk()->session(); }
    core::ColonyId id(const char* label) const { return book.idOf(QLatin1StringView(label)); }
    std::vector<core::Feeding> fed(const char* label) const { return session().feedingsOf(id(label)); }
    std::vector<core::Queen> queens(const char* label) const { return session().queensOf(id(label)); }
    QString noteShown() const {
        QString all;
        for (const QLabel* label : panel()->findChildren<QLabel*>())
            if (label->isVisible()) all += label->text() + u'\n';
        return all;
    }
    QString sideSpoken() const {
        const auto* side = window->page()->card()->findChild<ui::card::ElevationView*>();
        return side ? side->accessibleDescription() : QString();
    }
};

TEST_F(QueensAndFeed, FeedIsGivenByKeysAlone) {
    begin("A2", Qt::Key_O);
    EXPECT_EQ(QApplication::focusWidget(), field("what"));
    key(Qt::Key_Tab);
    type("3:2");
    key(Qt::Key_Tab);
    type("10");
    // Source of the density: CRC Handbook of Chemistry and Physics, 60 % sucrose at 20 °C, 1.2864 kg/l.
    EXPECT_TRUE(noteShown().contains(QStringLiteral("60 % sugar, 7.7 kg of sugar, about 9.4 kg of stores")))
        << noteShown().toStdString();
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    ASSERT_EQ(fed("A2").size(), 1u);
    const core::Feeding f = fed("A2")[0];
    EXPECT_EQ(f.volume, core::Millilitres{10'000});
    EXPECT_EQ(f.mix, QStringLiteral("3:2"));
    EXPECT_EQ(f.day, book.clock().day);
    EXPECT_TRUE(cardText().contains(QStringLiteral("10 L of syrup since 1 Jan (7.7 kg of sugar)")))
        << cardText().toStdString();
    goTo(QStringLiteral("Fed"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown());
    pick("what", 1); // fondant: no mix
    pick("measure", 1);
    fill("amount", "2.5");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    EXPECT_EQ(fed("A2")[0].weight, core::Decagrams{250});
    EXPECT_EQ(fed("A2")[0].mix, QString());
    goTo(QStringLiteral("Fed"));
    key(Qt::Key_Delete);
    EXPECT_TRUE(fed("A2").empty()) << said();
}

TEST_F(QueensAndFeed, AllSelectedAreFedInOneUndo) {
    choose("A1");
    key(Qt::Key_A, Qt::ControlModifier);
    begin("A1", Qt::Key_O); // a click selects one alone
    EXPECT_TRUE(panel()->form()->title().contains(QStringLiteral("A1")));
    key(Qt::Key_Escape);
    key(Qt::Key_A, Qt::ControlModifier);
    ASSERT_EQ(window->desk()->selected().size(), 6u);
    QTest::keyClick(window.get(), Qt::Key_O, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_TRUE(panel()->form()->title().contains(QStringLiteral("6 hives")));
    fill("mix", "1:1");
    fill("amount", "2,5");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString();
    for (const char* label : {"A1", "A6"}) EXPECT_EQ(fed(label).at(0).volume, core::Millilitres{2500});
    QTest::mouseClick(window->topBar()->undoButton(), Qt::LeftButton);
    for (const char* label : {"A1", "A6"}) EXPECT_TRUE(fed(label).empty()) << said();
}

TEST_F(QueensAndFeed, WhatIsWrongWithFeedIsSaidBesideTheField) {
    begin("A2", Qt::Key_O);
    fill("mix", "thick:");
    fill("amount", "101");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_TRUE(shownBy("problem.mix").contains(QStringLiteral("3:2")));
    EXPECT_TRUE(shownBy("problem.amount").contains(QStringLiteral("100 L"))) << shownBy("problem.amount").toStdString();
    fill("mix", "");
    fill("amount", "16");
    key(Qt::Key_Return);
    EXPECT_TRUE(shownBy("question").contains(QStringLiteral("much"))) << shownBy("question").toStdString();
    key(Qt::Key_Return);
    EXPECT_EQ(fed("A2").size(), 1u) << "asked about once";
}

TEST_F(QueensAndFeed, ANewQueenWithHerMark) {
    begin("A2", Qt::Key_Q);
    fill("day", "2026-06-01");
    fill("born", "2024");
    pick("mark", 5); // blue
    EXPECT_TRUE(noteShown().contains(QStringLiteral("Marked blue, but the colour of 2024 is green.")))
        << noteShown().toStdString();
    fill("tag", "17");
    key(Qt::Key_Return);
    EXPECT_TRUE(shownBy("question").contains(QStringLiteral("Marked blue"))) << "asked about once";
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    ASSERT_EQ(queens("A2").size(), 1u);
    EXPECT_EQ(session().colony(id("A2"))->queenBorn, 2024);
    EXPECT_TRUE(cardText().contains(QStringLiteral("2 years, born 2024, green, marked blue, disc 17")))
        << cardText().toStdString();
    EXPECT_TRUE(cardText().contains(QStringLiteral("Marked blue, but the colour of 2024 is green.")));
    EXPECT_TRUE(sideSpoken().contains(QStringLiteral("queen of 2024, green, marked blue, disc 17")))
        << sideSpoken().toStdString();

    begin("A2", Qt::Key_Q); // the next one
    EXPECT_TRUE(noteShown().contains(QStringLiteral("born 2024, blue, disc 17"))) << noteShown().toStdString();
    fill("born", "2026");
    pick("fate", 0);
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    ASSERT_EQ(queens("A2").size(), 2u);
    EXPECT_EQ(queens("A2")[0].fate, core::QueenFate::Superseded);
    EXPECT_EQ(queens("A2")[0].until, book.clock().day);
    EXPECT_EQ(session().colony(id("A2"))->queenBorn, 2026);
    EXPECT_GE(rowTitled(QStringLiteral("Queen gone")), 0);
    plan()->setFocus();
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(queens("A2").size(), 1u);
    EXPECT_FALSE(queens("A2")[0].until);
}

TEST_F(QueensAndFeed, WhatBecameOfHer) {
    choose("A2");
    QTest::keyClick(window.get(), Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_FALSE(formShown());
    EXPECT_NE(said().find("No queen of A2 is noted"), std::string::npos) << said();
    for (const char* label : {"A2", "A3"})
        write([&](const edit::EditContext& c) {
            core::Queen q;
            q.colony = id(label);
            q.since = core::dayOf(2026, 6, 1);
            q.born = 2025;
            return edit::newQueen(c, q);
        });
    begin("A2", Qt::Key_N);
    pick("fate", 6); // moved
    fill("to", "A3");
    pick("other_fate", 2); // dead
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    EXPECT_EQ(queens("A2")[0].fate, core::QueenFate::Moved);
    ASSERT_EQ(queens("A3").size(), 2u);
    EXPECT_EQ(queens("A3")[0].fate, core::QueenFate::Dead);
    EXPECT_FALSE(queens("A3")[1].until);
    choose("A2");
    EXPECT_TRUE(cardText().contains(QStringLiteral("none is noted; the last one: moved to another colony")))
        << cardText().toStdString();
    goTo(QStringLiteral("Queen gone"));
    key(Qt::Key_Delete);
    EXPECT_FALSE(queens("A2")[0].until) << said();
    goTo(QStringLiteral("New queen"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown());
    fill("source", "line 12");
    pick("origin", 2); // bought
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    EXPECT_EQ(queens("A2")[0].origin, core::QueenOrigin::Bought);
    goTo(QStringLiteral("New queen"));
    key(Qt::Key_Delete);
    EXPECT_TRUE(queens("A2").empty()) << said();
}

TEST_F(QueensAndFeed, WhatCannotBeOfAQueenIsRefused) {
    begin("A2", Qt::Key_Q);
    fill("born", "1989");
    EXPECT_NE(shownBy("problem.born"), QString());
    fill("born", "2027");
    EXPECT_TRUE(shownBy("problem").contains(QStringLiteral("after the day that she begins")))
        << shownBy("problem").toStdString();
    fill("born", "2015");
    fill("mother", "Z9");
    EXPECT_NE(shownBy("problem.mother"), QString());
    fill("mother", "A2");
    key(Qt::Key_Return);
    EXPECT_TRUE(shownBy("question").contains(QStringLiteral("11 years"))) << shownBy("question").toStdString();
    EXPECT_TRUE(queens("A2").empty());
}

} // namespace
