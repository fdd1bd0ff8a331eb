#include "core/rules/hold.h"
#include "tests/support/csv_snapshot.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <set>

namespace core::rules {
namespace {

using Kinds = std::set<std::string>;

QJsonArray stories() {
    QFile file(QStringLiteral(YW_TEST_DATA "/hold-stories.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QJsonDocument::fromJson(file.readAll()).array();
}

std::map<QString, Kinds> kindsByColony(const Snapshot& s) {
    std::map<QString, Kinds> kinds;
    for (size_t i = 0; i < s.livingCount(); ++i) kinds[s.colonies[i].shown];
    for (const Hold& hold : holds(s)) kinds[s.colony(hold.colony).shown].insert(holdWord(hold.kind).toStdString());
    return kinds;
}

class HoldStory : public testing::TestWithParam<int> {};

// Source: tests/data/hold-stories.json, seventy cases of rule 4.4 worked by hand.
TEST_P(HoldStory, HoldsWhatItSays) {
    const QJsonObject story = stories()[GetParam()].toObject();
    const auto tables = tests::support::tablesOfJson(story[QStringLiteral("tables")].toObject());
    for (const QJsonValue& value : story[QStringLiteral("expect")].toArray()) {
        const QJsonObject expected = value.toObject();
        const QString on = expected[QStringLiteral("on")].toString();
        const auto kinds = kindsByColony(tests::support::snapshotOf(tables, *parseIsoDay(on)));
        const QJsonObject colonies = expected[QStringLiteral("holds")].toObject();
        for (auto colony = colonies.begin(); colony != colonies.end(); ++colony) {
            Kinds wanted;
            for (const QJsonValue& kind : colony.value().toArray()) wanted.insert(kind.toString().toStdString());
            ASSERT_TRUE(kinds.contains(colony.key())) << colony.key().toStdString() << " does not live on that day";
            EXPECT_EQ(kinds.at(colony.key()), wanted)
                << story[QStringLiteral("name")].toString().toStdString() << ": " << colony.key().toStdString()
                << " on " << on.toStdString() << "; " << story[QStringLiteral("says")].toString().toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(All, HoldStory, testing::Range(0, 70));

TEST(HoldStories, AreAllThere) { EXPECT_EQ(stories().size(), 70); }

} // namespace
} // namespace core::rules
