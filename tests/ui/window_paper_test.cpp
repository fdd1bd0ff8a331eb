#include "tests/ui/open_window.h"

#include "core/report/page_code.h"
#include "ui/merge/merge_place.h"
#include "ui/print/paper_dialog.h"
#include "ui/window/commands.h"
#include "ui/window/visit_paper.h"

#include <QAbstractButton>
#include <QProcess>
#include <QRadioButton>
#include <QRegularExpression>
#include <QSettings>

namespace {

using core::report::Language;
using core::report::Sheet;
using ui::print::PaperChoice;

/// The window with ways to paper that only note what they were given.
struct ToPaper : tests::OpenWindow {
    std::vector<PaperChoice> printed, previewed;
    bool accept = true; ///< the printer's question

    void SetUp() override {
        QSettings().remove(QStringLiteral("paper"));
        tests::OpenWindow::SetUp();
        ui::window::Paper paper;
        paper.preview = [this](QWidget*, const ui::window::PaperJob& job) {
            previewed.push_back(job.choice);
            return false;
        };
        paper.print = [this](QWidget*, const ui::window::PaperJob& job) {
            printed.push_back(job.choice);
            return accept;
        };
        paper.pdf = window->paper().pdf;
        window->setPaper(paper);
        window->setPlace(ui::window::Place::MergeDay);
    }
    core::YardId yard() const { return *window->desk()->yard(); }
    std::vector<core::MergeDay> days() const { return window->desk()->session().mergeDays(yard()); }
    std::vector<core::MergeStrip> strips() const {
        return days().empty() ? std::vector<core::MergeStrip>() : window->desk()->session().stripsOf(days().front().id);
    }
    size_t planned() const {
        const auto& reading = window->desk()->reading();
        const core::YardIx here = *reading.find(yard());
        size_t n = 0;
        for (const auto& u : reading.plan.unions) n += u.yard == here ? 1 : 0;
        for (const auto& x : reading.plan.shakeOuts) n += x.yard == here ? 1 : 0;
        return n;
    }
    ui::window::Commands& commands() const { return *window->commands(); }
};

TEST_F(ToPaper, PrintingKeepsTheStripsInOneUndo) {
    ASSERT_GT(planned(), 0u);
    EXPECT_TRUE(days().empty());
    QTest::keyClick(window.get(), Qt::Key_P, Qt::ControlModifier);
    ASSERT_EQ(printed.size(), 1u);
    ASSERT_EQ(days().size(), 1u);
    EXPECT_EQ(days().front().day, window->desk()->day());
    EXPECT_EQ(strips().size(), planned());
    EXPECT_NE(said().find("to paper"), std::string::npos) << said();
    commands().undo->trigger();
    EXPECT_TRUE(days().empty());
}

TEST_F(ToPaper, PrintingTwiceChangesNothingMore) {
    commands().print->trigger();
    const auto before = window->desk()->session().history(1).front().seq;
    commands().print->trigger();
    EXPECT_EQ(printed.size(), 2u);
    EXPECT_EQ(window->desk()->session().history(1).front().seq, before);
}

TEST_F(ToPaper, NothingIsKeptOfAPreviewACancelledPrintOrAnotherSheet) {
    commands().preview->trigger();
    EXPECT_EQ(previewed.size(), 1u);
    accept = false;
    commands().print->trigger();
    accept = true;
    dialogs.paper = PaperChoice{.sheet = Sheet::Storing};
    commands().print->trigger();
    EXPECT_EQ(printed.size(), 2u);
    dialogs.cancelPaper = true;
    commands().print->trigger();
    EXPECT_EQ(printed.size(), 2u);
    EXPECT_TRUE(days().empty());
}

TEST_F(ToPaper, TheSheetOfTheStepShownIsProposed) {
    const std::pair<ui::merge::Step, Sheet> steps[] = {{ui::merge::Step::GetReady, Sheet::Walk},
                                                       {ui::merge::Step::Afterwards, Sheet::Checks},
                                                       {ui::merge::Step::Plan, Sheet::MergeDay}};
    for (const auto& [step, sheet] : steps) {
        window->page()->merge()->setStep(step);
        QTest::keyClick(window.get(), Qt::Key_P, Qt::ControlModifier);
        ASSERT_TRUE(dialogs.usualPaper);
        EXPECT_EQ(dialogs.usualPaper->sheet, sheet);
    }
    EXPECT_EQ(printed.size(), 3u);
}

TEST_F(ToPaper, WhatWasChosenIsProposedAgainButTheSheet) {
    dialogs.paper = PaperChoice{Language::Spanish, core::report::Paper::Letter, true, Sheet::Checks};
    commands().print->trigger();
    EXPECT_EQ(printed.back(), *dialogs.paper);
    dialogs.paper.reset();
    commands().print->trigger();
    EXPECT_EQ(printed.back(), (PaperChoice{Language::Spanish, core::report::Paper::Letter, true, Sheet::MergeDay}));
}

TEST_F(ToPaper, TheTallySheetGoesToPaperByKeysFromThePlan) {
    window->setPlace(ui::window::Place::YardPlan);
    QTest::keyClick(window.get(), Qt::Key_V, Qt::ControlModifier | Qt::AltModifier);
    ASSERT_TRUE(dialogs.usualPaper);
    EXPECT_EQ(dialogs.usualPaper->sheet, Sheet::Tally);
    QTest::keyClick(window.get(), Qt::Key_Y, Qt::ControlModifier | Qt::AltModifier);
    ASSERT_EQ(previewed.size(), 1u);
    ASSERT_EQ(printed.size(), 1u);
    EXPECT_EQ(printed.front().sheet, Sheet::Tally);
    EXPECT_EQ(window->page()->place(), ui::window::Place::YardPlan);
    EXPECT_TRUE(days().empty()) << "no merge day is kept of it";
}

TEST_F(ToPaper, TheCardIsOfTheChosenHive) {
    window->desk()->choose(std::nullopt);
    QTest::keyClick(window.get(), Qt::Key_C, Qt::ControlModifier | Qt::AltModifier);
    EXPECT_TRUE(printed.empty());
    EXPECT_NE(said().find("Choose a hive first"), std::string::npos) << said();
    const auto& reading = window->desk()->reading();
    const core::SnapColony& colony = reading.snapshot.colony(core::ColonyIx{0});
    window->desk()->choose(colony.id);
    QTemporaryDir folder;
    dialogs.pdf = folder.filePath(QStringLiteral("card.pdf"));
    commands().visitPaper()->pdfCard->trigger();
    QProcess text;
    text.start(QStringLiteral("pdftotext"), {*dialogs.pdf, QStringLiteral("-")});
    ASSERT_TRUE(text.waitForFinished(30'000));
    EXPECT_TRUE(QString::fromUtf8(text.readAllStandardOutput()).startsWith(colony.shown + QStringLiteral(" · ")));
    EXPECT_NE(said().find("The sheet is in"), std::string::npos) << said();
}

TEST_F(ToPaper, ThePdfHasTheCodeOfTheDayThatIsThenKept) {
    QTemporaryDir folder;
    dialogs.pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    commands().pdf->trigger();
    ASSERT_EQ(days().size(), 1u);
    QProcess text;
    text.start(QStringLiteral("pdftotext"), {*dialogs.pdf, QStringLiteral("-")});
    ASSERT_TRUE(text.waitForFinished(30'000));
    static const QRegularExpression kCode(QStringLiteral("\\b(\\w{4}-\\w{4}-\\w{4}-\\w{4})\\b"));
    const auto match = kCode.match(QString::fromUtf8(text.readAllStandardOutput()));
    ASSERT_TRUE(match.hasMatch());
    const auto code = std::get<core::report::PageCode>(core::report::readPageCode(match.captured(1)));
    EXPECT_EQ(code.book, core::report::bookMark(window->desk()->session().bookId()));
    EXPECT_EQ(code.yard, yard().value);
    EXPECT_EQ(code.day, window->desk()->day());
    EXPECT_EQ(code.variant, 1);
    EXPECT_EQ(code.revision, 1);
    EXPECT_NE(said().find("sheet.pdf"), std::string::npos) << said();
}

TEST(PaperDialog, IsWorkedByKeysAlone) {
    ui::print::PaperDialog dialog({});
    dialog.show();
    dialog.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    EXPECT_EQ(dialog.choice(), PaperChoice{});
    for (const int key : {Qt::Key_S, Qt::Key_L, Qt::Key_G, Qt::Key_D})
        QTest::keyClick(&dialog, Qt::Key(key), Qt::AltModifier);
    const PaperChoice asked{Language::Spanish, core::report::Paper::Letter, true, Sheet::Checks};
    EXPECT_TRUE(QTest::qWaitFor([&] { return dialog.choice() == asked; })) << "a button is pressed for a moment";
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST(PaperDialog, EachKeyIsOfOneChoice) {
    const ui::print::PaperDialog dialog({});
    QStringList keys;
    for (const auto* button : dialog.findChildren<QRadioButton*>()) {
        const qsizetype at = button->text().indexOf(u'&');
        ASSERT_GE(at, 0) << button->text().toStdString();
        keys << button->text().mid(at + 1, 1).toUpper();
        EXPECT_FALSE(button->accessibleName().isEmpty());
    }
    const qsizetype all = keys.size();
    EXPECT_EQ(keys.removeDuplicates(), 0) << all;
}

} // namespace
