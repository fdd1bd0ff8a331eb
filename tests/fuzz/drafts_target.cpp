#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"
#include "ui/close/draft_file.h"
#include "ui/visit/draft_journal.h"

#include <QDir>
#include <algorithm>

// What stands beside a book of what was typed and is not written yet, of any content: read or refused, never lost.

namespace tests::fuzz {

using namespace core;

namespace {

/// A folder of its own, so that what is put aside is seen.
QString bookIn(const QByteArray& input, const QString& name, QString (*path)(const QString&)) {
    const QString book = emptyFolder(QStringLiteral("drafts")) + u'/' + name;
    writeFile(path(book), input);
    return book;
}

ui::visit::DraftJournal journalOf(const QString& book) {
    return {book, QStringLiteral("0123abcd-0000-0000-0000-000000000000")};
}

bool sameVisits(const std::vector<ui::visit::HalfTyped>& a, const std::vector<ui::visit::HalfTyped>& b) {
    return std::ranges::equal(
        a, b, [](const auto& x, const auto& y) { return x.about(y.colony, y.was) && x.draft == y.draft; });
}

void halfTyped(const QByteArray& bytes) {
    const QString book = bookIn(bytes, QStringLiteral("typed"), [](const QString& of) { return journalOf(of).path(); });
    ui::visit::DraftJournal journal = journalOf(book);
    const auto found = journal.read();
    need(fileBytes(journal.path()) == bytes, "reading leaves the file as it was");
    if (found.unread > 0) need(fileBytes(journal.putAside()) == bytes, "what cannot be read is put aside as it was");
    journal.keepOnly(found.all);
    const auto again = [&] {
        const auto now = journal.read();
        need(now.unread == 0, "what was kept can be read");
        return now.all;
    };
    need(sameVisits(again(), found.all), "what was half typed is read as it was kept");
    for (const ui::visit::HalfTyped& h : found.all) journal.addAnyhow(h);
    need(sameVisits(again(), found.all), "what was half typed is read as it was typed");
    for (const ui::visit::HalfTyped& h : found.all) journal.addGone(h.colony, h.was);
    need(again().empty(), "what is gone is gone");
}

bool someFileHas(const QByteArray& bytes) {
    const QDir folder(scratch(QStringLiteral("drafts")));
    return std::ranges::any_of(folder.entryList(QDir::Files),
                               [&](const QString& name) { return fileBytes(folder.filePath(name)) == bytes; });
}

bool sameNote(const ui::close::Drafted& a, const ui::close::Drafted& b) {
    return a.strip.note == b.strip.note && a.strip.by == b.strip.by && a.asFact == b.asFact &&
           a.strip.outcome == b.strip.outcome && a.about(b.strip.how, b.strip.moved, b.strip.host);
}

void unwritten(const QByteArray& bytes) {
    const QString book =
        bookIn(bytes, QStringLiteral("noted"), [](const QString& of) { return ui::close::DraftFile(of, {}).path(); });
    const ui::close::DraftFile file(book, QStringLiteral("a book"));
    const YardId yard{1};
    const Day day = dayOf(2026, 9, 20);
    const auto found = file.of(yard, day);
    need(someFileHas(bytes), "what cannot be read is put aside as it was, else the file stays");
    need(found.lost.isEmpty() || oneLine(found.lost) == found.lost, "what is lost is said in one line");
    file.keep(yard, day, found.all);
    const auto again = file.of(yard, day);
    need(again.lost.isEmpty() && std::ranges::equal(again.all, found.all, sameNote),
         "what was noted is read as it was kept");
}

template <class Work> void orRefused(const Work& work) {
    try {
        work();
    } catch (const Error& e) {
        needWellSaid(e);
    }
}

} // namespace

void draftsOne(const QByteArray& input) {
    orRefused([&] { halfTyped(input); });
    orRefused([&] { unwritten(input); });
}

} // namespace tests::fuzz
