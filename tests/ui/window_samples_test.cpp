#include "core/edit/kit.h"
#include "core/edit/samples.h"
#include "core/model/kit_words.h"
#include "tests/ui/picking.h"
#include "tests/ui/recording.h"
#include "ui/board/row_list.h"
#include "ui/form/form_panel.h"
#include "ui/health/samples_page.h"
#include "ui/kit/kit_window.h"
#include "ui/look/paged.h"

#include <QCheckBox>
#include <QComboBox>
#include <QPushButton>

namespace {

using namespace core;
using ui::health::SamplesPage;

/// The page Samples of Health, in the real window; by keys.
struct SamplesOfHealth : tests::Recording {
    SamplesPage* page() const { return window->findChild<SamplesPage*>(); }
    void open() const {
        QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
        for (int i = 0; i < 2; ++i) QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
        ASSERT_TRUE(page()->isVisible());
        page()->list()->setFocus();
    }
    /// "Not sent yet (1)|A1 · brood comb / taken 15 Sep"
    std::string rows() const {
        QStringList out;
        for (const auto& r : page()->rows()) {
            QString text = r.row.title.isEmpty() ? r.row.lines.join(u' ') : r.row.title;
            if (!r.row.right.isEmpty()) text += QStringLiteral(" / ") + r.row.right;
            out << text;
        }
        return out.join(u'|').toStdString();
    }
    void goToRow(int row) const { page()->list()->setCurrentIndex(page()->list()->model()->index(row, 0)); }
    void press(Qt::Key key) const { QTest::keyClick(page()->list(), key); }
    const edit::Session& session() const { return window->desk()->session(); }
    ColonyId idOf(const char* label) const { return book.idOf(QLatin1StringView(label)); }
    void take(const char* label, Day day, std::optional<Day> sent = {}) const {
        Sample s;
        s.colony = idOf(label);
        s.day = day;
        s.laboratory = QStringLiteral("Hill laboratory");
        s.sent = sent;
        write([&](const edit::EditContext& c) { return edit::takeSample(c, s); });
    }
    Day today() const { return book.clock().day; }
    std::string heldAs(const char* label) const {
        const auto& reading = window->desk()->reading();
        QStringList kinds;
        for (const auto& hold : reading.holdsOf(*reading.find(idOf(label)))) kinds << rules::holdWord(hold.kind);
        return kinds.join(u' ').toStdString();
    }
};

TEST_F(SamplesOfHealth, ASampleIsTakenSentAndAnsweredByKeys) {
    choose("A1");
    open();
    EXPECT_EQ(rows(), "No sample of a hive of this yard is in the book.");
    press(Qt::Key_T);
    ASSERT_TRUE(formShown());
    fill("laboratory", "Hill laboratory");
    fill("by", "Ana");
    key(Qt::Key_Return);
    EXPECT_EQ(book.history().front(), "Took a sample of A1 on 2026-09-15 (afb, brood) for Hill laboratory");
    EXPECT_EQ(rows(), "Not sent yet (1)|A1 · brood comb / taken 15 Sep");
    EXPECT_EQ(page()->summary(), "1 not sent yet");
    page()->list()->setFocus();
    goToRow(1);
    EXPECT_FALSE(page()->button('S')->isHidden());
    press(Qt::Key_S);
    ASSERT_TRUE(formShown());
    key(Qt::Key_Return);
    EXPECT_EQ(book.history().front(),
              "Sent the sample of A1 taken on 2026-09-15 (afb, brood) to Hill laboratory on 2026-09-15");
    EXPECT_EQ(rows(), "Awaited (1)|A1 · brood comb / sent 15 Sep");
    goToRow(1);
    page()->list()->setFocus();
    press(Qt::Key_S);
    EXPECT_FALSE(formShown()) << "it is sent already";
    press(Qt::Key_W);
    ASSERT_TRUE(formShown());
    const size_t lines = book.history().size();
    key(Qt::Key_Return);
    EXPECT_EQ(book.history().size(), lines) << "neither negative nor positive is chosen";
    EXPECT_TRUE(formShown());
    pick("answer", 2);
    fill("paper", "A-9");
    key(Qt::Key_Return);
    EXPECT_EQ(book.history().front(), "Answer to the sample of A1 taken on 2026-09-15 (afb, brood): positive");
    EXPECT_EQ(rows(), "In (1)|A1 · brood comb / positive");
    EXPECT_TRUE(page()->summary().isEmpty());
    EXPECT_NE(heldAs("A1").find("afb-confirmed"), std::string::npos) << heldAs("A1");
    EXPECT_NE(heldAs("A2").find("afb-yard"), std::string::npos) << "the holds are up at once";
}

TEST_F(SamplesOfHealth, TheOthersForTheSameLaboratoryAreSentToo) {
    take("A1", today() - 2);
    take("A2", today() - 1);
    open();
    EXPECT_EQ(rows(), "Not sent yet (2)|A1 · brood comb / taken 13 Sep|A2 · brood comb / taken 14 Sep");
    goToRow(1);
    QTest::mouseClick(page()->button('S'), Qt::LeftButton);
    ASSERT_TRUE(formShown());
    key(Qt::Key_Return);
    EXPECT_EQ(book.history().front(), "Sent 2 samples on 2026-09-15");
}

TEST_F(SamplesOfHealth, WhatIsLateComesFirstAndIsGivenUp) {
    take("A1", today() - 30, today() - 20); // sample.late_days: 21
    take("A2", today() - 30, today() - 21);
    open();
    EXPECT_EQ(rows(), "Awaited, late (1)|A2 · brood comb / sent 25 Aug, 21 days ago|Awaited (1)|A1 · brood comb / "
                      "sent 26 Aug, 20 days ago");
    EXPECT_EQ(page()->summary(), "2 awaited, 1 of them late");
    EXPECT_EQ(page()->rows()[1].row.cautions.join(u' ').toStdString(),
              "Late: no answer in 21 days (asked after from 21 days on). Ask the laboratory.");
    goToRow(1);
    press(Qt::Key_G);
    ASSERT_TRUE(formShown());
    key(Qt::Key_Return);
    EXPECT_EQ(rows(), "Awaited (1)|A1 · brood comb / sent 26 Aug, 20 days ago|Given up (1)|A2 · brood comb / since "
                      "15 Sep");
    goToRow(3);
    page()->list()->setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(formShown()) << "put right";
    fill("lost", "");
    key(Qt::Key_Return);
    EXPECT_EQ(page()->summary(), "2 awaited, 1 of them late");
}

TEST_F(SamplesOfHealth, ASampleIsTakenBackAndAPositiveOnlyAsACorrection) {
    take("A1", today() - 2);
    open();
    goToRow(1);
    press(Qt::Key_Delete);
    EXPECT_EQ(book.history().front(), "Took back the sample of A1 taken on 2026-09-13 (afb, brood)");
    take("A1", today() - 2);
    write([&](const edit::EditContext& c) { return edit::answerSample(c, SampleId{1}, {true, {}, {}, {}}); });
    press(Qt::Key_2);
    EXPECT_EQ(rows(), "Found by laboratories and inspectors (1)|A1: positive / 13 Sep 2026");
    goToRow(1);
    const size_t lines = book.history().size();
    dialogs.expectCorrection = true; // and no answer is given
    press(Qt::Key_Delete);
    EXPECT_EQ(dialogs.asked.size(), 1);
    EXPECT_EQ(book.history().size(), lines);
}

TEST_F(SamplesOfHealth, ResultsOrdersAndFieldKitsStandApart) {
    const auto found = [&](std::optional<ColonyId> colony, Verdict verdict, Method method, Day day) {
        Result r;
        r.colony = colony;
        if (!colony) r.yard = *window->desk()->yard();
        r.day = day;
        r.verdict = verdict;
        r.method = method;
        r.by = QStringLiteral("district inspector");
        r.paper = QStringLiteral("N-%1").arg(isoText(day).right(2));
        write([&](const edit::EditContext& c) { return edit::logResult(c, r); });
    };
    found({}, Verdict::Order, Method::Inspector, today() - 9);
    found({}, Verdict::Release, Method::Inspector, today() - 4);
    found(idOf("A2"), Verdict::Order, Method::Inspector, today() - 3);
    found(idOf("A3"), Verdict::Negative, Method::Field, today() - 2);
    open();
    press(Qt::Key_2);
    EXPECT_EQ(page()->shown(), SamplesPage::Shown::Results);
    EXPECT_EQ(rows(), "Orders and releases (3)|A2: order: move nothing / 12 Sep 2026|Kiln Field: release / 11 Sep "
                      "2026|Kiln Field: order: move nothing / 6 Sep 2026|Field kits at the hive (1)|A3: negative / "
                      "13 Sep 2026");
    const auto said = [&](size_t row) { return page()->rows()[row].row.lines.join(u' ').toStdString(); };
    EXPECT_EQ(said(3), "American foulbrood, inspector, by district inspector, paper N-06; released on 11 Sep 2026, "
                       "paper N-11");
    EXPECT_EQ(page()->rows()[1].row.cautions.front(), "In force: no release names it.");
    EXPECT_NE(said(5).find("A field kit's negative is kept and shown; it changes nothing."), std::string::npos);
}

TEST_F(SamplesOfHealth, WhatALaboratoryAnsweredLeavesTheHoldReadable) {
    write([&](const edit::EditContext& c) {
        Visit v;
        v.colony = idOf("A1");
        v.day = today() - 10;
        v.signs.add(Sign::Afb);
        return edit::logVisit(c, v);
    });
    take("A1", today() - 4);
    write([&](const edit::EditContext& c) {
        return edit::answerSample(c, SampleId{1}, {false, {}, QStringLiteral("A-9"), {}});
    });
    open();
    press(Qt::Key_3);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page()->working(); }, 20'000));
    const std::string all = rows();
    EXPECT_NE(all.find("A1: American foulbrood suspected / 5 Sep 2026 to 10 Sep 2026"), std::string::npos) << all;
    const auto row = std::ranges::find_if(page()->rows(), [](const auto& r) {
        return r.row.title == QStringLiteral("A1: American foulbrood suspected");
    });
    ASSERT_NE(row, page()->rows().end());
    EXPECT_EQ(row->row.lines.front().toStdString(),
              "Ended by the negative of 11 Sep 2026, by Hill laboratory, paper A-9.");
}

TEST_F(SamplesOfHealth, WhoStandsNearASourceIsToldWithTheLimits) {
    write([&](const edit::EditContext& c) {
        Visit v;
        v.colony = idOf("A1");
        v.day = today();
        v.signs.add(Sign::Afb);
        return edit::logVisit(c, v);
    });
    open();
    press(Qt::Key_4);
    const std::string all = rows();
    EXPECT_NE(all.find("A1 in Kiln Field: American foulbrood suspected, last day 15 Sep 2026|A2 / 2.0 m|"),
              std::string::npos)
        << all;
    EXPECT_NE(all.find("Near, between yards: 1000 m. Source: Lindström"), std::string::npos) << all;
    EXPECT_NE(all.find("Robbing, between yards: 2000 m. Source: Lindström"), std::string::npos) << all;
    EXPECT_NE(all.find("Drift, within the yard: 3 m. Source: assumption"), std::string::npos) << all;
}

TEST_F(SamplesOfHealth, QuarantinedKitAndItsEndAreListed) {
    const rules::KitPlace apart{*window->desk()->yard(), core::kit::kLid, core::kit::kQuarantined, idOf("A1")};
    write([&](const edit::EditContext& c) { return edit::countKit(c, apart, 3); });
    edit::KitMove move{apart, 2, apart.yard, core::kit::kSterilised, {}, {}};
    move.end = edit::KitEnding{KitEndHow::Dipped, today(), QStringLiteral("Ana"), QStringLiteral("K-7"), {}};
    write([&](const edit::EditContext& c) { return edit::moveKit(c, move); });
    open();
    press(Qt::Key_5);
    EXPECT_EQ(rows(), "In quarantine: never offered, and waiting for its end|1 × lid / Kiln Field|Ended: irradiated, "
                      "dipped, burned|2 × lid off A1 / dipped in hot wax, 15 Sep 2026|What may be done with kit of a "
                      "foulbrood colony, the inspector decides.");
    goToRow(3);
    press(Qt::Key_P);
    ASSERT_TRUE(formShown());
    pick("how-sterilised", 0);
    key(Qt::Key_Return);
    EXPECT_EQ(book.history().front(), "Changed the end of 2 × lid off A1 on 2026-09-15 (dipped)");
    page()->list()->setFocus();
    goToRow(3);
    press(Qt::Key_Delete);
    EXPECT_EQ(book.history().front(),
              "Took back the end of 2 × lid off A1 on 2026-09-15 (irradiated); it is quarantined again");
    press(Qt::Key_K);
    EXPECT_NE(window->findChild<ui::kit::KitWindow*>(), nullptr);
}

TEST_F(SamplesOfHealth, AllYardsByAKeyAndTheRecordOfTheCard) {
    take("A1", today() - 2);
    open();
    press(Qt::Key_A);
    EXPECT_TRUE(page()->everywhere()->isChecked());
    EXPECT_EQ(rows(), "Not sent yet (1)|A1 in Kiln Field · brood comb / taken 13 Sep");
    QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
    choose("A1");
    EXPECT_GE(rowTitled(QStringLiteral("Sample")), 0);
    QTest::keyClick(window.get(), Qt::Key_S, Qt::ControlModifier | Qt::AltModifier);
    ASSERT_TRUE(formShown());
    EXPECT_EQ(panel()->values()["laboratory"], "Hill laboratory") << "the laboratory of the last one is proposed";
}

} // namespace
