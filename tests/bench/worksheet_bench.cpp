#include "tests/bench/scratch_book.h"

#include "core/rules/plan.h"
#include "ui/print/worksheet_output.h"

#include <benchmark/benchmark.h>

#include <QTemporaryDir>

namespace {

const demo::DemoSize kYardOf60{.colonies = 60, .years = 2, .seed = 3, .yardSize = 60, .story = false};

/// From the open book to the PDF on disk: snapshot, plan, pages, painting.
void worksheet_60_s(benchmark::State& state) {
    const auto session = bench::openBook("yard60", kYardOf60);
    const QTemporaryDir dir;
    for (auto _ : state) {
        const core::Snapshot s = session->snapshot(core::dayOf(2026, 9, 20));
        const core::rules::Plan plan = core::rules::advise(s, {});
        core::report::WorksheetOptions options;
        options.book = session->bookTitle();
        const ui::print::WorksheetPages pages(s, plan, core::YardIx{0}, options);
        ui::print::writePdf(pages, options.book, dir.filePath(QStringLiteral("sheet.pdf")));
    }
}
BENCHMARK(worksheet_60_s)->Unit(benchmark::kSecond);

} // namespace
