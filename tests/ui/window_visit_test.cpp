#include "tests/ui/open_window.h"

#include "ui/visit/visit_form.h"

#include <QApplication>
#include <QPushButton>

namespace {

struct LoggingAVisit : tests::OpenWindow {
    void type(const char* text) const { QTest::keyClicks(QApplication::focusWidget(), QLatin1StringView(text)); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const { QTest::keyClick(QApplication::focusWidget(), key, with); }
    bool formShown() const { return window->page()->form()->isVisible(); }
    /// To the second hive by Tab, and its form by keys.
    void begin() {
        key(Qt::Key_Tab);
        key(Qt::Key_Tab);
        ASSERT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A2")));
        QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
        ASSERT_TRUE(formShown());
        ASSERT_NE(QApplication::focusWidget(), nullptr);
    }
};

TEST_F(LoggingAVisit, ByKeysAlone) {
    begin();
    type("5 1/4");
    key(Qt::Key_Tab);
    type("5,5");
    key(Qt::Key_Tab);
    type("3.25");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << said();
    const auto visits = book.visitsOf(QStringLiteral("A2"));
    ASSERT_EQ(visits.size(), 2u);
    EXPECT_EQ(visits[0].day, book.clock().day);
    EXPECT_EQ(visits[0].beesTop, core::Quarters{21});
    EXPECT_EQ(visits[0].beesBottom, core::Quarters{22});
    EXPECT_EQ(visits[0].stores, core::Quarters{13});
    EXPECT_FALSE(visits[0].broodFrames);
    EXPECT_TRUE(window->topBar()->undoShown().contains(QStringLiteral("A2"))) << window->topBar()->undoShown().toStdString();
}

TEST_F(LoggingAVisit, AProblemIsSaidAndNothingIsSaved) {
    begin();
    type("11");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
    EXPECT_NE(said().find("10 frames"), std::string::npos) << said();
    EXPECT_FALSE(window->page()->form()->findChild<QPushButton*>(QStringLiteral("saveVisit"))->isEnabled());
}

TEST_F(LoggingAVisit, EscapeAsksOnceBeforeTypingIsLost) {
    begin();
    type("4");
    key(Qt::Key_Escape);
    EXPECT_TRUE(formShown());
    key(Qt::Key_Escape);
    EXPECT_FALSE(formShown());
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
}

TEST_F(LoggingAVisit, UndoTakesItBack) {
    begin();
    type("4");
    key(Qt::Key_Return);
    ASSERT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u);
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
}

TEST_F(LoggingAVisit, TakingBackAFoulbroodSignAsksForReasonAndName) {
    begin();
    ui::visit::VisitForm* form = window->page()->form();
    while (QApplication::focusWidget()->accessibleName() != QStringLiteral("Sign: foulbrood (American)")) {
        key(Qt::Key_Tab);
        ASSERT_TRUE(form->isAncestorOf(QApplication::focusWidget()));
    }
    key(Qt::Key_Space);
    key(Qt::Key_Return);
    ASSERT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u) << said();
    dialogs.expectCorrection = true;
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    ASSERT_EQ(dialogs.asked.size(), 1);
    EXPECT_TRUE(dialogs.asked.front().contains(QStringLiteral("A2"))) << dialogs.asked.front().toStdString();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u) << "no answer, nothing taken back";
    dialogs.correctionAnswer = core::edit::Correction{QStringLiteral("R. Tester"), QStringLiteral("wrong hive")};
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
}

} // namespace
