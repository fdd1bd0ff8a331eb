#include "tests/ui/open_window.h"

#include "ui/board/board.h"
#include "ui/card/colony_card.h"
#include "ui/look/colours.h"
#include "ui/table/hive_table.h"
#include "ui/visit/visit_form.h"
#include "ui/window/real_dialogs.h"
#include "ui/window/yard_list.h"

#include <QAbstractButton>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QListView>
#include <QMenuBar>
#include <QScrollBar>
#include <QTableView>
#include <QToolTip>

namespace {

using Looking = tests::OpenWindow;

void expectNamed(const QWidget& within) {
    for (const QWidget* w : within.findChildren<QWidget*>()) {
        if (!(w->focusPolicy() & Qt::TabFocus) || qobject_cast<const QScrollBar*>(w)) continue;
        const auto* button = qobject_cast<const QAbstractButton*>(w);
        const bool inner =
            w->parentWidget() &&
            (w->parentWidget()->inherits("QAbstractSpinBox") || w->parentWidget()->inherits("QComboBox") ||
             w->inherits("QComboBoxListView") || w->objectName().startsWith(QStringLiteral("qt_")));
        const bool named = !w->accessibleName().isEmpty() || (button && !button->text().isEmpty()) || inner;
        EXPECT_TRUE(named) << w->metaObject()->className() << ' ' << w->objectName().toStdString();
    }
}

TEST_F(Looking, EveryFocusableWidgetHasAName) {
    expectNamed(*window);
    window->setPlace(ui::window::Place::MergeDay);
    window->page()->setTableShown(true);
    window->desk()->choose(book.idOf(QStringLiteral("A2")));
    window->page()->logVisit();
    expectNamed(*window);
}

/// A name out of a stranger's book that would load a file, were it taken for a page.
const QString kRich = QStringLiteral("<img src='other.png'>");

TEST_F(Looking, NamesOfABookAreNeverPages) {
    window->desk()->choose(book.idOf(QStringLiteral("A2")));
    for (const ui::window::Place place : {ui::window::Place::YardPlan, ui::window::Place::MergeDay}) {
        window->setPlace(place);
        for (const QLabel* label : window->findChildren<QLabel*>()) {
            if (!label->isVisible()) continue;
            EXPECT_NE(label->textFormat(), Qt::AutoText) << label->text().toStdString();
        }
    }
    QLabel label(kRich);
    label.show();
    EXPECT_EQ(label.textFormat(), Qt::PlainText);
    QToolTip::showText(QPoint(5, 5), kRich, window.get());
    const QLabel* tip = nullptr;
    for (const QWidget* w : QApplication::topLevelWidgets())
        if (w->inherits("QTipLabel")) tip = qobject_cast<const QLabel*>(w);
    ASSERT_NE(tip, nullptr);
    EXPECT_EQ(tip->text(), kRich);
    EXPECT_EQ(tip->textFormat(), Qt::PlainText);
    QToolTip::hideText();
}

TEST_F(Looking, ANameOfABookIsNoPath) {
    EXPECT_EQ(ui::window::asFileName(QStringLiteral("../../x/Kiln Field, kit.pdf")),
              QStringLiteral("..-..-x-Kiln Field, kit.pdf"));
    EXPECT_EQ(ui::window::asFileName(QStringLiteral("a\nb\\c.csv")), QStringLiteral("a-b-c.csv"));
}

TEST_F(Looking, TheOpenWindowTurnsDarkAndLightWithTheSystem) {
    const QPalette before = QApplication::palette();
    const auto paper = [this] { return plan()->grab().toImage().pixelColor(5, 5).lightnessF(); };
    const auto desk = [this] { return window->page()->yards()->grab().toImage().pixelColor(5, 5).lightnessF(); };
    EXPECT_GT(paper(), 0.8);
    QApplication::setPalette(ui::look::paletteOf(ui::look::colours(true)));
    EXPECT_LT(paper(), 0.3);
    EXPECT_LT(desk(), 0.3);
    QApplication::setPalette(before);
    EXPECT_GT(paper(), 0.8);
    EXPECT_GT(desk(), 0.8);
}

TEST_F(Looking, PlanTableAndBoardShareOneSelection) {
    window->setPlace(ui::window::Place::MergeDay);
    window->page()->setTableShown(true);
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A3"));
    EXPECT_EQ(window->page()->table()->currentIndex().siblingAtColumn(0).data().toString(), QStringLiteral("A3"));
    const auto* list = window->page()->board()->list();
    ASSERT_TRUE(list->currentIndex().isValid());
    EXPECT_TRUE(list->currentIndex().data().toString().contains(QStringLiteral("A3")));
    QTableView* table = window->page()->table();
    QTest::keyClick(table, Qt::Key_Down);
    EXPECT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A4")));
}

TEST_F(Looking, TheCardSaysWhyAHiveIsHeldAndWhatWouldLiftIt) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A3"));
    const auto* card = window->findChild<ui::card::ColonyCard*>();
    QString all;
    for (const QLabel* label : card->findChildren<QLabel*>()) all += label->text() + u'\n';
    EXPECT_TRUE(all.contains(QStringLiteral("Brood not checked"))) << all.toStdString();
    const auto holds =
        window->desk()->reading().holdsOf(*window->desk()->reading().find(book.idOf(QStringLiteral("A3"))));
    ASSERT_EQ(holds.size(), 1u);
    EXPECT_TRUE(all.contains(holds[0].lift)) << all.toStdString();
}

TEST_F(Looking, EachYardIsListedWithItsCount) {
    const auto& model = window->page()->yards()->model();
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.at(0).hives, 6);
    EXPECT_TRUE(model.at(0).status.contains(QStringLiteral("1 held"))) << model.at(0).status.toStdString();
}

TEST_F(Looking, KeysFitZoomAndWalk) {
    const double fitted = plan()->camera().pixelsPerMetre;
    QTest::keyClick(plan(), Qt::Key_Plus);
    EXPECT_GT(plan()->camera().pixelsPerMetre, fitted);
    QTest::keyClick(plan(), Qt::Key_Home);
    EXPECT_DOUBLE_EQ(plan()->camera().pixelsPerMetre, fitted);
    QTest::keyClick(plan(), Qt::Key_Tab);
    const auto first = window->desk()->chosen();
    QTest::keyClick(plan(), Qt::Key_Tab);
    EXPECT_NE(window->desk()->chosen(), first);
    QTest::keyClick(plan(), Qt::Key_Backtab);
    EXPECT_EQ(window->desk()->chosen(), first);
}

TEST_F(Looking, MoreTextFitsWhereTheSystemsIsLarger) {
    const int before = window->topBar()->sizeHint().height();
    QFont larger = QApplication::font();
    const QFont old = larger;
    larger.setPointSizeF(larger.pointSizeF() * 1.6);
    QApplication::setFont(larger);
    QCoreApplication::processEvents();
    EXPECT_GT(window->topBar()->sizeHint().height(), before);
    QApplication::setFont(old);
}

TEST_F(Looking, TheWorksheetGoesToPdfByItsButton) {
    QTemporaryDir folder;
    dialogs.pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    window->setPlace(ui::window::Place::MergeDay);
    QAbstractButton* button = nullptr;
    for (QAbstractButton* b : window->page()->board()->findChildren<QAbstractButton*>())
        if (b->text().contains(QStringLiteral("DF"))) button = b;
    ASSERT_NE(button, nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
    QFile pdf(*dialogs.pdf);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly)) << said();
    EXPECT_TRUE(pdf.read(5) == "%PDF-");
    EXPECT_NE(said().find("sheet.pdf"), std::string::npos);
}

TEST_F(Looking, EnterOpensTheCardAndTheBoardComesBack) {
    window->setPlace(ui::window::Place::MergeDay);
    plan()->setFocus();
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A3"));
    QTest::keyClick(plan(), Qt::Key_Return);
    const auto* card = window->findChild<ui::card::ColonyCard*>();
    EXPECT_TRUE(card->isVisible());
    QAbstractButton* back = nullptr;
    for (QAbstractButton* b : card->findChildren<QAbstractButton*>())
        if (b->text().contains(QStringLiteral("Merge day"))) back = b;
    ASSERT_NE(back, nullptr);
    QTest::mouseClick(back, Qt::LeftButton);
    EXPECT_TRUE(window->page()->board()->isVisible());
}

TEST(EmptyBook, SaysWhatToDoNextAndDoesIt) {
    QTemporaryDir folder;
    tests::FixedClock clock;
    tests::TestDialogs dialogs;
    ui::window::MainWindow window(clock, dialogs);
    window.show();
    ASSERT_TRUE(window.makeBook(folder.filePath(QStringLiteral("new.yardwright"))));
    QAbstractButton* import = nullptr;
    const auto found = [&] {
        for (QAbstractButton* b : window.findChildren<QAbstractButton*>())
            if (b->isVisible() && b->text().contains(QStringLiteral("CSV"))) import = b;
        return import != nullptr;
    };
    ASSERT_TRUE(QTest::qWaitFor(found, 2000));
    dialogs.folder = QStringLiteral(YW_TEST_DATA "/yards/kiln-field");
    QTest::mouseClick(import, Qt::LeftButton);
    ASSERT_EQ(window.page()->yards()->model().rowCount(), 1) << dialogs.faults.join(u'\n').toStdString();
    EXPECT_EQ(window.page()->yards()->model().at(0).hives, 12);
}

TEST(EmptyBook, AFolderWithoutFilesChangesNothingAndIsSaid) {
    QTemporaryDir folder;
    tests::FixedClock clock;
    tests::TestDialogs dialogs;
    ui::window::MainWindow window(clock, dialogs);
    ASSERT_TRUE(window.makeBook(folder.filePath(QStringLiteral("new.yardwright"))));
    EXPECT_FALSE(window.importFolder(folder.path()));
    EXPECT_EQ(dialogs.faults.size(), 1);
    EXPECT_FALSE(window.desk()->session().undoText());
}

} // namespace
