#include "ui/print/worksheet_paper.h"

#include "ui/print/worksheet_output.h"

#include <QLocale>

namespace ui::print {

core::report::Paper usualPaper() {
    return QLocale::system().measurementSystem() == QLocale::MetricSystem ? core::report::Paper::A4
                                                                          : core::report::Paper::Letter;
}

namespace {

WorksheetJob jobOf(const window::PaperJob& job) {
    core::report::WorksheetOptions options;
    options.paper = usualPaper();
    options.book = job.session.bookTitle();
    const auto history = job.session.history(1);
    options.revision = history.empty() ? 0 : history.front().seq;
    options.printedOn = job.session.clock().today();
    const core::YardId yard = job.reading.snapshot.yard(job.yard).id;
    options.stands = job.session.standsOf(yard);
    if (const auto* wish = job.reading.wishOf(yard)) options.queens = wish->day.queens;
    return {job.reading.snapshot, job.reading.plan, job.yard, options,
            job.session.fixedThingsOf(job.reading.snapshot.yard(job.yard).id)};
}

} // namespace

window::Paper worksheetPaper() {
    window::Paper paper;
    paper.preview = [](QWidget* parent, const window::PaperJob& job) { previewWorksheet(parent, jobOf(job)); };
    paper.print = [](QWidget* parent, const window::PaperJob& job) { printWorksheet(parent, jobOf(job)); };
    paper.pdf = [](const window::PaperJob& job, const QString& path) {
        const WorksheetJob sheet = jobOf(job);
        writePdf(WorksheetPages(sheet.s, sheet.plan, sheet.yard, sheet.options, sheet.fixed),
                 sheet.s.yard(sheet.yard).name, sheet.options.paper, path);
    };
    return paper;
}

} // namespace ui::print
