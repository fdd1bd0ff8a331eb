#pragma once

#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

namespace tests::exchange {

/// Files with something wrong, and exactly where the import says so.
struct FaultCase {
    const char* name;
    Texts files; ///< besides smallYard()
    QStringList places;
};

/// Imports into a missing book: exactly these faults, each one sentence that says what was expected, and no book.
inline void expectFaults(const FaultCase& c) {
    const Workbench bench;
    const auto report = bench.import(smallYardWith(c.files));
    EXPECT_EQ(placesOf(report).join(u'\n').toStdString(), c.places.join(u'\n').toStdString())
        << c.name << "\n"
        << report.faults.lines().join(u'\n').toStdString();
    for (const auto& fault : report.faults.kept())
        EXPECT_TRUE(fault.what.contains(QLatin1StringView(", expected ")) && !fault.what.contains(u'\n')) << c.name;
    EXPECT_FALSE(bench.bookThere()) << c.name;
}

/// All in one import into a missing book, smallYard()'s files besides those of the case.
inline void expectFaultsTogether(const FaultCase& c) {
    const Workbench bench;
    auto files = bench.write(smallYard(), QStringLiteral("first"));
    const auto more = bench.write(c.files, QStringLiteral("second"));
    files.files.insert(files.files.end(), more.files.begin(), more.files.end());
    const auto report = importIntoBook(bench.book(), bench.clock(), files, false);
    EXPECT_EQ(placesOf(report).join(u'\n').toStdString(), c.places.join(u'\n').toStdString())
        << c.name << "\n"
        << report.faults.lines().join(u'\n').toStdString();
    EXPECT_FALSE(bench.bookThere()) << c.name;
}

/// The same into a book that holds smallYard(): the book stays as it was, byte for byte.
inline void expectFaultsAgainstBook(const Texts& before, const FaultCase& c) {
    const Workbench bench;
    const auto first = bench.import(smallYardWith(before));
    ASSERT_TRUE(first.good()) << c.name << "\n" << first.faults.lines().join(u'\n').toStdString();
    const QByteArray bytes = textsOf(bench.folder())[QStringLiteral("b.yardwright")];
    const auto report = bench.import(c.files);
    EXPECT_EQ(placesOf(report).join(u'\n').toStdString(), c.places.join(u'\n').toStdString())
        << c.name << "\n"
        << report.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(textsOf(bench.folder())[QStringLiteral("b.yardwright")], bytes) << c.name;
}

} // namespace tests::exchange
