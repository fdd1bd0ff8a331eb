#include "core/rules/calc/bees.h"
#include "core/rules/calc/brood.h"
#include "core/rules/calc/loss.h"
#include "core/rules/calc/mites.h"

#include "tests/calc/open_data.h"
#include "tests/calc/reference.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

// The calculators on open data, every row of it. Sources and licences: tests/data/open/README.md.

namespace {

using namespace core;
using namespace core::rules::calc;

struct LossRow {
    QString where;
    bool national = false;
    qint64 lost = 0, of = 0, percent = 0;
};

/// The rows of the survey that print a number for lost, for what it is a share of, and for the percent.
std::vector<LossRow> lossRows() {
    const OpenTable table(QStringLiteral("usda_nass_colony.csv"));
    std::vector<LossRow> rows;
    for (size_t i = 0; i < table.rows(); ++i) {
        const QString state = table.text(i, "state");
        const bool national = state == QLatin1StringView("United States");
        const auto lost = table.number(i, "colony_lost");
        const auto of = table.number(i, national ? "colony_n" : "colony_max");
        const auto percent = table.number(i, "colony_lost_pct");
        if (!lost || !of || !percent) continue;
        rows.push_back({table.text(i, "year") + u' ' + table.text(i, "months") + u' ' + state, national,
                        std::llround(*lost), std::llround(*of), std::llround(*percent)});
    }
    return rows;
}

// Source: USDA NASS, Honey Bee Colonies, releases 2016 to 2022, tables on colonies lost: percent lost = lost / maximum
// for states, lost / colonies of the first day for the United States (their footnotes). The seven rows that differ are
// all of 2015, each printed one above: made, it seems, from counts before rounding.
TEST(OpenData, LossPercentsOfEveryQuarter) {
    const auto rows = lossRows();
    EXPECT_EQ(rows.size(), 1355u); // 1354 with numbers, and one that lost none, printed as a dash
    EXPECT_EQ(std::count_if(rows.begin(), rows.end(), [](const LossRow& r) { return r.national; }), 29);
    QStringList odd;
    for (const LossRow& r : rows) {
        const qint64 got = wholePercent(r.lost, r.of);
        if (got == r.percent) continue;
        odd << r.where;
        EXPECT_EQ(r.percent, got + 1) << r.where.toStdString();
        EXPECT_FALSE(r.national) << r.where.toStdString();
    }
    odd.sort();
    EXPECT_EQ(odd, (QStringList{"2015 April-June Alabama", "2015 April-June New Jersey", "2015 April-June Texas",
                                "2015 January-March Oregon", "2015 July-September Massachusetts",
                                "2015 October-December Oregon", "2015 October-December Vermont"}))
        << odd.join("; ").toStdString();
}

// Source: the same; a half rounded to the even percent would miss 19 more rows, 1328 (and the row of the dash) would
// agree.
TEST(OpenData, HalvesGoUp) {
    int agree = 0;
    for (const LossRow& r : lossRows()) agree += std::llrint(100.0 * double(r.lost) / double(r.of)) == r.percent;
    EXPECT_EQ(agree, 1328 + 1);
}

// Every quarter's states together: the interval of the survey standard is wider than that of one pot of colonies.
TEST(OpenData, StatesAreNotIndependentColonies) {
    std::vector<Counted> states;
    for (const LossRow& r : lossRows())
        if (r.where.startsWith("2015 January-March") && !r.national) states.push_back({r.lost, r.of});
    ASSERT_GT(states.size(), 40u);
    const auto rates = lossRates(states);
    ASSERT_TRUE(rates && rates->overall.spread);
    EXPECT_GT(*rates->overall.spread, 100);
    EXPECT_LT(rates->overall.interval.low, rates->overall.share());
    EXPECT_GT(rates->overall.interval.high, rates->overall.share());
}

const OpenTable& trial() {
    static const OpenTable table(QStringLiteral("varroa_fall_trial_2020.csv"));
    return table;
}

// Source: Aurell, Wall, Bruckner, Williams 2024, J. Insect Science, data, column phor2. Their bees are estimated by
// weight, to tenths: the calculator, which counts whole bees, is given ten times both.
TEST(OpenData, MitesPerHundredOfEveryWash) {
    int rows = 0;
    for (size_t i = 0; i < trial().rows(); ++i) {
        const auto mites = trial().number(i, "mites_recov_3_washes");
        const auto bees = trial().number(i, "est_bee_num_by_wt");
        const auto printed = trial().number(i, "phor2");
        ASSERT_EQ(mites.has_value() && bees.has_value(), printed.has_value()) << i;
        if (!printed) continue;
        ++rows;
        const MiteSample tenfold{int(std::lround(*mites * 10)), int(std::lround(*bees * 10))};
        EXPECT_NEAR(*bees * 10, tenfold.bees, 1e-6);
        EXPECT_NEAR(mitesPerHundred(tenfold), *printed, 1e-9) << i;
        const auto interval = mitesInterval({int(std::lround(*mites)), int(std::lround(*bees))});
        ASSERT_TRUE(interval) << i;
        EXPECT_LE(interval->low, *printed + 0.05) << i;
        EXPECT_GE(interval->high, *printed - 0.05) << i;
    }
    EXPECT_EQ(rows, 175);
}

// Source: the same data, day 0; the mean 11.1097 over 47 colonies, its interval by scipy 1.10.1 (stats.t.interval).
TEST(OpenData, MitesOfTheYardOnDayZero) {
    std::vector<MiteSample> samples;
    for (size_t i = 0; i < trial().rows(); ++i)
        if (trial().text(i, "days") == "0" && trial().number(i, "phor2"))
            samples.push_back({int(std::lround(*trial().number(i, "mites_recov_3_washes") * 10)),
                               int(std::lround(*trial().number(i, "est_bee_num_by_wt") * 10))});
    const MeanRow want = referenceYardMean();
    const auto yard = yardMites(samples, 47);
    ASSERT_TRUE(yard && yard->interval);
    EXPECT_EQ(yard->colonies, want.colonies);
    EXPECT_NEAR(yard->mean, 11.1097, 0.00005);
    EXPECT_NEAR(yard->mean, want.mean, 1e-9);
    EXPECT_NEAR(yard->interval->low, want.low, 1e-8);
    EXPECT_NEAR(yard->interval->high, want.high, 1e-8);
    EXPECT_TRUE(yard->enough);
}

// Source: the same data. Bees in every row are 2430 times their frames of bees, capped worker cells 6688 times their
// frames of brood. Frames rounded to quarters, as the book keeps them, miss by at most an eighth of a frame.
TEST(OpenData, BeesOfEveryRowAreTheirFrames) {
    int rows = 0;
    for (size_t i = 0; i < trial().rows(); ++i) {
        const auto bees = trial().number(i, "bees");
        const auto frames = trial().number(i, "bees_frames");
        if (!frames) { // of dead colonies only
            EXPECT_EQ(bees.value_or(0), 0) << i;
            continue;
        }
        ASSERT_TRUE(bees) << i;
        ++rows;
        const Bees got = beesOn(Quarters{int(std::lround(*frames * 4))});
        EXPECT_NEAR(got.covered, *bees, 2430 / 8.0 + 1) << i;
        EXPECT_NEAR(beesPerFrame()[2].bees * *frames, *bees, 0.01) << i;
        EXPECT_LE(got.bees.low, *bees + 2430 / 8.0 + 1) << i;
        EXPECT_GE(got.bees.high, *bees - 2430 / 8.0 - 1) << i;
    }
    EXPECT_EQ(rows, 175);
}

TEST(OpenData, WorkerCellsOfEveryRowAreTheirFrames) {
    int rows = 0;
    for (size_t i = 0; i < trial().rows(); ++i) {
        const auto cells = trial().number(i, "wk_cells");
        const auto frames = trial().number(i, "wk_frames");
        if (!frames) {
            EXPECT_EQ(cells.value_or(0), 0) << i;
            continue;
        }
        ASSERT_TRUE(cells) << i;
        ++rows;
        EXPECT_NEAR(kCellsPerFrame.high * *frames, *cells, 0.01) << i;
        EXPECT_NEAR(broodOn(Quarters{int(std::lround(*frames * 4))}).cells.high, *cells, 6688 / 8.0 + 1) << i;
    }
    EXPECT_EQ(rows, 222);
}

// Source: the same data, the last sampling (February): a frame with any bees on it is not a frame of bees. The 174
// frames touched held 140,005 bees, 805 each, well below every figure for a frame of bees.
TEST(OpenData, AFrameWithAnyBeesIsNotAFrameOfBees) {
    double bees = 0;
    double touched = 0;
    for (size_t i = 0; i < trial().rows(); ++i) {
        const auto at = trial().number(i, "fob_at_all");
        const auto b = trial().number(i, "bees");
        if (!at || !b) continue;
        EXPECT_LE(*trial().number(i, "bees_frames"), *at) << i;
        bees += *b;
        touched += *at;
    }
    EXPECT_EQ(touched, 174);
    EXPECT_NEAR(bees, 140'005, 1);
    EXPECT_LT(bees / touched, beesPerFrame().front().bees);
}

} // namespace
