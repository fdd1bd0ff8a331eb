#include "core/edit/session.h"
#include "core/edit/whole_book.h"
#include "core/store/migration.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <sqlite3.h>
#include <sys/resource.h>

// A large book of version 1, as ten years of a large apiary, is brought up to date. Made from the released SQL of
// version 1 alone, as that program would have: nothing of today's writes it.

namespace {

using namespace core;

struct LateClock : Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC); }
    Day today() const override { return dayOf(2026, 11, 25); }
};

struct Size {
    int colonies;
    int visits; ///< of each colony, every second with a note
};

Size sizeWanted() { return qEnvironmentVariableIsEmpty("YW_LONG") ? Size{100, 10} : Size{2'000, 50}; }

void run(sqlite3* db, const QByteArray& sql) {
    char* why = nullptr;
    ASSERT_EQ(sqlite3_exec(db, sql.constData(), nullptr, nullptr, &why), SQLITE_OK) << why << "\n" << sql.constData();
}

void makeVersionOne(const QString& path, Size size) {
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(QFile::encodeName(path).constData(), &db), SQLITE_OK);
    run(db, "PRAGMA synchronous = OFF; PRAGMA application_id = 1500988011; BEGIN;");
    run(db, store::bookMigrations().front().sql);
    const QByteArray n = QByteArray::number(size.colonies);
    const QByteArray v = QByteArray::number(size.visits);
    run(db, "INSERT INTO book (id, uuid) VALUES (1, '01234567-89ab-cdef-0123-456789abcdef');"
            "INSERT INTO yard (id, name, key, closed) WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n "
            "WHERE i < 20) SELECT i, 'Yard ' || i, 'yard ' || i, 0 FROM n;");
    run(db,
        "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < " + n +
            ") INSERT INTO stand (id, yard, name, key, x_mm, y_mm, removed) SELECT i, 1 + i % 20, 'S' || i, 's' || "
            "i, 2000 * (i % 100), 3000 * (i / 100), 0 FROM n;"
            "INSERT INTO colony (id, label, key, since, box, brood_boxes, note) SELECT id, 'C' || id, 'c' || id, "
            "'2020-05-01', 1, 1, CASE WHEN id % 10 = 0 THEN 'gentle, from the hill' END FROM stand;"
            "INSERT INTO placement (id, colony, stand, since, first) SELECT id, id, id, '2020-05-01', 1 FROM stand;");
    run(db, "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < " + v +
                ") INSERT INTO visit (colony, day, bees_top_q, bees_bottom_q, stores_q, queen, note) SELECT c.id, "
                "date('2020-06-01', '+' || (i * 14) || ' days'), 4 * (i % 9), 4 * (i % 8), i % 20, 'eggs', CASE WHEN i "
                "% 2 = 0 THEN 'strong and calm, visit ' || i || ' of ' || c.label END FROM colony c, n;"
                "INSERT INTO setting (id, name, value) VALUES (1, 'gain.min', '60');"
                "COMMIT; PRAGMA user_version = 1;");
    sqlite3_close(db);
}

long peakKilobytes() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    return used.ru_maxrss;
}

TEST(LargeMigration, ABookOfVersionOneIsBroughtUpToDate) {
    QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("book.yardwright"));
    const Size size = sizeWanted();
    makeVersionOne(path, size);
    const qint64 bytes = QFile(path).size();
    const LateClock clock;
    const long before = peakKilobytes();
    QElapsedTimer since;
    since.start();
    auto session = edit::Session::open(path, clock);
    std::printf("Migration of version 1: %d colonies, %d visits, %.1f MB: %lld ms, %ld MB more memory\n", size.colonies,
                size.colonies * size.visits, static_cast<double>(bytes) / 1e6, static_cast<long long>(since.elapsed()),
                (peakKilobytes() - before) / 1024);
    EXPECT_LT(peakKilobytes() - before, 200 * 1024);
    EXPECT_TRUE(QFile::exists(dir.filePath(QStringLiteral("book.version-1.yardwright"))));
    // The rows have no history: that is all that a check has against them.
    for (const QString& problem : session->check())
        EXPECT_TRUE(problem.startsWith(QStringLiteral("Table ")) && problem.contains(QStringLiteral("history")))
            << problem.toStdString();
    EXPECT_EQ(session->snapshot(clock.today()).colonies.size(), static_cast<size_t>(size.colonies));
    EXPECT_EQ(session->visitTotals({}).visits, size.colonies * size.visits);
    EXPECT_EQ(session->visitsOf(ColonyId{1}, 1).at(0).note,
              QStringLiteral("strong and calm, visit %1 of C1").arg(size.visits));
    EXPECT_FALSE(session->notesFound(QStringLiteral("visit 2 of C7"), 10).notes.empty());
    EXPECT_EQ(session->settings().gainMin, 60);
}

QByteArray bytesAt(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

TEST(LargeMigration, StoppedAtAnyTellingLeavesTheBookByteForByteAndNoCopy) {
    QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("book.yardwright"));
    makeVersionOne(path, {30, 10});
    const QByteArray before = bytesAt(path);
    int stops = 0;
    QStringList told;
    const auto broughtUpToDate = [&](int tellings) {
        int left = tellings;
        const Progress progress(
            [&](const QString& what, double) {
                if (!told.contains(what)) told << what;
                return --left > 0;
            },
            {}, std::chrono::milliseconds(0));
        try {
            edit::bringUpToDate(path, progress);
            return true;
        } catch (const Stopped&) {
            ++stops;
            return false;
        }
    };
    for (int tellings = 1; !broughtUpToDate(tellings); tellings += std::max(1, tellings / 4)) {
        ASSERT_EQ(bytesAt(path), before) << tellings;
        ASSERT_EQ(QDir(dir.path()).entryList(QDir::Files | QDir::Hidden),
                  QStringList(QStringLiteral("book.yardwright")))
            << tellings;
    }
    EXPECT_GT(stops, 12) << "at the copy and at each table";
    EXPECT_EQ(told, (QStringList{QStringLiteral("Keeping a copy of it as it is"),
                                 QStringLiteral("Bringing its records up to date"), QStringLiteral("Writing…")}));
    const LateClock clock;
    EXPECT_EQ(edit::Session::open(path, clock)->visitsOf(ColonyId{1}, 100).size(), 10U);
    EXPECT_EQ(bytesAt(path).mid(60, 4), QByteArray::fromHex("00000007")) << "user_version";
    EXPECT_TRUE(QFile::exists(dir.filePath(QStringLiteral("book.version-1.yardwright"))));
}

} // namespace
