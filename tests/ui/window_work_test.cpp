#include "core/edit/edits.h"
#include "core/exchange/export.h"
#include "tests/ui/long_work.h"
#include "ui/busy/run.h"
#include "ui/health/report_page.h"
#include "ui/print/pages_view.h"
#include "ui/window/demo_offer.h"
#include "ui/window/welcome.h"

#include <QTreeWidget>

// Long work in the real window, by its keys: it shows how far it is, the window lives meanwhile, and Esc leaves
// nothing.

namespace {

using namespace tests;
using core::edit::Session;
using ui::busy::Panel;

TEST_F(LongWork, AnExportStoppedByEscLeavesNoFile) {
    open();
    dialogs.file = out("away/there.csv");
    Looker looker(Qt::Key_Escape);
    press(Qt::Key_E);
    EXPECT_EQ(said(), "Stopped: no file was written.");
    EXPECT_FALSE(QFileInfo::exists(out("away")));
    EXPECT_FALSE(anyPanel());
    EXPECT_GT(looker.ticks, 0);
}

TEST_F(LongWork, AnExportThatGoesOnIsWholeAndTheWindowLives) {
    open();
    dialogs.file = out("there.csv");
    const auto lines = window->desk()->session().history(1).front().seq;
    Looker looker;
    looker.meanwhile = [this] {
        QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
        QTest::keyClick(window.get(), Qt::Key_Q, Qt::ControlModifier);
        EXPECT_FALSE(window->close());
        window->resize(window->size() + QSize(40, 20));
    };
    press(Qt::Key_E);
    EXPECT_EQ(said(), "The book's files are in the folder " + out("there").toStdString() + '.');
    EXPECT_GT(looker.ticks, 5) << "timers run";
    EXPECT_GT(looker.shares, 2);
    EXPECT_EQ(looker.doing.value(0), QStringLiteral("Writing the book as CSV files"));
    EXPECT_TRUE(window->isVisible());
    EXPECT_EQ(window->desk()->session().history(1).front().seq, lines) << "no edit in between";
    core::exchange::exportBook(window->desk()->session(), out("again"));
    const QStringList names = QDir(out("again")).entryList(QDir::Files);
    EXPECT_EQ(QDir(out("there")).entryList(QDir::Files | QDir::Hidden), names);
    for (const QString& name : names)
        EXPECT_EQ(bytesAt(out("there/") + name), bytesAt(out("again/") + name)) << name.toStdString();
}

TEST_F(LongWork, WhatIsThereAlreadyStaysWhereAnExportIsStopped) {
    open();
    ASSERT_TRUE(QDir().mkpath(out("there")));
    QFile old(out("there/visits.csv"));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old\n");
    old.close();
    dialogs.file = out("there.csv");
    const Looker looker(Qt::Key_Space); // on the stop button, which has the keys
    press(Qt::Key_E);
    EXPECT_EQ(said(), "Stopped: no file was written.");
    EXPECT_EQ(QDir(out("there")).entryList(QDir::Files | QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot),
              QStringList(QStringLiteral("visits.csv")));
    EXPECT_EQ(bytesAt(out("there/visits.csv")), "old\n");
}

TEST_F(LongWork, AnInventedBookIsMadeFromTheStartOrNotAtAll) {
    const auto make = [](const QString& path, const core::Progress& progress) {
        const FixedClock now;
        try {
            demo::DemoSize size;
            size.colonies = kColonies;
            demo::fillDemoBook(*Session::create(path, now), size, progress);
        } catch (const core::Stopped&) {
            QFile::remove(path);
            QFile::remove(path + QStringLiteral("-lock"));
            throw;
        }
    };
    ui::window::offerDemo(*window, dialogs, make);
    dialogs.made = out("demo.yardwright");
    {
        const Looker looker(Qt::Key_Escape);
        QTest::keyClick(window->findChild<QPushButton*>(QStringLiteral("inventedBook")), Qt::Key_Space);
    }
    EXPECT_EQ(said(), "Stopped: no book was made.");
    EXPECT_EQ(window->desk(), nullptr);
    EXPECT_FALSE(QFileInfo::exists(*dialogs.made));
    const Looker looker;
    QTest::keyClick(window->findChild<QPushButton*>(QStringLiteral("inventedBook")), Qt::Key_Space);
    ASSERT_NE(window->desk(), nullptr);
    EXPECT_EQ(window->desk()->reading().snapshot.colonies.size(), static_cast<size_t>(kColonies));
    EXPECT_GE(looker.doing.size(), 3);
}

TEST_F(LongBackups, OneThatIsStoppedLeavesNoFile) {
    auto* keeping = window->commands()->backups()->keeping();
    QTest::keyClick(shown->makeButton(), Qt::Key_Space);
    ASSERT_TRUE(keeping->running());
    QTest::keyClick(shown->makeButton(), Qt::Key_Space);
    EXPECT_FALSE(keeping->running());
    EXPECT_EQ(QDir(shelf.path()).entryList(QDir::Files | QDir::Hidden), QStringList());
}

TEST_F(LongBackups, AreComparedBesideTheWindow) {
    make();
    const Looker looker;
    QTest::keyClick(shown->compareButton(), Qt::Key_Space);
    EXPECT_TRUE(shown->placeButton()->isEnabled()) << shown->differences().toStdString();
    EXPECT_TRUE(looker.doing.contains(QStringLiteral("Checking the book")));
}

TEST_F(LongWork, TheInspectorsReportIsMadeBesideThePageAndItsPdfStops) {
    open();
    QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
    auto* report = window->findChild<ui::health::ReportPage*>();
    ASSERT_NE(report, nullptr);
    report->setAtOnce(0);
    for (int i = 0; i < 12 && !report->isVisible(); ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
    ASSERT_TRUE(report->isVisible());
    EXPECT_TRUE(report->said().startsWith(QStringLiteral("The report is being made"))) << report->said().toStdString();
    EXPECT_FALSE(report->pdfButton()->isEnabled());
    ASSERT_TRUE(QTest::qWaitFor([&] { return report->preview()->pageCount() > 0; }, 20'000));
    EXPECT_GT(report->preview()->pageCount(), 20);
    EXPECT_TRUE(report->said().contains(QStringLiteral("colonies on the last day"))) << report->said().toStdString();
    dialogs.file = out("report.pdf");
    {
        const Looker looker(Qt::Key_Escape);
        QTest::keyClick(report->pdfButton(), Qt::Key_Space);
    }
    EXPECT_EQ(report->said().toStdString(), "Stopped: no file was written.");
    EXPECT_FALSE(QFileInfo::exists(*dialogs.file));
    ASSERT_TRUE(QTest::qWaitFor([&] { return report->pdfButton()->isEnabled(); }, 20'000));
    QTest::keyClick(report->pdfButton(), Qt::Key_Space);
    const QByteArray pdf = bytesAt(*dialogs.file);
    EXPECT_TRUE(pdf.startsWith("%PDF-")) << report->said().toStdString();
    EXPECT_TRUE(pdf.trimmed().endsWith("%%EOF"));
    EXPECT_TRUE(pdf.contains("/Count " + QByteArray::number(report->preview()->pageCount()))) << "of pages";
}

TEST_F(LongWork, WhatFailsBesideTheWindowIsThrownInIt) {
    const auto fails = [](const core::Progress&) { throw core::Error(core::Error::Kind::Book, QStringLiteral("no")); };
    EXPECT_THROW(ui::busy::run(*window, QStringLiteral("Work"), fails), core::Error);
    EXPECT_FALSE(anyPanel());
    EXPECT_TRUE(ui::busy::run(*window, QStringLiteral("Work"), [](const core::Progress&) {}));
}

} // namespace
