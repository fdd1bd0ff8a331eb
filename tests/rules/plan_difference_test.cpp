#include "core/rules/plan_difference.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// What changes of a plan is told as rows. Source: own calculation from the rules' text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

PlanBook three() {
    PlanBook book;
    book.colony("A").colony("B", {{"x_m", "2"}}).colony("C", {{"x_m", "4"}});
    return book.bees("A", "3").bees("B", "4.5").bees("C", "5");
}

PlanGist gist(const Snapshot& s, const PlanRequest& request = {}) { return gistOf(s, advise(s, request), {0}); }

QString text(const PlanDifference& d) {
    constexpr const char* kNames[] = {
        "went", "came", "host", "boxes", "gain", "shake-went", "shake-came", "shake-elsewhere", "alone"};
    QStringList out;
    for (const PlanChangeRow& r : d.rows) {
        QString line =
            QStringLiteral("%1 %2").arg(QLatin1StringView(kNames[static_cast<int>(r.what)]), r.pair.movedName);
        if (!r.pair.hostName.isEmpty()) line += u'>' + r.pair.hostName;
        if (r.atRisk) line += QStringLiteral(" at risk");
        out << line;
    }
    return out.join(QStringLiteral(", "));
}

TEST(PlanDifference, OfTheSamePlanIsNone) {
    const Snapshot s = three().on(kFall);
    const PlanDifference d = differenceOf(gist(s), gist(s));
    EXPECT_TRUE(d.none());
    EXPECT_EQ(d.gain, d.gainBefore);
    EXPECT_EQ(d.unions, 1);
}

TEST(PlanDifference, AForbiddenPairGoesAndAnotherComes) {
    const Snapshot s = three().on(kFall);
    const Plan before = advise(s, {});
    ASSERT_EQ(before.unions.size(), 1U);
    PlanRequest request;
    request.forbids = {{before.unions[0].moved, before.unions[0].host}};
    const Plan now = advise(s, request);
    ASSERT_EQ(now.unions.size(), 1U);
    const PlanDifference d = differenceOf(gistOf(s, before, {0}), gistOf(s, now, {0}));
    ASSERT_GE(d.rows.size(), 2U);
    EXPECT_EQ(d.rows[0].what, PlanChange::UnionWent);
    EXPECT_EQ(d.rows[0].pair.moved, s.colony(before.unions[0].moved).id);
    EXPECT_EQ(d.rows[1].what, PlanChange::UnionCame);
    EXPECT_EQ(d.rows[1].pair.host, s.colony(now.unions[0].host).id);
    EXPECT_EQ(d.rows[2].what, PlanChange::LeftAlone);
    EXPECT_EQ(d.gainBefore, before.unions[0].gain);
    EXPECT_EQ(d.gain, now.unions[0].gain);
    EXPECT_LT(d.gain, d.gainBefore) << "the best is forbidden";
}

TEST(PlanDifference, OneLeftOutIsNamedAsAloneOnce) {
    const Snapshot s = three().on(kFall);
    PlanRequest forbidden, more;
    forbidden.leftOut = {named(s, "A"), named(s, "B"), named(s, "C")};
    more = forbidden;
    const PlanDifference d = differenceOf(gist(s), gist(s, forbidden));
    EXPECT_EQ(d.unions, 0);
    EXPECT_EQ(d.gain, 0);
    EXPECT_EQ(d.rows.size(), 3U) << text(d).toStdString();
    EXPECT_TRUE(differenceOf(gist(s, forbidden), gist(s, more)).none());
    EXPECT_EQ(differenceOf(gist(s, forbidden), gist(s)).rows.size(), 1U) << "who is united again is not named twice";
}

TEST(PlanDifference, ATurnIsNoNewUnion) {
    const Snapshot s = three().on(kFall);
    PlanRequest pinned, turned, boxes;
    pinned.pins = turned.pins = boxes.pins = {{named(s, "A"), named(s, "B")}};
    turned.hosts = {{named(s, "A"), named(s, "B")}};
    boxes.tops = {{named(s, "A"), named(s, "B")}};
    EXPECT_EQ(text(differenceOf(gist(s, pinned), gist(s, turned))), "host B>A");
    EXPECT_EQ(text(differenceOf(gist(s, pinned), gist(s, boxes))), "boxes A>B");
    EXPECT_EQ(text(differenceOf(gist(s, turned), gist(s, pinned))), "host A>B");
}

TEST(PlanDifference, ACountTypedChangesTheGain) {
    PlanBook book = three();
    PlanRequest request;
    const Snapshot s = book.on(kFall);
    request.pins = {{named(s, "A"), named(s, "B")}};
    const PlanGist before = gist(s, request);
    const Snapshot later = book.visit("A", kFall, {{"bees_top", "4"}, {"queen", "eggs"}}).on(kFall);
    const PlanDifference d = differenceOf(before, gist(later, request));
    ASSERT_EQ(text(d), "gain A>B");
    EXPECT_EQ(d.rows[0].gainBefore, before.unions[0].gain);
    EXPECT_NE(d.rows[0].pair.gain, before.unions[0].gain);
}

TEST(PlanDifference, ShakeOutsComeGoAndGoElsewhere) {
    PlanBook book;
    book.colony("A").colony("B", {{"x_m", "2"}}).colony("C", {{"x_m", "4"}});
    const Snapshot s = book.bees("A", "1.5").bees("B", "8.5").bees("C", "8.5").on(kFall);
    PlanRequest out, other;
    out.leftOut = {named(s, "A")};
    const Plan plan = advise(s, {});
    ASSERT_EQ(plan.shakeOuts.size(), 1U);
    other.leftOut = {plan.shakeOuts[0].into};
    const QString into = s.colony(plan.shakeOuts[0].into).label;
    const QString elsewhere = into == "B" ? "C" : "B";
    EXPECT_EQ(text(differenceOf(gist(s), gist(s, other))), "shake-elsewhere A>" + elsewhere);
    EXPECT_TRUE(text(differenceOf(gist(s), gist(s, out))).startsWith("shake-went A>" + into));
    EXPECT_TRUE(text(differenceOf(gist(s, out), gist(s))).startsWith("shake-came A>" + into));
}

TEST(PlanDifference, IsOfOneYard) {
    PlanBook book = three();
    book.yard("Z").colony("D", {{"yard", "Z"}}).colony("E", {{"yard", "Z"}, {"x_m", "2"}});
    const Snapshot s = book.bees("D", "4").bees("E", "4.5").on(kFall);
    const Plan plan = advise(s, {});
    ASSERT_EQ(plan.unions.size(), 2U);
    const PlanGist y = gistOf(s, plan, *s.yardNamed(u"Y"));
    const PlanGist z = gistOf(s, plan, *s.yardNamed(u"Z"));
    EXPECT_EQ(y.unions.size(), 1U);
    EXPECT_EQ(z.unions.size(), 1U);
    EXPECT_EQ(y.alone.size(), 1U);
    EXPECT_EQ(z.alone.size(), 0U);
    EXPECT_EQ(y.gain + z.gain, plan.totals.gain);
}

} // namespace
