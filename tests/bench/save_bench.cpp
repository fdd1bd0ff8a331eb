#include "tests/bench/scratch_book.h"

#include "core/edit/edits.h"

#include <benchmark/benchmark.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <stdexcept>

#include <sqlite3.h>

// Saving a visit beside the least that SQLite can do: one row into a table of a file of its own, in the same folder,
// with the same journal and the same synchronous mode. One after the other in turn, so that both meet the same disk;
// medians.

namespace {

using namespace core;

constexpr int kSaves = 300;

double msOf(const QElapsedTimer& clock) { return static_cast<double>(clock.nsecsElapsed()) / 1e6; }

double median(std::vector<double> values) {
    std::ranges::sort(values);
    return values[values.size() / 2];
}

/// A table of what a visit says, and nothing else: no history, no index, no words of its note.
class BareTable {
public:
    explicit BareTable(const QString& path) {
        if (sqlite3_open(path.toUtf8().constData(), &m_db) != SQLITE_OK) throw std::runtime_error("no file");
        exec("PRAGMA journal_mode = DELETE");
        exec("PRAGMA synchronous = EXTRA"); // as core/store/database.cpp
        exec("CREATE TABLE visit (id INTEGER PRIMARY KEY, colony INTEGER, day TEXT, bees INTEGER, stores INTEGER, "
             "brood INTEGER, checked INTEGER, by_whom TEXT, note TEXT)");
        const char* insert = "INSERT INTO visit (colony, day, bees, stores, brood, checked, by_whom, note) "
                             "VALUES (?, ?, ?, ?, ?, ?, ?, ?)";
        if (sqlite3_prepare_v2(m_db, insert, -1, &m_insert, nullptr) != SQLITE_OK) throw std::runtime_error("no table");
    }
    ~BareTable() {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_db);
    }
    BareTable(const BareTable&) = delete;
    BareTable& operator=(const BareTable&) = delete;

    void save(const Visit& v) {
        exec("BEGIN IMMEDIATE");
        sqlite3_bind_int64(m_insert, 1, v.colony.value);
        text(2, isoText(v.day));
        sqlite3_bind_int(m_insert, 3, v.beesTop->value);
        sqlite3_bind_int(m_insert, 4, v.stores->value);
        sqlite3_bind_int(m_insert, 5, *v.broodFrames);
        sqlite3_bind_int(m_insert, 6, *v.broodChecked);
        text(7, v.by);
        text(8, v.note);
        if (sqlite3_step(m_insert) != SQLITE_DONE) throw std::runtime_error("no insert");
        sqlite3_reset(m_insert);
        exec("COMMIT");
    }

private:
    void exec(const char* sql) {
        if (sqlite3_exec(m_db, sql, nullptr, nullptr, nullptr) != SQLITE_OK) throw std::runtime_error(sql);
    }
    void text(int at, const QString& value) {
        const QByteArray utf8 = value.toUtf8();
        sqlite3_bind_text(m_insert, at, utf8.constData(), static_cast<int>(utf8.size()), SQLITE_TRANSIENT);
    }

    sqlite3* m_db = nullptr;
    sqlite3_stmt* m_insert = nullptr;
};

/// As it is typed: bees, stores, brood looked through, eggs seen, a note.
Visit typicalVisit(ColonyId colony, Day day) {
    Visit v;
    v.colony = colony;
    v.day = day;
    v.beesTop = Quarters{26};
    v.stores = Quarters{9};
    v.queen = QueenSeen::Eggs;
    v.broodFrames = v.broodChecked = 5;
    v.by = QStringLiteral("Ana");
    v.note = QStringLiteral("calm, three frames of pollen, one comb to be taken out in fall");
    return v;
}

struct Saved {
    double bookMs = 0;
    double bareMs = 0;
};

/// In a copy of the demo book of 96 colonies, beside the bench: on its disk.
Saved saveInTurn() {
    const QTemporaryDir folder(QCoreApplication::applicationDirPath() + QStringLiteral("/saving-XXXXXX"));
    const QString path = folder.filePath(QStringLiteral("saving.yardwright"));
    if (!QFile::copy(bench::bookFile("small", {.colonies = 96, .years = 2, .seed = 1}), path))
        throw std::runtime_error("no copy of the book");
    const SystemClock systemClock;
    const auto book = edit::Session::open(path, systemClock);
    BareTable bare(folder.filePath(QStringLiteral("bare.db")));
    const Day on = dayOf(2026, 9, 20);
    std::vector<ColonyId> colonies;
    for (const SnapColony& colony : book->snapshot(on).colonies)
        if (!colony.ended) colonies.push_back(colony.id);
    std::vector<double> bookMs, bareMs;
    for (size_t i = 0; i < kSaves; ++i) {
        const Visit v = typicalVisit(colonies[i % colonies.size()], on + 1 + static_cast<int>(i / colonies.size()));
        QElapsedTimer clock;
        clock.start();
        book->apply([&](const edit::EditContext& c) { return edit::logVisit(c, v); });
        bookMs.push_back(msOf(clock));
        clock.restart();
        bare.save(v);
        bareMs.push_back(msOf(clock));
    }
    return {median(bookMs), median(bareMs)};
}

const Saved& saved() {
    static const Saved once = saveInTurn();
    return once;
}

/// To be at most 3 ms, or at most twice the bare insert (visit_save_ratio): which of the two, the disk decides.
void visit_save_ms(benchmark::State& state) {
    for (auto _ : state) state.counters["value"] = saved().bookMs;
}
void visit_save_ratio(benchmark::State& state) {
    for (auto _ : state) state.counters["value"] = saved().bookMs / saved().bareMs;
}
/// What it is a multiple of.
void bare_save_ms(benchmark::State& state) {
    for (auto _ : state) state.counters["value"] = saved().bareMs;
}
BENCHMARK(visit_save_ms)->Iterations(1);
BENCHMARK(visit_save_ratio)->Iterations(1);
BENCHMARK(bare_save_ms)->Iterations(1);

} // namespace
