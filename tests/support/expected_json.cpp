#include "tests/support/expected_json.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include <gtest/gtest.h>

#include <set>

namespace tests::support {

namespace {

std::set<QString> kindsOf(const QJsonArray& list) {
    std::set<QString> kinds;
    for (const QJsonValue& caution : list) kinds.insert(caution["kind"].toString());
    return kinds;
}

void expectValue(const QJsonValue& expected, const QJsonValue& got, const std::string& where) {
    if (expected.isArray()) {
        const QJsonArray want = expected.toArray();
        const QJsonArray have = got.toArray();
        ASSERT_EQ(want.size(), have.size()) << where;
        for (qsizetype i = 0; i < want.size(); ++i)
            expectValue(want[i], have[i], where + "[" + std::to_string(i) + "]");
    } else if (expected.isObject()) {
        expectSays(got.toObject(), expected.toObject(), where);
    } else if (expected.isDouble()) {
        EXPECT_DOUBLE_EQ(expected.toDouble(), got.toDouble()) << where;
    } else {
        EXPECT_EQ(expected, got) << where;
    }
}

} // namespace

void expectSays(const QJsonObject& got, const QJsonObject& expected, const std::string& where) {
    for (const QString& key : expected.keys()) {
        const std::string here = where + "." + key.toStdString();
        if (key == QStringLiteral("caution_kinds")) {
            std::set<QString> want;
            for (const QJsonValue& kind : expected[key].toArray()) want.insert(kind.toString());
            EXPECT_EQ(kindsOf(got[QStringLiteral("cautions")].toArray()), want) << here;
            continue;
        }
        ASSERT_TRUE(got.contains(key)) << here;
        expectValue(expected[key], got[key], here);
    }
}

QJsonObject workedAnswer(const QString& folder) {
    QFile file(folder + QStringLiteral("/expected.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QJsonDocument::fromJson(file.readAll()).object();
}

} // namespace tests::support
