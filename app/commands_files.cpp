#include "app/commands.h"

#include "app/interrupt.h"
#include "core/exchange/close_days.h"
#include "core/exchange/export.h"
#include "core/exchange/for_spreadsheets.h"
#include "core/exchange/import.h"
#include "core/exchange/template.h"

#include <QStringList>

namespace app {

namespace {

core::exchange::ImportFiles filesIn(const Arguments& a) {
    core::exchange::ImportFiles files;
    for (const auto kind : core::exchange::kReadKinds)
        if (const auto path = a.value(core::exchange::optionName(kind))) files.files.push_back({kind, *path});
    files.mapping = a.value(QStringLiteral("mapping")).value_or(QString());
    return files;
}

} // namespace

int runImport(const QStringList& words, const core::Clock& clock, Streams io) {
    std::vector<Option> options = {{QStringLiteral("mapping")}, {QStringLiteral("dry-run"), false}};
    for (const auto kind : core::exchange::kReadKinds) options.push_back({core::exchange::optionName(kind)});
    const Arguments a(words, options, {QStringLiteral("BOOK")});
    const bool dryRun = a.has(QStringLiteral("dry-run"));
    core::exchange::ImportFiles files = filesIn(a);
    core::exchange::ImportReport report;
    {
        Interrupt interrupt;
        files.progress = interrupt.progress();
        report = core::exchange::importIntoBook(a.word(QStringLiteral("BOOK")), clock, files, dryRun);
    }
    if (report.stopped) throw core::Stopped();
    for (const QString& line : report.faults.lines()) io.err << "yardwright: " << line << '\n';
    if (!report.good()) return 4;
    for (const QString& line : report.summary()) io.out << line << '\n';
    if (dryRun) io.out << "dry run: nothing was written\n";
    return 0;
}

int runClose(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("day")}}, {QStringLiteral("BOOK")});
    const QString file = a.required(QStringLiteral("day"));
    const auto session = core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock);
    const auto report = core::exchange::closeDays(*session, file);
    for (const QString& line : report.faults.lines()) io.err << "yardwright: " << line << '\n';
    if (!report.good()) return 4;
    io.out << "done " << report.done << ", not done " << report.notDone << ", changed " << report.changed << '\n';
    return 0;
}

int runTemplate(const QStringList& words, const core::Clock&, Streams) {
    const Arguments a(words, {}, {QStringLiteral("DIR")});
    core::exchange::writeTemplates(a.word(QStringLiteral("DIR")));
    return 0;
}

int runExport(const QStringList& words, const core::Clock& clock, Streams) {
    const Arguments a(words, {{QStringLiteral("to")}, {QStringLiteral("for-spreadsheets"), false}},
                      {QStringLiteral("BOOK")});
    const QString dir = a.required(QStringLiteral("to"));
    const auto session =
        core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock, core::edit::Session::Access::ReadOnly);
    Interrupt interrupt;
    if (a.has(QStringLiteral("for-spreadsheets")))
        core::exchange::exportForSpreadsheets(*session, dir, interrupt.progress());
    else
        core::exchange::exportBook(*session, dir, interrupt.progress());
    return 0;
}

} // namespace app
