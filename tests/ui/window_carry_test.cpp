#include "tests/ui/open_window.h"

#include "ui/window/top_bar.h"

#include <QFile>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>

namespace {

using Carrying = tests::OpenWindow;

TEST_F(Carrying, AHiveDraggedToBareGroundStandsThereInTheFile) {
    drag(at("A5"), ground({8000, 3000}));
    EXPECT_EQ(book.placeOf(QStringLiteral("A5")), (core::MmPoint{8000, 3000})) << said();
    EXPECT_NE(said().find("A5"), std::string::npos);
    EXPECT_NE(said().find("3 m north"), std::string::npos) << said();
    EXPECT_TRUE(window->topBar()->undoShown().contains(QStringLiteral("A5"))) << window->topBar()->undoShown().toStdString();
}

TEST_F(Carrying, ASecondProcessReadsTheNewPlaceWhileTheWindowIsOpen) {
    drag(at("A5"), ground({8000, 3000}));
    QTemporaryDir out;
    QProcess other;
    other.start(QStringLiteral(YW_PROGRAM), {QStringLiteral("export"), book.path(), QStringLiteral("--to"), out.path()});
    ASSERT_TRUE(other.waitForFinished());
    ASSERT_EQ(other.exitCode(), 0) << other.readAllStandardError().toStdString();
    QFile placements(out.filePath(QStringLiteral("placements.csv")));
    ASSERT_TRUE(placements.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(placements.readAll());
    EXPECT_TRUE(text.contains(QRegularExpression(QStringLiteral("A5,2026-09-15,Kiln Field,[^,]+,8,3"))))
        << text.toStdString();
}

TEST_F(Carrying, OneDropIsOneUndo) {
    const size_t lines = book.history().size();
    drag(at("A5"), ground({8000, 3000}));
    EXPECT_EQ(book.history().size(), lines + 1);
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book.placeOf(QStringLiteral("A5")), (core::MmPoint{8000, 0}));
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(book.placeOf(QStringLiteral("A5")), (core::MmPoint{8000, 3000}));
    QTest::mouseClick(window->topBar()->undoButton(), Qt::LeftButton);
    EXPECT_EQ(book.placeOf(QStringLiteral("A5")), (core::MmPoint{8000, 0}));
}

TEST_F(Carrying, EscapeLeavesItWhereItStood) {
    const size_t lines = book.history().size();
    drag(at("A5"), ground({8000, 3000}), false);
    EXPECT_TRUE(plan()->carrying());
    QTest::keyClick(plan(), Qt::Key_Escape);
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 3000}));
    EXPECT_FALSE(plan()->carrying());
    EXPECT_EQ(book.history().size(), lines);
    EXPECT_EQ(book.placeOf(QStringLiteral("A5")), (core::MmPoint{8000, 0}));
}

TEST_F(Carrying, LosingTheFocusLeavesItWhereItStood) {
    const size_t lines = book.history().size();
    drag(at("A5"), ground({8000, 3000}), false);
    window->topBar()->undoButton()->setFocus();
    plan()->clearFocus();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 3000}));
    EXPECT_EQ(book.history().size(), lines);
}

TEST_F(Carrying, OnAnotherHiveNothingIsWrittenAndTheRulesAreSaid) {
    const size_t lines = book.history().size();
    drag(at("A5"), at("A3"));
    EXPECT_EQ(book.history().size(), lines);
    EXPECT_NE(said().find("A3 stands there"), std::string::npos) << said();
    EXPECT_NE(said().find("A5"), std::string::npos) << said();
}

TEST_F(Carrying, ABurstOfArrowKeysIsOneCarry) {
    const size_t lines = book.history().size();
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A6"));
    for (int i = 0; i < 3; ++i) QTest::keyClick(plan(), Qt::Key_Right);
    QTest::keyClick(plan(), Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(book.history().size(), lines) << "not before the burst ends";
    QTest::keyClick(plan(), Qt::Key_Return);
    EXPECT_EQ(book.history().size(), lines + 1);
    EXPECT_EQ(book.placeOf(QStringLiteral("A6")), (core::MmPoint{10300, 10}));
}

TEST_F(Carrying, ABurstEndsByItself) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A6"));
    QTest::keyClick(plan(), Qt::Key_Up);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !plan()->carrying(); }, 3000));
    EXPECT_EQ(book.placeOf(QStringLiteral("A6")), (core::MmPoint{10000, 100}));
}

TEST_F(Carrying, AClickOnlyChooses) {
    const size_t lines = book.history().size();
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    EXPECT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A2")));
    EXPECT_EQ(book.history().size(), lines);
}

TEST_F(Carrying, AClickWithCtrlSelectsMoreAndLess) {
    const auto id = [&](const char* label) { return book.idOf(QLatin1StringView(label)); };
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A3"));
    EXPECT_EQ(window->desk()->selected(), (std::vector{id("A2"), id("A3")}));
    EXPECT_EQ(plan()->selected(), window->desk()->selected());
    EXPECT_EQ(window->desk()->chosen(), id("A3"));
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A3"));
    EXPECT_EQ(window->desk()->selected(), std::vector{id("A2")});
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A5"));
    EXPECT_EQ(window->desk()->selected(), std::vector{id("A5")});
}

TEST_F(Carrying, OnAnotherDayThanTodayNothingIsCarried) {
    const size_t lines = book.history().size();
    window->setPlace(ui::window::Place::MergeDay);
    window->desk()->setDay(book.clock().day - 1);
    drag(at("A5"), ground({8000, 3000}));
    EXPECT_EQ(book.history().size(), lines);
    EXPECT_NE(said().find("14 Sep 2026"), std::string::npos) << said();
}

TEST_F(Carrying, ABookOpenElsewhereIsOnlyRead) {
    ui::window::MainWindow second(book.clock(), dialogs);
    ASSERT_TRUE(second.openBook(book.path()));
    second.show();
    EXPECT_TRUE(second.desk()->session().readOnly());
    EXPECT_FALSE(second.desk()->carryBarred().isEmpty());
}

} // namespace
