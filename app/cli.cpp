#include "app/cli.h"

#include "app/interrupt.h"
#include "core/base/error.h"
#include "core/base/progress.h"

#include <algorithm>
#include <new>

namespace app {

namespace {

constexpr Command kCommands[] = {
    {"new", "BOOK", "make an empty book", runNew},
    {"import",
     "BOOK [--yards F] [--colonies F] [--visits F] [--transfers F] [--results F] [--treatments F] [--lineage F] "
     "[--placements F] [--box-kinds F] [--settings F] [--feedings F] [--queens F] [--keeper F] "
     "[--notifiable F] [--samples F] [--kit-ends F] [--mite-falls F] [--strips-out F] [--mapping NAME] [--dry-run]",
     "read CSV files into a book, all or nothing, as one edit", runImport},
    {"advise", "BOOK --on DATE [--yard YARD]... [--pin A+B]... [--forbid A+B]... [--most N] [--json]",
     "the plan for a day", runAdvise},
    {"explain", "BOOK --on DATE A B", "whether two colonies may unite, and why not", runExplain},
    {"worksheet",
     "BOOK --on DATE --yard YARD --pdf FILE [--language en|es] [--paper a4|letter] [--large] [--variant N] "
     "[--sheet worksheet|walk|checks|shake-outs|storing|laying-workers|tally [--unchecked] | --sheet card --colony "
     "LABEL]",
     "the worksheet as PDF, of the merge day saved for that yard and day, else of advise; the book is only read: that "
     "it was printed is kept by the window alone",
     runWorksheet},
    {"report", "BOOK --to FILE.pdf|DIR [--from DATE] [--until DATE] [--yard YARD]... [--paper a4|letter]",
     "the report for an inspector: as PDF, or into a folder as CSV files; twelve months up to today where nothing else "
     "is said",
     runReport},
    {"close", "BOOK --day FILE", "take a merge day back: what came of each strip, as one edit", runClose},
    {"due", "BOOK --on DATE [--json]", "what is due", runDue},
    {"register", "BOOK --to FILE.pdf|.csv [--from D] [--until D] [--yard Y] [--paper a4|letter]",
     "the medicine register as an inspector takes it, struck lines and corrections with it", runRegister},
    {"template", "DIR", "the ten CSV files, header only", runTemplate},
    {"set", "BOOK NAME VALUE", "change a setting", runSet},
    {"settings", "BOOK [--json]", "list the settings", runSettings},
    {"export", "BOOK --to DIR [--for-spreadsheets]", "write the book as CSV files", runExport},
    {"backup", "BOOK [--to FILE]", "a verified copy", runBackup},
    {"compare", "BOOK COPY", "two files of one book: what both have, and what either has since; nothing is changed",
     runCompare},
    {"check", "BOOK", "the health of a book", runCheck},
    {"salvage", "DAMAGED NEW [--backup FILE]",
     "put what can be read of a damaged book into a new one, a sound backup being asked too, and say what is missing, "
     "on "
     "the screen and in a text beside the new book; the damaged one stays as it is",
     runSalvage},
    {"demo", "BOOK [--colonies N] [--years N] [--seed S]", "make an invented book", runDemo},
    {"pictures", "BOOK --on DATE --to DIR", "pictures of the window, light and dark", runPictures},
};

const Command* commandNamed(const QString& name) {
    const auto found =
        std::ranges::find_if(kCommands, [&](const Command& c) { return name == QLatin1StringView(c.name); });
    return found == std::end(kCommands) ? nullptr : found;
}

void printHelp(QTextStream& out) {
    out << "yardwright [BOOK]\n    open the window, on BOOK if given\n";
    for (const Command& c : kCommands) out << "yardwright " << c.name << ' ' << c.usage << "\n    " << c.does << '\n';
    out << "yardwright --help | --version\n\n"
           "Exit status: 0 done, 1 internal error, 2 wrong usage, 3 check found a problem or salvage a loss, 4 bad "
           "input data,\n"
           "5 the book or an output cannot be used. Dates are ISO 8601 (2026-09-20).\n"
           "Ctrl+C stops import, export, backup, check, demo and report: nothing is changed then (status 130).\n\n"
           "The program advises. Local apiary law, inspectors, veterinarians, product labels and lifting rules "
           "decide.\n";
}

int exitStatus(core::Error::Kind kind) {
    switch (kind) {
    case core::Error::Kind::Internal:
        return 1;
    case core::Error::Kind::BadData:
    case core::Error::Kind::Hold:
    case core::Error::Kind::Correction:
        return 4;
    case core::Error::Kind::Book:
        return 5;
    }
    return 1;
}

int runNamed(const Command& command, const QStringList& words, const core::Clock& clock, Streams io) {
    if (words.contains(QStringLiteral("--help"))) {
        io.out << "yardwright " << command.name << ' ' << command.usage << "\n    " << command.does << '\n';
        return 0;
    }
    try {
        return command.run(words, clock, io);
    } catch (const UsageError& e) {
        io.err << "yardwright: " << e.what() << "\nusage: yardwright " << command.name << ' ' << command.usage << '\n';
        return 2;
    } catch (const core::Stopped&) {
        io.err << "yardwright: stopped; nothing was changed.\n";
        return kInterrupted;
    } catch (const core::Error& e) {
        io.err << "yardwright: " << e.userMessage() << '\n';
        if (e.kind() == core::Error::Kind::Internal && !e.detail().isEmpty()) io.err << e.detail() << '\n';
        return exitStatus(e.kind());
    } catch (const std::bad_alloc&) {
        io.err << "yardwright: there is not enough memory for this.\n";
        return 1;
    }
}

} // namespace

std::span<const Command> commands() { return kCommands; }

Needs needs(const QStringList& words) {
    if (words.isEmpty()) return Needs::Window;
    const QString& first = words.first();
    if (first == QLatin1StringView("worksheet") || first == QLatin1StringView("report") ||
        first == QLatin1StringView("register"))
        return Needs::Pages;
    if (first == QLatin1StringView("pictures")) return Needs::Window;
    if (commandNamed(first) || first.startsWith(u'-')) return Needs::Console;
    return Needs::Window;
}

int runCli(const QStringList& words, const core::Clock& clock, Streams io) {
    const QString first = words.value(0);
    if (first == QLatin1StringView("--help")) {
        printHelp(io.out);
        return 0;
    }
    if (first == QLatin1StringView("--version")) {
        io.out << "yardwright " << YARDWRIGHT_VERSION << '\n';
        return 0;
    }
    const Command* command = commandNamed(first);
    if (!command) {
        io.err << "yardwright: “" << first << "” is no command; yardwright --help lists them.\n";
        return 2;
    }
    return runNamed(*command, words.mid(1), clock, io);
}

} // namespace app
