#include "app/arguments.h"

#include <gtest/gtest.h>

using app::Arguments;
using app::Option;
using app::UsageError;

namespace {

const std::vector<Option> kOptions = {{"on"}, {"yard", true, true}, {"json", false}, {"most"}};

Arguments parsed(const QStringList& words) { return {words, kOptions, {"BOOK"}}; }

} // namespace

TEST(Arguments, OptionsStandInAnyOrderAroundTheWords) {
    const Arguments a = parsed({"--yard", "North", "b.yardwright", "--json", "--yard=South", "--on", "2026-09-20"});
    EXPECT_EQ(a.word("BOOK"), "b.yardwright");
    EXPECT_EQ(a.values("yard"), (QStringList{"North", "South"}));
    EXPECT_TRUE(a.has("json"));
    EXPECT_EQ(a.day("on"), core::dayOf(2026, 9, 20));
    EXPECT_FALSE(a.count("most", 0, 10).has_value());
}

TEST(Arguments, WrongUsageIsSaid) {
    EXPECT_THROW(parsed({}), UsageError);
    EXPECT_THROW(parsed({"a", "b"}), UsageError);
    EXPECT_THROW(parsed({"a", "--what"}), UsageError);
    EXPECT_THROW(parsed({"a", "--on"}), UsageError);
    EXPECT_THROW(parsed({"a", "--on", "2026-09-20", "--on", "2026-09-21"}), UsageError);
    EXPECT_THROW(parsed({"a", "--on", "2026-02-30"}).day("on"), UsageError);
    EXPECT_THROW(parsed({"a", "--on", "20-9-2026"}).day("on"), UsageError);
    EXPECT_THROW(parsed({"a"}).day("on"), UsageError);
    EXPECT_THROW(parsed({"a", "--most", "-1"}).count("most", 0, 10), UsageError);
    EXPECT_THROW(parsed({"a", "--most", "1.5"}).count("most", 0, 10), UsageError);
    EXPECT_THROW(parsed({"a", "--yard", "X"}).choice("yard", {"a4", "letter"}), UsageError);
}
