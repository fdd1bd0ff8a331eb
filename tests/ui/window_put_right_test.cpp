#include "tests/ui/recording.h"

#include "core/edit/edits.h"
#include "ui/records/record_model.h"
#include "ui/visit/visit_form.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>

namespace {

namespace edit = core::edit;
using ui::records::RecordKind;

struct PuttingRight : tests::Recording {
    core::ColonyId id(const char* label) const { return book.idOf(QLatin1StringView(label)); }
    const edit::Session& session() const { return window->desk()->session(); }

    void transfer(const char* from, const char* to) const {
        core::Transfer t;
        t.day = book.clock().day;
        t.from = id(from);
        t.to = id(to);
        t.what = core::TransferKind::Brood;
        t.count = 2;
        write([=](const edit::EditContext& c) { return edit::logTransfer(c, t); });
    }
    /// American foulbrood was seen in it yesterday.
    void sign(const char* label) const {
        core::Visit v;
        v.colony = id(label);
        v.day = book.clock().day - 3;
        v.signs.add(core::Sign::Afb);
        write([=](const edit::EditContext& c) { return edit::logVisit(c, v); });
    }
    ui::visit::VisitForm* visitForm() const { return window->page()->form(); }
    QLineEdit* visitField(ui::visit::Field f) const {
        return visitForm()->findChild<QLineEdit*>(QStringLiteral("visitField%1").arg(static_cast<int>(f)));
    }
    bool held(const char* label) const {
        const auto& r = window->desk()->reading();
        for (const auto& h : r.holdsOf(*r.find(id(label))))
            if (h.kind == core::rules::HoldKind::AfbContact) return true;
        return false;
    }
};

TEST_F(PuttingRight, TheCardListsAllRecordsNewestFirst) {
    transfer("A5", "A2");
    core::Treatment t;
    t.yard = window->desk()->yard();
    t.day = book.clock().day - 2;
    t.product = QStringLiteral("Product");
    t.substance = QStringLiteral("thymol");
    write([=](const edit::EditContext& c) { return edit::logTreatment(c, t); });
    choose("A2");
    const auto& model = records()->model();
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(model.at(0).title, QStringLiteral("Taken from A5"));
    EXPECT_EQ(model.at(1).kind, RecordKind::Visit);
    EXPECT_EQ(model.at(2).title, QStringLiteral("Treatment of the yard"));
    EXPECT_EQ(model.at(3).kind, RecordKind::Began);
    choose("A5");
    EXPECT_EQ(records()->model().at(0).title, QStringLiteral("Given to A2"));
    for (int i = 0; i < model.rowCount(); ++i)
        EXPECT_FALSE(model.index(i).data(Qt::AccessibleTextRole).toString().isEmpty());
}

TEST_F(PuttingRight, ACarryIsListedAndTakenBack) {
    const core::MmPoint before = book.placeOf(QStringLiteral("A2"));
    drag(at("A2"), ground({2000, -3000}));
    ASSERT_NE(book.placeOf(QStringLiteral("A2")), before);
    choose("A2");
    goTo(QStringLiteral("Carried"));
    key(Qt::Key_Delete);
    EXPECT_EQ(book.placeOf(QStringLiteral("A2")), before) << said();
    EXPECT_EQ(rowTitled(QStringLiteral("Carried")), -1);
}

TEST_F(PuttingRight, ACarryIsOpenedAndItsDayPlaceAndHeadingPutRight) {
    drag(at("A2"), ground({2000, -3000}));
    choose("A2");
    goTo(QStringLiteral("Carried"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_EQ(panel()->form()->title(), QStringLiteral("A2 carried on 15 Sep 2026"));
    fill("day", "1 May 2026");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown()) << "it began on 10 May";
    EXPECT_NE(shownBy("problem"), QString());
    fill("day", "12 Sep 2026");
    pick("stand", 1); // elsewhere
    fill("x", "2.5");
    fill("y", "-4");
    fill("heading", "SE");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    const auto places = session().placementsOf(id("A2"));
    ASSERT_EQ(places.size(), 2u);
    EXPECT_EQ(places[0].until, core::dayOf(2026, 9, 12));
    EXPECT_EQ(places[1].since, core::dayOf(2026, 9, 12));
    EXPECT_EQ(places[1].headingDeg, 135);
    EXPECT_EQ(book.placeOf(QStringLiteral("A2")), (core::MmPoint{2500, -4000}));
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(session().placementsOf(id("A2")).back().since, book.clock().day) << "one step";
}

TEST_F(PuttingRight, TheFirstPlaceIsPutRightWithTheColonysData) {
    choose("A2");
    goTo(QStringLiteral("Began"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_FALSE(panel()->findChild<QWidget*>(QStringLiteral("field.x"))->isVisible()) << "it keeps its stand";
    fill("heading", "W");
    fill("since", "1 May 2026");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    const auto turned = session().placementsOf(id("A2")).front();
    EXPECT_EQ(turned.headingDeg, 270);
    EXPECT_EQ(turned.since, core::dayOf(2026, 5, 1));
    EXPECT_EQ(book.placeOf(QStringLiteral("A2")), (core::MmPoint{2000, 0}));
    goTo(QStringLiteral("Began"));
    key(Qt::Key_Return);
    pick("stand", 1); // elsewhere: all stands are taken
    fill("x", "4.1");
    fill("y", "0");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown()) << "A3 stands there";
    EXPECT_TRUE(shownBy("problem").contains(QStringLiteral("A3"))) << shownBy("problem").toStdString();
    fill("x", "2");
    fill("y", "3");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_EQ(book.placeOf(QStringLiteral("A2")), (core::MmPoint{2000, 3000}));
}

TEST_F(PuttingRight, AVisitIsOpenedFromTheListAndChanged) {
    choose("A2");
    goTo(QStringLiteral("Visit"));
    key(Qt::Key_Return);
    ASSERT_TRUE(visitForm()->isVisible()) << said();
    EXPECT_EQ(visitField(ui::visit::Field::BeesTop)->text(), QStringLiteral("3.5"));
    EXPECT_EQ(visitField(ui::visit::Field::Brood)->text(), QStringLiteral("4"));
    EXPECT_FALSE(visitForm()->dirty());
    QTest::keyClick(visitField(ui::visit::Field::BeesTop), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(visitField(ui::visit::Field::BeesTop), QStringLiteral("4 1/4"));
    key(Qt::Key_Return);
    EXPECT_FALSE(visitForm()->isVisible()) << said();
    const auto visits = book.visitsOf(QStringLiteral("A2"));
    ASSERT_EQ(visits.size(), 1u);
    EXPECT_EQ(visits[0].beesTop, core::Quarters{17});
    EXPECT_EQ(visits[0].broodFrames, 4);
    EXPECT_EQ(visits[0].queen, core::QueenSeen::Eggs);
    EXPECT_TRUE(cardText().contains(QStringLiteral("4.25"))) << "the card follows";
}

TEST_F(PuttingRight, AnOddCountIsAskedAboutOnce) {
    choose("A1"); // 3 frames yesterday
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    for (QComboBox* box : visitForm()->findChildren<QComboBox*>())
        if (box->accessibleName().startsWith(QStringLiteral("Brood boxes"))) box->setCurrentIndex(2);
    QTest::keyClicks(visitField(ui::visit::Field::BeesTop), QStringLiteral("7"));
    QTest::keyClicks(visitField(ui::visit::Field::UpperTop), QStringLiteral("5"));
    key(Qt::Key_Return);
    EXPECT_TRUE(visitForm()->isVisible());
    EXPECT_NE(said().find("12 frames"), std::string::npos) << said();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A1")).size(), 1u);
    key(Qt::Key_Return);
    EXPECT_FALSE(visitForm()->isVisible()) << said();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A1")).size(), 2u);
}

TEST_F(PuttingRight, ATransferIsChangedInItsForm) {
    transfer("A5", "A2");
    choose("A2");
    goTo(QStringLiteral("Taken from A5"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_EQ(panel()->values().at(QStringLiteral("from")), QStringLiteral("A5"));
    fill("from", "A6");
    fill("count", "3");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    const auto all = session().transfersOf(id("A2"));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].from, id("A6"));
    EXPECT_EQ(all[0].count, 3);
}

TEST_F(PuttingRight, AVisitTakenBackIsUndoable) {
    choose("A2");
    goTo(QStringLiteral("Visit"));
    key(Qt::Key_Delete);
    EXPECT_TRUE(book.visitsOf(QStringLiteral("A2")).empty()) << said();
    EXPECT_NE(said().find("saved"), std::string::npos) << said();
    EXPECT_TRUE(records()->isAncestorOf(QApplication::focusWidget())) << "the keys stay in the list";
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
}

TEST_F(PuttingRight, ATransferThatAHoldRestsOnIsTakenBackOnlyAsACorrection) {
    transfer("A5", "A2");
    sign("A5");
    ASSERT_TRUE(held("A2"));
    choose("A2");
    goTo(QStringLiteral("Taken from A5"));
    dialogs.expectCorrection = true;
    QTest::mouseClick(records()->findChild<QPushButton*>(QStringLiteral("takeBackRecord")), Qt::LeftButton);
    ASSERT_EQ(dialogs.asked.size(), 1);
    EXPECT_TRUE(dialogs.asked.front().contains(QStringLiteral("A2"))) << dialogs.asked.front().toStdString();
    EXPECT_EQ(session().transfersOf(id("A2")).size(), 1u) << "no answer, nothing taken back";
    EXPECT_TRUE(held("A2"));
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("R. Tester"), QStringLiteral("it was A6")};
    QTest::mouseClick(records()->findChild<QPushButton*>(QStringLiteral("takeBackRecord")), Qt::LeftButton);
    EXPECT_TRUE(session().transfersOf(id("A2")).empty()) << said();
    EXPECT_FALSE(held("A2"));
    EXPECT_EQ(session().history(1).front().reason, QStringLiteral("it was A6"));
}

TEST_F(PuttingRight, ChangingARecordThatAHoldRestsOnAsksTheSame) {
    transfer("A5", "A2");
    sign("A5");
    choose("A2");
    goTo(QStringLiteral("Taken from A5"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown());
    fill("from", "A6");
    dialogs.expectCorrection = true;
    key(Qt::Key_Return);
    EXPECT_EQ(dialogs.asked.size(), 1);
    EXPECT_TRUE(formShown()) << "no answer: the form stays";
    EXPECT_EQ(panel()->values().at(QStringLiteral("from")), QStringLiteral("A6"));
    EXPECT_EQ(session().transfersOf(id("A2")).front().from, id("A5"));
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("R. Tester"), QStringLiteral("it was A6")};
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown());
    EXPECT_EQ(session().transfersOf(id("A2")).front().from, id("A6"));
}

TEST_F(PuttingRight, ARecordTakenBackMeanwhileIsSaidAndTypingStays) {
    transfer("A5", "A2");
    choose("A2");
    goTo(QStringLiteral("Taken from A5"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown());
    fill("note", "seen again");
    QTest::mouseClick(window->topBar()->undoButton(), Qt::LeftButton);
    ASSERT_TRUE(session().transfersOf(id("A2")).empty());
    EXPECT_TRUE(shownBy("meanwhile").contains(QStringLiteral("taken back"))) << shownBy("meanwhile").toStdString();
    EXPECT_EQ(panel()->values().at(QStringLiteral("note")), QStringLiteral("seen again"));
    field("note")->setFocus();
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_TRUE(session().transfersOf(id("A2")).empty()) << "judged by what the book holds now";
    EXPECT_NE(shownBy("problem"), QString());
}

TEST_F(PuttingRight, AVisitChangedMeanwhileIsSaidAndTypingStays) {
    choose("A2");
    goTo(QStringLiteral("Visit"));
    key(Qt::Key_Return);
    QTest::keyClicks(visitField(ui::visit::Field::Note), QStringLiteral("calm"));
    QTest::mouseClick(window->topBar()->undoButton(), Qt::LeftButton); // A6's visit
    const auto* meanwhile = visitForm()->findChild<QLabel*>(QStringLiteral("meanwhile"));
    EXPECT_FALSE(meanwhile->isVisible()) << "another record is none of it";
    core::Visit now = book.visitsOf(QStringLiteral("A2")).front();
    write([=](const edit::EditContext&) {
        edit::ChangeSet change;
        core::Visit after = now;
        after.note = QStringLiteral("hot");
        change.text = QStringLiteral("Noted");
        change.rows.push_back({core::Table::Visit, now.id.value, core::toRow(now), core::toRow(after)});
        return change;
    });
    EXPECT_TRUE(meanwhile->isVisible());
    EXPECT_EQ(visitField(ui::visit::Field::Note)->text(), QStringLiteral("calm"));
}

TEST_F(PuttingRight, AnEndedColonyIsFoundAndItsRecordsOpened) {
    write([this](const edit::EditContext& c) {
        return edit::endColony(c, id("A2"), book.clock().day - 1, core::EndKind::Dead);
    });
    QTest::keyClick(window.get(), Qt::Key_F, Qt::ControlModifier);
    ASSERT_TRUE(formShown());
    type("A9");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown()) << "there is none";
    EXPECT_NE(shownBy("problem.colony"), QString());
    fill("colony", "A2");
    key(Qt::Key_Return);
    ASSERT_TRUE(window->page()->card()->isVisible());
    EXPECT_TRUE(cardText().contains(QStringLiteral("died on 14 Sep 2026"))) << cardText().toStdString();
    goTo(QStringLiteral("Visit"));
    key(Qt::Key_Return);
    EXPECT_TRUE(visitForm()->isVisible());
    key(Qt::Key_Escape);
    goTo(QStringLiteral("End"));
    key(Qt::Key_Delete);
    EXPECT_TRUE(window->desk()->reading().find(id("A2"))) << said();
}

TEST(RecordModel, HoldsToTheContractOfModels) {
    ui::records::RecordModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({{RecordKind::Visit, 3, core::dayOf(2026, 9, 1), QStringLiteral("Visit"), QStringLiteral("5 frames"), false},
                   {RecordKind::Began, 1, core::dayOf(2026, 5, 1), QStringLiteral("Began"), QString(), false}});
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(0).data().toString(), QStringLiteral("1 Sep 2026, Visit: 5 frames"));
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace
