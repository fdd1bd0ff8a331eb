#include "core/report/plan_json.h"

#include "tests/support/csv_snapshot.h"

#include <QFile>
#include <QJsonDocument>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace {

using namespace core;
using tests::support::CsvTables;
using tests::support::snapshotOf;
using tests::support::tablesOfFolder;

QString folderOf(const std::string& yard) {
    return QStringLiteral(YW_TEST_DATA "/yards/") + QString::fromStdString(yard);
}

QJsonObject expectedOf(const std::string& yard) {
    QFile file(folderOf(yard) + "/expected.json");
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QJsonDocument::fromJson(file.readAll()).object();
}

QJsonObject adviceOn(const CsvTables& tables, const QString& on) {
    const Snapshot s = snapshotOf(tables, *parseIsoDay(on));
    return report::planJson(s, rules::advise(s, {}));
}

std::set<QString> kindsOf(const QJsonArray& list) {
    std::set<QString> kinds;
    for (const QJsonValue& caution : list) kinds.insert(caution["kind"].toString());
    return kinds;
}

void expectObject(const QJsonObject& expected, const QJsonObject& got, const std::string& where);

void expectValue(const QJsonValue& expected, const QJsonValue& got, const std::string& where) {
    if (expected.isArray()) {
        const QJsonArray want = expected.toArray();
        const QJsonArray have = got.toArray();
        ASSERT_EQ(want.size(), have.size()) << where;
        for (qsizetype i = 0; i < want.size(); ++i)
            expectValue(want[i], have[i], where + "[" + std::to_string(i) + "]");
    } else if (expected.isObject()) {
        expectObject(expected.toObject(), got.toObject(), where);
    } else if (expected.isDouble()) {
        EXPECT_DOUBLE_EQ(expected.toDouble(), got.toDouble()) << where;
    } else {
        EXPECT_EQ(expected, got) << where;
    }
}

/// Each key that `expected` names, and `caution_kinds` as the set of kinds of the cautions.
void expectObject(const QJsonObject& expected, const QJsonObject& got, const std::string& where) {
    for (const QString& key : expected.keys()) {
        const std::string here = where + "." + key.toStdString();
        if (key == "caution_kinds") {
            std::set<QString> want;
            for (const QJsonValue& kind : expected[key].toArray()) want.insert(kind.toString());
            EXPECT_EQ(kindsOf(got["cautions"].toArray()), want) << here;
            continue;
        }
        ASSERT_TRUE(got.contains(key)) << here;
        expectValue(expected[key], got[key], here);
    }
}

class WorkedYard : public testing::TestWithParam<const char*> {};

// Source: tests/data/yards, worked by hand from the rules.
TEST_P(WorkedYard, SaysWhatWasWorkedByHand) {
    const QJsonObject expected = expectedOf(GetParam());
    expectObject(expected, adviceOn(tablesOfFolder(folderOf(GetParam())), expected["on"].toString()), GetParam());
}

// The same rows in any order are the same book.
TEST_P(WorkedYard, DoesNotDependOnTheOrderOfRows) {
    CsvTables tables = tablesOfFolder(folderOf(GetParam()));
    const QString on = expectedOf(GetParam())["on"].toString();
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
    EXPECT_TRUE(because.contains("4 + 5.25 frames make 9.25, a strong colony.")) << because.toStdString();
    EXPECT_TRUE(because.contains("K2 is carried 4 m to stand 4; K2's foragers are lost, not K4's."))
        << because.toStdString();
    EXPECT_TRUE(because.contains("assumption")) << because.toStdString();
    EXPECT_FALSE(first["steps"].toArray().isEmpty());
}

} // namespace
