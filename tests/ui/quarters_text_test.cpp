#include "ui/visit/quarters_text.h"

#include <gtest/gtest.h>

namespace {

TEST(QuartersText, FramesAreUnderstoodAsPeopleTypeThem) {
    const std::pair<const char*, int> rows[] = {{"3", 12},     {"0", 0},      {"3.25", 13},   {"3,25", 13},  {"3.5", 14},
                                                {"3.50", 14},  {"3¼", 13},    {"3 ¼", 13},    {"3 1/4", 13}, {"3 1/2", 14},
                                                {"3 2/4", 14}, {"3¾", 15},    {"½", 2},       {"3/4", 3},    {" 3 ", 12},
                                                {"24", 96},    {"3.0", 12},   {"3  1/4", 13}, {"3 1⁄4", 13}};
    for (const auto& [typed, quarters] : rows) {
        const auto got = ui::visit::parseFrames(QString::fromUtf8(typed));
        ASSERT_TRUE(got) << typed;
        EXPECT_EQ(got->value, quarters) << typed;
    }
}

TEST(QuartersText, AllElseIsNoFrames) {
    for (const char* typed : {"", " ", "three", "-1", "3.3", "3.26", "3 1/3", "3 5/4", "1/5", "3..5", "24.25", "25", "3 -1/4",
                              "3.25.1", "1e1", "3 1", "¼¼", "3,5,1", "99999999999999999999"})
        EXPECT_FALSE(ui::visit::parseFrames(QString::fromUtf8(typed))) << typed;
}

} // namespace
