#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "core/rules/hold.h"
#include "ui/form/form_panel.h"
#include "ui/window/yard_list.h"

#include <QListView>
#include <QMouseEvent>
#include <QProcess>

// A hive dropped on a yard of the list, and the same by the form of the keys (rule 4.15).

namespace {

namespace edit = core::edit;
using core::MmPoint;

struct OtherYard : tests::OpenWindow {
    core::YardId meadow;

    void SetUp() override {
        OpenWindow::SetUp();
        core::Yard yard;
        yard.name = QStringLiteral("Long Meadow");
        write([&](const edit::EditContext& c) { return edit::newYard(c, yard); });
        meadow = window->desk()->reading().snapshot.yards.back().id;
    }
    void write(const edit::Edit& edit) const { window->desk()->session().apply(edit); }
    void order(core::YardId yard) const {
        core::Result r;
        r.yard = yard;
        r.day = book.clock().day - 2;
        r.verdict = core::Verdict::Order;
        r.method = core::Method::Inspector;
        r.by = QStringLiteral("inspector");
        r.paper = QStringLiteral("12");
        write([&](const edit::EditContext& c) { return edit::logResult(c, r); });
    }
    core::YardId home() const { return *window->desk()->yard(); }
    QPoint row(int at) const {
        QListView* list = window->page()->yards()->list();
        const QPoint inside = list->visualRect(list->model()->index(at, 0)).center();
        return plan()->mapFromGlobal(list->viewport()->mapToGlobal(inside));
    }
    /// The yard where it stands, from the file.
    QString yardOf(const char* label) const {
        const auto reader = edit::Session::open(book.path(), book.clock(), edit::Session::Access::ReadOnly);
        const core::Snapshot s = reader->snapshot(book.clock().day);
        return s.yard(s.placeOf(s.livingNamed(QString::fromLatin1(label)).value())->yard).name;
    }
    const ui::window::YardModel& model() const { return window->page()->yards()->model(); }
};

TEST_F(OtherYard, DroppedOnAYardOfTheListItStandsThere) {
    const size_t lines = book.history().size();
    drag(at("A5"), row(1), false);
    EXPECT_TRUE(model().marked(1)) << "the yard under the pointer";
    EXPECT_FALSE(model().refused());
    EXPECT_NE(said().find("A5 to Long Meadow. Movement rules may ask for papers"), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, row(1));
    EXPECT_FALSE(model().marked(1));
    EXPECT_EQ(yardOf("A5"), QStringLiteral("Long Meadow")) << said();
    EXPECT_EQ(book.history().size(), lines + 1);
    EXPECT_NE(said().find("papers"), std::string::npos) << said();
    EXPECT_NE(said().find("how far Kiln Field lies from Long Meadow is not recorded"), std::string::npos) << said();
    EXPECT_EQ(plan()->drift().size(), 1u) << "to A4 and A6, at the place that it left";
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(yardOf("A5"), QStringLiteral("Kiln Field"));
}

TEST_F(OtherYard, AnEmptyStandThereIsTaken) {
    write([&](const edit::EditContext& c) { return edit::addStand(c, meadow, QStringLiteral("shade"), {4000, 2500}); });
    drag(at("A5"), row(1));
    EXPECT_EQ(book.placeOf(QStringLiteral("A5")), (MmPoint{4000, 2500})) << said();
}

TEST_F(OtherYard, SeveralKeepTheirLayoutThere) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A4"));
    drag(at("A2"), row(1));
    EXPECT_EQ(yardOf("A2"), QStringLiteral("Long Meadow")) << said();
    EXPECT_EQ(yardOf("A4"), QStringLiteral("Long Meadow"));
    EXPECT_EQ(book.placeOf(QStringLiteral("A4")) - book.placeOf(QStringLiteral("A2")), (MmPoint{4000, 0}));
}

TEST_F(OtherYard, OnItsOwnYardNothingIsWritten) {
    const size_t lines = book.history().size();
    drag(at("A5"), row(0));
    EXPECT_EQ(book.history().size(), lines);
    EXPECT_NE(said().find("A5 stands in Kiln Field already"), std::string::npos) << said();
}

TEST_F(OtherYard, EscapeOverTheListBringsItBack) {
    const size_t lines = book.history().size();
    drag(at("A5"), row(1), false);
    QTest::keyClick(plan(), Qt::Key_Escape);
    EXPECT_FALSE(model().marked(1));
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, row(1));
    EXPECT_EQ(book.history().size(), lines);
}

TEST_F(OtherYard, UnderAnOrderItIsRefusedAndNothingIsWritten) {
    order(meadow);
    const size_t lines = book.history().size();
    dialogs.expectCorrection = true; // asked, and not answered
    drag(at("A5"), row(1), false);
    EXPECT_TRUE(model().marked(1) && model().refused());
    EXPECT_NE(said().find("refused"), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, row(1));
    EXPECT_EQ(book.history().size(), lines);
    EXPECT_EQ(yardOf("A5"), QStringLiteral("Kiln Field"));
    EXPECT_NE(said().find("Nothing was carried"), std::string::npos) << said();
    ASSERT_EQ(dialogs.asked.size(), 1);
    EXPECT_TRUE(dialogs.asked.front().contains(QStringLiteral("Refused: ")));
}

TEST_F(OtherYard, ThatHasHappenedItIsAFactWithReasonAndNameAndHeldFromThenOn) {
    order(home());
    dialogs.expectCorrection = true;
    dialogs.correctionAnswer =
        edit::Correction{QStringLiteral("I. Berg"), QStringLiteral("carried before the order came")};
    drag(at("A5"), row(1));
    EXPECT_EQ(yardOf("A5"), QStringLiteral("Long Meadow")) << said();
    const auto line = window->desk()->session().history(1).front();
    EXPECT_EQ(line.by, QStringLiteral("I. Berg"));
    EXPECT_EQ(line.reason, QStringLiteral("carried before the order came"));
    const auto held =
        window->desk()->reading().holdsOf(*window->desk()->reading().find(book.idOf(QStringLiteral("A5"))));
    ASSERT_FALSE(held.empty());
    EXPECT_EQ(held.front().kind, core::rules::HoldKind::Order) << "the order goes with it";
}

TEST_F(OtherYard, TheFormOfTheKeysIsHeldToTheSame) {
    order(meadow);
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A5"));
    QTest::keyClick(window.get(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    auto* panel = window->page()->panel();
    ASSERT_NE(panel->form(), nullptr);
    panel->setValue(QStringLiteral("yard"), QStringLiteral("Long Meadow"));
    panel->setValue(QStringLiteral("x"), QStringLiteral("1"));
    panel->setValue(QStringLiteral("y"), QStringLiteral("1"));
    const size_t lines = book.history().size();
    dialogs.expectCorrection = true;
    panel->save();
    EXPECT_EQ(book.history().size(), lines);
    EXPECT_NE(panel->form(), nullptr) << "what was typed stays";
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("I. Berg"), QStringLiteral("it was")};
    panel->save();
    EXPECT_EQ(yardOf("A5"), QStringLiteral("Long Meadow"));
    EXPECT_EQ(window->desk()->session().history(1).front().reason, QStringLiteral("it was"));
}

} // namespace
