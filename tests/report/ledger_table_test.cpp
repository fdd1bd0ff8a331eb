#include "core/report/ledger_table.h"
#include "tests/report/page_reading.h"
#include "tests/report/print_sample.h"

#include <gtest/gtest.h>

namespace {

using namespace core::report;
using namespace tests::report;

// Counts: own calculation, from tests/data/yards/tansy-lane/colonies.csv.
TEST(Ledger, ItsPagesHoldEveryYearOnceWithinThePaper) {
    const Sample sample = workedYard("tansy-lane", "Tansy Lane", "2026-05-05");
    const auto years = core::rules::ledger(sample.s);
    ASSERT_FALSE(years.empty());
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        PageOrigin options;
        options.paper = paper;
        const auto pages = ledgerPages(sample.s, years, options, EvenMeasure());
        EXPECT_EQ(faultsOf(pages, EvenMeasure()).join("\n").toStdString(), "");
        EXPECT_EQ(zonesNamed(pages, "year ").size(), years.size());
        EXPECT_TRUE(flowing(pages).contains("Winter took 1 of 12 at risk: 8 %")) << flowing(pages).toStdString();
    }
}

TEST(Ledger, ARowHasACellForEachColumnInTheWindowAndInTheFile) {
    const Sample sample = workedYard("tansy-lane", "Tansy Lane", "2026-05-05");
    const auto years = core::rules::ledger(sample.s);
    EXPECT_EQ(ledgerColumns().size(), ledgerFileColumns().size());
    for (const bool forFile : {false, true})
        for (const LedgerRow& row : ledgerRows(sample.s, years, forFile)) {
            ASSERT_EQ(row.cells.size(), ledgerColumns().size());
            int sum = 0;
            for (qsizetype c = 5; c + 1 < row.cells.size(); ++c) sum += (c <= 8 ? 1 : -1) * row.cells[c].toInt();
            EXPECT_EQ(sum, row.cells.last().toInt());
            EXPECT_FALSE(forFile && row.cells.contains(QString())) << "0 is written as 0";
        }
}

} // namespace
