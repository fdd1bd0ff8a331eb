#include "tests/ui/picking.h"

#include <QProxyStyle>

namespace {

struct Finding : tests::Picking {
    std::string answer() const { return find()->answer().toStdString(); }
    bool inTheMiddle(const char* label) const {
        return plan()->rect().adjusted(100, 100, -100, -100).contains(at(label));
    }
};

TEST_F(Finding, ALabelTypedOnThePlanIsRingedAndFlownTo) {
    for (int i = 0; i < 8; ++i) QTest::keyClick(plan(), Qt::Key_Plus);
    ASSERT_FALSE(inTheMiddle("A6"));
    type("a");
    ASSERT_TRUE(find()->isVisible());
    EXPECT_TRUE(find()->line()->hasFocus());
    EXPECT_EQ(marked(), "A1 A2 A3 A4 A5 A6");
    EXPECT_EQ(answer(), "A1 · 1 of 6");
    type("6");
    EXPECT_EQ(marked(), "A6");
    EXPECT_EQ(answer(), "A6");
    EXPECT_TRUE(QTest::qWaitFor([&] { return inTheMiddle("A6"); }));
    EXPECT_EQ(chosen(), "") << "nothing is chosen before Enter";
    key(Qt::Key_Return);
    EXPECT_EQ(chosen(), "A6");
    EXPECT_FALSE(find()->isVisible());
    EXPECT_EQ(marked(), "");
    EXPECT_TRUE(plan()->hasFocus());
    EXPECT_EQ(book.history().size(), session().history(1000).size()) << "finding writes nothing";
}

TEST_F(Finding, TheWholeYardTurnsUpOnTheWayToAHiveFarOff) {
    const double fitted = plan()->camera().pixelsPerMetre;
    for (int i = 0; i < 14; ++i) QTest::keyClick(plan(), Qt::Key_Minus);
    ASSERT_LT(plan()->camera().pixelsPerMetre, 20);
    type("a4");
    EXPECT_TRUE(QTest::qWaitFor([&] { return plan()->camera().pixelsPerMetre >= 60; })) << "labels are read there";
    key(Qt::Key_Return);
    key(Qt::Key_Home);
    EXPECT_DOUBLE_EQ(plan()->camera().pixelsPerMetre, fitted);
}

TEST_F(Finding, EscapeGoesBackToWhereThePlanWas) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    for (int i = 0; i < 8; ++i) QTest::keyClick(plan(), Qt::Key_Plus);
    const ui::plan::Camera before = plan()->camera();
    key(Qt::Key_Slash);
    EXPECT_EQ(answer(), "Type a label: the plan flies to it.");
    type("a6");
    ASSERT_TRUE(QTest::qWaitFor([&] { return inTheMiddle("A6"); }));
    key(Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([&] { return plan()->camera().centre == before.centre; }));
    EXPECT_DOUBLE_EQ(plan()->camera().pixelsPerMetre, before.pixelsPerMetre);
    EXPECT_EQ(chosen(), "A2");
    EXPECT_FALSE(find()->isVisible());
    EXPECT_EQ(marked(), "");
}

TEST_F(Finding, DownAndUpGoThroughWhatWasFound) {
    type("A");
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    EXPECT_EQ(answer(), "A3 · 3 of 6");
    key(Qt::Key_Up);
    EXPECT_EQ(answer(), "A2 · 2 of 6");
    for (int i = 0; i < 3; ++i) key(Qt::Key_Up);
    EXPECT_EQ(answer(), "A5 · 5 of 6") << "around the end";
    key(Qt::Key_Return);
    EXPECT_EQ(chosen(), "A5");
}

TEST_F(Finding, ADigitFindsLabelsThatHoldIt) {
    type("4");
    EXPECT_EQ(marked(), "A4");
    key(Qt::Key_Return);
    EXPECT_EQ(chosen(), "A4");
}

TEST_F(Finding, AnotherYardsHiveIsNamedAndGoneTo) {
    type("b2");
    EXPECT_EQ(answer(), "B2 stands in Mill Lane: Enter goes there.");
    EXPECT_EQ(marked(), "");
    EXPECT_EQ(yard(), "Kiln Field");
    key(Qt::Key_Return);
    EXPECT_EQ(yard(), "Mill Lane");
    EXPECT_EQ(chosen(), "B2");
    EXPECT_TRUE(QTest::qWaitFor([&] { return inTheMiddle("B2"); }));
}

TEST_F(Finding, WhatIsNotThereChangesNothing) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    type("zz");
    EXPECT_EQ(answer(), "No living hive is called that. Ctrl + F finds those that ended too.");
    key(Qt::Key_Return);
    EXPECT_TRUE(find()->isVisible()) << "what was typed stays";
    EXPECT_EQ(find()->line()->text().toStdString(), "zz");
    EXPECT_EQ(chosen(), "A2");
    key(Qt::Key_Escape);
    EXPECT_EQ(chosen(), "A2");
}

TEST_F(Finding, AClickElsewhereEndsItWhereItIs) {
    type("a6");
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A3"));
    plan()->setFocus(Qt::MouseFocusReason);
    EXPECT_FALSE(find()->isVisible());
    EXPECT_EQ(marked(), "");
    EXPECT_EQ(chosen(), "A3");
}

TEST_F(Finding, TheMenuOpensItToo) {
    QTest::keyClick(window.get(), Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(find()->isVisible());
    EXPECT_TRUE(find()->line()->hasFocus());
    EXPECT_FALSE(find()->line()->accessibleName().isEmpty());
    type("a1");
    EXPECT_EQ(find()->line()->accessibleDescription().toStdString(), "A1") << "told to those who do not see it";
}

TEST_F(Finding, AHiveGoneMeanwhileIsNotFoundAnyMore) {
    type("a4");
    ASSERT_EQ(marked(), "A4");
    write([&](const core::edit::EditContext& c) {
        return core::edit::endColony(c, book.idOf(QStringLiteral("A4")), book.clock().day, core::EndKind::Dead);
    });
    EXPECT_EQ(marked(), "");
    key(Qt::Key_Return);
    EXPECT_EQ(chosen(), "");
}

/// As desktops are set where nothing is to move.
struct StillStyle : QProxyStyle {
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* back) const override {
        return hint == SH_Widget_Animation_Duration ? 0 : QProxyStyle::styleHint(hint, option, widget, back);
    }
};

TEST_F(Finding, WhereNothingIsToMoveTheCameraIsThereAtOnce) {
    StillStyle still;
    plan()->setStyle(&still);
    for (int i = 0; i < 8; ++i) QTest::keyClick(plan(), Qt::Key_Plus);
    ASSERT_FALSE(inTheMiddle("A6"));
    type("a6");
    EXPECT_TRUE(inTheMiddle("A6"));
    plan()->setStyle(nullptr);
}

} // namespace
