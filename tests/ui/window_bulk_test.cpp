#include "tests/ui/recording.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/bulk/bulk.h"
#include "ui/bulk/common.h"

#include <QLineEdit>

// Several visits or colonies changed at once, in the real window.

namespace {

using tests::Recording;
namespace edit = core::edit;

/// All six hives of the yard selected; their visits of yesterday differ in the bees above, and A3 was not checked.
struct Together : Recording {
    void selectAll() const { QTest::keyClick(window.get(), Qt::Key_A, Qt::ControlModifier); }
    void press(Qt::Key letter) const { QTest::keyClick(window.get(), letter, Qt::ControlModifier | Qt::AltModifier); }
    core::edit::Session& now() const { return window->desk()->session(); }
    core::Visit last(const char* label) const { return now().visitsOf(book.idOf(QLatin1StringView(label)), 1).front(); }
    std::vector<core::VisitId> visits() const {
        std::vector<core::VisitId> out;
        for (const char* label : {"A1", "A2", "A3", "A4", "A5", "A6"}) out.push_back(last(label).id);
        return out;
    }
    bool changeVisits() const {
        return ui::bulk::changeVisits(*window->desk(), visits(), [this](std::unique_ptr<ui::form::Form> form) {
            return window->page()->openForm(std::move(form)) != nullptr;
        });
    }
    QPushButton* button() const { return panel()->findChild<QPushButton*>(QStringLiteral("saveRecord")); }
    qint64 lines() const { return now().history(1).front().seq; }
    QString hintOf(const char* name) const { return qobject_cast<QLineEdit*>(field(name))->placeholderText(); }
};

TEST_F(Together, MixedValuesAreShownAsSuchAndCommonOnesStandInTheirFields) {
    ASSERT_TRUE(changeVisits());
    EXPECT_EQ(button()->text().remove(u'&'), "Change 6 visits");
    EXPECT_EQ(hintOf("above"), "mixed values: 3, 3.5, 4, 4.5 …");
    EXPECT_EQ(shownBy("note.above"), "") << "not said twice";
    EXPECT_EQ(hintOf("checked"), "mixed values: 4, —");
    EXPECT_EQ(qobject_cast<QLineEdit*>(field("brood"))->text(), "4");
    EXPECT_EQ(qobject_cast<QComboBox*>(field("queen"))->currentData().toString(), "eggs");
    EXPECT_FALSE(window->page()->panel()->dirty());
}

TEST_F(Together, OnlyWhatIsTypedIsWrittenInOneUndo) {
    const auto before = lines();
    ASSERT_TRUE(changeVisits());
    fill("supers", "1");
    field("note")->setFocus();
    type("supers on");
    QTest::mouseClick(button(), Qt::LeftButton);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    EXPECT_EQ(lines(), before + 1);
    for (int i = 0; i < 6; ++i) {
        const core::Visit v = last(("A" + std::to_string(i + 1)).c_str());
        EXPECT_EQ(v.supers, 1);
        EXPECT_EQ(v.note, "supers on");
        EXPECT_EQ(v.beesTop, core::Quarters{12 + 2 * i}) << "mixed, and not touched";
        EXPECT_EQ(v.broodChecked.has_value(), i != 2);
    }
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    for (const char* label : {"A1", "A6"}) {
        EXPECT_FALSE(last(label).supers);
        EXPECT_EQ(last(label).note, "");
    }
}

TEST_F(Together, MixedValuesBecomeOneWhereTheyAreTypedAndADashTakesThemOut) {
    ASSERT_TRUE(changeVisits());
    fill("above", "3 1/4");
    EXPECT_TRUE(shownBy("note.above").contains("mixed values: 3, 3.5")) << "still seen under what is typed";
    fill("brood", "-");
    fill("checked", "-");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    for (const char* label : {"A1", "A3", "A6"}) {
        EXPECT_EQ(last(label).beesTop, core::Quarters{13});
        EXPECT_FALSE(last(label).broodFrames);
        EXPECT_FALSE(last(label).broodChecked);
    }
}

TEST_F(Together, AMixedChoiceBecomesNotRecorded) {
    core::Visit seen = last("A2");
    seen.queen = core::QueenSeen::Seen;
    write([&](const edit::EditContext& c) { return edit::changeVisit(c, seen); });
    ASSERT_TRUE(changeVisits());
    auto* queen = qobject_cast<QComboBox*>(field("queen"));
    ASSERT_TRUE(queen->currentText().startsWith("mixed values")) << queen->currentText().toStdString();
    queen->setFocus();
    key(Qt::Key_Down); // not looked for
    ASSERT_EQ(queen->currentData().toString(), "");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    for (const char* label : {"A1", "A2", "A6"}) EXPECT_FALSE(last(label).queen) << label;
}

TEST_F(Together, ARefusalNamesTheFirstAndLeavesAllAsItWas) {
    const auto before = lines();
    ASSERT_TRUE(changeVisits());
    fill("brood", "3"); // four were looked at in all but A3
    EXPECT_TRUE(shownBy("problem").startsWith("A1, visit of 2026-09-14: ")) << shownBy("problem").toStdString();
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown()) << "what was typed stays";
    EXPECT_EQ(lines(), before);
    EXPECT_EQ(last("A3").broodFrames, 4);
    fill("brood", "three");
    EXPECT_NE(shownBy("problem.brood"), QString());
}

TEST_F(Together, NothingTypedAnewIsNothingToSave) {
    const auto before = lines();
    ASSERT_TRUE(changeVisits());
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_EQ(shownBy("problem"), "Nothing is typed anew yet.");
    EXPECT_EQ(lines(), before);
}

TEST_F(Together, SeveralVisitsAreTakenBackInOneUndo) {
    const auto before = visits();
    ASSERT_TRUE(ui::bulk::takeBackVisits(*window->desk(), before));
    EXPECT_TRUE(now().visitsOf(book.idOf("A1"), 1).empty());
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(visits(), before);
}

// Rule 4.4: a foulbrood hold rests on one of them.
TEST_F(Together, TakingBackOneThatHoldsIsACorrection) {
    core::Visit sick = last("A5");
    sick.id = {};
    sick.day = sick.day + 1;
    sick.signs.add(core::Sign::Afb);
    write([&](const edit::EditContext& c) { return edit::logVisit(c, sick); });
    dialogs.expectCorrection = true;
    const auto all = visits();
    EXPECT_FALSE(ui::bulk::takeBackVisits(*window->desk(), all)) << "no reason was given";
    EXPECT_EQ(visits(), all);
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("Ana"), QStringLiteral("Another hive's")};
    EXPECT_TRUE(ui::bulk::takeBackVisits(*window->desk(), all));
    EXPECT_EQ(last("A5").day, sick.day - 1);
}

TEST_F(Together, TheSameVisitOfAllSelectedByKeysAlone) {
    selectAll();
    press(Qt::Key_L);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_EQ(button()->text().remove(u'&'), "Save 6 visits");
    fill("supers", "2");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    for (const char* label : {"A1", "A6"}) {
        EXPECT_EQ(last(label).day, book.clock().day);
        EXPECT_EQ(last(label).supers, 2);
        EXPECT_FALSE(last(label).beesTop);
    }
    selectAll();
    press(Qt::Key_L);
    fill("supers", "1");
    EXPECT_TRUE(shownBy("problem").startsWith("A1: "))
        << "a visit of that day is there: " << shownBy("problem").toStdString();
}

TEST_F(Together, TheDataOfAllSelectedByKeysAlone) {
    selectAll();
    press(Qt::Key_K);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_EQ(button()->text().remove(u'&'), "Change 6 colonies");
    EXPECT_EQ(qobject_cast<QLineEdit*>(field("queen_born"))->text(), "2025");
    fill("queen_born", "2026");
    key(Qt::Key_Return);
    ASSERT_FALSE(formShown()) << shownBy("problem").toStdString();
    for (const char* label : {"A1", "A6"})
        EXPECT_EQ(now().colony(book.idOf(QLatin1StringView(label)))->queenBorn, 2026);
    EXPECT_NE(said().find("6 colonies"), std::string::npos) << said();
}

TEST_F(Together, WithNothingSelectedItIsSaidWhatToDo) {
    window->desk()->choose(std::nullopt);
    press(Qt::Key_K);
    EXPECT_FALSE(formShown());
    EXPECT_NE(said().find("Select hives first"), std::string::npos) << said();
    EXPECT_FALSE(ui::bulk::changeVisits(*window->desk(), {}, [](auto) { return true; }));
}

TEST(Common, SaysWhatIsSharedAndWhatDiffers) {
    using ui::bulk::commonOf;
    EXPECT_EQ(commonOf({"3", "3"}).value, "3");
    EXPECT_FALSE(commonOf({"3", "3"}).mixed);
    EXPECT_TRUE(commonOf({"3", ""}).mixed);
    EXPECT_EQ(commonOf({"3", "", "3", "4"}).seen, "3, —, 4");
    EXPECT_EQ(commonOf({}).value, "");
    using ui::bulk::written;
    EXPECT_FALSE(written({{"f", "3 "}}, "f", commonOf({"3"})));
    EXPECT_EQ(written({{"f", ""}}, "f", commonOf({"3"})), QString());
    EXPECT_FALSE(written({{"f", ""}}, "f", commonOf({"3", "4"})));
    EXPECT_EQ(written({{"f", "—"}}, "f", commonOf({"3", "4"})), QString());
    EXPECT_FALSE(written({{"f", "-"}}, "f", commonOf({"", ""})));
}

} // namespace
