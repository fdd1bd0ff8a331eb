#include "core/exchange/import.h"
#include "core/rules/facts.h"
#include "core/rules/holds_then.h"
#include "core/store/check.h"
#include "core/store/snapshot_reader.h"
#include "tests/store/snapshot_text.h"
#include "tests/store/test_book.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <QFileInfo>

#include <map>
#include <set>
#include <tuple>

using namespace core;
using namespace core::store;

namespace {

/// What is in the one list and not in the other.
std::string difference(const QStringList& expected, const QStringList& found) {
    QStringList lines;
    for (const QString& l : expected)
        if (!found.contains(l)) lines << QStringLiteral("- ") + l;
    for (const QString& l : found)
        if (!expected.contains(l)) lines << QStringLiteral("+ ") + l;
    if (lines.isEmpty() && expected != found) lines << QStringLiteral("counts differ");
    return lines.join(u'\n').toStdString();
}

/// Imports a folder's files into a new book of a folder of its own.
class Imported {
public:
    explicit Imported(const QString& folder) {
        exchange::ImportFiles files;
        for (const exchange::FileKind kind : exchange::kFileKinds) {
            const QString file = folder + u'/' + exchange::fileName(kind);
            if (QFileInfo::exists(file)) files.files.push_back({kind, file});
        }
        const auto report = exchange::importIntoBook(m_path, SystemClock(), files, false);
        for (const auto& line : report.summary()) m_said += line.toStdString() + "; ";
        m_good = report.good();
    }
    bool good() const { return m_good; }
    const std::string& said() const { return m_said; }
    std::unique_ptr<Database> open() const { return Database::open(m_path, Access::ReadOnly); }

private:
    QTemporaryDir m_dir;
    QString m_path = m_dir.filePath("book.yardwright");
    std::string m_said;
    bool m_good = false;
};

/// A glance at a yard says of each of its hives what the whole book says.
void expectGlances(const Database& db, const Snapshot& all) {
    const auto facts = rules::colonyFacts(all);
    for (size_t y = 0; y < all.yards.size(); ++y) {
        const Snapshot part = readYardGlance(db, all.yards[y].id, all.on);
        const auto partFacts = rules::colonyFacts(part);
        std::map<ColonyId, const rules::ColonyFacts*> found;
        for (const rules::ColonyFacts& f : partFacts)
            if (f.yard.value == static_cast<qint32>(y)) found[part.colony(f.colony).id] = &f;
        size_t here = 0;
        for (const rules::ColonyFacts& f : facts) {
            if (f.yard.value != static_cast<qint32>(y)) continue;
            ++here;
            const auto it = found.find(all.colony(f.colony).id);
            ASSERT_NE(it, found.end()) << all.colony(f.colony).shown.toStdString();
            const rules::ColonyFacts& g = *it->second;
            EXPECT_EQ(part.colony(g.colony).shown, all.colony(f.colony).shown);
            EXPECT_EQ(part.placeOf(g.colony)->stand, all.placeOf(f.colony)->stand);
            EXPECT_EQ(std::tie(g.strength, g.noStrength, g.counted, g.queen, g.boxes, g.gross, g.stores, g.freshStart),
                      std::tie(f.strength, f.noStrength, f.counted, f.queen, f.boxes, f.gross, f.stores, f.freshStart))
                << all.colony(f.colony).shown.toStdString();
        }
        EXPECT_EQ(here, found.size());
    }
}

/// What holds rest on, read once, is what each day's own reading has.
void expectHolds(const Snapshot& whole, const Snapshot& all) {
    const auto linesOf = [](const Snapshot& s, const std::vector<rules::Hold>& holds) {
        std::set<std::pair<ColonyId, rules::HoldKind>> out;
        for (const rules::Hold& h : holds) out.emplace(s.colony(h.colony).id, h.kind);
        return out;
    };
    const Snapshot then = rules::forHoldsThen(whole, all.on);
    EXPECT_EQ(linesOf(then, rules::holds(then)), linesOf(all, rules::holds(all)));
}

void expectSame(const QString& folder, const std::vector<Day>& days) {
    const Imported book(folder);
    ASSERT_TRUE(book.good()) << book.said();
    const auto db = book.open();
    EXPECT_EQ(checkBook(*db), std::vector<QString>());
    const auto tables = tests::support::tablesOfFolder(folder);
    for (const Day on : days) {
        const Snapshot expected = tests::support::snapshotOf(tables, on);
        const Snapshot all = readSnapshot(*db, on, Checks::All);
        ASSERT_EQ(difference(linesOf(expected), linesOf(all)), "") << isoText(on).toStdString();
        // The checks that are read by default are among them.
        Snapshot needed = readSnapshot(*db, on);
        for (const SnapCheck& c : needed.checks) {
            const auto own = all.checksOf(c.colony);
            ASSERT_TRUE(std::any_of(own.begin(), own.end(), [&](const SnapCheck& o) { return o.day == c.day; }));
        }
        expectGlances(*db, all);
        expectHolds(readForHolds(*db), needed);
        needed.checks = all.checks;
        ASSERT_EQ(difference(linesOf(all), linesOf(needed)), "");
    }
}

TEST(SnapshotOfImport, IsThatOfTheRowsOfTheWorkedYards) {
    for (const char* yard : {"kiln-field", "brook-end", "tansy-lane"}) {
        SCOPED_TRACE(yard);
        std::vector<Day> days;
        for (int i = 0; i < 500; i += 9) days.push_back(dayOf(2026, 11, 30) - i);
        expectSame(QStringLiteral(YW_TEST_DATA "/yards/") + QLatin1String(yard), days);
    }
}

TEST(SnapshotOfImport, IsThatOfTheRowsOfInventedBooks) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        SCOPED_TRACE(seed);
        const auto book = tests::support::randomBook(seed);
        QTemporaryDir dir;
        tests::support::writeRandomBook(book, dir.path().toStdString());
        std::vector<Day> days;
        for (size_t i = 0; i < book.days.size(); i += 9)
            days.push_back(parseIsoDay(QString::fromStdString(book.days[i])).value());
        expectSame(dir.path(), days);
    }
}

} // namespace
