#include "core/edit/edits.h"
#include "tests/ui/recording.h"
#include "ui/health/medicine_page.h"
#include "ui/look/paged.h"

#include <QFile>
#include <QTableView>
#include <QTextBrowser>

namespace {

using namespace core;

/// The page Medicine in the real window: the yard was treated on 2026-07-20 for 42 days, which is over.
struct MedicineBookPage : tests::Recording {
    void SetUp() override {
        Recording::SetUp();
        Treatment t;
        t.yard = *window->desk()->yard();
        t.day = dayOf(2026, 7, 20);
        t.product = QStringLiteral("Hazel strips");
        t.substance = QStringLiteral("tau-fluvalinate");
        t.quantity = 2;
        t.unit = QStringLiteral("strips a hive");
        t.days = 42;
        t.withdrawalDays = 0;
        write([&](const edit::EditContext& c) { return edit::logTreatment(c, t); });
        QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
        for (int i = 0; i < 8 && !page()->isVisible(); ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
        ASSERT_TRUE(page()->isVisible());
        EXPECT_TRUE(page()->table()->hasFocus());
    }
    ui::health::MedicinePage* page() const { return window->findChild<ui::health::MedicinePage*>(); }
    static QString cell(const QTableView* table, int row, int column) {
        return table->model()->index(row, column).data().toString();
    }
    static bool struck(const QTableView* table, int row) {
        return table->model()->index(row, 1).data(Qt::FontRole).value<QFont>().strikeOut();
    }
    QString html() const { return page()->findChild<QTextBrowser*>()->toHtml(); }
    QString file(const char* name) const { return m_folder.filePath(QLatin1StringView(name)); }
    QTemporaryDir m_folder;
};

TEST_F(MedicineBookPage, ShowsTheRegisterWithWhatIsMissingByWhichRule) {
    EXPECT_EQ(page()->table()->model()->rowCount(), 1);
    EXPECT_EQ(cell(page()->table(), 0, 0), QStringLiteral("2026-07-20"));
    EXPECT_EQ(cell(page()->table(), 0, 2), QStringLiteral("Hazel strips (tau-fluvalinate)"));
    EXPECT_EQ(cell(page()->table(), 0, 6),
              QStringLiteral("0 days from the day it comes out, which is not recorded yet"));
    EXPECT_TRUE(page()->details().contains(QStringLiteral("batch: Veterinary Medicines Regulations 2013, reg. 19(1)")))
        << page()->details().toStdString();
    EXPECT_TRUE(page()->summary().startsWith(QStringLiteral("Not known until when: Kiln Field (Hazel strips)")))
        << page()->summary().toStdString();
}

TEST_F(MedicineBookPage, StripsComeOutByAKeyOfOneHiveAndOfAll) {
    QTableView* strips = page()->strips();
    ASSERT_TRUE(strips->isVisible());
    const int hives = strips->model()->rowCount();
    EXPECT_EQ(hives, 6);
    EXPECT_EQ(cell(strips, 0, 0), QStringLiteral("2026-08-31, 15 days ago"));
    strips->setFocus();
    QTest::keyClick(strips, Qt::Key_T);
    EXPECT_EQ(strips->model()->rowCount(), hives - 1);
    EXPECT_EQ(said().find("Noted that Hazel strips came out of A1 on 2026-09-15"), 0u) << said();
    auto* all = page()->findChild<QPushButton*>(QStringLiteral("medicineOutOfAll"));
    QTest::mouseClick(all, Qt::LeftButton);
    EXPECT_FALSE(strips->isVisible()) << "none is due any more";
    EXPECT_EQ(cell(page()->table(), 0, 6), QStringLiteral("0 days: no honey before 2026-09-15"));
    dialogs.expectCorrection = true; // what is written of strips is part of the entry
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("Ana"), QStringLiteral("the wrong day")};
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(page()->strips()->model()->rowCount(), hives - 1);
}

TEST_F(MedicineBookPage, PuttingRightAsksForReasonAndNameAndKeepsTheOldWords) {
    QTest::keyClick(page()->table(), Qt::Key_Return);
    ASSERT_TRUE(formShown());
    fill("quantity", "3");
    dialogs.expectCorrection = true;
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown()) << "no reason was given: what was typed stays typed";
    EXPECT_EQ(window->desk()->session().treatments().front().quantity, 2);
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("Ana"), QStringLiteral("three were hung")};
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown());
    EXPECT_TRUE(dialogs.asked.last().startsWith(QStringLiteral("The medicine book must keep what it says of")));
    EXPECT_EQ(cell(page()->table(), 0, 5), QStringLiteral("corrected"));
    EXPECT_TRUE(page()->details().contains(QStringLiteral("quantity: 2 → 3 (2026-09-15, Ana: three were hung)")))
        << page()->details().toStdString();
    EXPECT_TRUE(html().contains(QStringLiteral("line-through")));
}

// Even a moment after it was typed nothing is erased.
TEST_F(MedicineBookPage, UndoAsksAndLeavesAStruckLine) {
    dialogs.expectCorrection = true;
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window->desk()->session().treatments().size(), 1u);
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("Ana"), QStringLiteral("typed in the wrong book")};
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(window->desk()->session().treatments().empty());
    ASSERT_EQ(page()->table()->model()->rowCount(), 1);
    EXPECT_TRUE(struck(page()->table(), 0));
    EXPECT_EQ(cell(page()->table(), 0, 5), QStringLiteral("taken back"));
    EXPECT_TRUE(page()->details().contains(QStringLiteral("taken back 2026-09-15, Ana: typed in the wrong book")))
        << page()->details().toStdString();
    EXPECT_FALSE(page()->strips()->isVisible());
}

TEST_F(MedicineBookPage, IsWrittenAsPdfAndCsvByKeys) {
    dialogs.file = file("register.pdf");
    QTest::keyClick(page()->table(), Qt::Key_P);
    EXPECT_TRUE(QFile::exists(file("register.pdf")));
    dialogs.file = file("register.csv");
    QTest::keyClick(page()->table(), Qt::Key_S);
    QFile csv(file("register.csv"));
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    EXPECT_TRUE(csv.readAll().contains("Hazel strips"));
}

TEST_F(MedicineBookPage, ANewTreatmentBeginsByAKeyAndSaysWhatLabelsSay) {
    QTest::keyClick(page()->table(), Qt::Key_N);
    ASSERT_TRUE(formShown());
    fill("substance", "Thymol");
    // As an example of one product: thymol gel, UK 2015, summary of product characteristics 4.5, imedi.co.uk.
    const QString note = shownBy("note.substance");
    EXPECT_TRUE(note.contains(QStringLiteral("daily maximum not below 15 and not above 40 °C"))) << note.toStdString();
    EXPECT_TRUE(note.startsWith(QStringLiteral("The label of your product decides.")));
    EXPECT_TRUE(shownBy("note.withdrawal_days").startsWith(QStringLiteral("Blank is not 0")));
    fill("withdrawal_days", "0");
    EXPECT_EQ(shownBy("note.withdrawal_days"), QString());
}

} // namespace
