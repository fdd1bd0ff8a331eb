#include "core/edit/feedings.h"
#include "core/rules/season_mites.h"
#include "core/rules/season_strength.h"
#include "tests/ui/picking.h"
#include "ui/chart/chart_panel.h"
#include "ui/chart/chart_table.h"
#include "ui/season/season_page.h"

#include <QAction>
#include <QFile>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

// Figures: own calculation, from the rows of the book (tests/ui/book_of_test.h). 15 Sep 2026 is a Tuesday.

namespace {

using ui::season::SeasonPage;

/// The place Season of the real window, by keys.
struct Season : tests::Picking {
    void SetUp() override {
        Picking::SetUp();
        QTest::keyClick(window.get(), Qt::Key_6, Qt::ControlModifier);
    }
    SeasonPage* page() const {
        for (auto* page : window->findChildren<SeasonPage*>())
            if (page->isVisible()) return page;
        return nullptr;
    }
    void turnTo(int page) const {
        for (int i = 0; i < page; ++i) key(Qt::Key_PageDown, Qt::ControlModifier);
    }
    std::string where() const { return page()->where().toStdString(); }
    std::string told() const { return page()->sentences().toStdString(); }
    QTableView* table() const { return page()->panel()->table(); }
    /// The row of that first cell, as it is shown: "15 Sep 2026|4.25|…"
    std::string row(const QString& first) const {
        const QAbstractItemModel& m = *table()->model();
        for (int r = 0; r < m.rowCount(); ++r) {
            if (m.index(r, 0).data().toString() != first) continue;
            QStringList cells;
            for (int c = 0; c < m.columnCount(); ++c) cells << m.index(r, c).data().toString();
            return cells.join(u'|').toStdString();
        }
        return {};
    }
    void visit(const char* label, const std::function<void(core::Visit&)>& set) const {
        core::Visit v;
        v.colony = book.idOf(QLatin1StringView(label));
        v.day = book.clock().day;
        set(v);
        write([&](const core::edit::EditContext& c) { return core::edit::logVisit(c, v); });
    }
    void sample(const char* label, int mites) const {
        visit(label, [&](core::Visit& v) {
            v.mites = mites;
            v.miteSample = 300;
        });
    }
};

TEST_F(Season, StrengthOfTheYardByKeys) {
    ASSERT_TRUE(page());
    EXPECT_TRUE(page()->isAncestorOf(QApplication::focusWidget())) << "its keys work at once";
    EXPECT_EQ(where(), "Kiln Field · 1 May to 15 Sep 2026");
    EXPECT_EQ(told(), "On 15 Sep 2026: 6 of 6 hives counted, 4.25 frames of bees a hive, 25.5 in all.");
    key(Qt::Key_M);
    EXPECT_EQ(where(), "Kiln Field · 16 Sep 2025 to 15 Sep 2026");
    key(Qt::Key_Y);
    EXPECT_EQ(where(), "Kiln Field · 10 May to 15 Sep 2026") << "since its first hive";
    key(Qt::Key_S);
    EXPECT_EQ(where(), "Kiln Field · 1 May to 15 Sep 2026");
    key(Qt::Key_A);
    EXPECT_EQ(where(), "all yards · 1 May to 15 Sep 2026");
    EXPECT_EQ(told(), "On 15 Sep 2026: 6 of 8 hives counted, 4.25 frames of bees a hive, 25.5 in all. Left out, not "
                      "counted as 0: 2 without a valid count.");
    key(Qt::Key_A);
    EXPECT_EQ(where(), "Kiln Field · 1 May to 15 Sep 2026");
}

TEST_F(Season, TheTableIsTheFiguresAndTheNextChartAKeyAway) {
    key(Qt::Key_T);
    ASSERT_TRUE(table()->isVisible());
    EXPECT_EQ(row("15 Sep 2026"), "15 Sep 2026|4.25|6|6|0|0|0|0|4|2|0");
    EXPECT_EQ(row("13 Sep 2026"), "13 Sep 2026|—|6|0|0|6|0|0|0|0|0") << "not counted is no 0";
    const core::Snapshot s = session().snapshot(book.clock().day);
    const core::Day from = core::dayOf(2026, 5, 1);
    const core::Snapshot before = session().snapshot(from - 1);
    const auto visits = session().visitsBetween(from, s.on, {});
    const auto weeks = core::rules::strengthByWeek({from, before, s, s.yardNamed(u"Kiln Field"), visits});
    EXPECT_EQ(table()->model()->rowCount(), static_cast<int>(weeks.size()));
    key(Qt::Key_C);
    EXPECT_EQ(row("15 Sep 2026"), "15 Sep 2026|25.5|6|6|0|0|0|0|4|2|0");
    key(Qt::Key_C);
    EXPECT_EQ(page()->panel()->view()->chart().title, QStringLiteral("Strength, Kiln Field"));
}

TEST_F(Season, FollowsTheYardAndEveryEditAlsoWhatCameWhileHidden) {
    visit("B1", [](core::Visit& v) { v.beesTop = core::Quarters{10}; });
    QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
    visit("B2", [](core::Visit& v) { v.beesTop = core::Quarters{20}; });
    window->desk()->choose(book.idOf(QStringLiteral("B1")));
    QTest::keyClick(window.get(), Qt::Key_6, Qt::ControlModifier);
    EXPECT_EQ(where(), "Mill Lane · 1 May to 15 Sep 2026");
    EXPECT_EQ(told(), "On 15 Sep 2026: 2 of 2 hives counted, 3.75 frames of bees a hive, 7.5 in all.");
    window->desk()->undo();
    EXPECT_EQ(told(), "On 15 Sep 2026: 1 of 2 hives counted, 2.5 frames of bees a hive, 2.5 in all. Left out, not "
                      "counted as 0: 1 without a valid count.");
}

TEST_F(Season, MitesAgainstTheThresholdWithTheirInterval) {
    turnTo(1);
    EXPECT_EQ(told(), "What to do about mites, the label, your veterinarian and local law decide.");
    EXPECT_FALSE(page()->panel()->tableShown());
    sample("A1", 30);
    EXPECT_EQ(told(),
              "Week to 15 Sep 2026: 1 of 6 hives sampled, 10.0 mites in 100 bees. Highest hive: 10.0; above its "
              "threshold: 1 hive. The threshold is 3; one hive says nothing certain of the others.\n"
              "For an estimate of a yard sample 8 of its hives, or all of a smaller one (Lee et al. 2010).\n"
              "What to do about mites, the label, your veterinarian and local law decide.");
    for (const char* label : {"A2", "A3", "A4", "A5", "A6"}) sample(label, 30);
    // All alike: Student's t says nothing; the exact interval of 180 mites of 1800 bees: 8.65 to 11.48
    // (Clopper, Pearson by scipy 1.10.1's beta.ppf).
    EXPECT_EQ(told(), "Week to 15 Sep 2026: 6 of 6 hives sampled, 10.0 mites in 100 bees (95 % interval 8.7 to 11.5). "
                      "Highest hive: 10.0; above its threshold: 6 hives. All of the interval lies above the threshold "
                      "of 3.\nWhat to do about mites, the label, your veterinarian and local law decide.");
    const auto& chart = page()->panel()->view()->chart();
    ASSERT_EQ(chart.thresholds.size(), 1U);
    EXPECT_EQ(chart.thresholds[0].value, 3);
    EXPECT_EQ(chart.thresholds[0].text, QStringLiteral("threshold, August to December"));
    EXPECT_TRUE(chart.source.contains(u"assumption"));
    key(Qt::Key_T);
    EXPECT_EQ(row("15 Sep 2026"), "15 Sep 2026|10|8.7|11.5|6|6|10.0|3|6|yes");
}

TEST_F(Season, FeedGivenAndStillNeeded) {
    turnTo(2);
    EXPECT_EQ(told(), "1 May to 15 Sep 2026: no feed noted.\nOn 15 Sep 2026: 0 of 6 hives with a valid weight, none of "
                      "them too light.");
    core::Feeding syrup;
    syrup.colony = book.idOf(QStringLiteral("A1"));
    syrup.day = book.clock().day;
    syrup.mix = QStringLiteral("2:1");
    syrup.volume = core::Millilitres{5000};
    write([&](const core::edit::EditContext& c) { return core::edit::logFeeding(c, syrup); });
    syrup.mix.clear();
    syrup.colony = book.idOf(QStringLiteral("A2"));
    write([&](const core::edit::EditContext& c) { return core::edit::logFeeding(c, syrup); });
    visit("A3", [](core::Visit& v) { v.gross = core::Decagrams{2800}; });
    // 5 litres of 2:1 hold 5 × 0.884 kg of sugar (CRC Handbook); 32 − 28 kg are short: 4 / 1.078 litres, up to 4.
    EXPECT_EQ(told(),
              "1 May to 15 Sep 2026: 2 hives fed, 2 feedings noted. Sugar in syrup and dry: 4.4 kg. Feedings "
              "whose sugar is not known, as no mix or weight is recorded: 1; left out, not counted as 0.\n"
              "On 15 Sep 2026: 1 of 6 hives with a valid weight. Still needed: 4 kg of stores in 1 hive, 4 L of "
              "2:1 syrup. Feed given since a hive was weighed shows only once it is weighed again.");
    key(Qt::Key_T);
    EXPECT_EQ(row("15 Sep 2026"), "15 Sep 2026|4.4|2|2|10|1");
    key(Qt::Key_C);
    EXPECT_EQ(row("A3"), "A3|4|4 L|15 Sep 2026");
    key(Qt::Key_A);
    EXPECT_EQ(row("Kiln Field"), "Kiln Field|4|1|4 L");
}

TEST_F(Season, QueensByAgeAndWinters) {
    turnTo(3);
    EXPECT_EQ(told(),
              "On 15 Sep 2026, of 6 hives: 6 with a queen of this year or the last, 0 with an older one, 0 whose "
              "queen's year is not recorded, 0 without a queen.");
    key(Qt::Key_A);
    key(Qt::Key_T);
    EXPECT_EQ(row("2025"), "2025|6|1|blue");
    EXPECT_EQ(row("not recorded"), "not recorded|2||") << "of Mill Lane";
    EXPECT_EQ(row("no queen"), "no queen|0||");
    key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(told(), "No winter is in the book yet.");
}

TEST_F(Season, TheTableIsWrittenAsAFile) {
    QTemporaryDir folder;
    dialogs.file = folder.filePath(QStringLiteral("strength.csv"));
    auto* save = page()->panel()->findChild<QPushButton*>(QStringLiteral("chartSave"));
    ASSERT_TRUE(save && save->isEnabled());
    for (QAction* way : save->menu()->actions())
        if (way->text().contains(QStringLiteral("CSV"))) way->trigger();
    QFile file(*dialogs.file);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << told();
    const QStringList lines = QString::fromUtf8(file.readAll()).split(QChar(u'\n'));
    const auto columns = lines.front().count(u',');
    EXPECT_TRUE(lines.front().startsWith(QStringLiteral("week to,"))) << lines.front().toStdString();
    const QStringList last = lines.filter(QStringLiteral("2026-09-15"));
    ASSERT_EQ(last.size(), 1);
    EXPECT_EQ(last.front().toStdString(), "2026-09-15,4.25,6,6,0,0,0,0,4,2,0");
    EXPECT_EQ(last.front().count(u','), columns);
}

} // namespace
