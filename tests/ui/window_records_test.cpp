#include "tests/support/small_files.h"
#include "tests/ui/recording.h"

#include "core/edit/edits.h"
#include "ui/start/start_desk.h"

#include <QFileInfo>

namespace {

using tests::Recording;
namespace edit = core::edit;

const core::edit::Session& bookOf(const Recording& r) { return r.window->desk()->session(); }

TEST_F(Recording, ATransferByKeysAlone) {
    begin("A2", Qt::Key_T);
    EXPECT_EQ(QApplication::focusWidget(), field("way"));
    key(Qt::Key_Tab);
    type("a4");
    key(Qt::Key_Tab);
    key(Qt::Key_Down); // brood
    key(Qt::Key_Tab);
    type("2");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    const auto all = bookOf(*this).transfersOf(book.idOf(QStringLiteral("A2")));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].from, book.idOf(QStringLiteral("A4")));
    EXPECT_EQ(all[0].to, book.idOf(QStringLiteral("A2")));
    EXPECT_EQ(all[0].what, core::TransferKind::Brood);
    EXPECT_EQ(all[0].count, 2);
    EXPECT_EQ(all[0].day, book.clock().day);
    EXPECT_NE(said().find("saved"), std::string::npos) << said();
}

TEST_F(Recording, ATransferFromTheChosenOne) {
    begin("A2", Qt::Key_T);
    pick("way", 1);
    fill("other", "A5");
    key(Qt::Key_Return);
    const auto all = bookOf(*this).transfersOf(book.idOf(QStringLiteral("A5")));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].to, book.idOf(QStringLiteral("A5")));
}

TEST_F(Recording, ATransferThatCannotBeIsRefusedBesideTheField) {
    begin("A2", Qt::Key_T);
    fill("other", "A9");
    EXPECT_TRUE(shownBy("problem.other").contains(QStringLiteral("A9"))) << shownBy("problem.other").toStdString();
    fill("other", "A2");
    EXPECT_NE(shownBy("problem.other"), QString());
    fill("count", "0");
    EXPECT_NE(shownBy("problem.count"), QString()) << "all at once";
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_TRUE(bookOf(*this).transfersOf(book.idOf(QStringLiteral("A2"))).empty());
    fill("other", "A3");
    fill("count", "1");
    fill("day", "2026-05-09");
    EXPECT_TRUE(shownBy("problem").contains(QStringLiteral("2026-05-10")) ||
                shownBy("problem.other").contains(QStringLiteral("A3")))
        << "before either began: " << shownBy("problem").toStdString();
}

TEST_F(Recording, ATransferBeforeTheLastVisitIsAskedAboutOnce) {
    begin("A2", Qt::Key_T);
    fill("other", "A5");
    fill("day", "1 Sep 2026");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_TRUE(shownBy("question").contains(QStringLiteral("A2"))) << shownBy("question").toStdString();
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown());
    EXPECT_EQ(bookOf(*this).transfersOf(book.idOf(QStringLiteral("A2"))).size(), 1u);
}

TEST_F(Recording, AResultAndAnOrder) {
    begin("A2", Qt::Key_R);
    fill("by", "County laboratory");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    begin("A2", Qt::Key_R);
    pick("result", 3); // an order
    EXPECT_NE(shownBy("problem.method"), QString()) << "comes from an inspector";
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_NE(shownBy("problem.paper"), QString());
    EXPECT_NE(shownBy("problem.by"), QString());
    pick("of", 1); // the yard
    pick("method", 1);
    fill("paper", "O 12");
    fill("by", "Inspector");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_EQ(bookOf(*this).resultsOf(book.idOf(QStringLiteral("A2"))).size(), 1u);
    const auto yards = bookOf(*this).resultsOf(*window->desk()->yard());
    ASSERT_EQ(yards.size(), 1u);
    EXPECT_EQ(yards[0].verdict, core::Verdict::Order);
    EXPECT_EQ(yards[0].paper, QStringLiteral("O 12"));
}

TEST_F(Recording, ATreatmentWithAllThatMedicineRecordsAskFor) {
    begin("A2", Qt::Key_M);
    fill("product", "Product");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_NE(shownBy("problem.substance"), QString());
    fill("substance", "oxalic acid");
    fill("quantity", "50,5");
    fill("unit", "ml");
    fill("days", "0");
    fill("withdrawal_days", "1001");
    EXPECT_NE(shownBy("problem.withdrawal_days"), QString());
    fill("withdrawal_days", "1000");
    fill("bought", "2026-08-01");
    fill("prescriber", "A veterinarian");
    QTest::keyClick(field("antibiotic"), Qt::Key_Space);
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString();
    const auto all = bookOf(*this).treatmentsOf(book.idOf(QStringLiteral("A2")));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].quantity, 50.5);
    EXPECT_EQ(all[0].days, 0);
    EXPECT_EQ(all[0].withdrawalDays, 1000);
    EXPECT_EQ(all[0].bought, core::dayOf(2026, 8, 1));
    EXPECT_EQ(all[0].prescriber, QStringLiteral("A veterinarian"));
    EXPECT_TRUE(all[0].antibiotic);
    EXPECT_FALSE(all[0].disposed);
}

TEST_F(Recording, AUnionWithAHeldOneIsRefusedWithTheRulesSentence) {
    begin("A2", Qt::Key_U);
    fill("into", "A3"); // its brood was not checked
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_TRUE(shownBy("problem").startsWith(QStringLiteral("A3 is held"))) << shownBy("problem").toStdString();
    EXPECT_FALSE(bookOf(*this).colony(book.idOf(QStringLiteral("A2")))->ended);
    EXPECT_EQ(panel()->values().at(QStringLiteral("into")), QStringLiteral("A3"));
    const core::ColonyId a2 = book.idOf(QStringLiteral("A2"));
    fill("into", "A4");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_EQ(bookOf(*this).colony(a2)->end, core::EndKind::United);
}

TEST_F(Recording, ADivideBesideItsMother) {
    begin("A2", Qt::Key_D);
    EXPECT_EQ(panel()->values().at(QStringLiteral("label")), QStringLiteral("A7")) << "the first that is free";
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    const auto at = book.placeOf(QStringLiteral("A7"));
    EXPECT_EQ(core::squaredDistance(at, book.placeOf(QStringLiteral("A2"))), 1'000'000) << at.x << ' ' << at.y;
    EXPECT_EQ(bookOf(*this).lineageOf(book.idOf(QStringLiteral("A7"))).size(), 1u);
    begin("A3", Qt::Key_D);
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_TRUE(shownBy("problem").startsWith(QStringLiteral("A3 is held"))) << shownBy("problem").toStdString();
    fill("label", "A1");
    EXPECT_NE(shownBy("problem.label"), QString()) << "in use";
}

TEST_F(Recording, AnEndAndANewColonyOnTheStand) {
    const core::ColonyId old = book.idOf(QStringLiteral("A2"));
    const core::MmPoint at = book.placeOf(QStringLiteral("A2"));
    begin("A2", Qt::Key_E);
    pick("how", 1); // destroyed
    fill("day", "2026-05-01");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown()) << "before it began";
    EXPECT_NE(shownBy("problem"), QString());
    fill("day", "2026-09-14");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_EQ(bookOf(*this).colony(old)->end, core::EndKind::Destroyed);

    QTest::keyClick(window.get(), Qt::Key_F, Qt::ControlModifier);
    type("a2");
    key(Qt::Key_Return);
    ASSERT_TRUE(window->page()->card()->isVisible());
    EXPECT_TRUE(cardText().contains(QStringLiteral("destroyed"))) << cardText().toStdString();
    EXPECT_GE(rowTitled(QStringLiteral("End")), 0);
    QTest::mouseClick(window->page()->card()->findChild<QPushButton*>(QStringLiteral("newColony")), Qt::LeftButton);
    ASSERT_TRUE(formShown());
    EXPECT_EQ(panel()->values().at(QStringLiteral("label")), QStringLiteral("A2"));
    fill("since", "2026-09-14");
    EXPECT_TRUE(shownBy("problem.label").contains(QStringLiteral("15"))) << shownBy("problem.label").toStdString();
    fill("since", "2026-09-15");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_NE(book.idOf(QStringLiteral("A2")), old);
    EXPECT_EQ(book.placeOf(QStringLiteral("A2")), at);
    EXPECT_EQ(window->desk()->session().colony(old)->ended, core::dayOf(2026, 9, 14));
}

TEST_F(Recording, AColonysOwnData) {
    begin("A2", Qt::Key_K);
    fill("label", "A3");
    EXPECT_NE(shownBy("problem.label"), QString()) << "in use";
    fill("label", "B2");
    fill("queen_born", "2026");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_EQ(bookOf(*this).colony(book.idOf(QStringLiteral("B2")))->queenBorn, 2026);
}

TEST_F(Recording, EscapeThrowsTypingAwayOnlyAtTheSecond) {
    begin("A2", Qt::Key_T);
    key(Qt::Key_Escape);
    EXPECT_FALSE(formShown()) << "nothing was typed";
    begin("A2", Qt::Key_T);
    fill("note", "two frames");
    key(Qt::Key_Escape);
    EXPECT_TRUE(formShown());
    EXPECT_EQ(panel()->values().at(QStringLiteral("note")), QStringLiteral("two frames"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(formShown());
    EXPECT_TRUE(bookOf(*this).transfersOf(book.idOf(QStringLiteral("A2"))).empty());
}

TEST_F(Recording, TypingOutlivesWhatTheHandDoesElsewhere) {
    begin("A2", Qt::Key_T);
    fill("note", "two frames");
    choose("A5");
    QTest::mouseDClick(plan(), Qt::LeftButton, {}, at("A5"));
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    QTest::keyClick(window.get(), Qt::Key_F, Qt::ControlModifier);
    QTest::keyClick(window.get(), Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(formShown()) << said();
    EXPECT_EQ(panel()->values().at(QStringLiteral("note")), QStringLiteral("two frames"));
    EXPECT_NE(said().find("not saved"), std::string::npos) << said();
}

TEST_F(Recording, AnotherFormTakesThePlaceOfAnUntouchedOne) {
    QTest::keyClick(window.get(), Qt::Key_G, Qt::ControlModifier); // hives placed one by one
    ASSERT_TRUE(window->page()->start()->busy());
    QTest::keyClick(window.get(), Qt::Key_F, Qt::ControlModifier);
    EXPECT_FALSE(window->page()->start()->busy()) << "the plan takes no clicks for hives any more";
    EXPECT_NE(field("colony"), nullptr);
}

TEST_F(Recording, AFullDiskKeepsWhatWasTyped) {
    begin("A2", Qt::Key_T);
    fill("other", "A5");
    fill("note", "two frames");
    {
        const tests::SmallFiles small(4096);
        key(Qt::Key_Return);
    }
    EXPECT_TRUE(formShown());
    EXPECT_NE(shownBy("problem"), QString());
    EXPECT_EQ(panel()->values().at(QStringLiteral("note")), QStringLiteral("two frames"));
    EXPECT_TRUE(bookOf(*this).transfersOf(book.idOf(QStringLiteral("A2"))).empty());
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << "the disk has room again: " << shownBy("problem").toStdString();
    EXPECT_EQ(bookOf(*this).transfersOf(book.idOf(QStringLiteral("A2"))).size(), 1u);
}

TEST_F(Recording, EveryFieldOfEveryFormIsNamed) {
    for (const Qt::Key letter : {Qt::Key_T, Qt::Key_M, Qt::Key_R, Qt::Key_U, Qt::Key_D, Qt::Key_E, Qt::Key_K, Qt::Key_H}) {
        begin("A2", letter);
        for (const QWidget* w : panel()->findChildren<QWidget*>()) {
            if (!(w->focusPolicy() & Qt::TabFocus) || !w->objectName().startsWith(QStringLiteral("field."))) continue;
            EXPECT_FALSE(w->accessibleName().isEmpty()) << w->objectName().toStdString();
        }
        EXPECT_TRUE(panel()->isAncestorOf(QApplication::focusWidget())) << letter;
        QTest::keyClick(panel(), Qt::Key_Escape);
    }
}

} // namespace
