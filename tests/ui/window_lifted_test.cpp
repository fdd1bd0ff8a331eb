#include "core/report/worksheet.h"
#include "tests/report/page_reading.h"
#include "tests/ui/hand.h"
#include "tests/ui/open_window.h"
#include "ui/form/form_panel.h"
#include "ui/visit/visit_form.h"

#include <QApplication>
#include <QCheckBox>
#include <QSettings>

#include <algorithm>

// A sign is entered by keys and holds the whole yard, on plan and worksheet; a negative, by keys too, lifts what the
// rule says (4.4.5, 4.4.8 to 4.4.10), from its own day on and no earlier.

namespace {

using namespace core;

struct SignAndNegative : tests::OpenWindow {
    std::unique_ptr<tests::Hand> hand;
    QString sheet; ///< words of the last one that went to paper
    Day sheetOn;   ///< and its day

    void SetUp() override {
        QSettings().remove(QStringLiteral("paper"));
        tests::OpenWindow::SetUp();
        hand = std::make_unique<tests::Hand>(*window);
        ui::window::Paper paper = window->paper();
        paper.preview = [this](QWidget*, const ui::window::PaperJob& job) {
            sheet.clear();
            sheetOn = job.reading.snapshot.on;
            for (const report::Page& page : report::worksheetPages(job.reading.snapshot, job.reading.plan, job.yard, {},
                                                                   tests::report::EvenMeasure()))
                sheet += tests::report::textOf(page) + u'\n';
            sheet = sheet.replace(u'\n', u' ').replace(QChar(0xa0), u' ');
            return false;
        };
        window->setPaper(paper);
    }
    Day today() const { return book.clock().day; }
    /// "A1:Y A2:S": what the drawing shows on that day.
    std::string letters(Day day) const {
        window->desk()->setDay(day);
        QStringList out;
        for (const ui::plan::HiveMark& hive : plan()->scene().hives)
            if (hive.held()) out << hive.label + u':' + hive.holdLetters;
        out.sort();
        return out.join(u' ').toStdString();
    }
    /// Of the merge day's worksheet, by keys.
    void worksheet(Day day) {
        window->desk()->setDay(day);
        hand->key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
        window->setPlace(ui::window::Place::YardPlan);
    }
    void retype(QWidget* edit, const QString& text) const {
        hand->tabTo(edit);
        hand->key(Qt::Key_A, Qt::ControlModifier);
        hand->type(text);
    }
    void sign(const QString& day) const {
        plan()->setFocus();
        hand->key(Qt::Key_Tab);
        hand->key(Qt::Key_Tab);
        ASSERT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A2")));
        hand->key(Qt::Key_L, Qt::ControlModifier);
        ui::visit::VisitForm* form = window->page()->form();
        ASSERT_TRUE(form->isVisible());
        retype(form->findChild<QWidget*>(QStringLiteral("visitDay")), day);
        for (QCheckBox* box : form->findChildren<QCheckBox*>())
            if (box->accessibleName() == QStringLiteral("Sign: foulbrood (American)")) hand->tabTo(box);
        hand->key(Qt::Key_Space);
        hand->key(Qt::Key_Return);
        ASSERT_FALSE(form->isVisible()) << said();
    }
    void negative(const QString& method, const QString& day) const {
        window->desk()->setDay(today());
        window->desk()->choose(book.idOf(QStringLiteral("A2")));
        hand->key(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
        hand->fill(QStringLiteral("result"), QStringLiteral("negative"));
        hand->fill(QStringLiteral("method"), method);
        retype(hand->field(QStringLiteral("by")), QStringLiteral("R. Tester"));
        retype(hand->field(QStringLiteral("day")), day);
        hand->key(Qt::Key_Return);
        ASSERT_FALSE(window->page()->panel()->isVisible()) << said();
    }
};

TEST_F(SignAndNegative, HoldTheYardAndAreLiftedFromTheirDayOnAndNoEarlier) {
    ASSERT_EQ(letters(today()), "A3:B") << "A3 alone was not checked on 14 September";
    sign(QStringLiteral("2026-09-12"));
    const char* const held = "A1:Y A2:S A3:YB A4:Y A5:Y A6:Y";
    EXPECT_EQ(letters(today()), held);
    EXPECT_EQ(letters(dayOf(2026, 9, 11)), "A1:B A2:B A3:B A4:B A5:B A6:B") << "the day before the sign";
    EXPECT_EQ(letters(dayOf(2026, 9, 12)), "A1:YB A2:SB A3:YB A4:YB A5:YB A6:YB");
    worksheet(today());
    ASSERT_EQ(sheetOn, today());
    EXPECT_TRUE(sheet.contains(QStringLiteral("American foulbrood suspected"))) << sheet.toStdString();
    EXPECT_TRUE(sheet.contains(QStringLiteral("A1, A4, A5, A6 Stood in a yard with American foulbrood")))
        << sheet.toStdString();
    EXPECT_TRUE(sheet.contains(QStringLiteral("Stood in a yard with American foulbrood"))) << sheet.toStdString();

    negative(QStringLiteral("field"), QStringLiteral("2026-09-13"));
    EXPECT_EQ(letters(today()), held) << "a field kit's negative changes nothing";
    negative(QStringLiteral("laboratory"), QStringLiteral("2026-09-11"));
    EXPECT_EQ(letters(today()), held) << "a sample from before the sign does not answer it";

    negative(QStringLiteral("laboratory"), QStringLiteral("2026-09-13"));
    EXPECT_EQ(letters(today()), "A3:B") << "what had nothing to do with the sign stays";
    EXPECT_EQ(letters(dayOf(2026, 9, 13)), "A1:B A3:B A4:B A5:B A6:B") << "on its own day";
    EXPECT_EQ(letters(dayOf(2026, 9, 12)), "A1:YB A2:SB A3:YB A4:YB A5:YB A6:YB") << "no earlier";
    worksheet(today());
    EXPECT_FALSE(sheet.contains(QStringLiteral("foulbrood suspected"))) << sheet.toStdString();
    EXPECT_FALSE(sheet.contains(QStringLiteral("Stood in a yard"))) << sheet.toStdString();
    EXPECT_TRUE(sheet.contains(QStringLiteral("Brood not checked"))) << sheet.toStdString();
}

} // namespace
