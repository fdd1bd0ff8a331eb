#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

// Rule 4.10: the walk.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

/// Pairs at the given hosts' places: host H1, H2, ... of 4 frames, each with a guest of 3 frames half a metre east. Far
/// from each other no other union pays.
PlanBook pairsAt(const std::vector<MmPoint>& hosts) {
    PlanBook book;
    const auto metres = [](qint32 mm) { return metresText(Millimetres{mm}); };
    for (size_t i = 0; i < hosts.size(); ++i) {
        const QString n = QString::number(i + 1);
        book.colony("H" + n, {{"x_m", metres(hosts[i].x)}, {"y_m", metres(hosts[i].y)}}).bees("H" + n, "4");
        book.colony("G" + n, {{"x_m", metres(hosts[i].x + 500)}, {"y_m", metres(hosts[i].y)}}).bees("G" + n, "3");
    }
    return book;
}

std::vector<QString> hostsInOrder(const PlanBook& book) {
    const Snapshot s = book.on(kFall);
    std::vector<QString> out;
    int order = 0;
    for (const Union& u : advise(s, {}).unions) {
        EXPECT_EQ(u.order, ++order);
        out.push_back(s.colony(u.host).label);
    }
    return out;
}

// Source: own calculation: a square from the gate at 0, 0; backwards it is as long, so the walk starts at the host that
// comes first in natural order.
TEST(WorkOrder, StartsWithTheFirstHostInNaturalOrder) {
    EXPECT_EQ(hostsInOrder(pairsAt({{0, 400000}, {400000, 400000}, {400000, 0}})),
              (std::vector<QString>{"H1", "H2", "H3"}));
    EXPECT_EQ(hostsInOrder(pairsAt({{400000, 0}, {0, 400000}, {400000, 400000}})),
              (std::vector<QString>{"H1", "H3", "H2"}));
}

double length(const std::vector<MmPoint>& hosts, const std::vector<int>& order) {
    double sum = 0;
    MmPoint at{0, 0};
    for (const int i : order) {
        sum += std::sqrt(static_cast<double>(squaredDistance(at, hosts[static_cast<size_t>(i)])));
        at = hosts[static_cast<size_t>(i)];
    }
    return sum + std::sqrt(static_cast<double>(squaredDistance(at, {0, 0})));
}

// Source: own calculation, all orders tried.
TEST(WorkOrder, IsTheShortestWalk) {
    std::mt19937 random(11);
    for (int round = 0; round < 6; ++round) {
        std::vector<MmPoint> hosts;
        for (qint32 i = 0; i < 6; ++i) // each in a column of its own, so that no other unions pay
            hosts.push_back({(i * 5 + round) % 6 * 400000, static_cast<qint32>(random() % 20) * 400000});
        std::vector<int> got;
        for (const QString& label : hostsInOrder(pairsAt(hosts))) got.push_back(label.mid(1).toInt() - 1);
        ASSERT_EQ(got.size(), hosts.size());
        std::vector<int> order(hosts.size());
        std::iota(order.begin(), order.end(), 0);
        double best = length(hosts, order);
        while (std::next_permutation(order.begin(), order.end())) best = std::min(best, length(hosts, order));
        EXPECT_NEAR(length(hosts, got), best, 0.001);
        EXPECT_LT(got.front(), got.back());
    }
}

TEST(WorkOrder, CountsFromOneInEachYard) {
    PlanBook book;
    book.yard("Y").yard("B10").yard("B9");
    for (const char* yard : {"Y", "B10", "B9"})
        for (const char* c : {"a", "b"}) {
            const QString label = QString(yard) + c;
            book.colony(label, {{"yard", yard}}).bees(label, *c == 'a' ? "3" : "4");
        }
    const Snapshot s = book.on(kFall);
    const Plan plan = advise(s, {});
    ASSERT_EQ(plan.unions.size(), 3U);
    const char* yards[] = {"B9", "B10", "Y"};
    for (size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(s.yard(plan.unions[i].yard).name, yards[i]);
        EXPECT_EQ(plan.unions[i].order, 1);
    }
}

} // namespace
