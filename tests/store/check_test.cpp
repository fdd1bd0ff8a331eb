#include "core/base/damaged.h"
#include "core/model/row_days.h"
#include "core/store/check.h"
#include "core/store/invariants.h"
#include "core/store/snapshot_reader.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <ostream>
#include <set>
#include <string>

using namespace core;
using namespace core::store;

namespace {

/// A sound book in which every invariant has something to look at.
void fill(TestBook& book) {
    const Yard north = book.yard("North");
    const Yard south = book.yard("South");
    Colony a = book.colony(north, "A", day("2025-05-01")); // 1
    Colony b = book.colony(north, "B", day("2025-05-01")); // 2
    Colony c = book.colony(north, "C", day("2025-05-01")); // 3
    Colony d = book.colony(south, "D", day("2026-05-10")); // 4, divided from B
    Colony e = book.colony(south, "E", day("2026-05-10")); // 5, divided from D
    book.carry(b, book.stand(south, "free", {5000, 0}), day("2026-06-01"));
    book.unite(c, b, day("2026-08-01"));
    book.colony(north, "c", day("2026-08-02")); // 6: a label used again, on the day after
    for (const auto& [mother, daughter] : {std::pair(b, d), std::pair(d, e)}) {
        Lineage l;
        l.day = daughter.since;
        l.how = LineageHow::Divided;
        l.colony = mother.id;
        l.into = daughter.id;
        book.add(l);
    }
    Visit v; // 1
    v.colony = b.id;
    v.day = day("2026-08-20");
    v.beesTop = Quarters{12};
    v.upperBeesTop = Quarters{8};
    v.signs.add(Sign::Chalkbrood);
    book.visit(v);
    book.visit(a, day("2025-05-01")); // 2
    book.visit(c, day("2026-08-01")); // 3
    Transfer t;
    t.day = day("2026-09-01");
    t.from = c.id; // comb of a colony that has ended
    t.to = a.id;
    t.what = TransferKind::Frames;
    book.add(t);
    Treatment m;
    m.colony = a.id;
    m.day = day("2026-07-01");
    m.product = "strips";
    m.substance = "thymol";
    book.add(m);
    Result r;
    r.colony = c.id;
    r.day = day("2026-08-05");
    r.by = "laboratory";
    book.add(r);
    Sample s;
    s.colony = c.id;
    s.day = r.day;
    s.laboratory = "laboratory";
    s.result = ResultId{1};
    book.add(s);
    Feeding f;
    f.colony = c.id;
    f.day = day("2026-08-01");
    f.volume = Millilitres{5000};
    book.add(f);
    MiteFall mites;
    mites.colony = c.id;
    mites.day = day("2026-08-01");
    mites.days = 5;
    mites.mites = 20;
    book.add(mites);
    Queen q; // 1, then 2
    q.colony = a.id;
    q.since = day("2025-06-01");
    q.until = day("2026-06-01");
    q.fate = QueenFate::Superseded;
    q.born = 2025;
    book.add(q);
    q.since = day("2026-06-01");
    q.until.reset();
    q.fate.reset();
    q.born = 2026;
    q.mother = d.id;
    book.add(q);
    book.add(FixedThing{{}, north.id, FixedKind::Shed, "shed", {{0, 0}, {1000, 0}, {1000, 500}, {0, 500}}, {}});
    writeRow(book.db(), {Table::Setting, 1, std::nullopt, Row{QString("gain.min"), QString("60")}});
    book.db().exec("INSERT INTO history (seq, at, sentence, kind, of_seq, changes) VALUES "
                   "(1, '2026-09-01T10:00:00Z', 'Did it', 'do', NULL, x'00'), "
                   "(2, '2026-09-01T10:01:00Z', 'Undone', 'undo', 1, x'00')");
}

struct Break {
    const char* name;
    const char* sql;
};

void PrintTo(const Break& b, std::ostream* out) { *out << b.name << " by " << b.sql; }

class CheckFinds : public testing::TestWithParam<Break> {};

TEST(Check, SaysNothingOfASoundBook) {
    TestBook book;
    fill(book);
    EXPECT_EQ(checkBook(book.db()), std::vector<QString>());
    book.reopen(Access::ReadOnly);
    EXPECT_EQ(checkBook(book.db()), std::vector<QString>());
}

TEST_P(CheckFinds, WhatWasBroken) {
    TestBook book;
    fill(book);
    book.breakWith(GetParam().sql);
    const auto problems = checkBook(book.db());
    const QString prefix = QLatin1String(GetParam().name) + QLatin1String(": ");
    std::string all;
    bool named = false;
    for (const QString& p : problems) {
        all += p.toStdString() + "\n";
        named = named || p.startsWith(prefix);
    }
    EXPECT_TRUE(named) << all;
}

constexpr Break kBreaks[] = {
    {"integrity", "UPDATE visit SET bees_top_q = -1 WHERE id = 1"},
    {"integrity", "UPDATE colony SET ended = '2026-02-30', end_kind = 'dead' WHERE id = 5"},
    {"foreign-key", "UPDATE visit SET colony = 99 WHERE id = 2"},
    {"foreign-key", "DELETE FROM yard WHERE id = 2"},
    // A's stand is 1; B came to it while A stands there.
    {"stand-shared", "UPDATE placement SET stand = 1 WHERE colony = 2 AND until IS NOT NULL"},
    {"open-placement", "UPDATE placement SET until = '2026-09-09' WHERE colony = 1"},
    {"open-placement", "DELETE FROM placement WHERE colony = 1"},
    {"ended-stands", "UPDATE placement SET until = NULL WHERE colony = 3"},
    {"ended-stands", "UPDATE placement SET until = '2026-08-02' WHERE colony = 3"},
    {"first-placement", "UPDATE placement SET since = '2025-05-02' WHERE colony = 1"},
    {"first-placement", "UPDATE placement SET first = 0 WHERE colony = 1"},
    {"placements-joined", "UPDATE placement SET until = '2026-05-31' WHERE colony = 2 AND until IS NOT NULL"},
    {"placements-joined", "UPDATE placement SET until = '2026-07-31' WHERE colony = 3"},
    {"label-shared", "UPDATE colony SET since = '2026-08-01' WHERE id = 6"},
    {"lineage-end", "UPDATE colony SET end_kind = 'shaken-out' WHERE id = 3"},
    {"lineage-end", "UPDATE lineage SET day = '2026-07-31' WHERE colony = 3"},
    {"end-lineage", "DELETE FROM lineage WHERE colony = 3"},
    {"lineage-into", "UPDATE lineage SET into_colony = 6 WHERE colony = 3"},
    {"lineage-into", "UPDATE colony SET ended = '2026-07-31', end_kind = 'dead' WHERE id = 2"},
    {"divide-birth", "UPDATE lineage SET day = '2026-05-11' WHERE into_colony = 4"},
    {"divide-birth", "UPDATE colony SET ended = '2026-05-09', end_kind = 'dead' WHERE id = 2"},
    {"union-circle", "INSERT INTO lineage VALUES (9, '2026-08-01', 'united', 2, 3, NULL, NULL)"},
    {"own-ancestor", "INSERT INTO lineage VALUES (9, '2026-05-10', 'divided', 5, 2, NULL, NULL)"},
    {"visit-in-life", "UPDATE visit SET day = '2025-04-30' WHERE id = 2"},
    {"visit-in-life", "UPDATE visit SET day = '2026-08-02' WHERE id = 3"},
    {"transfer-in-life", "UPDATE transfer SET what = 'bees'"},
    {"transfer-in-life", "UPDATE transfer SET day = '2025-04-30'"},
    {"transfer-in-life", "UPDATE transfer SET giver = 1, receiver = 3"},
    {"treatment-in-life", "UPDATE treatment SET day = '2025-04-30'"},
    {"treatment-in-life", "UPDATE treatment SET colony = 3, day = '2026-08-02'"},
    {"strips-out", "INSERT INTO strips_out (treatment, colony, day) SELECT id, 1, date(day, '-1 day') FROM treatment "
                   "LIMIT 1"},
    {"result-too-early", "UPDATE result SET day = '2025-04-30'"},
    {"upper-box", "UPDATE visit SET day = '2026-07-31' WHERE id = 1"},
    {"upper-box", "UPDATE visit SET boxes = 1 WHERE id = 1"},
    {"frames-of-box", "UPDATE visit SET bees_top_q = 41 WHERE id = 1"},
    {"feeding-in-life", "UPDATE feeding SET day = '2025-04-30'"},
    {"feeding-in-life", "UPDATE feeding SET day = '2026-08-02'"},
    {"mite-fall-in-life", "UPDATE mite_fall SET day = '2025-04-30'"},
    {"mite-fall-in-life", "UPDATE mite_fall SET day = '2025-05-05'"},
    {"mite-fall-in-life", "UPDATE mite_fall SET day = '2026-08-02'"},
    {"queen-in-life", "UPDATE queen SET since = '2025-04-30' WHERE id = 1"},
    {"queen-in-life", "UPDATE queen SET colony = 3, since = '2026-08-02' WHERE id = 2"},
    {"queen-in-life", "UPDATE queen SET colony = 3, until = '2026-08-02', fate = 'dead' WHERE id = 2"},
    {"queens-together", "UPDATE queen SET until = '2026-06-02' WHERE id = 1"},
    {"queen-born", "UPDATE queen SET born = 2027 WHERE id = 2"},
    {"queen-mother", "UPDATE queen SET mother = 6 WHERE id = 2"},
    {"sample-too-early", "UPDATE sample SET day = '2025-04-30'"},
    {"sample-answer", "UPDATE sample SET day = '2026-08-04'"},
    {"sample-answer", "UPDATE sample SET colony = 1"},
    {"sample-answer", "UPDATE sample SET disease = 'efb'"},
    {"sample-answer", "UPDATE result SET method = 'field'"},
    {"sample-answer", "UPDATE result SET method = 'inspector', verdict = 'order', paper = '7'"},
    {"book-id", "DELETE FROM book"},
    {"book-id", "UPDATE book SET uuid = '/../../other-0000-0000-0000-00000000'"},
    {"history-numbers", "UPDATE history SET seq = 3 WHERE seq = 2"},
    {"history-undo", "INSERT INTO history VALUES (3, '', NULL, 'Undone', NULL, 'undo', 2, x'00', NULL)"},
    {"note-words", "UPDATE visit SET note = 'two queens' WHERE id = 2"},
    {"note-words", "INSERT INTO note_words (rowid, words) VALUES (16 * 2, 'two queens')"},
    {"note-words", "INSERT INTO note_words (rowid, words) VALUES (16 * 77 + 15, 'of nothing')"},
    {"note-words", "UPDATE visit SET note = 'two queens' WHERE id = 2; INSERT INTO note_words (rowid, words) "
                   "VALUES (16 * 2, 'two queens'); DELETE FROM note_words_data WHERE id > 10"},
    {"day", "UPDATE visit SET day = '2026-02-30' WHERE id = 1"},
    {"day", "UPDATE queen SET until = '2026-04-31' WHERE id = 1"},
    {"day", "UPDATE sample SET sent = '2026-09-31'"},
    {"key", "UPDATE yard SET key = 'nort' WHERE id = 1"},
    {"key", "UPDATE colony SET key = 'A' WHERE id = 1"},
    {"setting", "UPDATE setting SET value = 'much'"},
    {"setting", "UPDATE setting SET name = 'no.such'"},
    {"fixed-thing", "UPDATE fixed_thing SET points = '0,0 100,0 100,100 50,100'"},
    {"fixed-thing", "UPDATE fixed_thing SET points = '0,0 1000,0 1000,500 0,0500'"},
    {"foreign-key", "UPDATE fixed_thing SET yard = 9"},
    {"integrity", "UPDATE fixed_thing SET points = '0,0 1000,0 1000,500'"},
    {"integrity", "UPDATE fixed_thing SET radius_mm = 1000"},
};

INSTANTIATE_TEST_SUITE_P(Each, CheckFinds, testing::ValuesIn(kBreaks));

TEST(Check, EachInvariantHasATestThatBreaksIt) {
    std::set<std::string> tested;
    for (const Break& b : kBreaks) tested.insert(b.name);
    for (const Invariant& i : invariants()) EXPECT_TRUE(tested.contains(i.name)) << i.name;
}

// SQLite takes 2026-02-30 for a day, and reckons with it as 2026-03-02.
TEST(Check, ADayThatIsNoneIsDamageToWhoeverReadsIt) {
    TestBook book;
    fill(book);
    book.breakWith("UPDATE visit SET day = '2026-02-30' WHERE id = 1");
    EXPECT_THROW(find<Visit>(book.db(), 1), Damaged);
    EXPECT_THROW(visitsOf(book.db(), ColonyId{2}, 9), Damaged);
    EXPECT_THROW(readSnapshot(book.db(), day("2026-12-01")), Damaged);
}

TEST(Check, KnowsEachColumnThatIsADay) {
    TestBook book;
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        Statement row = book.db().prepare("SELECT sql FROM sqlite_schema WHERE type = 'table' AND name = ?");
        row.bind(1, QString::fromLatin1(tableName(table)));
        ASSERT_TRUE(row.step());
        const std::string sql = row.text(0).toStdString();
        const auto days = dayColumns(table);
        for (size_t at = 0; at < columnsOf(table).size(); ++at) {
            const bool inSchema = sql.find(std::string("date(") + columnsOf(table)[at] + ") IS") != std::string::npos;
            EXPECT_EQ(std::ranges::find(days, at) != days.end(), inSchema)
                << tableName(table) << '.' << columnsOf(table)[at];
        }
    }
}

TEST(Check, ListsAtMostTwentyOfAKind) {
    TestBook book;
    fill(book);
    Colony a = find<Colony>(book.db(), 1).value();
    for (int i = 0; i < 30; ++i) book.visit(a, day("2026-01-01") + i);
    book.breakWith("UPDATE visit SET day = '1999-01-' || (id + 10) WHERE id BETWEEN 1 AND 20;"
                   "UPDATE visit SET day = '1999-02-' || (id - 10) WHERE id > 20");
    int shown = 0;
    for (const QString& p : checkBook(book.db())) shown += p.startsWith("visit-in-life: ") ? 1 : 0;
    EXPECT_EQ(shown, 21);
}

} // namespace
