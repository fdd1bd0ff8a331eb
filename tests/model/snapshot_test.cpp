#include "core/model/snapshot.h"

#include <gtest/gtest.h>

using namespace core;

namespace {

Snapshot sample() {
    Snapshot s;
    s.on = dayOf(2026, 9, 20);
    const auto colony = [&](const char* label, Day since, std::optional<Day> ended) {
        SnapColony c;
        c.label = c.shown = QString::fromUtf8(label);
        c.since = since;
        c.ended = ended;
        s.colonies.push_back(c);
    };
    colony("A1", dayOf(2025, 5, 1), {});
    colony("É2", dayOf(2026, 5, 1), {});
    colony("A1", dayOf(2024, 5, 1), dayOf(2025, 4, 30));
    for (const qint32 c : {0, 0, 2}) {
        SnapStay stay;
        stay.colony = {c};
        stay.standName = QString::number(s.stays.size());
        s.stays.push_back(stay);
    }
    s.checks = {{{1}, dayOf(2026, 6, 1), 5, 5, {}}, {{1}, dayOf(2026, 7, 1), 5, 5, {}}};
    s.yards = {{{1}, "North", {}, {}, {}}, {{2}, "Süd", -33.0, {}, {}}};
    return s;
}

TEST(Snapshot, FindsRowsOfOneColony) {
    const Snapshot s = sample();
    EXPECT_EQ(s.staysOf({0}).size(), 2u);
    EXPECT_EQ(s.staysOf({1}).size(), 0u);
    EXPECT_EQ(s.staysOf({2}).size(), 1u);
    EXPECT_EQ(s.placeOf({0})->standName, "1");
    EXPECT_EQ(s.placeOf({1}), nullptr);
    EXPECT_EQ(s.checksOf({1}).size(), 2u);
    EXPECT_EQ(s.checksOf({0}).size(), 0u);
    EXPECT_TRUE(s.signsOf({1}).empty());
}

TEST(Snapshot, FindsLivingColoniesAndYardsByName) {
    const Snapshot s = sample();
    EXPECT_EQ(s.livingCount(), 2u);
    EXPECT_EQ(s.livingNamed(u"a1"), (ColonyIx{0}));
    EXPECT_EQ(s.livingNamed(u"é2"), (ColonyIx{1}));
    EXPECT_EQ(s.livingNamed(u"A1@2025-05-01"), (ColonyIx{0}));
    EXPECT_EQ(s.livingNamed(u"A1@2024-05-01"), std::nullopt);
    EXPECT_EQ(s.livingNamed(u"B"), std::nullopt);
    EXPECT_EQ(s.colonyNamed(u"a1"), (ColonyIx{0}));
    EXPECT_EQ(s.colonyNamed(u"A1@2024-05-01"), (ColonyIx{2})); // ended
    EXPECT_EQ(s.colonyNamed(u"A1@soon"), std::nullopt);
    EXPECT_EQ(s.yardNamed(u"SÜD"), (YardIx{1}));
    EXPECT_EQ(s.yardNamed(u"West"), std::nullopt);
    EXPECT_TRUE(s.yard({1}).southern());
    EXPECT_FALSE(s.yard({0}).southern());
}

} // namespace
