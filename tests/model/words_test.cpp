#include "core/model/words.h"

#include <gtest/gtest.h>

using namespace core;

namespace {

template <class E> void expectWords(size_t count) {
    ASSERT_EQ(wordsOf<E>().size(), count);
    for (size_t i = 0; i < count; ++i) EXPECT_EQ(fromWord<E>(word(static_cast<E>(i))), static_cast<E>(i));
    EXPECT_EQ(fromWord<E>(u""), std::nullopt);
    EXPECT_EQ(fromWord<E>(word(E{}).toUpper()), std::nullopt);
    EXPECT_EQ(fromWord<E>(word(E{}) + u' '), std::nullopt);
}

TEST(Words, AreReadExactly) {
    expectWords<EndKind>(5);
    expectWords<QueenSeen>(7);
    expectWords<TransferKind>(5);
    expectWords<Disease>(2);
    expectWords<Verdict>(4);
    expectWords<Method>(3);
    expectWords<LineageHow>(3);
    expectWords<Sign>(7);
    EXPECT_EQ(word(EndKind::ShakenOut), "shaken-out");
    EXPECT_EQ(word(Sign::DeformedWings), "deformed-wings");
}

TEST(Signs, KnowWhatTroublesTheBrood) {
    for (int i = 0; i < 7; ++i) {
        Signs signs;
        EXPECT_TRUE(signs.empty());
        signs.add(static_cast<Sign>(i));
        EXPECT_TRUE(signs.has(static_cast<Sign>(i)));
        EXPECT_FALSE(signs.empty());
        EXPECT_EQ(signs.broodTrouble(), i < 3); // afb, efb, brood-doubt
    }
}

} // namespace
