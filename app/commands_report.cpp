#include "app/commands.h"

#include "app/interrupt.h"
#include "core/edit/inspection_rows.h"
#include "ui/print/book_origin.h"
#include "ui/print/inspector_paper.h"

namespace app {

namespace {

std::optional<core::Day> dayAsked(const Arguments& a, const QString& option) {
    return a.has(option) ? std::optional(a.day(option)) : std::nullopt;
}

/// The twelve months up to that day.
core::Day yearBefore(core::Day until) { return core::dayOf(core::toDate(until).addYears(-1)) + 1; }

} // namespace

int runReport(const QStringList& words, const core::Clock& clock, Streams) {
    const QString from = QStringLiteral("from"), until = QStringLiteral("until");
    const Arguments a(
        words,
        {{QStringLiteral("to")}, {from}, {until}, {QStringLiteral("yard"), true, true}, {QStringLiteral("paper")}},
        {QStringLiteral("BOOK")});
    const QString to = a.required(QStringLiteral("to"));
    const QString paper = a.choice(QStringLiteral("paper"), {QStringLiteral("a4"), QStringLiteral("letter")});
    const core::Day last = dayAsked(a, until).value_or(clock.today());
    const core::Day first = dayAsked(a, from).value_or(yearBefore(last));
    if (first > last)
        throw UsageError(QStringLiteral("--from %1 lies after --until %2, that day or an earlier one was expected.")
                             .arg(core::isoText(first), core::isoText(last)));
    const auto session =
        core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock, core::edit::Session::Access::ReadOnly);
    Interrupt interrupt;
    const core::Progress progress = interrupt.progress();
    const auto book = core::edit::inspectionRows(*session, first, last, a.values(QStringLiteral("yard")));
    const auto found = core::rules::inspect(book);
    core::report::PageOrigin origin = ui::print::originOf(*session);
    origin.paper = paper == QLatin1StringView("letter") ? core::report::Paper::Letter : core::report::Paper::A4;
    if (to.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive))
        ui::print::writeInspectorPdf(book, found, origin, to, progress);
    else
        ui::print::writeInspectorFolder(book, found, origin, to, progress);
    return 0;
}

} // namespace app
