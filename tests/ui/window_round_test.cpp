#include "tests/ui/picking.h"
#include "ui/board/row_list.h"
#include "ui/health/round_page.h"
#include "ui/health/what_now.h"
#include "ui/look/paged.h"
#include "ui/visit/visit_form.h"

#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>

// The page Brood checks, in the real window. All but A3 of Kiln Field were checked on 14 September; nobody in Mill
// Lane.

namespace {

using namespace core;

struct BroodRoundPage : tests::Picking {
    std::vector<ColonyId> printed; ///< what a tally sheet was to be of

    void SetUp() override {
        QSettings().remove(QStringLiteral("paper"));
        Picking::SetUp();
        ui::window::Paper paper = window->paper();
        paper.preview = [this](QWidget*, const ui::window::PaperJob& job) {
            EXPECT_EQ(job.choice.sheet, report::Sheet::Tally);
            printed = job.round;
            return false;
        };
        window->setPaper(paper);
    }
    ui::health::RoundPage* page() const { return window->findChild<ui::health::RoundPage*>(); }
    void open() const {
        QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
        auto* pages = qobject_cast<ui::look::Paged*>(window->page()->middleOf(ui::window::Place::Health));
        for (size_t i = 0; i < pages->pages().size() && !page()->isVisible(); ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
        ASSERT_TRUE(page()->isVisible());
    }
    std::string rows() const {
        QStringList titles;
        const auto& model = page()->list()->rows();
        for (int i = 0; i < model.rowCount(); ++i) titles << model.at(i).title;
        return titles.join(u'|').toStdString();
    }
    void sign(const char* label, Sign what) const {
        write([&](const edit::EditContext& c) {
            Visit v;
            v.colony = book.idOf(QLatin1StringView(label));
            v.day = book.clock().day;
            v.signs.add(what);
            return edit::logVisit(c, v);
        });
    }
};

TEST_F(BroodRoundPage, NamesThoseThatLackACheckAndUntilWhenTheOthersCount) {
    open();
    EXPECT_EQ(page()->summary().toStdString(),
              "Kiln Field: 1 of 6 hives have no brood check that will still count on 15 Sep 2026.");
    EXPECT_EQ(rows(), "To check, in walking order; those that are held last|1. A3|A check still counts on 15 Sep "
                      "2026|A1|A2|A4|A5|A6");
    EXPECT_EQ(page()->list()->rows().at(1).right.toStdString(), "brood never looked at");
    EXPECT_EQ(page()->list()->rows().at(1).lines.join(u'|').toStdString(),
              "No brood check and no negative is recorded.");
    EXPECT_EQ(page()->list()->rows().at(3).right.toStdString(), "counts until 11 Feb 2027");
    window->desk()->setYard(
        window->desk()
            ->reading()
            .snapshot.yard(*window->desk()->reading().snapshot.yardNamed(QStringLiteral("Mill Lane")))
            .id);
    EXPECT_EQ(rows(), "To check, in walking order; those that are held last|1. B1|2. B2");
}

TEST_F(BroodRoundPage, SaysBeforeTheFallFromWhichDayACheckLasts) {
    write([&](const edit::EditContext& c) {
        Visit v;
        v.colony = book.idOf(QStringLiteral("A3"));
        v.day = dayOf(2026, 5, 12);
        v.broodFrames = 4;
        v.broodChecked = 4;
        return edit::logVisit(c, v);
    });
    open();
    window->desk()->setDay(dayOf(2026, 5, 20));
    EXPECT_EQ(page()->summary().toStdString(),
              "Kiln Field: 5 of 6 hives have no brood check that will still count on 20 "
              "Aug 2026; none that counts on 20 May 2026: 5.");
    EXPECT_EQ(page()->findChild<QLabel*>(QStringLiteral("roundFrom"))->text().toStdString(),
              "The fall unions begin on 20 Aug 2026: a check from 1 May 2026 on counts then.");
    EXPECT_TRUE(QString::fromStdString(rows()).endsWith(QStringLiteral("A check still counts on 20 Aug 2026|A3")))
        << rows();
}

TEST_F(BroodRoundPage, GoesThroughTheFormsInThatOrder) {
    sign("A1", Sign::Efb);
    open();
    EXPECT_EQ(rows().substr(0, 65), "To check, in walking order; those that are held last|1. A3|2. A1|");
    page()->list()->setFocus();
    QTest::keyClick(page()->list(), Qt::Key_Home);
    QTest::keyClick(page()->list(), Qt::Key_Down);
    ASSERT_EQ(chosen(), "A3");
    key(Qt::Key_Return);
    ASSERT_TRUE(window->page()->form()->isVisible()) << said();
    EXPECT_EQ(window->page()->form()->place().label.toStdString(), "A3");
    type("4");
    key(Qt::Key_Return);
    EXPECT_TRUE(window->page()->form()->isVisible()) << said();
    EXPECT_EQ(window->page()->form()->place().label.toStdString(), "A1") << "the next one on the round";
    EXPECT_EQ(book.visitsOf(QStringLiteral("A3")).size(), 2U);
}

TEST_F(BroodRoundPage, PrintsTheTallySheetOfThoseAlone) {
    sign("A1", Sign::Efb);
    sign("A2", Sign::BroodDoubt);
    open();
    QTest::mouseClick(page()->printButton(), Qt::LeftButton);
    ASSERT_EQ(printed.size(), 3U);
    EXPECT_EQ(labelOf(printed[0]).toStdString(), "A3");
    EXPECT_EQ(printed, page()->round());
    QTemporaryDir folder;
    dialogs.pdf = folder.filePath(QStringLiteral("round.pdf"));
    QTest::mouseClick(page()->pdfButton(), Qt::LeftButton);
    QFile pdf(*dialogs.pdf);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly)) << said();
    EXPECT_EQ(pdf.read(5), "%PDF-");
}

TEST_F(BroodRoundPage, WhatIsSuspectedStaysClosed) {
    sign("A3", Sign::Afb);
    open();
    EXPECT_EQ(rows().substr(0, 43), "Not on the round: they stay closed|A3|A che") << rows();
    EXPECT_TRUE(page()->alarm().contains(ui::health::whatNow(Sign::Afb))) << "one text";
    EXPECT_FALSE(page()->printButton()->isEnabled()) << "nobody is to be checked";
    EXPECT_FALSE(page()->walkButton()->isEnabled());
}

} // namespace
