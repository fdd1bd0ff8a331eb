#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/card/colony_card.h"
#include "ui/window/read_banner.h"

#include <QFile>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QSysInfo>

#include <csignal>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace {

using ui::window::MainWindow;

/// The first window writes; the second one is opened on the same book.
struct TwoWindows : tests::OpenWindow {
    tests::TestDialogs dialogs2;
    std::unique_ptr<MainWindow> second;

    void openSecond() {
        second = std::make_unique<MainWindow>(book.clock(), dialogs2);
        ASSERT_TRUE(second->openBook(book.path()));
        second->resize(1440, 900);
        second->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(second.get()));
    }
    ui::plan::PlanView* plan2() const { return second->page()->plan(); }
    std::string banner() const { return second->banner()->shown().toStdString(); }
    void dragInSecond(const char* label) const {
        const QPoint from = plan2()->viewPointOf(book.idOf(QLatin1StringView(label))).toPoint();
        QTest::mousePress(plan2(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 5; ++i) QTest::mouseMove(plan2(), from + QPoint(0, -20 * i));
        QTest::mouseRelease(plan2(), Qt::LeftButton, {}, from + QPoint(0, -100));
    }
    core::MmPoint shownInSecond(const char* label) const {
        const auto& scene = plan2()->scene();
        return scene.hives[scene.find(book.idOf(QLatin1StringView(label))).value()].at;
    }
};

TEST_F(TwoWindows, TheSecondSaysWhoHasTheBookAndChangesNothing) {
    window->desk()->session().setAuthor(QStringLiteral("Ana"));
    openSecond();
    const QString since = book.clock().nowUtc().toLocalTime().toString(QStringLiteral("HH:mm"));
    EXPECT_EQ(second->banner()->shown(),
              QStringLiteral("Ana on %1 has this book open since %2: here it can only be read.")
                  .arg(QSysInfo::machineHostName(), since));
    EXPECT_TRUE(second->banner()->isVisible());
    EXPECT_FALSE(window->banner()->isVisible());
    const core::MmPoint before = book.placeOf(QStringLiteral("A1"));
    dragInSecond("A1");
    EXPECT_EQ(book.placeOf(QStringLiteral("A1")), before);
    EXPECT_EQ(second->saying().toStdString(), banner());
    EXPECT_EQ(shownInSecond("A1"), before);
    const size_t lines = book.history().size();
    QTest::keyClick(second.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book.history().size(), lines);
}

TEST_F(TwoWindows, TheBookUnderASecondNameIsOnlyReadAndItIsSaidWhy) {
    const QString other = book.path() + QStringLiteral(".other.yardwright");
    ASSERT_EQ(link(QFile::encodeName(book.path()).constData(), QFile::encodeName(other).constData()), 0);
    second = std::make_unique<MainWindow>(book.clock(), dialogs2);
    ASSERT_TRUE(second->openBook(other));
    EXPECT_TRUE(second->desk()->session().readOnly());
    EXPECT_NE(banner().find("its file has a second name (a hard link)"), std::string::npos) << banner();
    EXPECT_NE(banner().find("Here it can only be read."), std::string::npos) << banner();
}

TEST_F(TwoWindows, TheSecondFollowsTheFirstByItself) {
    openSecond();
    drag(at("A1"), ground({0, 3000}));
    const core::MmPoint now = book.placeOf(QStringLiteral("A1"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return shownInSecond("A1") == now; }, 10'000));
    window->undo();
    second->desk()->follow();
    EXPECT_EQ(shownInSecond("A1"), (core::MmPoint{0, 0}));
}

TEST_F(TwoWindows, AnEditWhileTheSecondReadsIsNotShownByHalves) {
    openSecond();
    int edits = 0;
    // The first writes just when the second has its snapshot and the card is yet to read the visits.
    QObject::connect(second->desk(), &ui::desk::Desk::chosenChanged, second.get(), [&] {
        if (edits++ > 0) return;
        core::Visit visit;
        visit.colony = book.idOf(QStringLiteral("A2"));
        visit.day = book.clock().day;
        visit.beesTop = core::Quarters{37};
        window->desk()->save(QStringLiteral("Log a visit"),
                             [visit](const core::edit::EditContext& c) { return core::edit::logVisit(c, visit); });
    });
    second->desk()->choose(book.idOf(QStringLiteral("A2")));
    ASSERT_EQ(edits, 1);
    const auto& reading = second->desk()->reading();
    const auto& facts = reading.factsOf(reading.find(book.idOf(QStringLiteral("A2"))).value());
    ASSERT_TRUE(facts.strength);
    EXPECT_EQ(*facts.strength, core::Quarters{37});
    QString card;
    for (const QLabel* label : second->findChild<ui::card::ColonyCard*>()->findChildren<QLabel*>())
        card += label->text() + u'\n';
    EXPECT_TRUE(card.contains(QStringLiteral("9.25"))) << card.toStdString();
}

TEST_F(TwoWindows, TryAgainWritesHereOnceTheFirstIsGone) {
    openSecond();
    second->desk()->choose(book.idOf(QStringLiteral("A4")));
    QTest::mouseClick(second->banner()->tryAgainButton(), Qt::LeftButton);
    EXPECT_TRUE(second->desk()->session().readOnly());
    EXPECT_TRUE(second->banner()->isVisible());
    drag(at("A1"), ground({0, 3000}));
    const core::MmPoint moved = book.placeOf(QStringLiteral("A1"));
    window.reset();
    QTest::keyClick(second.get(), Qt::Key_F5);
    EXPECT_FALSE(second->desk()->session().readOnly());
    EXPECT_FALSE(second->banner()->isVisible());
    EXPECT_EQ(shownInSecond("A1"), moved) << "what the first did last is seen";
    EXPECT_EQ(second->desk()->chosen(), book.idOf(QStringLiteral("A4"))) << "in place";
    dragInSecond("A4");
    EXPECT_NE(book.placeOf(QStringLiteral("A4")), (core::MmPoint{6000, 0}));
    EXPECT_TRUE(second->saying().endsWith(QStringLiteral("· saved"))) << second->saying().toStdString();
}

TEST(HeldBook, WithoutANoteIsHeldByAnotherWindow) {
    tests::BookOfTest book;
    tests::TestDialogs dialogs;
    const QByteArray lock = QFile::encodeName(book.path() + QStringLiteral("-lock"));
    const int held = open(lock.constData(), O_RDWR | O_CREAT, 0666);
    ASSERT_EQ(flock(held, LOCK_EX | LOCK_NB), 0);
    MainWindow window(book.clock(), dialogs);
    ASSERT_TRUE(window.openBook(book.path()));
    EXPECT_EQ(window.banner()->shown(), QStringLiteral("Another window has this book open: here it can only be read."));
    close(held);
    window.tryAgain();
    EXPECT_FALSE(window.desk()->session().readOnly());
}

#ifdef YW_PROGRAM
TEST(HeldBook, OfAKilledProgramIsWritableByTryAgain) {
    tests::BookOfTest book;
    tests::TestDialogs dialogs;
    QProcess program;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    environment.insert(QStringLiteral("USER"), QStringLiteral("bo"));
    program.setProcessEnvironment(environment);
    program.start(QStringLiteral(YW_PROGRAM), {book.path()});
    ASSERT_TRUE(program.waitForStarted());
    const auto signedBy = [&] {
        QFile note(book.path() + QStringLiteral("-lock"));
        return note.open(QIODevice::ReadOnly) && note.readAll().contains("who=bo");
    };
    ASSERT_TRUE(QTest::qWaitFor(signedBy, 60'000));
    MainWindow window(book.clock(), dialogs);
    ASSERT_TRUE(window.openBook(book.path()));
    EXPECT_TRUE(window.banner()->shown().startsWith(QStringLiteral("bo on ")))
        << window.banner()->shown().toStdString();
    ASSERT_EQ(kill(static_cast<pid_t>(program.processId()), SIGKILL), 0);
    ASSERT_TRUE(program.waitForFinished());
    window.tryAgain();
    EXPECT_FALSE(window.desk()->session().readOnly());
    const core::ColonyId a1 = book.idOf(QStringLiteral("A1"));
    window.desk()->save(QStringLiteral("Carry a hive"), [&](const core::edit::EditContext& c) {
        return core::edit::carryHive(c, a1, {0, 4000}, book.clock().day);
    });
    EXPECT_EQ(book.placeOf(QStringLiteral("A1")), (core::MmPoint{0, 4000}));
}
#endif

} // namespace
