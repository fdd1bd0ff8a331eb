#include "core/exchange/import.h"
#include "tests/ui/test_dialogs.h"
#include "ui/board/board.h"
#include "ui/board/board_model.h"
#include "ui/form/form_panel.h"
#include "ui/ledger/ledger_window.h"
#include "ui/merge/merge_place.h"
#include "ui/spring/divide_close_form.h"
#include "ui/spring/divide_looks.h"
#include "ui/spring/divide_panel.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

// Divides in spring: Tansy Lane (tests/data/yards) on 2026-05-05, in the real window.

namespace {

using ui::spring::DividePanel;
namespace exchange = core::exchange;

struct SpringClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 5, 5), QTime(12, 0), Qt::UTC); }
    core::Day today() const override { return core::dayOf(2026, 5, 5); }
};

struct SpringWindow : ::testing::Test {
    QTemporaryDir folder;
    SpringClock clock;
    tests::TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;

    void SetUp() override {
        const QString path = folder.filePath(QStringLiteral("spring.yardwright"));
        exchange::ImportFiles files;
        for (const exchange::FileKind kind : exchange::kFileKinds) {
            const QString file = QStringLiteral(YW_TEST_DATA "/yards/tansy-lane/") + fileName(kind);
            if (QFile::exists(file)) files.files.push_back({kind, file});
        }
        ASSERT_TRUE(exchange::importIntoBook(path, clock, files, false).good());
        window = std::make_unique<ui::window::MainWindow>(clock, dialogs);
        ASSERT_TRUE(window->openBook(path));
        window->resize(1440, 900);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        const auto& yards = window->desk()->reading().snapshot.yards;
        for (const core::SnapYard& yard : yards)
            if (yard.name == QStringLiteral("Tansy Lane")) window->desk()->setYard(yard.id);
        QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
    }
    ui::window::WorkPage& page() const { return *window->page(); }
    core::edit::Session& book() const { return window->desk()->session(); }
    DividePanel* panel(ui::merge::Step step = ui::merge::Step::Plan) const {
        return page().merge()->page(step)->findChild<DividePanel*>();
    }
    std::string line(int row = 0) const { return panel()->list()->item(row)->text().toStdString(); }
    static void click(QPushButton* button) { QTest::mouseClick(button, Qt::LeftButton); }
    const core::rules::Plan& plan() const { return window->desk()->reading().plan; }
    core::ColonyId mother() const { return window->desk()->reading().snapshot.colony(plan().divides.at(0).colony).id; }
};

TEST_F(SpringWindow, DividesAreListedWithTheirPlacesAndDays) {
    ASSERT_FALSE(plan().divides.empty());
    ASSERT_TRUE(panel()->isVisible());
    EXPECT_EQ(panel()->list()->count(), static_cast<int>(plan().divides.size()));
    EXPECT_NE(line().find("into "), std::string::npos) << line();
    const std::string looks = panel()->looks()->text().toStdString();
    EXPECT_NE(looks.find("common practice, no source"), std::string::npos) << looks;
    EXPECT_NE(looks.find("5 Jun eggs"), std::string::npos) << looks;
}

TEST_F(SpringWindow, QueensAreChosenByKeysAndKept) {
    panel()->queens()->setFocus();
    QTest::keyClick(panel()->queens(), Qt::Key_Down);
    EXPECT_EQ(book().mergeDays(*window->desk()->yard()).at(0).queens, core::DivideQueens::Cells);
    EXPECT_EQ(panel()->queens()->currentText().toStdString(), "sealed queen cells");
    EXPECT_NE(panel()->looks()->text().toStdString().find("13 May queen cell open"), std::string::npos);
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(book().mergeDays(*window->desk()->yard()).empty());
    EXPECT_EQ(panel()->queens()->currentText().toStdString(), "queens: not chosen");
}

TEST_F(SpringWindow, ADivideIsLeftWholeAndTakenUpAgain) {
    const size_t divides = plan().divides.size();
    const core::ColonyId first = mother();
    click(panel()->wholeButton());
    EXPECT_EQ(plan().divides.size(), divides - 1);
    const auto day = book().mergeDays(*window->desk()->yard()).at(0);
    ASSERT_EQ(book().divideChoicesOf(day.id).size(), 1U);
    EXPECT_EQ(book().divideChoicesOf(day.id)[0].colony, first);
    EXPECT_EQ(book().divideChoicesOf(day.id)[0].parts, 1);
    for (int row = 0; row < panel()->list()->count(); ++row)
        if (line(row).find("left whole") != std::string::npos) panel()->list()->setCurrentRow(row);
    EXPECT_EQ(panel()->wholeButton()->accessibleName().toStdString(), "Divide it");
    QTest::keyClick(window.get(), Qt::Key_W, Qt::ControlModifier | Qt::AltModifier);
    EXPECT_EQ(plan().divides.size(), divides);
    EXPECT_TRUE(book().divideChoicesOf(day.id).empty());
}

TEST_F(SpringWindow, PartsAreLoweredAndRaised) {
    ASSERT_GE(plan().divides.size(), 2U);
    const int most = plan().divides.at(1).most;
    ASSERT_EQ(most, 3) << "Tansy Lane has one to divide in three";
    panel()->list()->setCurrentRow(1);
    EXPECT_FALSE(panel()->moreButton()->isEnabled());
    click(panel()->fewerButton());
    EXPECT_EQ(plan().divides.at(1).parts, most - 1);
    EXPECT_NE(line(1).find("can be"), std::string::npos) << line(1);
    click(panel()->moreButton());
    EXPECT_EQ(plan().divides.at(1).parts, most);
    EXPECT_TRUE(book().divideChoicesOf(book().mergeDays(*window->desk()->yard()).at(0).id).empty());
}

TEST_F(SpringWindow, ADivideIsWrittenBackWithItsNewColonies) {
    const core::ColonyId first = mother();
    const size_t made = static_cast<size_t>(plan().divides.at(0).parts - 1);
    const size_t before = book().lineageOf(first).size();
    QTest::keyClick(window.get(), Qt::Key_D, Qt::ControlModifier | Qt::AltModifier);
    ui::form::FormPanel* form = page().panel();
    ASSERT_TRUE(form->isVisible());
    ASSERT_TRUE(form->form());
    EXPECT_NE(form->form()->title().toStdString().find("Divide of"), std::string::npos);
    form->setValue(ui::spring::labelKey(0), QStringLiteral("New one"));
    form->setValue(ui::spring::kQueens, core::word(core::DivideQueens::Bought));
    form->save();
    EXPECT_FALSE(form->form()) << window->saying().toStdString();
    const auto lineage = book().lineageOf(first);
    ASSERT_EQ(lineage.size(), before + made);
    EXPECT_EQ(book().colony(lineage[before].into)->label.toStdString(), "New one");
    EXPECT_EQ(book().check(), QStringList());
    const auto strips = book().divideStripsOf(book().mergeDays(*window->desk()->yard()).at(0).id);
    ASSERT_EQ(strips.size(), 1U);
    EXPECT_EQ(strips[0].queens, core::DivideQueens::Bought);
    QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
    bool told = false;
    for (int row = 0; row < panel()->list()->count(); ++row)
        told |= line(row).find("divided, queens: bought queens") != std::string::npos;
    EXPECT_TRUE(told);
    QTest::keyClick(window.get(), Qt::Key_4, Qt::AltModifier);
    auto* looks = page().merge()->page(ui::merge::Step::Afterwards)->findChild<ui::spring::DivideLooks*>();
    ASSERT_TRUE(looks && looks->isVisible());
    QStringList due;
    for (int row = 0; row < looks->list()->count(); ++row) due << looks->list()->item(row)->text();
    EXPECT_TRUE(due.contains(QStringLiteral("10 May  New one: queen out of her cage"))) << due.join('|').toStdString();
    EXPECT_TRUE(due.contains(QStringLiteral("19 May  New one: eggs"))) << due.join('|').toStdString();
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book().lineageOf(first).size(), before);
    EXPECT_TRUE(book().mergeDays(*window->desk()->yard()).empty());
}

TEST_F(SpringWindow, WhatCannotBeSavedSaysSoAndStaysTyped) {
    QTest::keyClick(window.get(), Qt::Key_4, Qt::AltModifier);
    QTest::keyClick(window.get(), Qt::Key_3, Qt::AltModifier);
    DividePanel* below = panel(ui::merge::Step::WriteBack);
    ASSERT_TRUE(below && below->isVisible());
    click(below->writeButton());
    ui::form::FormPanel* form = page().panel();
    ASSERT_TRUE(form->form());
    const size_t lines = book().history(100).size();
    form->setValue(ui::spring::kOutcome, core::word(core::StripOutcome::Changed));
    form->save();
    EXPECT_TRUE(form->form()) << "what was done instead is missing";
    form->setValue(ui::spring::kOutcome, core::word(core::StripOutcome::Done));
    for (int i = 0; i < plan().divides.at(0).parts - 1; ++i) form->setValue(ui::spring::labelKey(i), {});
    form->save();
    EXPECT_TRUE(form->form()) << "no new colony";
    EXPECT_EQ(book().history(100).size(), lines);
    form->setValue(ui::spring::kOutcome, core::word(core::StripOutcome::NotDone));
    form->save();
    EXPECT_FALSE(form->form());
    EXPECT_EQ(book().history(100).size(), lines + 1);
}

// Counts of tests/data/yards/tansy-lane/colonies.csv: twelve colonies since May 2025, T11 dead on 2026-03-10, another
// divided from T1 on 2026-04-25. Own calculation.
TEST_F(SpringWindow, TheLedgerSaysWhatWasLostAndWhatCameOfDivides) {
    QTest::keyClick(window.get(), Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
    auto* ledger = page().findChild<ui::ledger::LedgerWindow*>();
    ASSERT_TRUE(ledger && ledger->isVisible());
    ledger->yards()->setCurrentIndex(ledger->yards()->findText(QStringLiteral("Tansy Lane")));
    const std::string sentences = ledger->sentences()->text().toStdString();
    EXPECT_NE(sentences.find("At the fall count, 2025-08-20: 12."), std::string::npos) << sentences;
    EXPECT_NE(sentences.find("Winter took 1 of 12 at risk: 8 %"), std::string::npos) << sentences;
    EXPECT_NE(sentences.find("At the spring count, 2026-04-20: 11. Came of divides: 1; new: 0."), std::string::npos)
        << sentences;
    for (int row = 0; row < ledger->table()->rowCount(); ++row) {
        int sum = 0;
        for (int column = 5; column < ledger->table()->columnCount() - 1; ++column)
            sum += (column <= 8 ? 1 : -1) * ledger->table()->item(row, column)->text().toInt();
        EXPECT_EQ(sum, ledger->table()->item(row, ledger->table()->columnCount() - 1)->text().toInt()) << row;
        EXPECT_TRUE(
            ledger->table()->item(row, 5)->data(Qt::AccessibleTextRole).toString().startsWith("At its start: "));
    }
    ledger->close();
}

TEST_F(SpringWindow, TheLedgerIsWrittenAsAFileAndAsPages) {
    auto* ledger = ui::ledger::showLedger(*window->desk(), dialogs, &page());
    dialogs.file = folder.filePath(QStringLiteral("ledger.csv"));
    click(ledger->csvButton());
    QFile csv(*dialogs.file);
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    const QList<QByteArray> lines = csv.readAll().trimmed().split('\n');
    EXPECT_EQ(lines.front(),
              "yard,year,season,from,until,start,divided,begun,moved_in,united,shaken_out,dead,destroyed,"
              "sold,moved_out,end");
    EXPECT_EQ(lines.size(), ledger->table()->rowCount() + 1);
    EXPECT_TRUE(lines.contains("Tansy Lane,2025,winter,2025-10-21,2026-04-19,12,0,0,0,0,0,1,0,0,0,11"))
        << lines.join('\n').toStdString();
    dialogs.file = folder.filePath(QStringLiteral("ledger.pdf"));
    click(ledger->pdfButton());
    QFile pdf(*dialogs.file);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5) == "%PDF-");
    ledger->close();
}

TEST_F(SpringWindow, TheBoardTellsTheProcedureOfLayingWorkersBesideThem) {
    const ui::board::BoardModel& rows = page().board()->model();
    bool told = false;
    for (int row = 0; row < rows.rowCount(); ++row)
        if (rows.at(row).title == QStringLiteral("T10"))
            told |= rows.at(row).more.join(u' ').contains(QStringLiteral("no union, no shake-out, no divide"));
    EXPECT_TRUE(told);
}

} // namespace
