#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/people.h"
#include "core/edit/row_change.h"

namespace tests::edit {

namespace {

const Correction kWhy{QStringLiteral("Bo"), QStringLiteral("wrong hive noted")};

class HistoryReads : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    YardId south = newYard(QStringLiteral("South"));
    ColonyId k5 = newColony(north, QStringLiteral("K5"), {0, 0});
    ColonyId k6 = newColony(south, QStringLiteral("K6"), {0, 0});

    qint64 visited(ColonyId colony, Day day, std::optional<Sign> sign = {}) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.beesTop = Quarters{13};
        if (sign) v.signs.add(*sign);
        return visit(v).value().seq;
    }
    /// All that fits, read in small pieces.
    std::vector<qint64> seqs(const HistoryFilter& filter, int most = 3, int look = 4) const {
        std::vector<qint64> found;
        std::optional<qint64> before;
        for (int pages = 0; pages < 1000; ++pages) {
            const HistoryPage page = session->historyPage(filter, before, most, look);
            EXPECT_LE(page.lines.size(), static_cast<size_t>(most));
            for (const HistoryLine& line : page.lines) found.push_back(line.seq);
            if (!page.next) return found;
            before = page.next;
        }
        ADD_FAILURE() << "no end";
        return found;
    }
    std::vector<qint64> of(ColonyId colony) const { return seqs({colony, {}, {}, {}, {}}); }
    std::vector<qint64> in(YardId yard) const { return seqs({{}, yard, {}, {}, {}}); }
    HistoryLine lineOf(qint64 seq) const { return session->historyDetail(seq).value().line; }
};

using Seqs = std::vector<qint64>;

TEST_F(HistoryReads, GivesAllLinesNewestFirstInPages) {
    visited(k5, dayOf(2026, 9, 1));
    EXPECT_EQ(seqs({}), (Seqs{5, 4, 3, 2, 1}));
    EXPECT_EQ(seqs({}, 5, 5), (Seqs{5, 4, 3, 2, 1}));
    EXPECT_EQ(seqs({}, 100, 100), (Seqs{5, 4, 3, 2, 1}));
    EXPECT_EQ(session->historyPage({}, {}, 2, 100).next, 4);
}

TEST_F(HistoryReads, TellsWhatWasTakenBackAndByWhom) {
    session->setAuthor(QStringLiteral("Ana"));
    const qint64 sign = visited(k5, dayOf(2026, 9, 1), Sign::Afb);
    const qint64 other = visited(k6, dayOf(2026, 9, 2));
    const auto back = session->takeBack(sign, kWhy);
    EXPECT_TRUE(lineOf(sign).takenBack);
    EXPECT_FALSE(lineOf(other).takenBack);
    const HistoryLine undo = lineOf(back->seq);
    EXPECT_EQ(undo.kind, HistoryLine::Kind::Undo);
    EXPECT_EQ(undo.of, sign);
    EXPECT_EQ(undo.by, "Bo");
    EXPECT_EQ(undo.reason, "wrong hive noted");
    EXPECT_EQ(lineOf(sign).by, "Ana");
    session->redo();
    EXPECT_FALSE(lineOf(sign).takenBack);
    EXPECT_FALSE(session->historyDetail(99));
}

TEST_F(HistoryReads, OfAColonyAreThoseWithARowThatNamesIt) {
    const qint64 own = visited(k5, dayOf(2026, 9, 1));
    const qint64 others = visited(k6, dayOf(2026, 9, 1));
    const qint64 both = apply([&](const EditContext& c) {
                            return logTransfer(c, {{}, dayOf(2026, 9, 2), k6, k5, TransferKind::Frames, 2, {}});
                        })->seq;
    const qint64 sign = apply([&](const EditContext& c) {
                            return ChangeSet{QStringLiteral("Noted a sign"),
                                             {{Table::VisitSign, c.nextId(Table::VisitSign), std::nullopt,
                                               Row{c.visitOn(k5, dayOf(2026, 9, 1))->id.value, QString("nosema")}}},
                                             {},
                                             {},
                                             {}};
                        })->seq;
    const qint64 carried = carry(k5, {0, 3000}, dayOf(2026, 9, 3))->seq;
    apply([](const EditContext& c) { return setSetting(c, QStringLiteral("gain.min"), QStringLiteral("75")); });
    EXPECT_EQ(of(k5), (Seqs{carried, sign, both, own, 3}));
    EXPECT_EQ(of(k6), (Seqs{both, others, 4}));
    // The sign's visit is found in the history once it is gone from the book.
    session->takeBack(sign);
    const qint64 gone = session->takeBack(own)->seq;
    EXPECT_EQ(of(k5).front(), gone);
    EXPECT_EQ(of(k5), (Seqs{gone, gone - 1, carried, sign, both, own, 3}));
}

TEST_F(HistoryReads, OfAYardAreThoseOfItsStandsAndOfTheHivesThatStoodThereThen) {
    const qint64 before = visited(k5, dayOf(2026, 9, 1));
    const qint64 order = apply([&](const EditContext& c) {
                             Result r;
                             r.yard = south;
                             r.day = dayOf(2026, 9, 2);
                             r.verdict = Verdict::Order;
                             r.method = Method::Inspector;
                             r.by = QStringLiteral("the inspector");
                             r.paper = QStringLiteral("12");
                             return logResult(c, r);
                         })->seq;
    const qint64 stand = apply([&](const EditContext& c) { return addStand(c, north, {}, {9000, 0}); })->seq;
    EXPECT_EQ(in(north), (Seqs{stand, before, 3, 1}));
    EXPECT_EQ(in(south), (Seqs{order, 4, 2}));
    EXPECT_TRUE(seqs({k6, north, {}, {}, {}}).empty());
}

TEST_F(HistoryReads, OfRangesTheTablesAreAsked) {
    const auto import = apply([&](const EditContext& c) {
        ChangeSet change;
        change.text = QStringLiteral("Imported 10 visits");
        change.bulk.push_back({Table::Visit, c.nextId(Table::Visit), 10, [&](qint64 i) {
                                   Visit v;
                                   v.colony = k5;
                                   v.day = dayOf(2026, 5, 2) + static_cast<int>(i);
                                   return toRow(v);
                               }});
        return change;
    });
    EXPECT_EQ(of(k5).front(), import->seq);
    EXPECT_EQ(of(k6), (Seqs{4}));
    EXPECT_EQ(in(north).front(), import->seq);
    EXPECT_EQ(in(south), (Seqs{4, 2}));
    const auto detail = session->historyDetail(import->seq);
    ASSERT_EQ(detail->changes.size(), 1u);
    EXPECT_EQ(detail->changes[0].what, "10 visits");
    session->undo();
    EXPECT_EQ(of(k6).front(), import->seq + 1) << "its rows are gone: it may have been of any";
}

TEST_F(HistoryReads, CanBeSearchedByWordsAndDays) {
    session->setAuthor(QStringLiteral("Åse"));
    const qint64 own = visited(k5, dayOf(2026, 9, 1));
    EXPECT_EQ(seqs({{}, {}, QStringLiteral(" visit of k5 "), {}, {}}), (Seqs{own}));
    EXPECT_EQ(seqs({{}, {}, QStringLiteral("åSE"), {}, {}}), (Seqs{own}));
    const QDateTime now = clock.nowUtc();
    EXPECT_EQ(seqs({{}, {}, {}, now, {}}).size(), 5u);
    EXPECT_EQ(seqs({{}, {}, {}, {}, now}).size(), 0u);
    EXPECT_EQ(seqs({{}, {}, {}, now.addMSecs(1), {}}).size(), 0u);
    EXPECT_EQ(seqs({{}, {}, {}, {}, now.addMSecs(1)}).size(), 5u);
}

TEST_F(HistoryReads, DetailTellsFromWhatToWhat) {
    visited(k5, dayOf(2026, 9, 1));
    const auto put = apply([&](const EditContext& c) {
        const Visit old = c.visitOn(k5, dayOf(2026, 9, 1)).value();
        Visit now = old;
        now.beesTop = Quarters{16};
        return ChangeSet{QStringLiteral("Put it right"), {changed(old, now)}, {}, {}, {}};
    });
    const auto detail = session->historyDetail(put->seq);
    ASSERT_EQ(detail->changes.size(), 1u);
    EXPECT_EQ(detail->changes[0].what, "Visit of K5 on 2026-09-01");
    EXPECT_EQ(detail->changes[0].fields,
              (std::vector<FieldWords>{{QStringLiteral("Bees seen from above"), QStringLiteral("3.25 frames"),
                                        QStringLiteral("4 frames")}}));
}

/// What is no longer in the book is named as it was.
TEST_F(HistoryReads, DetailNamesWhatIsGoneFromTheBook) {
    const ColonyId k7 = newColony(north, QStringLiteral("K7"), {4000, 0});
    const qint64 seen = visited(k7, dayOf(2026, 9, 1), Sign::Chalkbrood);
    session->undo();
    session->undo();
    newColony(south, QStringLiteral("K8"), {4000, 0}); // takes the id of K7
    const auto detail = session->historyDetail(seen);
    ASSERT_EQ(detail->changes.size(), 2u);
    EXPECT_EQ(detail->changes[0].what.toStdString(), "Visit of K7 on 2026-09-01");
    EXPECT_EQ(detail->changes[1].what.toStdString(), "Sign at the visit of K7 on 2026-09-01");
}

TEST_F(HistoryReads, AReaderSeesThemToo) {
    const qint64 own = visited(k5, dayOf(2026, 9, 1));
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_EQ(reader->historyPage({k5, {}, {}, {}, {}}, {}, 10, 100).lines.front().seq, own);
    EXPECT_TRUE(reader->historyDetail(own));
}

} // namespace

} // namespace tests::edit
