#include "core/edit/session.h"
#include "core/exchange/import.h"

#include <benchmark/benchmark.h>

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <random>

// A million visits: read, checked and written by the program as a user runs it, with history, beside what the `sqlite3`
// shell needs to load the same file into one bare table on the same disk; then taken back. Each ratio is of medians of
// runs in turn, so that both meet the same disk and the same load.

namespace {

constexpr int kColonies = 4000;
constexpr int kVisitsEach = 250;
constexpr int kRounds = 3;

/// Some of the cells of a visit as beekeepers fill them in; blank ones too.
QByteArray visitRow(int colony, core::Day day, std::mt19937& random) {
    const auto below = [&](unsigned n) { return static_cast<int>(random() % n); };
    const auto frames = [&] { return QByteArray::number(below(37) * 0.25); };
    static const QByteArray queens[] = {"seen", "eggs", "eggs", "unknown", ""};
    const int brood = below(9);
    QByteArray row = "C" + QByteArray::number(colony) + ',' + isoText(day).toLatin1() + ",,";
    row += frames() + ',' + frames() + ",,," + frames() + ",," + queens[below(5)] + ',';
    row += QByteArray::number(brood) + ',' + QByteArray::number(below(static_cast<unsigned>(brood) + 1));
    row += below(200) == 0 ? ",chalkbrood,0," : ",,0,";
    row += QByteArray::number(1500 + below(3000)).insert(2, '.') + ',';
    row += below(8) == 0 ? QByteArray::number(below(20)) + ",300," : QByteArray(",,");
    row += below(4) == 0 ? "A. Keeper,calm on the comb\n" : "A. Keeper,\n";
    return row;
}

void writeFile(const QString& path, const QByteArray& text) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size()) qFatal("%s", qPrintable(path));
}

/// A folder with a book of 4,000 colonies and a file of a million visits, its rows in no order.
class MillionVisits {
public:
    MillionVisits() : m_folder(QCoreApplication::applicationDirPath() + "/import-XXXXXX") {
        QByteArray colonies = "colony,yard,stand,x_m,y_m,since\n";
        std::vector<QByteArray> rows;
        std::mt19937 random(1);
        for (int c = 0; c < kColonies; ++c) {
            const QByteArray n = QByteArray::number(c), yard = "Y" + QByteArray::number(c / 50);
            const QByteArray x = QByteArray::number(c % 50 * 2);
            colonies += "C" + n + ',' + yard + ',' + n + ',' + x + ",0,2020-01-01\n";
            for (int i = 0; i < kVisitsEach; ++i) rows.push_back(visitRow(c, core::dayOf(2020, 1, 1) + i * 7, random));
        }
        std::shuffle(rows.begin(), rows.end(), random);
        QByteArray visits = "colony,date,boxes,bees_top,bees_bottom,upper_bees_top,upper_bees_bottom,stores_frames,"
                            "upper_stores_frames,queen,brood_frames,brood_checked,signs,supers,gross_kg,mites,"
                            "mite_sample,by,note\n";
        for (const QByteArray& row : rows) visits += row;
        QByteArray yards = "yard\n";
        for (int y = 0; y < kColonies / 50; ++y) yards += "Y" + QByteArray::number(y) + '\n';
        writeFile(path("yards.csv"), yards);
        writeFile(path("colonies.csv"), colonies);
        writeFile(path("visits.csv"), visits);
        run(YW_PROGRAM,
            {"import", path("base.yardwright"), "--yards", path("yards.csv"), "--colonies", path("colonies.csv")});
    }

    double shellSeconds() const {
        QFile::remove(path("bare.db"));
        return run("sqlite3", {path("bare.db"), ".import --csv " + path("visits.csv") + " visit"});
    }
    double importSeconds() const {
        QFile::remove(path("book.yardwright"));
        if (!QFile::copy(path("base.yardwright"), path("book.yardwright"))) qFatal("no copy of the book");
        return run(YW_PROGRAM, {"import", path("book.yardwright"), "--visits", path("visits.csv")});
    }
    double undoSeconds() const {
        QElapsedTimer clock;
        clock.start();
        const auto session = core::edit::Session::open(path("book.yardwright"), m_clock);
        if (!session->undo()) qFatal("nothing to undo");
        return static_cast<double>(clock.nsecsElapsed()) / 1e9;
    }

private:
    QString path(const char* name) const { return m_folder.filePath(QLatin1StringView(name)); }
    static double run(const QString& program, const QStringList& words) {
        QElapsedTimer clock;
        clock.start();
        QProcess process;
        process.start(program, words);
        if (!process.waitForFinished(-1) || process.exitCode() != 0)
            qFatal("%s: %s", qPrintable(program), process.readAllStandardError().constData());
        return static_cast<double>(clock.nsecsElapsed()) / 1e9;
    }

    QTemporaryDir m_folder;
    core::SystemClock m_clock;
};

struct Medians {
    double shell = 0;
    double import = 0;
    double undo = 0;
};

const Medians& medians() {
    static const Medians found = [] {
        const MillionVisits files;
        std::vector<double> shell, import, undo;
        for (int i = 0; i < kRounds; ++i) {
            shell.push_back(files.shellSeconds());
            import.push_back(files.importSeconds());
            undo.push_back(files.undoSeconds());
        }
        const auto median = [](std::vector<double>& seconds) {
            std::ranges::sort(seconds);
            return seconds[seconds.size() / 2];
        };
        return Medians{median(shell), median(import), median(undo)};
    }();
    return found;
}

void figure(benchmark::State& state, double value) {
    for (auto _ : state) continue;
    state.counters["value"] = value;
}
void import_shell_s(benchmark::State& state) { figure(state, medians().shell); }
void import_s(benchmark::State& state) { figure(state, medians().import); }
void import_ratio(benchmark::State& state) { figure(state, medians().import / medians().shell); }
void undo_import_ratio(benchmark::State& state) { figure(state, medians().undo / medians().import); }
BENCHMARK(import_shell_s)->Iterations(1);
BENCHMARK(import_s)->Iterations(1);
BENCHMARK(import_ratio)->Iterations(1);
BENCHMARK(undo_import_ratio)->Iterations(1);

} // namespace
