#include "core/exchange/import.h"
#include "core/store/check.h"
#include "core/store/snapshot_reader.h"
#include "tests/store/snapshot_text.h"
#include "tests/store/test_book.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <QFileInfo>

#include <set>

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
