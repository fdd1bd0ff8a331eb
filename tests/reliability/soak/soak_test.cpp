#include "tests/reliability/figures.h"
#include "tests/reliability/soak/soak.h"
#include "tests/support/unsynced_vfs.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <algorithm>

// A book over many edits: memory flat, the file no faster grown than what is written into it, no edit slower for all
// that was done before, nothing lost, every invariant kept.

namespace tests::soak {

namespace {

using reliability::figure;
using reliability::longRun;
using reliability::Sum;

/// Parts of an edit that others call: asked for holds elsewhere.
const std::set<std::string> kParts = {"recordUnionWhateverHolds", "recordDivideWhateverHolds"};

std::set<std::string> declaredEdits() {
    static const QRegularExpression declared(QStringLiteral("\\bChangeSet (\\w+)\\(const EditContext&"));
    std::set<std::string> names;
    const QDir folder(QStringLiteral(YW_SOURCE_DIR "/core/edit"));
    for (const QString& name : folder.entryList({QStringLiteral("*.h")})) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("cannot read a header");
        auto found = declared.globalMatch(QString::fromUtf8(file.readAll()));
        while (found.hasNext()) names.insert(found.next().captured(1).toStdString());
    }
    for (const std::string& part : kParts) names.erase(part);
    return names;
}

void tell(const Soak& soak) {
    if (!qEnvironmentVariableIsSet("YW_SOAK_TELL")) return;
    for (const auto& [name, count] : soak.done())
        std::printf("%-24s %lld\n", name.c_str(), static_cast<long long>(count));
    for (const auto& [name, why] : soak.refusals())
        for (const auto& [sentence, count] : why)
            if (count > 3) std::printf("%s %d: %s\n", name.c_str(), count, sentence.c_str());
}

/// Of the short form only that every kind of edit happens: too few edits to measure anything by.
void judgeKinds(const Soak& soak) {
    std::string missing;
    for (const Kind& kind : allKinds())
        if (!soak.done().contains(kind.name) || soak.done().at(kind.name) == 0) missing += std::string(kind.name) + ' ';
    EXPECT_EQ(missing, "") << "kinds of edits that never went through";
    for (const char* also : {"undo", "redo", "take back", "reopen", "import", "recordPrint", "a reason asked for"})
        EXPECT_TRUE(soak.done().contains(also)) << also;
}

void figures(const char* harness, const Soak& soak) {
    const auto count = [&](const char* name) {
        const auto at = soak.done().find(name);
        return at == soak.done().end() ? 0 : at->second;
    };
    figure(harness, "edits, undos and redos", soak.edits(), Sum::Edits);
    figure(harness, "of these undos and redos", count("undo") + count("redo"));
    figure(harness, "taken back out of turn", count("take back"));
    figure(harness, "reopenings", count("reopen"));
    figure(harness, "checks of the whole book and its history", soak.checks());
    figure(harness, "losses", soak.losses(), Sum::Losses);
}

class SoakTest : public testing::Test {
protected:
    /// On the disk of the build in the long form: a disk in memory keeps nothing as a user's does.
    SoakTest()
        : m_dir(longRun() ? QCoreApplication::applicationDirPath() + QStringLiteral("/soak-XXXXXX")
                          : QDir::tempPath() + QStringLiteral("/soak-XXXXXX")) {}

    QTemporaryDir m_dir;
};

TEST(SoakKinds, AreAllTheEditsThatThereAre) {
    std::set<std::string> kinds;
    for (const Kind& kind : allKinds()) EXPECT_TRUE(kinds.insert(kind.name).second) << kind.name << " is there twice";
    EXPECT_EQ(kinds, declaredEdits());
}

constexpr bool kSanitized =
#ifdef __SANITIZE_ADDRESS__
    true; // what was freed is kept for a while
#else
    false;
#endif

constexpr double kWarm = 0.2; ///< share of a run after which the book has the size that it keeps

/// Bounds of the long form.
void judgeWear(const char* harness, const Soak& soak) {
    const auto& wear = soak.wear();
    const double half = static_cast<double>(soak.edits()) / 2;
    const double memory = memoryAnEdit(wear) * half;
    const double first = fileAnEdit(wear, kWarm, 0.6);
    const double second = fileAnEdit(wear, 0.6, 1);
    const double early = workAnEdit(wear, kWarm, kWarm + 0.2);
    const double late = workAnEdit(wear, 0.8, 1);
    figure(harness, "memory at half, kB", wear[wear.size() / 2].resident / 1000);
    figure(harness, "memory at the end, kB", wear.back().resident / 1000);
    figure(harness, "rows early", qRound64(rowsThere(wear, kWarm, kWarm + 0.2)));
    figure(harness, "rows late", qRound64(rowsThere(wear, 0.8, 1)));
    figure(harness, "the file at the end, kB", wear.back().fileBytes / 1000);
    figure(harness, "the file's growth in bytes an edit, first half", qRound64(first));
    figure(harness, "the file's growth in bytes an edit, second half", qRound64(second));
    figure(harness, "an edit in µs of the processor, early", qRound64(early));
    figure(harness, "an edit in µs of the processor, late", qRound64(late));
    figure(harness, "an edit in µs on the clock, early", qRound64(waitAnEdit(wear, kWarm, kWarm + 0.2)));
    figure(harness, "an edit in µs on the clock, late", qRound64(waitAnEdit(wear, 0.8, 1)));
    EXPECT_LT(memory, 4e6) << "bytes of memory over the second half, by the line through it";
    EXPECT_NEAR(second / first, 1, 0.15) << "growth of the file, second half to first";
    // The history is three times as long late as early: work that grew with it would be, too. While foulbrood is about,
    // what is recorded is read whole to judge an edit, so work may grow as the rows do, until no more are kept.
    const double rows = rowsThere(wear, 0.8, 1) / rowsThere(wear, kWarm, kWarm + 0.2);
    EXPECT_LT(late / early, 1.5 * std::max(1.0, rows)) << "work an edit, late to early; rows " << rows << " times";
}

Plan shortPlan() {
    Plan plan; // with the same dice each time, where none are given
    if (qEnvironmentVariableIsSet("YW_SEED")) plan.seed = reliability::seedOfRun();
    plan.size = {8, 6, 3, 24};
    return plan;
}

Plan longPlan(qint64 edits) {
    Plan plan;
    plan.seed = reliability::seedOfRun();
    plan.edits =
        qEnvironmentVariableIntValue("YW_SOAK_EDITS") > 0 ? qEnvironmentVariableIntValue("YW_SOAK_EDITS") : edits;
    plan.editsADay = 60;
    plan.checkEvery = static_cast<int>(plan.edits / 25);
    plan.watchEvery = 200;
    plan.reopenEvery = 400;
    plan.season = plan.edits / 80; // each fifth of the run has foulbrood as often as any other
    plan.turnEvery = 20;
    return plan;
}

void soaked(const char* harness, const Plan& plan, const QString& folder) {
    Soak soak(plan, folder);
    soak.run();
    tell(soak);
    figures(harness, soak);
    if (!testing::Test::HasFailure() && longRun() && !kSanitized) judgeWear(harness, soak);
    judgeKinds(soak);
}

TEST_F(SoakTest, AsAUsersFileIsKept) {
    soaked("Edits soaked, all of it synced", longRun() ? longPlan(50'000) : shortPlan(), m_dir.path());
}

TEST_F(SoakTest, AMillionUnsynced) {
    if (!longRun()) GTEST_SKIP() << "the long form alone: run.sh soak";
    const UnsyncedVfs unsynced;
    soaked("Edits soaked, nothing waited for", longPlan(1'000'000), m_dir.path());
    EXPECT_GT(unsynced.syncs(), 0) << "the book asks for its syncs";
}

} // namespace

} // namespace tests::soak
