#include "core/base/natural_order.h"

#include <gtest/gtest.h>

#include <QStringList>

#include <algorithm>
#include <random>

using namespace core;

namespace {

TEST(Folded, IsSimpleCaseFolding) {
    EXPECT_EQ(folded(u"North 7b"), QString("north 7b"));
    EXPECT_EQ(folded(u"ÄÖÜ ÉŁ"), QString::fromUtf8("äöü éł"));
    EXPECT_EQ(folded(u"ΣΑΣ"), folded(u"σας"));                 // final sigma folds with the others
    EXPECT_EQ(folded(u"Straße"), QString::fromUtf8("straße")); // simple folding: ß is not ss
    EXPECT_EQ(folded(u"𐐀"), folded(u"𐐨"));                     // beyond the first plane
    EXPECT_EQ(folded(u"\u212A"), QString("k"));                // the kelvin sign
    EXPECT_EQ(folded(u""), QString());
}

TEST(NaturalOrder, GoesRunByRun) {
    // Contract: runs of digits by value and before other runs, those without regard to case, then the exact text.
    const QStringList ordered = {"",     "2",   "10",  "10a",   "10A1",   "a", "A1", "A2",      "a2",
                                 "A02b", "A2c", "A10", "A10-2", "A10-10", "B", "b1", "North 2", "North 10"};
    for (qsizetype i = 0; i < ordered.size(); ++i)
        for (qsizetype j = 0; j < ordered.size(); ++j) {
            const int order = naturalCompare(ordered[i], ordered[j]);
            EXPECT_EQ(order < 0, i < j) << ordered[i].toStdString() << " " << ordered[j].toStdString();
            EXPECT_EQ(order == 0, i == j);
        }
}

TEST(NaturalOrder, ComparesNumbersOfAnyLength) {
    EXPECT_LT(naturalCompare(u"A99999999999999999999", u"A100000000000000000000"), 0);
    EXPECT_LT(naturalCompare(u"A007", u"A8"), 0);
    EXPECT_NE(naturalCompare(u"A07", u"A7"), 0);
    EXPECT_EQ(naturalCompareFolded(u"a07", u"a7"), 0);
}

TEST(NaturalOrder, IsAnOrder) {
    std::mt19937 random(7); // seed: 7
    std::vector<QString> texts;
    const QString letters = QStringLiteral("aAbB019é");
    for (int i = 0; i < 120; ++i) {
        QString text;
        for (auto n = random() % 6; n > 0; --n) text += letters[static_cast<qsizetype>(random() % 8)];
        texts.push_back(text);
    }
    std::sort(texts.begin(), texts.end(), NaturalLess());
    for (size_t i = 0; i < texts.size(); ++i)
        for (size_t j = i; j < texts.size(); ++j) {
            EXPECT_LE(naturalCompare(texts[i], texts[j]), 0);
            EXPECT_GE(naturalCompare(texts[j], texts[i]), 0);
            EXPECT_EQ(naturalCompare(texts[i], texts[j]) == 0, texts[i] == texts[j]);
        }
}

} // namespace
