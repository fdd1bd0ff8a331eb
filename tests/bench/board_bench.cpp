#include "tests/bench/scratch_book.h"
#include "ui/board/board.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <benchmark/benchmark.h>

#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <QTimeZone>

#include <algorithm>

namespace {

constexpr int kTurns = 20;

struct MergeDayClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(core::toDate(today()), QTime(9, 0), QTimeZone::utc()); }
    core::Day today() const override { return demo::demoMergeDay(); }
};

struct NoDialogs : ui::Dialogs {
    bool asked = false;
    void showError(const core::Error&) override { asked = true; }
    void showFaults(const QString&, const QStringList&) override { asked = true; }
    std::optional<QString> bookToOpen() override { return std::nullopt; }
    std::optional<QString> bookToMake() override { return std::nullopt; }
    std::optional<QString> folderOfCsv() override { return std::nullopt; }
    std::optional<QString> csvToRead() override { return std::nullopt; }
    std::optional<QString> pdfToWrite(const QString&) override { return std::nullopt; }
    std::optional<QString> fileToWrite(const QString&, const QString&) override { return std::nullopt; }
    std::optional<ui::print::PaperChoice> paperToUse(const ui::print::PaperChoice&) override { return std::nullopt; }
    std::optional<core::edit::Correction> correction(const QString&, const QString&) override { return std::nullopt; }
    bool leaveAnyway(const QString&) override { return true; }
};

/// The real window at Merge day on a yard of 60 hives.
struct SixtyHives {
    QTemporaryDir folder;
    MergeDayClock clock;
    NoDialogs dialogs;
    ui::window::MainWindow window{clock, dialogs};

    SixtyHives() {
        const QString path = folder.filePath(QStringLiteral("sixty.yardwright"));
        QFile::copy(bench::bookFile("sixty", {.colonies = 60, .yardSize = 60, .story = false}), path);
        window.openBook(path);
        window.resize(1440, 900);
        window.show();
        benchmark::DoNotOptimize(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
        window.setPlace(ui::window::Place::MergeDay);
        QCoreApplication::processEvents();
    }
    ui::desk::Desk& desk() { return *window.desk(); }
    ui::board::Board& board() { return *window.page()->board(); }

    /// Two carried hives of different unions, which the plan does not unite.
    bool selectTwo() {
        const auto& r = desk().reading();
        if (r.plan.unions.size() < 2) return false;
        const auto id = [&](core::ColonyIx c) { return r.snapshot.colony(c).id; };
        for (const auto& u : r.plan.unions)
            for (const auto& v : r.plan.unions) {
                if (&u == &v) continue;
                desk().select({id(u.host), id(v.moved)}, id(u.host));
                if (pin()) return true;
            }
        return false;
    }
    /// By its key; false where the rules bar it.
    bool pin() {
        const qint64 before = board().merge().asked().day.revision * 1000 + board().merge().asked().day.id.value;
        QTest::keyClick(&window, Qt::Key_I, Qt::ControlModifier);
        const auto& day = board().merge().asked().day;
        return day.revision * 1000 + day.id.value != before;
    }
};

/// From the key that pins a pair (or unpins it) to the new rows drawn: saved, read, planned anew, shown. The median.
void replan_60_ms(benchmark::State& state) {
    for (auto _ : state) {
        SixtyHives sixty;
        if (sixty.desk().reading().snapshot.livingCount() != 60) return state.SkipWithError("not 60 hives");
        if (!sixty.selectTwo()) return state.SkipWithError("no two that can be pinned");
        std::vector<double> turns;
        for (int i = 0; i < kTurns; ++i) {
            QElapsedTimer clock;
            clock.start();
            const bool asked = sixty.pin();
            sixty.board().list()->viewport()->repaint();
            turns.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
            if (!asked || sixty.dialogs.asked) return state.SkipWithError("nothing was pinned");
            QCoreApplication::processEvents();
        }
        std::ranges::sort(turns);
        state.counters["value"] = turns[turns.size() / 2];
    }
}
BENCHMARK(replan_60_ms)->Iterations(1);

} // namespace
