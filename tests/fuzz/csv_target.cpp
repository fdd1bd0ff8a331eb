#include "core/exchange/close_days.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/for_spreadsheets.h"
#include "core/exchange/number.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <QBuffer>

// CSV files of any content: read as they are, then imported into a book.

namespace tests::fuzz {

using namespace core;
using namespace core::exchange;

namespace {

using Rows = std::vector<QStringList>;

Rows rowsOf(const QByteArray& text) {
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    CsvReader reader(buffer);
    CsvRecord record;
    Rows rows;
    qint64 line = 0;
    for (CsvReader::Found found = reader.next(record); found != CsvReader::Found::End; found = reader.next(record)) {
        if (found == CsvReader::Found::Trouble) {
            need(!reader.trouble().what.isEmpty() && reader.trouble().line > 0, "trouble says where and what");
            continue;
        }
        need(record.line() > line, "rows come in order");
        line = record.line();
        if (record.blank()) continue;
        QStringList cells;
        for (size_t i = 0; i < record.size(); ++i)
            cells << QString::fromUtf8(record.cell(i).data(), static_cast<qsizetype>(record.cell(i).size()));
        rows.push_back(cells);
    }
    return rows;
}

/// A sheet takes what begins so for a formula.
bool looksLikeFormula(const QString& cell) {
    if (cell.isEmpty() || !QStringLiteral("=+-@\t\r\n").contains(cell.front())) return false;
    return !parseReal(cell.toStdString(), true);
}

/// What was read is written as it was read, and read again.
void needSameAgain(const QByteArray& text) {
    const Rows rows = rowsOf(text);
    // The first row decides about the separator: one that has semicolons and no comma is quoted otherwise.
    Rows all{{QStringLiteral("a,b")}};
    all.insert(all.end(), rows.begin(), rows.end());
    CsvWriter writer(scratch({}), QStringLiteral("again.csv"));
    for (const QStringList& row : all) writer.row(row);
    writer.commit();
    const Rows again = rowsOf(fileBytes(scratch(QStringLiteral("again.csv"))));
    std::erase_if(all, [](const QStringList& row) { return row == QStringList{QString()}; });
    need(again == all, "what is written is read again");
    for (const QStringList& row : rows)
        for (const QString& cell : row)
            need(!looksLikeFormula(cellForSpreadsheets(cell)), "a cell for spreadsheets is no formula", cell);
}

/// Kept open from input to input: what is refused must leave no trace in it.
class RefusingBook {
public:
    RefusingBook() : m_session(copyOpened(yardsBook(), name())), m_bytes(yards()) {}

    edit::Session& session() { return *m_session; }
    void needUntouched() const {
        need(fileBytes(scratch(name())) == m_bytes, "what is refused changes nothing");
        need(!m_session->redoText() && m_session->history(1).front().seq == m_seq, "what is refused leaves no line");
    }

private:
    static QString name() { return QStringLiteral("refusing.yardwright"); }
    QByteArray yards() {
        m_seq = m_session->history(1).front().seq;
        return fileBytes(scratch(name()));
    }

    std::unique_ptr<edit::Session> m_session;
    qint64 m_seq = 0;
    QByteArray m_bytes;
};

void sameCounts(const ImportReport& a, const ImportReport& b) {
    for (const FileKind kind : kReadKinds)
        need(a.of(kind).added == b.of(kind).added && a.of(kind).changed == b.of(kind).changed &&
                 a.of(kind).passedOver == b.of(kind).passedOver,
             "a trial says what will be done");
}

void needSound(const edit::Session& session) {
    const QStringList problems = session.check();
    need(problems.isEmpty(), "an import leaves a sound book", problems.value(0));
}

/// But the history, in which nothing is undone.
Texts withoutHistory(Texts texts) {
    for (const char* name : {"history.csv", "changes.csv"}) texts.erase(QLatin1String(name));
    return texts;
}

/// What the book says it says again after a way through files; and is as it was once the import is undone.
void needWholeRoundTrip(edit::Session& session, const Texts& before) {
    const Texts out = exported(session, QStringLiteral("out"));
    const ImportFiles files = writeTexts(out, emptyFolder(QStringLiteral("in")));
    const ImportReport again = importFiles(session, files, true);
    need(again.good(), "an export is taken again", again.faults.lines().value(0));
    for (const FileKind kind : kReadKinds)
        need(again.of(kind).added == 0 && again.of(kind).changed == 0, "an export says nothing new", kindWords(kind));
    session.undo();
    need(withoutHistory(exported(session, QStringLiteral("out"))) == withoutHistory(before),
         "an undone import is gone");
    needSound(session);
}

void needTaken(const ImportFiles& files, const ImportReport& trial) {
    static const Texts before =
        exported(*copyOpened(yardsBook(), QStringLiteral("base.yardwright")), QStringLiteral("out"));
    const auto session = copyOpened(yardsBook(), QStringLiteral("taking.yardwright"));
    const ImportReport report = importFiles(*session, files, false);
    need(report.good(), "what a trial takes is taken", report.faults.lines().value(0));
    sameCounts(trial, report);
    needSound(*session);
    if (report.line) needWholeRoundTrip(*session, before);
}

void importOne(const Texts& texts) {
    static RefusingBook book;
    const ImportFiles files = writeTexts(texts, emptyFolder(QStringLiteral("in")));
    if (files.files.empty()) return;
    const ImportReport trial = importFiles(book.session(), files, true);
    needWellSaid(trial.faults);
    book.needUntouched();
    if (trial.good()) return needTaken(files, trial);
    const ImportReport refused = importFiles(book.session(), files, false);
    need(!refused.good() && refused.faults.lines() == trial.faults.lines(), "a trial says what is refused");
    book.needUntouched();
}

void closeOne(const QByteArray& text) {
    const QString path = scratch(QStringLiteral("closings.csv"));
    writeFile(path, text);
    const auto session = copyOpened(yardsBook(), QStringLiteral("closing.yardwright"));
    const CloseReport report = closeDays(*session, path);
    needWellSaid(report.faults);
    need(report.good() || !report.line, "what is refused leaves no line");
    if (report.line) needSound(*session);
}

} // namespace

void csvOne(const QByteArray& input) {
    const Texts texts = textsIn(input);
    try {
        for (const auto& [name, text] : texts) needSameAgain(text);
        importOne(texts);
        if (const auto closings = texts.find(QStringLiteral("closings.csv")); closings != texts.end())
            closeOne(closings->second);
    } catch (const Error& e) {
        needWellSaid(e);
    }
}

} // namespace tests::fuzz
