#include "core/exchange/csv_reader.h"
#include "core/exchange/foreign_look.h"
#include "core/exchange/kept_mapping.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <QBuffer>

#include <algorithm>

// A mapping as a book keeps it, on the first line, and a file of another program after it.

namespace tests::fuzz {

using namespace core;
using namespace core::exchange;

namespace {

void needSameAgain(const Mapping& mapping) {
    const auto again = mappingFromJson(toJson(mapping));
    need(again && *again == mapping, "a mapping is read as it was written", QString::fromUtf8(toJson(mapping)));
}

/// The file as one of ours is a CSV file with a cell for each column, each row on its own line.
void needReadable(const QByteArray& ours, const Mapping& mapping) {
    QBuffer buffer;
    buffer.setData(ours);
    buffer.open(QIODevice::ReadOnly);
    CsvReader reader(buffer, ',');
    CsvRecord record;
    for (auto found = reader.next(record); found != CsvReader::Found::End; found = reader.next(record)) {
        if (found == CsvReader::Found::Trouble)
            need(reader.trouble().stops, "what is translated is CSV", reader.trouble().what); // a row over 1 MiB
        else if (!record.blank())
            need(record.size() == mapping.columns.size(), "what is translated has a cell for each column");
    }
}

void look(const QByteArray& text, const Mapping& mapping) {
    const QStringList header = headerOf(text, mapping.forms.separator);
    for (const MappingTrouble& t : mappingTroubles(mapping, header)) need(!t.what.isEmpty(), "trouble says what");
    Faults faults;
    needReadable(translated(text, mapping, QStringLiteral("theirs.csv"), faults), mapping);
    needWellSaid(faults);
    const auto seen = firstRowsSeen(text, mapping, 20);
    need(seen.size() <= 20, "no more rows are shown than asked for");
    need(samplesOf(text, mapping.forms.separator).size() <= header.size(), "a sample for each column");
    for (const ColumnMapping& c : mapping.columns) {
        wordsOfColumn(mapping.kind, c.to);
        need(wordsInFile(text, mapping.forms.separator, c.from, 12).size() <= 12, "no more words than asked for");
    }
}

/// As the window does with a file of which nothing is known.
void lookUnknown(const QByteArray& text) {
    const FoundForms found = formsOf(text);
    const Mapping proposed = proposedMapping(guessedKind(text, found.forms), text, found.forms);
    needSameAgain(proposed);
    look(text, proposed);
}

/// Kept in a book under a name, and used from there.
void keepAndUse(const Mapping& mapping, const QByteArray& bytes, const QString& name) {
    const auto session = copyOpened(yardsBook(), QStringLiteral("mapping.yardwright"));
    const QStringList header = headerOf(bytes, mapping.forms.separator);
    session->apply([&](const edit::EditContext& c) { return keepMapping(c, name, mapping, header); });
    const KeptMapping kept = mappingNamed(*session, name);
    need(kept.mapping == mapping, "a mapping is kept as it was");
    mappingsFor(keptMappings(*session), header);
    const QString path = scratch(QStringLiteral("theirs.csv"));
    writeFile(path, bytes);
    ImportFiles files{{{mapping.kind, path}}, name};
    const ImportReport trial = importFiles(*session, files, true);
    needWellSaid(trial.faults);
    const ImportReport report = importFiles(*session, files, false);
    need(report.good() == trial.good(), "a trial says what is refused");
    const QStringList problems = session->check();
    need(problems.isEmpty(), "an import leaves a sound book", problems.value(0));
}

} // namespace

void mappingOne(const QByteArray& input) {
    const qsizetype end = std::max<qsizetype>(0, input.indexOf('\n'));
    const QByteArray bytes = input.mid(std::min(end + 1, input.size()));
    const auto decoded = decode(bytes);
    if (decoded) lookUnknown(decoded->text);
    const auto mapping = mappingFromJson(input.left(end));
    if (!mapping) return;
    needSameAgain(*mapping);
    if (const auto asked = decode(bytes, mapping->encoding)) look(asked->text, *mapping);
    try {
        keepAndUse(*mapping, bytes, QStringLiteral("Theirs"));
    } catch (const Error& e) {
        needWellSaid(e);
    }
}

} // namespace tests::fuzz
