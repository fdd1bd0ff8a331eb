#include "tests/fuzz/changes.h"
#include "tests/fuzz/target.h"
#include "tests/reliability/figures.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>

#include <gtest/gtest.h>

#include <cstdio>

// The corpus of each target, every input that ever broke something among it, and changes of it at random with a fixed
// seed. More of them: YW_FUZZ=N (each target), YW_FUZZ_FROM=M begins with that one. `fuzz_test TARGET FILE...` runs
// these files alone.

namespace tests::fuzz {
namespace {

constexpr qint64 kMostMs = 20'000; ///< of one input, with sanitizers on a busy machine
constexpr int kChanged = 60;       ///< inputs a target

int fromEnvironment(const char* name, int usual) {
    bool given = false;
    const int value = qEnvironmentVariableIntValue(name, &given);
    return given ? value : usual;
}

/// What broke, or nothing.
std::string brokenBy(const Target& target, const QByteArray& input) {
    QElapsedTimer since;
    since.start();
    try {
        target.one(input);
    } catch (const std::exception& e) {
        return e.what();
    }
    return since.elapsed() > kMostMs ? "it took " + std::to_string(since.elapsed()) + " ms" : std::string();
}

/// Kept, so that it can be looked at and become part of the corpus.
std::string kept(const Target& target, const QByteArray& input, int number) {
    QDir().mkpath(QStringLiteral(YW_BINARY_DIR "/fuzz-found"));
    QFile file(QStringLiteral(YW_BINARY_DIR "/fuzz-found/%1-%2").arg(QLatin1StringView(target.name)).arg(number));
    if (!file.open(QIODevice::WriteOnly) || file.write(input) != input.size()) return "not kept";
    return file.fileName().toStdString();
}

class Fuzz : public testing::TestWithParam<const Target*> {};

TEST_P(Fuzz, Corpus) {
    const Stock stock = stockOf(*GetParam());
    ASSERT_FALSE(stock.corpus.empty());
    int number = 0;
    for (const QByteArray& input : stock.corpus) {
        const std::string broken = brokenBy(*GetParam(), input);
        EXPECT_EQ(broken, "") << "input " << number << " of the corpus:\n" << input.left(400).toStdString();
        ++number;
    }
}

TEST_P(Fuzz, SeededChanges) {
    const Stock stock = stockOf(*GetParam());
    const int from = fromEnvironment("YW_FUZZ_FROM", 0);
    const int count = fromEnvironment("YW_FUZZ", reliability::longRun() ? 20 * kChanged : kChanged);
    int findings = 0;
    for (int i = from; i < from + count && findings < 10; ++i) {
        std::mt19937 random(static_cast<std::uint32_t>(i));
        const QByteArray input = changed(*GetParam(), stock, random);
        const std::string broken = brokenBy(*GetParam(), input);
        if (broken.empty()) continue;
        ++findings;
        ADD_FAILURE() << broken << "\ninput " << i << " (" << kept(*GetParam(), input, i) << "):\n"
                      << input.left(400).toStdString();
    }
    const std::string name = std::string("Fuzzing: ") + GetParam()->name;
    reliability::figure(name.c_str(), "seeded inputs", count, reliability::Sum::Inputs);
    reliability::figure(name.c_str(), "findings", findings);
}

std::vector<const Target*> all() {
    std::vector<const Target*> out;
    for (const Target& t : targets()) out.push_back(&t);
    return out;
}
INSTANTIATE_TEST_SUITE_P(Targets, Fuzz, testing::ValuesIn(all()),
                         [](const auto& target) { return std::string(target.param->name); });

int runFiles(const Target& target, const QStringList& files) {
    int broken = 0;
    for (const QString& name : files) {
        QFile file(name);
        if (!file.open(QIODevice::ReadOnly)) qFatal("%s cannot be read", qPrintable(name));
        const std::string what = brokenBy(target, file.readAll());
        std::printf("%s: %s\n", qPrintable(name), what.empty() ? "holds" : what.c_str());
        broken += what.empty() ? 0 : 1;
    }
    return broken == 0 ? 0 : 1;
}

} // namespace
} // namespace tests::fuzz

int main(int argc, char** argv) {
    QCoreApplication app(argc, argv); // finds the database's driver
    testing::InitGoogleTest(&argc, argv);
    if (argc > 1)
        if (const auto* target = tests::fuzz::targetNamed(argv[1]))
            return tests::fuzz::runFiles(*target, app.arguments().mid(2));
    return RUN_ALL_TESTS();
}
