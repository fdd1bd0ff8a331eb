#include "core/exchange/number.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::exchange::parseNumber;
using core::exchange::parseReal;

// Expected values: own calculation, by hand.
TEST(Number, KeepsDigitsAndRoundsTheRest) {
    struct Case {
        const char* text;
        int decimals;
        qint64 rounded;
        bool exact;
    };
    for (const Case& c : {Case{"3", 2, 300, true}, Case{"3.25", 2, 325, true}, Case{"-2.125", 3, -2125, true},
                          Case{"0.0005", 3, 1, false}, Case{"0.00049", 3, 0, false}, Case{"-0.0005", 3, -1, false},
                          Case{"32.995", 2, 3300, false}, Case{"+7", 0, 7, true}, Case{".5", 0, 1, false},
                          Case{"7.000", 0, 7, true}, Case{"007", 0, 7, true}}) {
        const auto n = parseNumber(c.text, c.decimals, false);
        ASSERT_TRUE(n) << c.text;
        EXPECT_EQ(n->rounded, c.rounded) << c.text;
        EXPECT_EQ(n->exact, c.exact) << c.text;
    }
}

TEST(Number, RefusesWhatIsNone) {
    for (const char* text :
         {"", "-", ".", "1e3", "1.2.3", "1,5", "1 000", "0x1", "nan", "inf", "--1", "1-", "½", "1,234.5"})
        EXPECT_FALSE(parseNumber(text, 2, false)) << text;
    for (const char* text : {"1.234,5", "1,2,3", "1,2.3"}) EXPECT_FALSE(parseNumber(text, 2, true)) << text;
}

TEST(Number, ReadsADecimalCommaOnlyWhereAsked) {
    EXPECT_EQ(parseNumber("3,25", 2, true)->rounded, 325);
    EXPECT_EQ(parseNumber("3.25", 2, true)->rounded, 325);
    EXPECT_FALSE(parseNumber("3,25", 2, false));
    EXPECT_EQ(parseReal("-2,5", true), -2.5);
}

TEST(Number, JudgesTheRangeBeforeRounding) {
    EXPECT_TRUE(parseNumber("300", 2, false)->within(0, 30000));
    EXPECT_FALSE(parseNumber("300.0001", 2, false)->within(0, 30000));
    EXPECT_FALSE(parseNumber("-0.0001", 2, false)->within(0, 30000));
    EXPECT_TRUE(parseNumber("-0", 2, false)->within(0, 30000));
    EXPECT_FALSE(parseNumber("99999999999999999999999999", 3, false)->within(-10'000'000, 10'000'000));
    EXPECT_FALSE(parseNumber("-99999999999999999999999999", 3, false)->within(-10'000'000, 10'000'000));
}

TEST(Number, ReadsReals) {
    EXPECT_EQ(parseReal("52.1", false), 52.1);
    EXPECT_EQ(parseReal("+1", false), 1.0);
    EXPECT_FALSE(std::signbit(*parseReal("-0.0", false)));
    EXPECT_FALSE(parseReal("1e5", false));
    EXPECT_FALSE(parseReal(std::string(400, '9'), false));
    EXPECT_FALSE(parseReal("", false));
}

} // namespace
