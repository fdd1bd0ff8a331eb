#include "core/edit/edits.h"
#include "core/exchange/kept_mapping.h"
#include "core/report/plan_json.h"
#include "core/report/plan_text.h"
#include "core/rules/holds_then.h"
#include "core/rules/question.h"
#include "tests/fuzz/book_patch.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <QDir>

// A book from a stranger: looked at, then opened for writing and worked in.

namespace tests::fuzz {

using namespace core;
using edit::Session;

namespace {

const QString kFolder = QStringLiteral("stranger");
const QString kBook = QStringLiteral("stranger/book.yardwright");
const QString kOther = QStringLiteral("stranger/other.txt");
const QByteArray kOtherText = "a file of someone else\n";

/// Runs each reading; an error is one for people, and none where the book's check found it sound.
class Readings {
public:
    explicit Readings(bool sound) : m_sound(sound) {}
    template <class Read> void operator()(const char* what, const Read& read) const {
        try {
            read();
        } catch (const Error& e) {
            needWellSaid(e);
            need(!m_sound, "what is found sound can be read",
                 QLatin1StringView(what) + u' ' + e.userMessage() + e.detail());
        }
    }

private:
    bool m_sound;
};

void readDay(const Session& s, Day day) {
    const Snapshot snapshot = s.snapshot(day);
    rules::holds(snapshot);
    const rules::Plan plan = rules::advise(snapshot, {});
    report::planJson(snapshot, plan);
    report::planText(snapshot, plan);
}

void readHistory(const Session& s) {
    edit::HistoryFilter about;
    about.colony = ColonyId{1};
    s.historyPage(about, {}, 20, 200);
    s.undoText();
    s.redoText();
    for (const edit::HistoryLine& line : s.history(12)) {
        s.historyDetail(line.seq);
        s.attachmentsOf(line.seq);
        s.takeBackBarred(line.seq);
    }
}

void readYards(const Session& s) {
    for (const Yard& yard : s.yards()) {
        s.standsOf(yard.id);
        s.fixedThingsOf(yard.id);
        s.recordedDays(yard.id);
        s.standUses(yard.id);
        s.yardGlance(yard.id, dayOf(2026, 9, 20));
        for (const MergeDay& day : s.mergeDays(yard.id)) {
            s.choicesOf(day.id);
            s.stripsOf(day.id);
            s.divideStripsOf(day.id);
        }
    }
}

void readRecords(const Session& s) {
    s.visits(s.visitsFound({}, {}, 200));
    s.visitTotals({});
    s.notesFound(QStringLiteral("a"), 50);
    s.medicineChanges();
    s.queens();
    s.samples();
    s.treatments();
    s.results();
    s.kitEnds();
    s.keeper();
    s.notifiables();
    s.stripsOut();
}

void readKept(const Session& s) {
    s.settings();
    s.people();
    s.phrases();
    exchange::keptMappings(s);
    for (const Question& q : s.questions()) rules::readAsk(q.ask);
}

void readAll(const Session& s, bool sound) {
    const Readings reads(sound);
    for (const Day day : {dayOf(2026, 5, 5), dayOf(2026, 9, 20)}) reads("day", [&] { readDay(s, day); });
    reads("holds", [&] { s.snapshotForHolds(); });
    reads("history", [&] { readHistory(s); });
    reads("yards", [&] { readYards(s); });
    reads("records", [&] { readRecords(s); });
    reads("kept", [&] { readKept(s); });
    reads("export", [&] { exported(s, QStringLiteral("out")); });
}

/// Some work of a day. What was sound stays so.
void work(Session& s, bool sound) {
    const Readings tries(false);
    tries("visit", [&] {
        Visit visit;
        visit.colony = ColonyId{1};
        visit.day = dayOf(2026, 9, 19);
        visit.supers = 0;
        visit.note = QStringLiteral("seen");
        s.apply([&](const edit::EditContext& c) { return edit::logVisit(c, visit); });
    });
    tries("carry", [&] {
        s.apply([&](const edit::EditContext& c) {
            return edit::carryHive(c, ColonyId{2}, {90'000, 90'000}, dayOf(2026, 9, 19));
        });
    });
    for (int i = 0; i < 3; ++i) tries("undo", [&] { s.undo(); });
    tries("redo", [&] { s.redo(); });
    tries("taken back", [&] {
        for (const edit::HistoryLine& line : s.history(3)) s.takeBack(line.seq);
    });
    tries("check", [&] {
        const QStringList problems = s.check();
        need(!sound || problems.isEmpty(), "work leaves a sound book sound", problems.value(0));
    });
}

/// Whether it was sound; nullopt: it was refused, or its check was.
std::optional<bool> lookAt(const PatchedBook& given) {
    std::optional<bool> sound;
    try {
        const auto session = Session::open(scratch(kBook), clock(), Session::Access::ReadOnly);
        sound = session->check().isEmpty();
        readAll(*session, *sound);
    } catch (const Error& e) {
        needWellSaid(e);
        need(e.userMessage().contains(QStringLiteral("book")), "what is wrong with a book is said of it",
             e.userMessage());
    }
    if (!given.journal && !given.wal)
        need(fileBytes(scratch(kBook)) == given.book, "a book that is looked at stays as it was");
    return sound;
}

void workIn(const PatchedBook& given, std::optional<bool> sound) {
    std::unique_ptr<Session> session;
    try {
        session = Session::open(scratch(kBook), clock());
    } catch (const Error& e) {
        needWellSaid(e);
        if (!given.journal && !given.wal)
            need(fileBytes(scratch(kBook)) == given.book, "a book that is refused stays as it was", e.userMessage());
        return;
    }
    work(*session, sound.value_or(false));
}

void needNothingElse() {
    need(fileBytes(scratch(kOther)) == kOtherText, "no other file is touched");
    for (const QString& name :
         QDir(scratch(kFolder)).entryList(QDir::Files | QDir::Hidden | QDir::Dirs | QDir::NoDotAndDotDot))
        need(name == QLatin1StringView("other.txt") || name.startsWith(QLatin1StringView("book.")),
             "no other file is made", name);
}

} // namespace

void bookOne(const QByteArray& input) {
    emptyFolder(kFolder);
    const auto given = patchedBook(input, scratch(kOther).toUtf8());
    if (!given) return;
    writeFile(scratch(kOther), kOtherText);
    writeFile(scratch(kBook), given->book);
    if (given->journal) writeFile(scratch(kBook) + QStringLiteral("-journal"), *given->journal);
    if (given->wal) writeFile(scratch(kBook) + QStringLiteral("-wal"), *given->wal);
    const auto sound = lookAt(*given);
    workIn(*given, sound);
    needNothingElse();
}

} // namespace tests::fuzz
