#include "tests/exchange/samples.h"

#include "tests/support/rounds.h"
#include <gtest/gtest.h>

namespace tests::exchange {
namespace {

/// The rows of a file dated up to a day, by `date` or `since`; an end after that day is not yet known.
QByteArray upTo(const QByteArray& text, const QByteArray& day) {
    const auto lines = text.split('\n');
    const QByteArrayList header = lines.front().split(',');
    const qsizetype date = qMax(header.indexOf("date"), header.indexOf("since"));
    const qsizetype ended = header.indexOf("ended");
    const qsizetype end = header.indexOf("end");
    QByteArray out = lines.front() + '\n';
    for (const QByteArray& line : lines.mid(1)) {
        QByteArrayList cells = line.split(',');
        if (cells.size() != header.size()) continue;
        if (date >= 0 && cells[date] > day) continue;
        if (ended >= 0 && cells[ended] > day) cells[ended] = cells[end] = QByteArray();
        out += cells.join(',') + '\n';
    }
    return out;
}

Texts upTo(const Texts& files, const QByteArray& day) {
    Texts early;
    for (const auto& [name, text] : files) early[name] = upTo(text, day);
    return early;
}

core::edit::Correction correction() { return {f("Ines"), f("the wrong files")}; }

/// A book that grew by imports is the book of one import; taken back it is what it was.
void expectGrows(const Sample& sample, const QByteArrayList& days) {
    const Workbench whole;
    const auto all = whole.import(sample.files);
    ASSERT_TRUE(all.good()) << sample.name << "\n" << all.faults.lines().join(u'\n').toStdString();
    const Workbench grown;
    for (const QByteArray& day : days) {
        const auto part = grown.import(upTo(sample.files, day));
        ASSERT_TRUE(part.good()) << sample.name << " " << day.toStdString() << "\n"
                                 << part.faults.lines().join(u'\n').toStdString();
        EXPECT_EQ(grown.check().join(u'\n').toStdString(), "") << sample.name;
    }
    const QStringList before = rowsOf(grown);
    const auto rest = grown.import(sample.files);
    ASSERT_TRUE(rest.good()) << sample.name << "\n" << rest.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(grown.check().join(u'\n').toStdString(), "") << sample.name;
    EXPECT_EQ(grown.exported(), whole.exported()) << sample.name;
    if (!rest.line) return;
    ASSERT_TRUE(grown.open()->undo(correction()));
    EXPECT_EQ(firstDifference(rowsOf(grown), before).toStdString(), "") << sample.name;
}

TEST(Growing, YearByYearIsTheSameBook) {
    for (unsigned seed = 1; seed <= static_cast<unsigned>(rounds(10)); ++seed)
        expectGrows(randomSample(seed), {"2024-06-30", "2025-05-15", "2026-07-01"});
    for (const Sample& sample : workedYards()) expectGrows(sample, {"2026-04-30", "2026-07-12"});
}

/// Rows moved to other days, into a book that has the rest: faults and the same bytes, or a book in order.
TEST(Growing, MovedRowsGiveFaultsOrABookInOrder) {
    int good = 0;
    int bad = 0;
    for (unsigned round = 0; round < static_cast<unsigned>(rounds(60)); ++round) {
        std::mt19937 random(round);
        const Sample sample = randomSample(1 + round % 10);
        const Workbench bench;
        ASSERT_TRUE(bench.import(upTo(sample.files, "2026-03-01")).good()) << sample.name;
        Texts rest = sample.files;
        for (const char* name : {"colonies.csv", "lineage.csv", "placements.csv", "visits.csv", "transfers.csv"}) {
            if (!rest.contains(f(name)) || below(random, 2) == 0) continue;
            auto lines = rest[f(name)].split('\n');
            QByteArray& line = lines[1 + static_cast<qsizetype>(below(random, static_cast<size_t>(lines.size() - 1)))];
            line.replace("2026-0", "2025-1").replace("2025-05", "2026-04").replace("2024-1", "2026-0");
            rest[f(name)] = lines.join('\n');
        }
        const QByteArray bytes = textsOf(bench.folder())[f("b.yardwright")];
        const auto report = bench.import(rest);
        (report.good() ? good : bad) += 1;
        EXPECT_EQ(bench.check().join(u'\n').toStdString(), "") << sample.name << ", round " << round;
        if (report.good()) continue;
        EXPECT_EQ(textsOf(bench.folder())[f("b.yardwright")], bytes) << sample.name << ", round " << round;
    }
    EXPECT_GT(good, 3);
    EXPECT_GT(bad, 3);
}

} // namespace
} // namespace tests::exchange
