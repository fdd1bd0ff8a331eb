#include "core/report/plan_json.h"

#include "tests/support/csv_snapshot.h"
#include "tests/support/expected_json.h"

#include <QJsonDocument>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace {

using namespace core;
using tests::support::CsvTables;
using tests::support::expectSays;
using tests::support::snapshotOf;
using tests::support::tablesOfFolder;
using tests::support::workedAnswer;

QString folderOf(const std::string& yard) {
    return QStringLiteral(YW_TEST_DATA "/yards/") + QString::fromStdString(yard);
}

QJsonObject adviceOn(const CsvTables& tables, const QString& on) {
    const Snapshot s = snapshotOf(tables, *parseIsoDay(on));
    return report::planJson(s, rules::advise(s, {}));
}

class WorkedYard : public testing::TestWithParam<const char*> {};

// Source: tests/data/yards, worked by hand from the rules.
TEST_P(WorkedYard, SaysWhatWasWorkedByHand) {
    const QJsonObject expected = workedAnswer(folderOf(GetParam()));
    expectSays(adviceOn(tablesOfFolder(folderOf(GetParam())), expected["on"].toString()), expected, GetParam());
}

// The same rows in any order are the same book.
TEST_P(WorkedYard, DoesNotDependOnTheOrderOfRows) {
    CsvTables tables = tablesOfFolder(folderOf(GetParam()));
    const QString on = workedAnswer(folderOf(GetParam()))["on"].toString();
    const QJsonObject before = adviceOn(tables, on);
    std::mt19937 random(7);
    for (int round = 0; round < 20; ++round) {
        for (auto& [kind, rows] : tables) std::shuffle(rows.begin(), rows.end(), random);
        EXPECT_EQ(before, adviceOn(tables, on)) << "round " << round;
    }
}

INSTANTIATE_TEST_SUITE_P(Yards, WorkedYard, testing::Values("kiln-field", "tansy-lane", "brook-end"),
                         [](const auto& yard) {
                             return QString(yard.param).remove(QRegularExpression("[^a-z]")).toStdString();
                         });

TEST(PlanJson, HasEveryKeyEvenWhereNothingIsSaid) {
    const QJsonObject json = adviceOn({}, "2026-09-20");
    const QStringList keys{"alone",       "cautions", "divide",    "due",    "feed",  "holds",      "on",
                           "order_boxes", "separate", "shake_out", "totals", "unite", "unresolved", "yards"};
    EXPECT_EQ(json.keys(), keys);
    EXPECT_EQ(json["totals"].toObject().keys(), (QStringList{"boxes_freed", "colonies", "expected_as_is",
                                                             "expected_planned", "gain", "shake_outs", "unions"}));
    for (const QString& key : keys)
        if (key != "on" && key != "totals") {
            EXPECT_TRUE(json[key].isArray() && json[key].toArray().isEmpty()) << key.toStdString();
        }
}

// Source: own calculation, kiln-field's union 1 (tests/data/yards/README.md): the reasons carry the figures.
TEST(PlanJson, AUnionCarriesItsReasonsAndSteps) {
    const QJsonObject first =
        adviceOn(tablesOfFolder(folderOf("kiln-field")), "2026-09-15")["unite"].toArray()[0].toObject();
    const QString because = QJsonDocument(first["because"].toArray()).toJson();
    EXPECT_TRUE(because.contains("4 + 5.25 frames make 9.25, a strong colony (from 8 on).")) << because.toStdString();
    EXPECT_TRUE(because.contains("K2 is carried 4 m to stand 4; K2's foragers are lost, not K4's."))
        << because.toStdString();
    EXPECT_TRUE(because.contains("assumption")) << because.toStdString();
    EXPECT_FALSE(first["steps"].toArray().isEmpty());
}

} // namespace
