#include "tests/ui/open_window.h"

#include "ui/window/status_line.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QStatusTipEvent>

namespace {

struct StatusLine : tests::OpenWindow {
    ui::window::StatusLine* line() const { return window->statusLine(); }
    QString shown() const { return line()->findChild<QLabel*>(QStringLiteral("saying"))->text(); }
};

TEST_F(StatusLine, AnEditIsSaidAndThatItIsSaved) {
    drag(at("A1"), ground({0, 3000}));
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral(" · saved"))) << said();
    EXPECT_TRUE(shown().contains(QStringLiteral("A1")));
    EXPECT_EQ(line()->savedButton()->text(), QStringLiteral("saved"));
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(window->saying().startsWith(QStringLiteral("Undone: "))) << said();
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral(" · saved"))) << said();
}

TEST_F(StatusLine, SavedOpensTheHistoryByMouseAndKeys) {
    const QSignalSpy asked(line(), &ui::window::StatusLine::historyAsked);
    QTest::mouseClick(line()->savedButton(), Qt::LeftButton);
    line()->savedButton()->setFocus();
    QTest::keyClick(line()->savedButton(), Qt::Key_Space);
    EXPECT_EQ(asked.count(), 2);
}

TEST_F(StatusLine, AHintStandsInForTheSentenceAndGoes) {
    window->say(QStringLiteral("Something was said."));
    QStatusTipEvent hint(QStringLiteral("What the command does"));
    QCoreApplication::sendEvent(window.get(), &hint);
    EXPECT_EQ(shown(), QStringLiteral("What the command does"));
    EXPECT_EQ(window->saying(), QStringLiteral("Something was said."));
    QStatusTipEvent none{QString()};
    QCoreApplication::sendEvent(window.get(), &none);
    EXPECT_EQ(shown(), QStringLiteral("Something was said."));
}

TEST_F(StatusLine, ALongSentenceLeavesTheButtonAndTheAdviceInView) {
    window->resize(900, 700);
    window->say(QString(400, u'w'));
    EXPECT_LT(shown().size(), 400);
    EXPECT_TRUE(line()->rect().contains(line()->savedButton()->geometry()));
    for (const QLabel* label : line()->findChildren<QLabel*>()) {
        if (!label->isVisible()) continue;
        EXPECT_TRUE(line()->rect().contains(label->geometry())) << label->text().toStdString();
    }
}

} // namespace
