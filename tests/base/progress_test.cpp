#include "core/base/progress.h"

#include <gtest/gtest.h>

#include <QStringList>

namespace {

using core::Progress;
using std::chrono::milliseconds;

/// A watch that can be told to stop, and what it was told.
struct Asked {
    bool stop = false;
    QStringList steps;
    QStringList past;
    Progress progress() {
        return Progress(
            [this](const QString& what, double) {
                if (steps.isEmpty() || steps.last() != what) steps << what;
                return !stop;
            },
            [this] { return stop; }, milliseconds(0), [this](const QString& what) { past << what; });
    }
};

TEST(Progress, PastStoppingNobodyIsAskedAnyMore) {
    Asked asked;
    const Progress progress = asked.progress();
    const Progress rows = progress.part(0, 0.9, QStringLiteral("Rows"));
    rows.at(0);
    rows.pastStopping(QStringLiteral("Writing"));
    asked.stop = true;
    EXPECT_TRUE(progress.goesOn());
    EXPECT_NO_THROW(rows.at(1));
    EXPECT_NO_THROW(progress.part(0.9, 1, QStringLiteral("More")).at(0));
    EXPECT_FALSE(progress.stopAsked()()) << "no long statement is cut off either";
    rows.pastStopping(QStringLiteral("Writing"));
    EXPECT_EQ(asked.past, QStringList(QStringLiteral("Writing"))) << "told once";
}

TEST(Progress, WhoeverAskedBeforeIsHeard) {
    Asked asked;
    const Progress progress = asked.progress();
    asked.stop = true;
    EXPECT_TRUE(progress.stopAsked()());
    EXPECT_THROW(progress.pastStopping(QStringLiteral("Writing")), core::Stopped);
    EXPECT_EQ(asked.past, QStringList());
    EXPECT_THROW(progress.at(0), core::Stopped);
}

TEST(Progress, AnInnerCommitEndsNothing) {
    Asked asked;
    const Progress progress = asked.progress();
    progress.inner().part(0, 0.5).pastStopping(QStringLiteral("Writing a copy"));
    EXPECT_EQ(asked.past, QStringList());
    asked.stop = true;
    EXPECT_THROW(progress.at(0), core::Stopped);
}

TEST(Progress, WithoutAWatchNothingIsAsked) {
    const Progress nobody;
    EXPECT_NO_THROW(nobody.pastStopping(QStringLiteral("Writing")));
    EXPECT_NO_THROW(nobody.inner().part(0, 1).at(0));
    EXPECT_TRUE(nobody.goesOn());
    EXPECT_FALSE(nobody.stopAsked());
}

} // namespace
