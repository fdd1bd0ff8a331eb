#include "ui/form/form_panel.h"

#include "core/base/error.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace {

using namespace ui::form;

const core::Day kToday = core::dayOf(2026, 9, 15);

/// A needed name, a number, a choice that shows a further field, and a number above 12 that is odd.
struct SmallForm : Form {
    std::optional<QString>& moved;
    explicit SmallForm(std::optional<QString>& m) : moved(m) {}
    QString title() const override { return QStringLiteral("A small record"); }
    QString saveText() const override { return QStringLiteral("&Save it"); }
    std::vector<Field> fields() const override {
        return {{.key = QStringLiteral("name"), .label = QStringLiteral("&Name"), .spoken = QStringLiteral("Name of it")},
                {.key = QStringLiteral("count"),
                 .kind = Kind::Whole,
                 .label = QStringLiteral("&Count"),
                 .spoken = QStringLiteral("Count")},
                {.key = QStringLiteral("how"),
                 .kind = Kind::Choice,
                 .label = QStringLiteral("&How"),
                 .spoken = QStringLiteral("How"),
                 .heading = QStringLiteral("More"),
                 .options = {{QStringLiteral("plain")}, {QStringLiteral("paper")}}},
                {.key = QStringLiteral("paper"),
                 .label = QStringLiteral("&Paper"),
                 .spoken = QStringLiteral("Number of the paper"),
                 .shown = [](const Values& v) { return typed(v, QStringLiteral("how")) == QStringLiteral("paper"); }}};
    }
    Values start() const override { return {{QStringLiteral("count"), QStringLiteral("3")}}; }
    std::vector<Problem> problems(const Values& v) const override {
        Judge j(v, kToday);
        j.need(QStringLiteral("name"), QStringLiteral("A name is needed."));
        j.whole(QStringLiteral("count"), 1, 20);
        return j.take();
    }
    QStringList odd(const Values& v) const override {
        return wholeOf(v, QStringLiteral("count")) > 12 ? QStringList{QStringLiteral("More than a dozen.")} : QStringList{};
    }
    core::edit::Edit edit(const Values&) const override { return {}; }
    std::optional<QString> meanwhile() const override { return moved; }
};

struct ThePanel : ::testing::Test {
    QWidget window;
    FormPanel* panel = new FormPanel(&window);
    std::optional<QString> moved;
    std::vector<Values> saved;
    std::optional<core::Error> refusal;
    bool answer = true;
    QString said;
    int closed = 0;

    void SetUp() override {
        window.resize(420, 600);
        panel->resize(400, 580);
        QObject::connect(panel, &FormPanel::said, &window, [this](const QString& s) { said = s; });
        QObject::connect(panel, &FormPanel::closed, &window, [this] { ++closed; });
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
        panel->open(std::make_unique<SmallForm>(moved), kToday, [this](const Form&, const Values& v) {
            if (refusal) throw *refusal;
            if (answer) saved.push_back(v);
            return answer;
        });
    }
    void type(const char* text) const { QTest::keyClicks(QApplication::focusWidget(), QLatin1StringView(text)); }
    void key(Qt::Key k, Qt::KeyboardModifiers with = {}) const { QTest::keyClick(QApplication::focusWidget(), k, with); }
    QWidget* field(const char* k) const { return panel->findChild<QWidget*>(QStringLiteral("field.") + QLatin1StringView(k)); }
    QString shownBy(const char* name) const {
        const auto* label = panel->findChild<QLabel*>(QLatin1StringView(name));
        return label && label->isVisible() ? label->text() : QString();
    }
};

TEST_F(ThePanel, AQuietFormDoesNotShout) {
    EXPECT_EQ(QApplication::focusWidget(), field("name"));
    EXPECT_EQ(shownBy("problem.name"), QString());
    key(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), field("count"));
    EXPECT_EQ(shownBy("problem.name"), QStringLiteral("A name is needed.")) << "once it was left";
}

TEST_F(ThePanel, WhatIsTypedWrongIsSaidAsItIsTyped) {
    key(Qt::Key_Tab);
    type("31");
    EXPECT_NE(shownBy("problem.count"), QString());
    EXPECT_EQ(field("count")->accessibleDescription(), shownBy("problem.count"));
    key(Qt::Key_A, Qt::ControlModifier);
    type("4");
    EXPECT_EQ(shownBy("problem.count"), QString());
}

TEST_F(ThePanel, EnterSaysAllThatIsMissingAndGoesThere) {
    key(Qt::Key_Tab);
    key(Qt::Key_Return);
    EXPECT_EQ(shownBy("problem.name"), QStringLiteral("A name is needed."));
    EXPECT_EQ(QApplication::focusWidget(), field("name"));
    EXPECT_EQ(said, QStringLiteral("A name is needed."));
    EXPECT_TRUE(saved.empty());
    EXPECT_EQ(closed, 0);
}

TEST_F(ThePanel, EnterSavesWhatWasTyped) {
    type("N1");
    key(Qt::Key_Return);
    ASSERT_EQ(saved.size(), 1u);
    EXPECT_EQ(saved.front().at(QStringLiteral("name")), QStringLiteral("N1"));
    EXPECT_EQ(saved.front().at(QStringLiteral("count")), QStringLiteral("3"));
    EXPECT_EQ(closed, 1);
    EXPECT_EQ(panel->form(), nullptr);
}

TEST_F(ThePanel, TheButtonSavesToo) {
    type("N1");
    QTest::mouseClick(panel->findChild<QPushButton*>(QStringLiteral("saveRecord")), Qt::LeftButton);
    EXPECT_EQ(saved.size(), 1u);
}

TEST_F(ThePanel, OddThingsAreAskedAboutOnce) {
    type("N1");
    key(Qt::Key_Tab);
    key(Qt::Key_A, Qt::ControlModifier);
    type("13");
    key(Qt::Key_Return);
    EXPECT_TRUE(saved.empty());
    EXPECT_TRUE(shownBy("question").startsWith(QStringLiteral("More than a dozen.")));
    key(Qt::Key_Return);
    EXPECT_EQ(saved.size(), 1u);
}

TEST_F(ThePanel, EscapeAsksOnceWhereSomethingWasTyped) {
    type("N");
    key(Qt::Key_Escape);
    EXPECT_EQ(closed, 0);
    EXPECT_TRUE(said.contains(QStringLiteral("not saved")));
    type("1");
    key(Qt::Key_Escape);
    EXPECT_EQ(closed, 0) << "typing on forgets the first Escape";
    key(Qt::Key_Escape);
    EXPECT_EQ(closed, 1);
}

TEST_F(ThePanel, EscapeLeavesAnUntouchedFormAtOnce) {
    key(Qt::Key_Escape);
    EXPECT_EQ(closed, 1);
}

TEST_F(ThePanel, ARefusalKeepsWhatWasTypedAndSaysWhy) {
    type("N1");
    refusal = core::Error(core::Error::Kind::Book, QStringLiteral("The disk is full."));
    key(Qt::Key_Return);
    EXPECT_EQ(shownBy("problem"), QStringLiteral("The disk is full."));
    EXPECT_EQ(said, QStringLiteral("The disk is full."));
    EXPECT_EQ(panel->values().at(QStringLiteral("name")), QStringLiteral("N1"));
    refusal.reset();
    key(Qt::Key_Return);
    EXPECT_EQ(saved.size(), 1u);
}

TEST_F(ThePanel, AQuestionNotAnsweredSavesNothing) {
    type("N1");
    answer = false;
    key(Qt::Key_Return);
    EXPECT_EQ(closed, 0);
    EXPECT_NE(shownBy("problem"), QString());
}

TEST_F(ThePanel, ARecordThatChangedMeanwhileIsSaidAndNothingIsLost) {
    type("N1");
    moved = QStringLiteral("It was changed meanwhile.");
    panel->judgeAgain();
    EXPECT_EQ(shownBy("meanwhile"), *moved);
    EXPECT_EQ(panel->values().at(QStringLiteral("name")), QStringLiteral("N1"));
}

TEST_F(ThePanel, AFieldIsShownByTheOthers) {
    EXPECT_FALSE(field("paper")->isVisible());
    auto* how = qobject_cast<QComboBox*>(field("how"));
    how->setFocus();
    QTest::keyClick(how, Qt::Key_Down);
    EXPECT_TRUE(field("paper")->isVisible());
    key(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), field("paper"));
}

TEST_F(ThePanel, LosingTheFocusChangesNothing) {
    type("N1");
    const Values before = panel->values();
    QWidget other;
    other.show();
    other.activateWindow();
    QApplication::processEvents();
    EXPECT_EQ(panel->values(), before);
    EXPECT_EQ(closed, 0);
    EXPECT_TRUE(saved.empty());
}

TEST_F(ThePanel, AValueSetFromOutsideIsAsTyped) {
    std::vector<Values> told;
    QObject::connect(panel, &FormPanel::valuesChanged, &window, [&](const Values& v) { told.push_back(v); });
    panel->setValue(QStringLiteral("name"), QStringLiteral("N2"));
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().at(QStringLiteral("name")), QStringLiteral("N2"));
    EXPECT_TRUE(panel->dirty());
}

TEST_F(ThePanel, EveryFieldIsNamed) {
    for (const char* k : {"name", "count", "how", "paper"}) EXPECT_FALSE(field(k)->accessibleName().isEmpty()) << k;
}

} // namespace
