#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/history_codec.h"
#include "core/edit/row_change.h"

#include <random>

namespace tests::edit {

namespace {

HistoryRecord sample() {
    HistoryRecord record;
    record.inserted = {{Table::Visit, 7, 1'000'000'000'000}, {Table::VisitSign, 1, 3}};
    record.rows = {
        {Table::Setting, 3, Row{QString("gain.min"), QString("50")}, Row{QString("gain.min"), QString("1")}},
        {Table::Yard, 1, std::nullopt,
         Row{QString("N"), QString("n"), 47.123456789, -0.0, qint64(-1), Value(), QString("ü\n🐝"), qint64(0)}},
        {Table::Setting, 4, Row{QString("order"), QString("weaker-on-top")}, std::nullopt}};
    record.deleted = {{Table::Visit, 9, 2}};
    return record;
}

TEST(HistoryCodec, GivesBackWhatItWasGiven) {
    EXPECT_EQ(decode(encode(sample())), sample());
    EXPECT_EQ(decode(encode({})), HistoryRecord{});
    HistoryRecord keys = sample();
    for (RowChange& row : keys.rows) row.before = row.after = std::nullopt;
    EXPECT_EQ(decodeKeys(encode(sample())), keys);
    const std::vector<Row> rows = {{qint64(1), QString("afb")}, {qint64(INT64_MIN), Value()}};
    EXPECT_EQ(decodeRows(Table::VisitSign, encodeRows(Table::VisitSign, rows)), rows);
}

TEST(HistoryCodec, RefusesEveryDamageWithAnError) {
    const QByteArray good = encode(sample());
    std::mt19937 dice(1);
    int refused = 0;
    for (int i = 0; i < 500; ++i) {
        QByteArray bad = good;
        const auto at = static_cast<qsizetype>(dice() % static_cast<unsigned>(bad.size()));
        if (i % 2 == 0)
            bad.truncate(at);
        else
            bad[at] = static_cast<char>(bad[at] ^ static_cast<char>(1 + dice() % 255));
        try {
            decode(bad);
        } catch (const Error& e) {
            EXPECT_EQ(e.kind(), Error::Kind::Book);
            ++refused;
        }
    }
    EXPECT_GT(refused, 450); // a changed size field of the compression may pass
}

TEST(HistoryCodec, RefusesPackedRowsOfAnotherTable) {
    EXPECT_EQ(thrownBy([] { decodeRows(Table::Visit, encodeRows(Table::VisitSign, {})); }).kind, Error::Kind::Book);
}

class HistoryCheck : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(yard, QStringLiteral("5"), {0, 0});
};

TEST_F(HistoryCheck, IsContentWithWhatTheSessionWrote) {
    carry(k5, {1000, 0}, clock.day);
    session->undo();
    EXPECT_EQ(problems(), "");
}

TEST_F(HistoryCheck, FindsARowThatWasChangedPastIt) {
    rawSql(path(), "UPDATE stand SET x_mm = 17");
    EXPECT_EQ(problems(), "Row 1 of table stand is not as the history left it.");
}

TEST_F(HistoryCheck, FindsARowThatNoLineMade) {
    rawSql(path(), "INSERT INTO yard (name, key, closed) VALUES ('X', 'x', 0)");
    EXPECT_EQ(problems(), "Table yard has 2 rows; by the history it should have 1.");
}

TEST_F(HistoryCheck, FindsALineThatWasLost) {
    rawSql(path(), "DELETE FROM history WHERE seq = 2");
    EXPECT_FALSE(session->check().isEmpty());
}

TEST_F(HistoryCheck, FindsALineThatCannotBeRead) {
    rawSql(path(), "UPDATE history SET changes = x'00' WHERE seq = 2");
    EXPECT_FALSE(session->check().isEmpty());
}

} // namespace

} // namespace tests::edit
