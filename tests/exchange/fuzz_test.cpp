#include "tests/exchange/samples.h"

#include <gtest/gtest.h>

namespace tests::exchange {
namespace {

using Rows = QList<QByteArrayList>;

Rows rowsOfText(const QByteArray& text) {
    Rows rows;
    for (const QByteArray& line : text.split('\n')) rows << line.split(',');
    return rows;
}

QByteArray textOfRows(const Rows& rows) {
    QByteArrayList lines;
    for (const QByteArrayList& row : rows) lines << row.join(',');
    return lines.join('\n');
#include "tests/support/rounds.h"
}

/// A cell of any of the files, or something odd.
QByteArray anyCell(const Texts& files, std::mt19937& random) {
    static const QByteArrayList odd{"",
                                    " ",
                                    "0",
                                    "-1",
                                    "999999999999",
                                    "2026-02-30",
                                    "9999-12-31",
                                    "0001-01-01",
                                    "A@2025-05-01",
                                    "@",
                                    "\"",
                                    "\"\"",
                                    "a\"b",
                                    "\xFF",
                                    "\xEF\xBB\xBF",
                                    QByteArray(1, '\0'),
                                    ";",
                                    "0.25",
                                    "1e9",
                                    "nan",
                                    "afb efb",
                                    "united",
                                    "langstroth-8",
                                    QByteArray(70, 'x'),
                                    QByteArray(3000, '9')};
    if (below(random, 3) == 0) return odd[static_cast<qsizetype>(below(random, static_cast<size_t>(odd.size())))];
    auto file = files.begin();
    std::advance(file, static_cast<long>(below(random, files.size())));
    const Rows rows = rowsOfText(file->second);
    const QByteArrayList& row = rows[static_cast<qsizetype>(below(random, static_cast<size_t>(rows.size())))];
    return row[static_cast<qsizetype>(below(random, static_cast<size_t>(row.size())))];
}

void changeByte(QByteArray& text, std::mt19937& random) {
    if (text.isEmpty()) return;
    const auto at = static_cast<qsizetype>(below(random, static_cast<size_t>(text.size())));
    switch (below(random, 3)) {
    case 0:
        text[at] = static_cast<char>(random());
        break;
    case 1:
        text.remove(at, 1);
        break;
    default:
        text.insert(at, static_cast<char>(random()));
    }
}

void changeRow(Rows& rows, std::mt19937& random) {
    const auto any = [&] { return static_cast<qsizetype>(below(random, static_cast<size_t>(rows.size()))); };
    switch (below(random, 4)) {
    case 0:
        rows.insert(any(), QByteArrayList(rows[any()]));
        break;
    case 1:
        rows.removeAt(any());
        break;
    case 2:
        rows.swapItemsAt(any(), any());
        break;
    default:
        rows.insert(any(), {"x", "y"});
    }
}

void changeColumn(Rows& rows, std::mt19937& random) {
    const auto column = static_cast<qsizetype>(below(random, static_cast<size_t>(rows.front().size())));
    const bool gone = below(random, 2) == 0;
    for (QByteArrayList& row : rows) {
        if (column >= row.size()) continue;
        if (gone)
            row.removeAt(column);
        else
            row.swapItemsAt(column, 0);
        if (row.isEmpty()) row << QByteArray();
    }
}

/// One thing changed at random: a byte, a cell, a row or a column of one file, or a file left out.
void change(Texts& files, std::mt19937& random) {
    auto file = files.begin();
    std::advance(file, static_cast<long>(below(random, files.size())));
    const size_t what = below(random, 9);
    if (what < 2) return changeByte(file->second, random);
    if (what == 8 && files.size() > 1) {
        files.erase(file);
        return;
    }
    Rows rows = rowsOfText(file->second);
    if (what < 5) {
        QByteArrayList& row = rows[static_cast<qsizetype>(below(random, static_cast<size_t>(rows.size())))];
        row[static_cast<qsizetype>(below(random, static_cast<size_t>(row.size())))] = anyCell(files, random);
    } else if (what < 7) {
        changeRow(rows, random);
    } else {
        changeColumn(rows, random);
    }
    file->second = textOfRows(rows);
}

/// Any files give faults and no book, or a book that a check finds in order and whose export it takes again.
void expectFaultsOrBook(const Texts& files, const std::string& name, int& good) {
    const Workbench bench;
    const auto report = bench.import(files);
    if (!report.good()) {
        EXPECT_FALSE(bench.bookThere()) << name;
        for (const auto& fault : report.faults.kept())
            EXPECT_FALSE(fault.file.isEmpty()) << name << fault.text().toStdString();
        return;
    }
    ++good;
    EXPECT_EQ(bench.check().join(u'\n').toStdString(), "") << name;
    const Workbench second;
    const auto again = second.import(bench.exported());
    EXPECT_TRUE(again.good()) << name << "\n" << again.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(firstDifference(rowsOf(second), rowsOf(bench)).toStdString(), "") << name;
}

TEST(Fuzz, ChangedFilesGiveFaultsOrABookInOrder) {
    std::vector<Sample> samples = workedYards();
    for (unsigned seed = 1; seed <= 5; ++seed) samples.push_back(randomSample(seed));
    int good = 0;
    const auto all = static_cast<unsigned>(rounds(240));
    for (unsigned round = 0; round < all; ++round) {
        std::mt19937 random(round);
        const Sample& sample = samples[below(random, samples.size())];
        Texts files = sample.files;
        for (size_t n = 1 + below(random, 2); n > 0; --n) change(files, random);
        expectFaultsOrBook(files, sample.name + ", round " + std::to_string(round), good);
        if (::testing::Test::HasFailure()) break;
    }
    EXPECT_GT(good, rounds(20)) << "too few of the changed files were still good to say much";
}

TEST(Fuzz, RubbishGivesFaults) {
    for (unsigned round = 0; round < 40; ++round) {
        std::mt19937 random(round);
        QByteArray rubbish;
        for (size_t n = below(random, 4000); n > 0; --n)
            rubbish += static_cast<char>(random() & (round % 2 ? 0x7F : 0xFF));
        if (round % 3 == 0) rubbish.prepend("colony,date\n");
        const Workbench bench;
        const auto report = bench.import(smallYardWith({{f("visits.csv"), rubbish}}));
        EXPECT_FALSE(report.good()) << round;
        EXPECT_FALSE(bench.bookThere()) << round;
    }
}

} // namespace
} // namespace tests::exchange
