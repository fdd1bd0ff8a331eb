#pragma once

#include "app/arguments.h"
#include "core/base/clock.h"

#include <QTextStream>

#include <span>

namespace app {

/// Where a command writes: the answer, and nothing else, on `out`; messages on `err`.
struct Streams {
    QTextStream& out;
    QTextStream& err;
};

/// One verb of the command line. `run` returns the exit status or throws core::Error or UsageError.
struct Command {
    const char* name;
    const char* usage; ///< the words after the name, as --help shows them
    const char* does;  ///< one line
    int (*run)(const QStringList& words, const core::Clock& clock, Streams io);
};

std::span<const Command> commands();

int runNew(const QStringList&, const core::Clock&, Streams);
int runImport(const QStringList&, const core::Clock&, Streams);
int runTemplate(const QStringList&, const core::Clock&, Streams);
int runExport(const QStringList&, const core::Clock&, Streams);
int runAdvise(const QStringList&, const core::Clock&, Streams);
int runExplain(const QStringList&, const core::Clock&, Streams);
int runClose(const QStringList&, const core::Clock&, Streams);
int runDue(const QStringList&, const core::Clock&, Streams);
int runWorksheet(const QStringList&, const core::Clock&, Streams);
int runReport(const QStringList&, const core::Clock&, Streams);
int runRegister(const QStringList&, const core::Clock&, Streams);
int runSet(const QStringList&, const core::Clock&, Streams);
int runSalvage(const QStringList&, const core::Clock&, Streams);
int runSettings(const QStringList&, const core::Clock&, Streams);
int runBackup(const QStringList&, const core::Clock&, Streams);
int runCompare(const QStringList&, const core::Clock&, Streams);
int runCheck(const QStringList&, const core::Clock&, Streams);
int runDemo(const QStringList&, const core::Clock&, Streams);
int runPictures(const QStringList&, const core::Clock&, Streams);

} // namespace app
