#include "ui/print/worksheet_paper.h"

#include "core/edit/divides_done.h"
#include "core/edit/print_day.h"
#include "ui/print/worksheet_output.h"

namespace ui::print {

namespace {

/// Of the days until `on`, newest first; more than a card has room for.
std::vector<core::Visit> lastVisits(const core::edit::Session& book, core::ColonyId colony, core::Day on) {
    constexpr int kMost = 20;
    std::vector<core::Visit> visits = book.visitsOf(colony, kMost);
    std::erase_if(visits, [on](const core::Visit& v) { return v.day > on; });
    return visits;
}

} // namespace

core::report::WorksheetOptions worksheetOptions(const core::edit::Session& book, core::YardId yard, core::Day on,
                                                const PaperChoice& choice, const core::rules::MergeWish* wish,
                                                const std::vector<core::rules::Unmet>& unmet,
                                                std::optional<core::ColonyId> colony) {
    core::report::WorksheetOptions options;
    options.paper = choice.paper;
    options.language = choice.language;
    options.large = choice.large;
    options.sheet = choice.sheet;
    options.book = book.bookTitle();
    options.bookId = book.bookId();
    const auto history = book.history(1);
    options.revision = history.empty() ? 0 : history.front().seq;
    options.printedOn = book.clock().today();
    options.stands = book.standsOf(yard);
    options.begun = core::edit::closingBegan(book, yard, on);
    options.divided = core::edit::dividesDone(book);
    options.colony = colony;
    if (colony) options.visits = lastVisits(book, *colony, on);
    if (!wish) return options;
    options.wish = *wish;
    options.queens = wish->day.queens;
    for (const core::rules::Unmet& u : unmet)
        if (u.day == wish->day.id) options.unmet.push_back(u);
    return options;
}

namespace {

WorksheetJob jobOf(const window::PaperJob& job) {
    const core::YardId yard = job.reading.snapshot.yard(job.yard).id;
    auto options = worksheetOptions(job.session, yard, job.reading.snapshot.on, job.choice, job.wish, job.reading.unmet,
                                    job.colony);
    options.round = job.round;
    return {job.reading.snapshot, job.reading.plan, job.yard, std::move(options), job.session.fixedThingsOf(yard)};
}

} // namespace

window::Paper worksheetPaper() {
    window::Paper paper;
    paper.preview = [](QWidget* parent, const window::PaperJob& job) { return previewWorksheet(parent, jobOf(job)); };
    paper.print = [](QWidget* parent, const window::PaperJob& job) { return printWorksheet(parent, jobOf(job)); };
    paper.pdf = [](const window::PaperJob& job, const QString& path) {
        const WorksheetJob sheet = jobOf(job);
        writePdf(WorksheetPages(sheet.s, sheet.plan, sheet.yard, sheet.options, sheet.fixed),
                 sheet.s.yard(sheet.yard).name, path);
    };
    return paper;
}

} // namespace ui::print
