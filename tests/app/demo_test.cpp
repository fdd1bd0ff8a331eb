#include "tests/app/program.h"

#include "core/edit/session.h"
#include "core/rules/ledger.h"
#include "demo/demo_book.h"

#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSet>
#include <QTemporaryDir>

#include <map>

namespace {

/// All texts under `key` in a JSON value, however deep.
void collect(const QJsonValue& value, const QString& key, QSet<QString>& found) {
    if (value.isArray()) {
        for (const QJsonValue v : value.toArray()) collect(v, key, found);
    } else if (value.isObject()) {
        const QJsonObject o = value.toObject();
        for (auto it = o.begin(); it != o.end(); ++it) {
            if (it.key() == key && it.value().isString()) found.insert(it.value().toString());
            collect(it.value(), key, found);
        }
    }
}

QSet<QString> textsOf(const QJsonObject& plan, const QStringList& parts, const QString& key) {
    QSet<QString> found;
    for (const QString& part : parts) collect(plan.value(part), key, found);
    return found;
}

QJsonObject planOf(const QString& book, core::Day day) {
    const Ran ran = runProgram({"advise", book, "--on", core::isoText(day), "--json"});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    return QJsonDocument::fromJson(ran.out).object();
}

} // namespace

TEST(Demo, EachOfItsEditsCanBeUndoneAndLeavesASoundBook) {
    QTemporaryDir dir;
    const QString book = dir.filePath("demo.yardwright");
    ASSERT_EQ(runProgram({"demo", book}).status, 0);
    const core::SystemClock clock;
    const auto session = core::edit::Session::open(book, clock);
    const core::edit::Correction why{QStringLiteral("Wren"), QStringLiteral("begun anew")};
    int undone = 0;
    while (session->undo(why)) {
        ++undone;
        EXPECT_EQ(session->check().join(u'\n').toStdString(), "") << "edits undone: " << undone;
    }
    EXPECT_GE(undone, 3);
}

TEST(Demo, EveryHoldCautionAndAdviceOccurs) {
    QTemporaryDir dir;
    const QString book = dir.filePath("demo.yardwright");
    ASSERT_EQ(runProgram({"demo", book}).status, 0);
    EXPECT_EQ(runProgram({"check", book}).out, "The book is in order.\n");
    const QJsonObject fall = planOf(book, demo::demoMergeDay());
    const QJsonObject spring = planOf(book, demo::demoSpringDay());
    EXPECT_GE(fall.value("yards").toArray().size(), 3);
    EXPECT_GE(fall.value("totals").toObject().value("colonies").toInt(), 90);

    const QSet<QString> holds = textsOf(fall, {"holds"}, "kind");
    EXPECT_EQ(holds, (QSet<QString>{"order", "afb-confirmed", "afb-suspected", "afb-contact", "afb-yard", "efb",
                                    "brood-doubt", "brood-not-checked"}));
    const QSet<QString> cautions = textsOf(fall, {"unite", "shake_out", "cautions"}, "kind");
    EXPECT_EQ(cautions, (QSet<QString>{"mites-high", "masked", "signs", "count-before-transfer", "queen-unknown",
                                       "room-unknown", "near-afb", "drift-to-held", "lower-heavier"}));
    EXPECT_EQ(textsOf(fall, {"unresolved"}, "why"),
              (QSet<QString>{"no-count", "count-old", "no-bees", "no-host", "no-partner"}));
    EXPECT_EQ(textsOf(fall, {"separate"}, "why"), QSet<QString>{"laying-workers"});
    EXPECT_EQ(textsOf(fall, {"due"}, "what"), (QSet<QString>{"union-check", "take-out", "result-awaited"}));
    EXPECT_TRUE(textsOf(fall, {"unite"}, "queen").contains("leave-both"));
    EXPECT_TRUE(textsOf(fall, {"unite"}, "queen").contains("keep-moved"));
    EXPECT_FALSE(fall.value("shake_out").toArray().isEmpty());
    EXPECT_FALSE(fall.value("feed").toArray().isEmpty());
    EXPECT_FALSE(fall.value("alone").toArray().isEmpty());
    EXPECT_EQ(textsOf(fall, {"order_boxes"}, "do"), QSet<QString>{"heavier-on-top"});
    EXPECT_TRUE(textsOf(spring, {"order_boxes"}, "do").contains("reverse"));
    EXPECT_FALSE(spring.value("divide").toArray().isEmpty());
}

// start + in − out = end in each season, from one to the next, and all yards are the sum of each.
TEST(Demo, TheLedgerOfItsColoniesIsBalanced) {
    QTemporaryDir dir;
    const QString path = dir.filePath("demo.yardwright");
    ASSERT_EQ(runProgram({"demo", path}).status, 0);
    const core::SystemClock clock;
    const auto book = core::edit::Session::open(path, clock);
    const core::Snapshot s = book->snapshot(demo::demoMergeDay());
    int living = 0, counted = 0, seasons = 0;
    std::map<qint32, int> ends;
    std::map<core::Day, core::rules::LedgerCount> sums;
    for (const core::rules::LedgerYear& year : core::rules::ledger(s))
        for (const core::rules::LedgerPeriod& p : year.periods) {
            ++seasons;
            EXPECT_EQ(p.count.start + p.count.in() - p.count.out(), p.count.end);
            if (!year.yard) {
                EXPECT_EQ((sums[p.from]), p.count);
                continue;
            }
            EXPECT_EQ(p.count.start, ends[year.yard->value]);
            ends[year.yard->value] = p.count.end;
            if (!year.southern) sums[p.from] += p.count;
        }
    for (const core::SnapColony& colony : s.colonies) living += !colony.ended || *colony.ended > s.on;
    for (const auto& [yard, end] : ends) counted += end;
    EXPECT_EQ(counted, living);
    EXPECT_GE(seasons, 10);
}

TEST(Demo, TheSameArgumentsGiveTheSameContent) {
    QTemporaryDir dir;
    for (const char* name : {"one", "two"})
        ASSERT_EQ(runProgram({"demo", dir.filePath(name), "--colonies", "200", "--years", "1", "--seed", "7"}).status,
                  0);
    ASSERT_EQ(runProgram({"demo", dir.filePath("other"), "--colonies", "200", "--years", "1", "--seed", "8"}).status,
              0);
    for (const char* name : {"one", "two", "other"})
        ASSERT_EQ(runProgram({"export", dir.filePath(name), "--to", dir.filePath(QString(name) + ".csv")}).status, 0);
    EXPECT_EQ(bytesOf(dir.filePath("one.csv/visits.csv")), bytesOf(dir.filePath("two.csv/visits.csv")));
    EXPECT_NE(bytesOf(dir.filePath("one.csv/visits.csv")), bytesOf(dir.filePath("other.csv/visits.csv")));
}

TEST(Demo, SmallOnesToo) {
    QTemporaryDir dir;
    for (const char* count : {"1", "60", "97"}) {
        const QString book = dir.filePath(QString(count) + ".yardwright");
        ASSERT_EQ(runProgram({"demo", book, "--colonies", count}).status, 0);
        EXPECT_EQ(planOf(book, core::dayOf(2026, 8, 1)).value("totals").toObject().value("colonies").toInt(),
                  QString(count).toInt());
        EXPECT_EQ(runProgram({"check", book}).status, 0);
    }
}
