#include "core/store/note_words.h"

#include "core/base/error.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <QRandomGenerator>

#include <sqlite3.h>

using namespace core;
using namespace core::store;

namespace {

TEST(NoteQuery, AsksForAllWordsAndLetsTheLastGoOn) {
    EXPECT_EQ(noteQuery("queen"), "\"queen\" *");
    EXPECT_EQ(noteQuery("queen ce"), "\"queen\" AND \"ce\" *");
    EXPECT_EQ(noteQuery(" queen  cells "), "\"queen\" AND \"cells\"") << "a blank ends the word";
    EXPECT_EQ(noteQuery("\"queen cells\" two"), "\"queen cells\" AND \"two\" *");
    EXPECT_EQ(noteQuery("3.5"), "\"3.5\" *");
    EXPECT_EQ(noteQuery("a\"b"), "\"a\" AND \"b\" *");
}

TEST(NoteQuery, IsEmptyWithoutAWord) {
    for (const char* typed : {"", "  ", "\"", "\"\"", "-- *", "()", "\"? !\"", "^", ":"})
        EXPECT_EQ(noteQuery(QString::fromUtf8(typed)), "") << typed;
}

TEST(NotesFound, NothingTypedIsAFault) {
    TestBook book;
    const Colony a = book.colony(book.yard("North"), "A", day("2026-05-01"));
    Visit v;
    v.colony = a.id;
    v.day = day("2026-06-01");
    v.note = "two queen cells, \"calm\"";
    v = book.visit(v);
    wordsOfNewRange(book.db(), Table::Visit, v.id.value, 1);
    // Signs of the search's own language, quotes, NUL, half a surrogate: own list.
    const QString alphabet = QString::fromUtf8("ab \"*^()-+:{}NEARORANDNOT'\\%_,.") + QChar(0) + QChar(0xd800) +
                             QChar(0xdc00) + QChar(0x301) + QChar(0xfffd) + QChar(0x1f41d & 0xffff);
    QRandomGenerator some(7);
    for (int i = 0; i < 3000; ++i) {
        QString typed;
        for (int n = some.bounded(12); n >= 0; --n) typed += alphabet[some.bounded(static_cast<int>(alphabet.size()))];
        EXPECT_NO_THROW(notesFound(book.db(), typed, 5)) << typed.toStdString();
    }
    for (const char* typed :
         {"NEAR(two queen)", "two AND", "OR", "NOT two", "words:two", "two*", "^two", "{two}", "\"two"})
        EXPECT_NO_THROW(notesFound(book.db(), QString::fromUtf8(typed), 5)) << typed;
    EXPECT_EQ(notesFound(book.db(), "\"two", 5).count, 1);
    EXPECT_EQ(notesFound(book.db(), "and", 5).count, 0) << "a word like any other";
}

TEST(NotesFound, NewestFirstWithTheWordsMarked) {
    TestBook book;
    const Yard north = book.yard("North");
    const Colony a = book.colony(north, "A", day("2026-05-01"));
    const std::pair<const char*, const char*> notes[] = {{"2026-06-01", "Queen cells at the edge"},
                                                         {"2026-08-01", "no queen seen, two CELLS"},
                                                         {"2026-07-01", "swarmed"},
                                                         {"2026-07-02", "Zelle, Königin"}};
    for (const auto& [iso, note] : notes) {
        Visit v;
        v.colony = a.id;
        v.day = day(iso);
        v.note = QString::fromUtf8(note);
        v = book.visit(v);
        wordsOfNewRange(book.db(), Table::Visit, v.id.value, 1);
    }
    const NotesFound found = notesFound(book.db(), "queen cell", 10);
    ASSERT_EQ(found.notes.size(), 2u);
    EXPECT_EQ(found.count, 2);
    EXPECT_FALSE(found.more);
    EXPECT_EQ(found.notes[0].day, day("2026-08-01"));
    EXPECT_EQ(found.notes[0].colony, a.id);
    EXPECT_EQ(found.notes[0].text, "no queen seen, two CELLS");
    EXPECT_EQ(found.notes[0].marks, (std::vector<TextMark>{{3, 5}, {19, 5}}));
    EXPECT_EQ(found.notes[1].text, "Queen cells at the edge");
    EXPECT_EQ(notesFound(book.db(), "konigin", 10).count, 1) << "without regard to accents";
    EXPECT_EQ(notesFound(book.db(), "queen cell", 1).notes.size(), 1u);
    EXPECT_EQ(notesFound(book.db(), "queen cell", 1).count, 2);
    EXPECT_EQ(notesFound(book.db(), "ell", 10).count, 0) << "words begin so";
}

TEST(NotesFound, SaysOfWhatANoteIs) {
    TestBook book;
    const Yard north = book.yard("North");
    const Colony a = book.colony(north, "A", day("2026-05-01"));
    const Colony b = book.colony(north, "B", day("2026-05-02"));
    Transfer t;
    t.day = day("2026-06-01");
    t.from = a.id;
    t.to = b.id;
    t.note = "lime tree";
    t = book.add(t);
    Result r;
    r.yard = north.id;
    r.day = day("2026-06-02");
    r.verdict = Verdict::Order;
    r.method = Method::Inspector;
    r.paper = "12";
    r.by = "inspector";
    r.note = "lime";
    r = book.add(r);
    Yard south{{}, "South", {}, {}, {}, {}, "lime trees", false};
    south = book.add(south);
    for (const auto& [table, id] : {std::pair(Table::Transfer, t.id.value), std::pair(Table::Result, r.id.value),
                                    std::pair(Table::Yard, south.id.value)})
        wordsOfNewRange(book.db(), table, id, 1);
    const auto notes = notesFound(book.db(), "lime", 10).notes;
    ASSERT_EQ(notes.size(), 3u);
    EXPECT_EQ(notes[0].of, NoteOf::Result);
    EXPECT_EQ(notes[0].yard, north.id);
    EXPECT_FALSE(notes[0].colony);
    EXPECT_EQ(notes[1].of, NoteOf::Transfer);
    EXPECT_EQ(notes[1].colony, a.id);
    EXPECT_EQ(notes[2].of, NoteOf::Yard);
    EXPECT_EQ(notes[2].yard, south.id);
    EXPECT_FALSE(notes[2].day);
}

TEST(NoteWords, TheConnectionStaysHardened) {
    TestBook book;
    const auto stands = [&book](int option) {
        int on = -1;
        sqlite3_db_config(book.db().handle(), option, -1, &on);
        return on;
    };
    wrongWords(book.db());
    EXPECT_EQ(stands(SQLITE_DBCONFIG_DEFENSIVE), 1);
    EXPECT_EQ(stands(SQLITE_DBCONFIG_TRUSTED_SCHEMA), 0);
    EXPECT_EQ(stands(SQLITE_DBCONFIG_ENABLE_TRIGGER), 0);
    EXPECT_EQ(stands(SQLITE_DBCONFIG_ENABLE_VIEW), 0);
    EXPECT_THROW(book.db().exec("DELETE FROM note_words_data"), Error) << "its own tables are not written past it";
    book.reopen(Access::ReadOnly);
    wrongWords(book.db());
    EXPECT_EQ(book.db().number("PRAGMA query_only"), 1);
    EXPECT_THROW(book.db().exec("INSERT INTO note_words (rowid, words) VALUES (1, 'a')"), Error);
}

} // namespace
