#include "core/rules/hold.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"
#include "tests/support/slow_holds.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

namespace tests::rules {
namespace {

using Kinds = std::map<std::string, std::set<std::string>>;

constexpr std::uint64_t kBooks = 200;
constexpr size_t kDaysABook = 6;

Kinds holdsOf(const support::CsvTables& tables, const std::string& day) {
    const core::Snapshot s = support::snapshotOf(tables, *core::parseIsoDay(QString::fromStdString(day)));
    Kinds kinds;
    for (size_t i = 0; i < s.livingCount(); ++i) kinds[s.colonies[i].shown.toStdString()];
    for (const core::rules::Hold& hold : core::rules::holds(s))
        kinds[s.colony(hold.colony).shown.toStdString()].insert(core::rules::holdWord(hold.kind).toStdString());
    return kinds;
}

std::string lines(const Kinds& kinds) {
    std::string text;
    for (const auto& [colony, held] : kinds) {
        text += colony + ':';
        for (const std::string& kind : held) text += ' ' + kind;
        text += '\n';
    }
    return text;
}

/// Of each file but yards and settings, each row is one operation; the holds of every colony are compared on every day.
struct Figures {
    size_t books = 0, operations = 0, days = 0, colonies = 0, holds = 0, falseClears = 0, falseHolds = 0;
    std::map<std::string, size_t> ofKind;
};

size_t rowsIn(const support::CsvTables& tables) {
    size_t rows = 0;
    for (const auto& [kind, table] : tables)
        if (kind != u"yards" && kind != u"settings") rows += table.size();
    return rows;
}

/// How many kinds of hold `one` has that `other` has not.
size_t lacking(const Kinds& one, const Kinds& other) {
    size_t count = 0;
    for (const auto& [colony, kinds] : one)
        for (const std::string& kind : kinds) count += !other.contains(colony) || !other.at(colony).contains(kind);
    return count;
}

void compare(const Kinds& ours, const Kinds& theirs, const std::string& what, Figures& figures) {
    ++figures.days;
    figures.colonies += theirs.size();
    for (const auto& [colony, kinds] : theirs) {
        figures.holds += kinds.size();
        for (const std::string& kind : kinds) ++figures.ofKind[kind];
    }
    figures.falseClears += lacking(theirs, ours);
    figures.falseHolds += lacking(ours, theirs);
    EXPECT_EQ(ours, theirs) << what << "\nours:\n" << lines(ours) << "second reading:\n" << lines(theirs);
}

void judgeBook(std::uint64_t seed, size_t daysABook, Figures& figures) {
    const QTemporaryDir folder;
    const support::RandomBook book = support::randomBook(seed);
    support::writeRandomBook(book, folder.path().toStdString());
    const support::SlowBook slow = support::readSlowBook(folder.path().toStdString());
    const support::CsvTables tables = support::tablesOfFolder(folder.path());
    ++figures.books;
    figures.operations += rowsIn(tables);
    const size_t step = std::max<size_t>(1, book.days.size() / daysABook);
    for (size_t i = seed % step; i < book.days.size(); i += step) {
        const std::string& day = book.days[i];
        compare(holdsOf(tables, day), support::slowHolds(slow, support::slowDay(day)),
                "seed " + std::to_string(seed) + " on " + day, figures);
    }
}

// Source: a second reading of the rules of holds, written from their text alone (tests/support/slow_holds.h).
// YW_JUDGED_BOOKS=N judges N books instead, on every day worth asking for.
TEST(HoldsJudged, ASecondReadingOfTheRulesHoldsTheSame) {
    const int asked = qEnvironmentVariableIntValue("YW_JUDGED_BOOKS");
    const std::uint64_t books = asked > 0 ? static_cast<std::uint64_t>(asked) : kBooks;
    Figures f;
    for (std::uint64_t seed = 1; seed <= books; ++seed) judgeBook(seed, asked > 0 ? 1000 : kDaysABook, f);
    std::printf("%zu operations in %zu books, %zu days, %zu colonies judged, %zu holds: %zu false clears, %zu false "
                "holds\n",
                f.operations, f.books, f.days, f.colonies, f.holds, f.falseClears, f.falseHolds);
    if (asked == 0) {
        EXPECT_GE(f.operations, 10'000U);
        EXPECT_EQ(f.ofKind.size(), 8U);
        for (const auto& [kind, count] : f.ofKind) EXPECT_GT(count, 200U) << kind;
    }
}

} // namespace
} // namespace tests::rules
