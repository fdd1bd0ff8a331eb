#include "app/colony_names.h"
#include "app/commands.h"

#include "core/edit/merge_wishes.h"
#include "core/edit/session.h"
#include "ui/print/worksheet_output.h"
#include "ui/window/snapshots.h"

namespace app {

namespace {

core::report::Sheet sheetOf(const Arguments& a) {
    using core::report::Sheet;
    static constexpr std::pair<const char*, Sheet> kSheets[] = {{"worksheet", Sheet::MergeDay},
                                                                {"checks", Sheet::Checks},
                                                                {"shake-outs", Sheet::ShakeOuts},
                                                                {"storing", Sheet::Storing},
                                                                {"laying-workers", Sheet::LayingWorkers}};
    QStringList names;
    for (const auto& [name, sheet] : kSheets) names << QString::fromLatin1(name);
    return kSheets[names.indexOf(a.choice(QStringLiteral("sheet"), names))].second;
}

core::report::WorksheetOptions optionsOf(const Arguments& a) {
    core::report::WorksheetOptions options;
    const QString language = a.choice(QStringLiteral("language"), {QStringLiteral("en"), QStringLiteral("es")});
    if (language == QLatin1StringView("es")) options.language = core::report::Language::Spanish;
    const QString paper = a.choice(QStringLiteral("paper"), {QStringLiteral("a4"), QStringLiteral("letter")});
    if (paper == QLatin1StringView("letter")) options.paper = core::report::Paper::Letter;
    options.large = a.has(QStringLiteral("large"));
    options.sheet = sheetOf(a);
    return options;
}

} // namespace

int runWorksheet(const QStringList& words, const core::Clock& clock, Streams) {
    const Arguments a(words,
                      {{QStringLiteral("on")},
                       {QStringLiteral("yard")},
                       {QStringLiteral("pdf")},
                       {QStringLiteral("language")},
                       {QStringLiteral("paper")},
                       {QStringLiteral("large"), false},
                       {QStringLiteral("sheet")}},
                      {QStringLiteral("BOOK")});
    core::report::WorksheetOptions options = optionsOf(a); // usage comes before the book
    const core::Day on = a.day(QStringLiteral("on"));
    const QString yardName = a.required(QStringLiteral("yard"));
    const QString pdf = a.required(QStringLiteral("pdf"));
    const auto session =
        core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock, core::edit::Session::Access::ReadOnly);
    const core::Snapshot s = session->snapshot(on);
    const core::YardIx yard = yardCalled(s, yardName);
    core::rules::PlanRequest request;
    request.yards = {yard};
    const core::rules::Plan plan = core::rules::advise(s, request);
    options.book = session->bookTitle();
    options.bookId = session->bookId();
    const auto history = session->history(1);
    options.revision = history.empty() ? 0 : history.front().seq;
    options.printedOn = clock.today();
    options.stands = session->standsOf(s.yard(yard).id);
    if (const auto saved = core::edit::standingMergeDay(*session, s.yard(yard).id, on)) options.queens = saved->queens;
    const ui::print::WorksheetPages pages(s, plan, yard, options, session->fixedThingsOf(s.yard(yard).id));
    ui::print::writePdf(pages, s.yard(yard).name, options.paper, pdf);
    return 0;
}

int runPictures(const QStringList& words, const core::Clock&, Streams) {
    const Arguments a(words, {{QStringLiteral("on")}, {QStringLiteral("to")}}, {QStringLiteral("BOOK")});
    const core::Day on = a.day(QStringLiteral("on"));
    ui::window::saveScreenshots(a.word(QStringLiteral("BOOK")), on, a.required(QStringLiteral("to")));
    return 0;
}

} // namespace app
