#include "tests/support/csv_snapshot.h"
#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"
#include "ui/board/board.h"
#include "ui/card/colony_card.h"
#include "ui/desk/reading.h"
#include "ui/look/reason_text.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <algorithm>

// Card and board say why, with rules and limits to unfold. Source of the figures: tests/data/yards/README.md,
// kiln-field; of those worked out of them: own calculation by core/rules/calc.

namespace {

ui::desk::Reading kilnField(core::Day on = core::dayOf(2026, 9, 15)) {
    return ui::desk::readingOf(tests::support::snapshotOf(
        tests::support::tablesOfFolder(QStringLiteral(YW_TEST_DATA "/yards/kiln-field")), on));
}

core::ColonyIx named(const ui::desk::Reading& r, const char* label) {
    return *r.snapshot.livingNamed(QString::fromUtf8(label));
}

QString whysOf(const ui::card::CardContent& card) {
    QString all;
    for (const auto& why : card.whys) all += why.title + u'|' + why.text + u'|' + why.rules + u'\n';
    return all;
}

TEST(Why, TheCardSaysOfEachFindingItsSentenceRuleAndLimits) {
    const auto r = kilnField();
    const QString fed = whysOf(ui::card::cardOf(r, named(r, "K10")));
    for (const char* part : {"Feed|It weighed 22 kg on ", "ready for winter at 32 kg",
                             "Rule 4.12: stores.single_kg 32 kg", "weigh.max_age_days 30 days (assumption)",
                             "Alone, at risk|", "No union was possible.", "value.winter a table (assumption)"})
        EXPECT_TRUE(fed.contains(QString::fromUtf8(part))) << part << " is not in\n" << fed.toStdString();
    const QString united = whysOf(ui::card::cardOf(r, named(r, "K2")));
    for (const char* part :
         {"Union|", "at least 50 is asked", "Rule 4.7.9 (a)", "gain.min 50 thousandths (assumption)"})
        EXPECT_TRUE(united.contains(QString::fromUtf8(part))) << part << " is not in\n" << united.toStdString();
    const QString held = whysOf(ui::card::cardOf(r, named(r, "K7")));
    EXPECT_TRUE(held.contains(QStringLiteral("Rule 4.4.10: check.min_frames 3 brood frames (assumption)")))
        << held.toStdString();
    EXPECT_TRUE(whysOf(ui::card::cardOf(r, named(r, "K12"))).contains(QStringLiteral("41 days old")));
}

TEST(Why, TheTipNamesFactsLimitsAndSources) {
    const auto r = kilnField();
    const auto feed = std::ranges::find(r.plan.feed, named(r, "K10"), &core::rules::Feed::colony);
    ASSERT_NE(feed, r.plan.feed.end());
    const QString tip = ui::look::reasonTip(r.snapshot, feed->why);
    for (const char* part : {"Rule 4.12", "weighs: 22 kg", "Limit: stores.single_kg 32 kg (OMAFRA"})
        EXPECT_TRUE(tip.contains(QString::fromUtf8(part))) << part << " is not in\n" << tip.toStdString();
}

// K2: 12 mites among 300 bees; 4 frames of bees are 5,600 to 10,000 by source.
TEST(Why, TheCardTellsWhatIsWorkedOutWithItsSource) {
    const auto r = kilnField();
    const auto card = ui::card::cardOf(r, named(r, "K2"));
    QString all;
    for (const auto& figure : card.figures) {
        EXPECT_FALSE(figure.source.isEmpty()) << figure.name.toStdString();
        all += figure.name + u' ' + figure.text + u'\n';
    }
    for (const char* part : {"Bees about 5,600 to 10,000", "Mites 12 in 300 bees on 14 Sep: 4.0 in 100 (2.1 to 6.9)",
                             "for ± 1 in 100 wash ", "Food about "})
        EXPECT_TRUE(all.contains(QString::fromUtf8(part))) << part << " is not in\n" << all.toStdString();
}

TEST(Why, RulesAndLimitsUnfoldOnTheCard) {
    const auto r = kilnField();
    ui::card::ColonyCard card;
    card.resize(360, 900);
    card.show(ui::card::cardOf(r, named(r, "K10")));
    card.QWidget::show();
    const auto shown = [&card] {
        const auto labels = card.findChildren<QLabel*>();
        return std::ranges::count_if(labels, [](const QLabel* label) {
            return label->isVisible() && label->text().startsWith(QStringLiteral("Rule 4."));
        });
    };
    auto* button = card.findChild<QPushButton*>(QStringLiteral("rulesAndLimits"));
    ASSERT_TRUE(button);
    EXPECT_EQ(shown(), 0);
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_GT(shown(), 1);
    card.show(ui::card::cardOf(r, named(r, "K9"))); // the next colony: as it was left
    EXPECT_GT(shown(), 0);
}

TEST(Why, TheBoardUnfoldsTheRowThatIsChosen) {
    const auto r = kilnField();
    const tests::BookOfTest book;
    tests::TestDialogs dialogs;
    ui::desk::Desk desk(core::edit::Session::open(book.path(), book.clock()), dialogs);
    ui::board::Board board(desk, dialogs);
    board.resize(360, 900);
    board.show(r, core::YardIx{0});
    board.QWidget::show();
    int alone = -1;
    for (int i = 0; i < board.model().rowCount(); ++i)
        if (board.model().at(i).atRisk) alone = i;
    ASSERT_GE(alone, 0);
    const auto& row = board.model().at(alone);
    EXPECT_TRUE(row.rules.isEmpty());
    EXPECT_TRUE(board.model().index(alone).data(Qt::ToolTipRole).toString().contains(QStringLiteral("Limit: ")));
    board.list()->setCurrentIndex(board.model().index(alone));
    EXPECT_TRUE(row.rules.startsWith(QStringLiteral("Rule 4.1: "))) << row.rules.toStdString();
    EXPECT_TRUE(row.lines.join(u' ').contains(QStringLiteral("No union was possible.")))
        << row.lines.join(u' ').toStdString();
    const auto lines = row.lines.size();
    board.list()->setCurrentIndex(board.model().index(0));
    board.list()->setCurrentIndex(board.model().index(alone));
    EXPECT_EQ(row.lines.size(), lines) << "said once";
    EXPECT_TRUE(row.spoken().contains(QStringLiteral("Rule 4.1")));
}

TEST(Why, TheBoardTellsTheMitesOfTheYard) {
    const auto r = kilnField();
    // K2: 12, K3: 3 mites in 300 bees; over two colonies the interval is wide.
    const std::string text = ui::card::yardMitesText(r, core::YardIx{0}).toStdString();
    EXPECT_EQ(text, "Mites in this yard: 2.5 in 100 on average over 2 colonies (0.0 to 21.6); 8 are to be sampled.");
    EXPECT_EQ(ui::card::yardMitesText(kilnField(core::dayOf(2026, 12, 1)), core::YardIx{0}), QString()) << "too old";
}

} // namespace
