#include "core/edit/edits.h"
#include "core/edit/mite_falls.h"
#include "tests/ui/recording.h"
#include "ui/chart/chart_panel.h"
#include "ui/chart/chart_table.h"
#include "ui/season/season_page.h"

#include <QAction>
#include <QFile>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

// Mites: fallen ones noted by keys, and the page of Health. Figures: own calculation, from the rows; today is 15 Sep
// 2026, a Tuesday.

namespace {

using namespace core;
using ui::season::SeasonPage;

struct Mites : tests::Recording {
    void openPage() const {
        QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
        for (int i = 0; i < 12 && (!page() || !page()->isVisible()); ++i) key(Qt::Key_PageDown, Qt::ControlModifier);
        ASSERT_TRUE(page());
    }
    SeasonPage* page() const {
        for (auto* page : window->findChildren<SeasonPage*>())
            if (page->isVisible()) return page;
        return nullptr;
    }
    std::string told() const { return page()->sentences().toStdString(); }
    const ui::chart::Chart& chart() const { return page()->panel()->view()->chart(); }
    bool says(const char* text) const { return page()->sentences().contains(QString::fromUtf8(text)); }
    std::vector<MiteFall> falls(const char* label) const {
        return window->desk()->session().miteFallsOf(book.idOf(QLatin1StringView(label)));
    }
    void wash(const char* label, Day day, int mites, int bees = 300) const {
        write([&](const edit::EditContext& c) {
            Visit v;
            v.colony = book.idOf(QLatin1StringView(label));
            v.day = day;
            v.mites = mites;
            v.miteSample = bees;
            return edit::logVisit(c, v);
        });
    }
    void fall(const char* label, Day day, int mites, int days = 5) const {
        write([&](const edit::EditContext& c) {
            MiteFall f;
            f.colony = book.idOf(QLatin1StringView(label));
            f.day = day;
            f.days = days;
            f.mites = mites;
            return edit::logMiteFall(c, f);
        });
    }
    void treat(Day day, int days) const {
        write([&](const edit::EditContext& c) {
            Treatment t;
            t.yard = c.yardNamed(u"Kiln Field")->id;
            t.day = day;
            t.days = days;
            t.product = QStringLiteral("strips");
            t.substance = QStringLiteral("thymol");
            return edit::logTreatment(c, t);
        });
    }
};

TEST_F(Mites, FallenAreNotedPutRightAndTakenBackByKeysAlone) {
    choose("A2");
    QTest::keyClick(window.get(), Qt::Key_M, Qt::ControlModifier | Qt::AltModifier);
    ASSERT_TRUE(formShown()) << said();
    EXPECT_EQ(QApplication::focusWidget(), field("mites"));
    type("20");
    key(Qt::Key_Tab);
    type("5");
    QString notes;
    for (const QLabel* label : panel()->findChildren<QLabel*>())
        if (label->isVisible()) notes += label->text() + u'\n';
    // Source: buckfastimker-weser-ems.de, Kontrolle Milbenfall: 20 mites in 5 days are 4.0 a day.
    EXPECT_TRUE(notes.contains(u"4.0 mites a day. It cannot be turned into mites per 100 bees."))
        << notes.toStdString();
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown()) << shownBy("problem").toStdString() << shownBy("question").toStdString();
    ASSERT_EQ(falls("A2").size(), 1u);
    EXPECT_EQ(falls("A2")[0].mites, 20);
    EXPECT_EQ(falls("A2")[0].days, 5);
    EXPECT_EQ(falls("A2")[0].day, book.clock().day);
    goTo(QStringLiteral("Mites fallen"));
    EXPECT_EQ(records()->model().at(rowTitled(QStringLiteral("Mites fallen"))).words,
              QStringLiteral("20 mites in 5 days, 4.0 a day"));
    key(Qt::Key_Return);
    ASSERT_TRUE(formShown());
    fill("mites", "0");
    key(Qt::Key_Return);
    EXPECT_FALSE(formShown());
    EXPECT_EQ(falls("A2")[0].mites, 0);
    goTo(QStringLiteral("Mites fallen"));
    key(Qt::Key_Delete);
    EXPECT_TRUE(falls("A2").empty());
    window->desk()->undo();
    EXPECT_EQ(falls("A2").size(), 1u);
}

TEST_F(Mites, WhatIsWrongIsSaidInTheFormAndNothingIsWritten) {
    fall("A2", book.clock().day, 20);
    choose("A2");
    QTest::keyClick(window.get(), Qt::Key_M, Qt::ControlModifier | Qt::AltModifier);
    type("7");
    key(Qt::Key_Tab);
    type("1");
    key(Qt::Key_Return);
    EXPECT_TRUE(formShown());
    EXPECT_EQ(shownBy("problem").toStdString(),
              "A2 has a count of fallen mites on 2026-09-15 already; expected one count a colony a day.");
    EXPECT_EQ(falls("A2").size(), 1u);
}

TEST_F(Mites, AnEmptyYardSaysWhatToDoAndWhichThresholdHolds) {
    openPage();
    EXPECT_TRUE(says("Kiln Field: 0 of 6 hives have a wash of the last 45 days, 6 none.")) << told();
    EXPECT_TRUE(says("sample 8 of its hives, or all of a smaller one (Lee et al. 2010)")) << told();
    EXPECT_TRUE(says("On 15 Sep 2026 it is 3 in 100.")) << told();
    EXPECT_TRUE(says("assumption")) << told();
    for (int part = 1; part < 4; ++part) {
        key(Qt::Key_C);
        EXPECT_NE(told(), "");
        EXPECT_TRUE(ui::chart::isEmpty(chart())) << part;
        EXPECT_FALSE(chart().none.isEmpty());
    }
}

TEST_F(Mites, LatestWashesAgainstTheThresholdAndWhatNoneMeans) {
    wash("A1", dayOf(2026, 9, 1), 12);
    wash("A2", dayOf(2026, 9, 1), 0);
    wash("A3", dayOf(2026, 7, 1), 3);
    openPage();
    EXPECT_TRUE(says("2 of 6 hives have a wash of the last 45 days, 1 an older one, 3 none.")) << told();
    EXPECT_TRUE(says("Together: 2.0 mites in 100 bees")) << told();
    EXPECT_TRUE(says("Above the threshold: A1 (4.0).")) << told();
    // Source: Oliver, Re-evaluating varroa monitoring part 2, 2020: 0.99^300 = 4.9 %. Up to 1.2: exact, of 0 in 300
    // (Clopper, Pearson: 1 - 0.025^(1/300)).
    EXPECT_TRUE(says("No mite in the wash of A2 is not no mites: 0 of 300 bees leaves up to 1.2 in 100 possible, and "
                     "where 1 bee in 100 carries one, 4.9 % of such washes show none"))
        << told();
    EXPECT_EQ(chart().names, (std::vector<QString>{"A1", "A2"})) << "the highest first";
    EXPECT_EQ(chart().thresholds.at(0).value, 3);
    ASSERT_TRUE(chart().series.at(0).points.at(1).upper);
}

TEST_F(Mites, RatesAndFallAreNeverOnOneAxis) {
    wash("A1", dayOf(2026, 8, 20), 12);
    fall("A1", dayOf(2026, 9, 10), 60);
    fall("A2", dayOf(2026, 8, 12), 400);
    treat(dayOf(2026, 8, 10), 10);
    openPage();
    key(Qt::Key_C);
    EXPECT_EQ(chart().unit, QStringLiteral("in 100"));
    ASSERT_EQ(chart().series.size(), 2u);
    EXPECT_EQ(chart().series[1].kind, ui::chart::Kind::Step) << "2 to July, 3 from August on";
    EXPECT_EQ(chart().series[1].points.front().value, 2);
    EXPECT_EQ(chart().series[1].points.back().value, 3);
    EXPECT_EQ(chart().marks.size(), 1u) << "the treatment";
    key(Qt::Key_C);
    EXPECT_EQ(chart().unit, QStringLiteral("a day"));
    ASSERT_EQ(chart().series.size(), 3u);
    EXPECT_EQ(chart().series[0].points.size(), 1u);
    EXPECT_EQ(chart().series[0].points[0].value, 12) << "natural fall";
    EXPECT_EQ(chart().series[1].points.at(0).value, 80) << "while treated";
    EXPECT_EQ(chart().series[2].points.front().at, dayOf(2026, 7, 1).number) << "no threshold before July";
    EXPECT_EQ(chart().series[2].points.front().value, 10);
    EXPECT_TRUE(says("Natural fall, week to 13 Sep 2026: 1 hive counted, mean 12.0 mites a day, highest 12.0 (A1). "
                     "Above the threshold: A1."))
        << told();
    EXPECT_TRUE(says("On 15 Sep 2026 it is 10 a day.")) << told();
    EXPECT_TRUE(says("What falls while a treatment works is no natural fall")) << told();
}

} // namespace
