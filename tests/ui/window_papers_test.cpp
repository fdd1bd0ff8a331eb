#include "core/edit/keeper.h"
#include "tests/ui/picking.h"
#include "ui/form/day_edit.h"
#include "ui/form/form_panel.h"
#include "ui/health/guidance_page.h"
#include "ui/health/report_page.h"
#include "ui/look/colours.h"
#include "ui/look/paged.h"
#include "ui/print/pages_view.h"

#include <QCheckBox>
#include <QDir>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QTableWidget>
#include <QTextBrowser>

namespace {

using namespace core;

/// The pages Report and Guidance of the place Health, in the real window.
struct HealthPapers : tests::Picking {
    QTemporaryDir folder;

    /// By keys: the place, then page by page.
    void turnTo(const QWidget* page) const {
        QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
        for (int i = 0; i < 12 && !page->isVisible(); ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
        ASSERT_TRUE(page->isVisible());
        keepPicture(page);
    }
    /// For looking at: YW_PAPER_PICTURES=DIR, light and dark.
    void keepPicture(const QWidget* page) const {
        const QString to = qEnvironmentVariable("YW_PAPER_PICTURES");
        if (to.isEmpty()) return;
        const QString name = QString::fromLatin1(page->metaObject()->className()).section(u':', -1);
        for (const bool dark : {true, false}) {
            QApplication::setPalette(ui::look::paletteOf(ui::look::colours(dark)));
            for (int i = 0; i < 3; ++i) QApplication::processEvents();
            window->grab().save(to + u'/' + name + QLatin1StringView(dark ? "-dark.png" : "-light.png"));
        }
    }
    ui::health::ReportPage* report() const { return window->findChild<ui::health::ReportPage*>(); }
    ui::health::GuidancePage* guidance() const { return window->findChild<ui::health::GuidancePage*>(); }
    std::string saidOfReport() const { return report()->said().toStdString(); }
    void type(QLineEdit* edit, const char* text) const {
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QLatin1StringView(text));
        QTest::keyClick(edit, Qt::Key_Return);
    }
    QWidget* field(const char* spoken) const {
        for (QWidget* w : window->page()->panel()->findChildren<QWidget*>())
            if (w->accessibleName() == QLatin1StringView(spoken)) return w;
        return nullptr;
    }
};

TEST_F(HealthPapers, TheReportIsShownAndWrittenAsPdfAndAsAFolder) {
    turnTo(report());
    EXPECT_EQ(saidOfReport().substr(0, 60),
              std::string("2 yards from 2025-09-16 to 2026-09-15: 8 colonies on the las").substr(0, 60))
        << saidOfReport();
    EXPECT_GT(report()->preview()->pageCount(), 1);
    EXPECT_TRUE(report()->preview()->text().contains(QStringLiteral("Report for the inspector")));
    EXPECT_TRUE(report()->preview()->text().contains(QStringLiteral("no signs recorded")));
    dialogs.file = folder.filePath(QStringLiteral("r.pdf"));
    QTest::keyClick(report()->pdfButton(), Qt::Key_Space);
    EXPECT_TRUE(QFile::exists(*dialogs.file));
    EXPECT_EQ(dialogs.suggested.right(11), QStringLiteral(" report.pdf"));
    dialogs.file = folder.filePath(QStringLiteral("tables.csv"));
    QTest::keyClick(report()->csvButton(), Qt::Key_Space);
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("tables/brood_checks.csv")))) << saidOfReport();
    EXPECT_TRUE(dialogs.errors.isEmpty());
}

TEST_F(HealthPapers, PeriodAndYardsAreTypedAndWhatIsWrongIsSaid) {
    turnTo(report());
    type(report()->from(), "2026-09-14");
    EXPECT_NE(saidOfReport().find("from 2026-09-14 to 2026-09-15"), std::string::npos) << saidOfReport();
    type(report()->from(), "16 Sep 2027");
    EXPECT_EQ(saidOfReport(), "From is after until: expected the earlier day first.");
    EXPECT_FALSE(report()->pdfButton()->isEnabled());
    EXPECT_EQ(report()->preview()->pageCount(), 0);
    type(report()->from(), "some day");
    EXPECT_NE(saidOfReport().find("expected a day"), std::string::npos);
    EXPECT_EQ(report()->from()->text(), QStringLiteral("some day")) << "what was typed stays";
    type(report()->from(), "2026-01-01");
    report()->yards()->setFocus();
    report()->yards()->setCurrentRow(0);
    QTest::keyClick(report()->yards(), Qt::Key_Space);
    EXPECT_EQ(saidOfReport().substr(0, 7), "1 yard ") << saidOfReport();
    QTest::keyClick(report()->yards(), Qt::Key_Down);
    QTest::keyClick(report()->yards(), Qt::Key_Space);
    EXPECT_EQ(saidOfReport(), "No yard is ticked: expected one at least.");
}

TEST_F(HealthPapers, TheReportFollowsTheBookAndTheKeepersForm) {
    turnTo(report());
    EXPECT_NE(saidOfReport().find("No keeper is recorded yet"), std::string::npos);
    QTest::keyClick(report()->keeperButton(), Qt::Key_Space);
    QWidget* name = field("Name of the keeper");
    ASSERT_NE(name, nullptr);
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("Ada Thorn"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_TRUE(report()->preview()->text().contains(QStringLiteral("Ada Thorn"))) << said();
    EXPECT_EQ(saidOfReport().find("No keeper"), std::string::npos);
    window->undo();
    EXPECT_FALSE(report()->preview()->text().contains(QStringLiteral("Ada Thorn")));
}

TEST_F(HealthPapers, PagesScrollByKeys) {
    turnTo(report());
    auto* view = report()->preview();
    view->setFocus();
    QTest::keyClick(view, Qt::Key_PageDown);
    EXPECT_GT(view->verticalScrollBar()->value(), 0);
    QTest::keyClick(view, Qt::Key_End);
    EXPECT_EQ(view->verticalScrollBar()->value(), view->verticalScrollBar()->maximum());
    QTest::keyClick(view, Qt::Key_Home);
    EXPECT_EQ(view->verticalScrollBar()->value(), 0);
}

TEST_F(HealthPapers, GuidanceIsFoundByWordsAndNamesItsSources) {
    turnTo(guidance());
    EXPECT_TRUE(guidance()->shown().contains(QStringLiteral("Any roping is a suspicion"))) << "the first text";
    EXPECT_TRUE(guidance()->shown().contains(QStringLiteral("Source: Queensland Government")));
    QTest::keyClick(guidance()->topics(), Qt::Key_Slash);
    QTest::keyClicks(guidance()->search(), QStringLiteral("gamma"));
    ASSERT_EQ(guidance()->topics()->count(), 1);
    EXPECT_TRUE(guidance()->shown().contains(QStringLiteral("15 kGy")));
    QTest::keyClicks(guidance()->search(), QStringLiteral(" hovercraft"));
    EXPECT_EQ(guidance()->shown(), QStringLiteral("No text holds all of these words."));
    guidance()->search()->clear();
    QTest::keyClick(guidance()->search(), Qt::Key_Return);
    QTest::keyClick(guidance()->topics(), Qt::Key_Home);
    EXPECT_TRUE(guidance()->notifiable()->isVisible());
}

TEST_F(HealthPapers, WhatMustBeReportedIsThatOfTheKeepersPlaceAndOfTheBooksOwnLines) {
    turnTo(guidance());
    QTest::keyClick(guidance()->topics(), Qt::Key_Home);
    auto* panel = guidance()->notifiable();
    EXPECT_TRUE(panel->said().contains(QStringLiteral("not recorded: ask your authority")))
        << panel->said().toStdString();
    const int all = panel->table()->rowCount();
    write([](const edit::EditContext& c) { return edit::setKeeper(c, {{}, "Ada", {}, {}, {}, "Queensland"}); });
    EXPECT_EQ(panel->table()->rowCount(), 1);
    EXPECT_TRUE(panel->said().contains(QStringLiteral("must be reported in Queensland: tell your authority")));
    EXPECT_FALSE(panel->takeBackButton()->isEnabled()) << "a shipped line";
    QTest::keyClick(panel->changeButton(), Qt::Key_Space);
    QWidget* tell = field("Whom to tell: office, telephone, how soon");
    ASSERT_NE(tell, nullptr);
    tell->setFocus();
    QTest::keyClicks(tell, QStringLiteral("the hot line 0000"));
    QTest::keyClick(tell, Qt::Key_Return);
    ASSERT_EQ(window->desk()->session().notifiables().size(), 1u) << said();
    EXPECT_TRUE(panel->said().contains(QStringLiteral("tell the hot line 0000"))) << panel->said().toStdString();
    EXPECT_EQ(panel->table()->rowCount(), 1) << "in place of the shipped one";
    panel->everywhere()->setFocus();
    QTest::keyClick(panel->everywhere(), Qt::Key_Space);
    EXPECT_EQ(panel->table()->rowCount(), all);
    QTest::keyClick(panel->everywhere(), Qt::Key_Space);
    QTest::keyClick(panel->takeBackButton(), Qt::Key_Space);
    EXPECT_TRUE(window->desk()->session().notifiables().empty());
    window->undo();
    EXPECT_EQ(window->desk()->session().notifiables().size(), 1u);
}

} // namespace
