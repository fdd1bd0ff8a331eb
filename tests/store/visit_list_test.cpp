#include "core/store/visit_list.h"

#include "core/store/note_words.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::store;

namespace {

class VisitList : public testing::Test {
protected:
    VisitList() {
        see("2026-05-10", a2, "Ana", {}, 3200);
        see("2026-05-20", a10, "Bo", "queen cells", {});
        see("2026-06-10", a2, "Ana", {}, 3000);
        see("2026-06-20", b, {}, "queen seen", 4100);
        Visit sick;
        sick.colony = b.id;
        sick.day = day("2026-06-25");
        sick.signs.add(Sign::Chalkbrood);
        sick.mites = 6;
        sick.miteSample = 300;
        book.visit(sick);
        book.carry(a10, book.stand(south, "1", {9000, 0}), day("2026-06-01"));
        see("2026-06-05", a10, "Bo", {}, 3500);
        wordsOfNewRange(book.db(), Table::Visit, 1, 10);
    }
    void see(const char* iso, const Colony& colony, const char* by, const char* note, std::optional<int> gross) {
        Visit v;
        v.colony = colony.id;
        v.day = day(iso);
        v.by = QString::fromLatin1(by);
        v.note = QString::fromLatin1(note);
        if (gross) v.gross = Decagrams{*gross};
        book.visit(v);
    }
    std::vector<qint64> found(const VisitFilter& f, VisitOrder order = {}, int most = 100) {
        std::vector<qint64> ids;
        for (const VisitId id : visitsFound(book.db(), f, order, most)) ids.push_back(id.value);
        return ids;
    }

    using Ids = std::vector<qint64>;
    TestBook book;
    Yard north = book.yard("North"), south = book.yard("South");
    Colony a2 = book.colony(north, "A2", day("2026-05-01"));
    Colony a10 = book.colony(north, "A10", day("2026-05-01"));
    Colony b = book.colony(south, "B", day("2026-05-01"));
};

TEST_F(VisitList, NewestFirstOrInAnotherOrder) {
    EXPECT_EQ(found({}), (Ids{5, 4, 3, 6, 2, 1}));
    EXPECT_EQ(found({}, {VisitKey::Day, false}), (Ids{1, 2, 6, 3, 4, 5}));
    EXPECT_EQ(found({}, {VisitKey::Label, false}), (Ids{3, 1, 6, 2, 5, 4})) << "A2 before A10";
    EXPECT_EQ(found({}, {VisitKey::Label, true}, 3), (Ids{5, 4, 6}));
    EXPECT_EQ(found({}, {VisitKey::Weight, false}), (Ids{3, 1, 6, 4, 5, 2})) << "not weighed: last";
    EXPECT_EQ(found({}, {VisitKey::Weight, true}), (Ids{4, 6, 1, 3, 5, 2})) << "not weighed: last";
    EXPECT_EQ(found({}, {VisitKey::By, false}, 2), (Ids{3, 1}));
}

TEST_F(VisitList, Filters) {
    VisitFilter f;
    f.yard = south.id;
    EXPECT_EQ(found(f), (Ids{5, 4, 6})) << "where the hive stood on the day";
    f.label = "a1";
    EXPECT_EQ(found(f), (Ids{6}));
    EXPECT_EQ(found(f, {VisitKey::Label, false}), (Ids{6}));
    f = {};
    f.from = day("2026-05-20");
    f.until = day("2026-06-10");
    EXPECT_EQ(found(f), (Ids{3, 6, 2}));
    f = {};
    f.by = "aN";
    EXPECT_EQ(found(f), (Ids{3, 1}));
    f = {};
    f.withNote = true;
    EXPECT_EQ(found(f), (Ids{4, 2}));
    f = {};
    f.withSigns = true;
    EXPECT_EQ(found(f), (Ids{5}));
    f = {};
    f.words = "queen c";
    EXPECT_EQ(found(f), (Ids{2}));
    EXPECT_EQ(visitTotals(book.db(), f).visits, 1);
    f.words = "queen";
    EXPECT_EQ(found(f), (Ids{4, 2}));
    EXPECT_EQ(found(f, {VisitKey::Label, false}), (Ids{2, 4}));
    EXPECT_EQ(found(f, {VisitKey::Label, true}, 1), (Ids{4}));
    EXPECT_EQ(found(f, {VisitKey::Weight, false}), (Ids{4, 2}));
    f.yard = south.id;
    EXPECT_EQ(found(f), (Ids{4}));
    f.yard.reset();
    f.words = "-- (";
    EXPECT_EQ(found(f).size(), 6u) << "no word: no filter";
}

TEST_F(VisitList, TotalsAreOfAllThatTheFilterLetsThrough) {
    const VisitTotals all = visitTotals(book.db(), {});
    EXPECT_EQ(all.visits, 6);
    EXPECT_EQ(all.colonies, 3);
    EXPECT_EQ(all.withNote, 2);
    EXPECT_EQ(all.weighed, 4);
    EXPECT_EQ(all.grossSum, 3200 + 3000 + 4100 + 3500);
    EXPECT_EQ(all.miteSamples, 1);
    EXPECT_EQ(all.mites, 6);
    EXPECT_EQ(all.bees, 300);
    VisitFilter none;
    none.label = "no such";
    EXPECT_EQ(visitTotals(book.db(), none).visits, 0);
}

} // namespace
