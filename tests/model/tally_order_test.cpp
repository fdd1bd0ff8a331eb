#include "core/model/tally_order.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using core::QueenSeen;
using core::Sign;
using core::TallyColumn;

TEST(TallyOrder, EachColumnStandsInItOnce) {
    const std::set<TallyColumn> once(core::kTallyOrder.begin(), core::kTallyOrder.end());
    EXPECT_EQ(once.size(), core::kTallyOrder.size());
    EXPECT_EQ(once.size(), static_cast<size_t>(TallyColumn::Note) + 1);
}

template <class E, class Back> void lettersAreTheirOwn(Back back) {
    std::set<QChar> letters;
    for (size_t i = 0; i < core::wordsOf<E>().size(); ++i) {
        const E value = static_cast<E>(i);
        const QChar letter = core::tallyLetter(value);
        EXPECT_TRUE(letters.insert(letter).second) << core::wordsOf<E>()[i];
        EXPECT_EQ(back(letter), value);
        EXPECT_EQ(back(letter.toUpper()), value);
    }
    for (const QChar none : {u'4', u'?', u' ', u'x', u'é'}) EXPECT_FALSE(back(none));
}

TEST(TallyOrder, EachQueenAndEachSignHasALetterOfItsOwn) {
    lettersAreTheirOwn<QueenSeen>([](QChar c) { return core::queenOfLetter(c); });
    lettersAreTheirOwn<Sign>([](QChar c) { return core::signOfLetter(c); });
}

TEST(TallyOrder, ColumnsAreUsedWhereAVisitSaysSomething) {
    core::Visit counted;
    counted.beesTop = core::Quarters{0}; // nought is a count
    counted.note = QStringLiteral("calm");
    core::Visit checked;
    checked.broodChecked = 3;
    checked.signs.add(Sign::Chalkbrood);
    EXPECT_TRUE(core::columnsUsed({}).empty());
    EXPECT_EQ(core::columnsUsed({checked, counted}),
              (std::vector{TallyColumn::BeesTop, TallyColumn::Checked, TallyColumn::Signs, TallyColumn::Note}));
    core::Visit all;
    all.boxes = 2;
    all.beesTop = all.beesBottom = all.upperBeesTop = all.upperBeesBottom = core::Quarters{1};
    all.stores = all.upperStores = core::Quarters{1};
    all.queen = QueenSeen::Seen;
    all.broodFrames = all.broodChecked = all.supers = all.mites = all.miteSample = 1;
    all.signs.add(Sign::Afb);
    all.gross = core::Decagrams{100};
    all.note = QStringLiteral("x");
    EXPECT_EQ(core::columnsUsed({all}), std::vector(core::kTallyOrder.begin(), core::kTallyOrder.end()));
}

} // namespace
