#include "tests/support/small_files.h"
#include "tests/ui/closing.h"
#include "ui/close/close_page.h"

#include <QDir>
#include <QFile>
#include <QListView>
#include <QPushButton>

namespace {

using core::StripOutcome;
using ui::close::Stage;

/// Write back, on a sheet of two unions and a shake-out that went to paper: A1 → A2, A4 → A5, A6 shaken out into A5.
struct Closing : tests::StepShown<ui::close::ClosePage> {
    void SetUp() override {
        tests::StepShown<ui::close::ClosePage>::SetUp();
        print();
    }
    core::Day day() const { return book.clock().day; }
    core::YardId yard() const { return *desk->yard(); }
    static core::MergeStrip strip(core::ColonyId moved, core::ColonyId host,
                                  core::LineageHow how = core::LineageHow::United) {
        core::MergeStrip s;
        s.how = how;
        s.moved = moved;
        s.host = host;
        if (how == core::LineageHow::United) s.upper = host;
        return s;
    }
    void print() const {
        core::edit::MergeAsked asked;
        asked.day.yard = yard();
        asked.day.day = day();
        write([&](const core::edit::EditContext& c) { return core::edit::saveMergeDay(c, asked); });
        const auto planned = session().mergeDays(yard()).front();
        write([&](const core::edit::EditContext& c) {
            return core::edit::printMergeDay(c, planned.id,
                                             {strip(idOf("A1"), idOf("A2")), strip(idOf("A4"), idOf("A5")),
                                              strip(idOf("A6"), idOf("A5"), core::LineageHow::ShakenOut)});
        });
    }
    const std::vector<ui::close::Line>& lines() const { return page->work().lines().lines; }
    std::string shown() const {
        QStringList out;
        for (const auto& l : lines()) {
            const char* stage = l.stage == Stage::Open      ? ""
                                : l.stage == Stage::Drafted ? "?"
                                : l.stage == Stage::Written ? "!"
                                                            : "=";
            out << l.title() + u' ' + l.outcomeText() + QLatin1StringView(stage);
        }
        return out.join(QStringLiteral(" | ")).toStdString();
    }
    int row() const { return page->list()->currentIndex().row(); }
    QWidget* field(const char* name) const {
        auto* found = page->panel()->findChild<QWidget*>(QStringLiteral("field.") + QLatin1StringView(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    std::vector<core::MergeStrip> strips() const { return session().stripsOf(session().mergeDays(yard()).front().id); }
    bool lives(const char* label) const { return !session().colony(ids.at(label))->ended; }

    std::map<std::string, core::ColonyId> ids; ///< read while all live
    Closing() {
        for (const char* label : {"A1", "A2", "A3", "A4", "A5", "A6"}) ids[label] = book.idOf(QLatin1StringView(label));
    }
    void sign(const char* label) const {
        core::Visit v;
        v.colony = ids.at(label);
        v.day = day();
        v.signs.add(core::Sign::Afb);
        write([&](const core::edit::EditContext& c) { return core::edit::logVisit(c, v); });
    }
};

TEST_F(Closing, ByKeysAloneAndTheWholeDayIsOneUndo) {
    EXPECT_EQ(shown(), "A1 → A2  | A4 → A5  | A6 shaken out into A5 ");
    EXPECT_EQ(row(), 0);
    const size_t before = historyLines();
    key(Qt::Key_D);
    EXPECT_EQ(row(), 1) << "on to the next";
    key(Qt::Key_N);
    type("wind");
    key(Qt::Key_Return);
    EXPECT_EQ(row(), 2);
    EXPECT_TRUE(page->list()->hasFocus());
    key(Qt::Key_C);
    type("into A3 instead");
    key(Qt::Key_Tab);
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    key(Qt::Key_Tab);
    key(Qt::Key_Tab);
    type("A2");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5 not done? | A6 shaken out into A5 changed?");
    EXPECT_EQ(lines()[2].instead.toStdString(), "A6 shaken out into A2");
    EXPECT_EQ(historyLines(), before) << "nothing is in the book yet";
    EXPECT_TRUE(lives("A1"));
    EXPECT_TRUE(page->writeButton()->hasFocus()) << "nothing is open: Enter writes";
    key(Qt::Key_Return);
    EXPECT_EQ(did.toStdString(), "Wrote back the merge day of Kiln Field on 2026-09-15: 1 done, 1 changed, 1 not done");
    EXPECT_EQ(historyLines(), before + 1);
    EXPECT_EQ(shown(), "A1 → A2 done! | A4 → A5 not done! | A6 shaken out into A5 changed!");
    EXPECT_FALSE(lives("A1"));
    EXPECT_TRUE(lives("A4"));
    EXPECT_FALSE(lives("A6"));
    EXPECT_EQ(session().lineageOf(ids["A6"]).front().into, ids["A2"]);
    session().read([&](const core::edit::EditContext& c) { EXPECT_EQ(c.boxesAt(ids["A2"], day()), 2); });
    EXPECT_EQ(problems(), "");
    desk->undo();
    EXPECT_TRUE(lives("A1") && lives("A6"));
    EXPECT_EQ(shown(), "A1 → A2  | A4 → A5  | A6 shaken out into A5 ");
    EXPECT_EQ(problems(), "");
}

TEST_F(Closing, WhatIsNotedIsThereAgainAfterTheProgramWasKilled) {
    key(Qt::Key_D);
    key(Qt::Key_N);
    type("no time");
    key(Qt::Key_Return);
    key(Qt::Key_A);
    type("A3");
    key(Qt::Key_Tab);
    type("A2");
    key(Qt::Key_Return);
    // what the disk holds at this moment, as a program that was killed leaves it
    QTemporaryDir elsewhere;
    const QString copy = elsewhere.filePath(QStringLiteral("test.yardwright"));
    ASSERT_TRUE(QFile::copy(book.path(), copy));
    ASSERT_TRUE(QFile::copy(book.path() + QStringLiteral(".unwritten"), copy + QStringLiteral(".unwritten")));
    const std::string noted = shown();
    EXPECT_EQ(noted, "A1 → A2 done? | A4 → A5 not done? | A6 shaken out into A5  | A3 → A2 done?");
    open(copy);
    EXPECT_EQ(shown(), noted);
    EXPECT_EQ(lines()[1].note.toStdString(), "no time");
    EXPECT_EQ(row(), 2) << "to be gone on with";
    EXPECT_FALSE(lines()[3].problem.isEmpty()) << "A3's brood was not checked";
    page->list()->setCurrentIndex(page->list()->model()->index(3, 0));
    key(Qt::Key_Delete);
    key(Qt::Key_W);
    EXPECT_EQ(shown(), "A1 → A2 done! | A4 → A5 not done! | A6 shaken out into A5 ") << "written partly";
    EXPECT_FALSE(QFile::exists(copy + QStringLiteral(".unwritten")));
    EXPECT_EQ(problems(), "");
    open(copy);
    EXPECT_EQ(row(), 2);
    key(Qt::Key_D);
    key(Qt::Key_W);
    EXPECT_EQ(shown(), "A1 → A2 done! | A4 → A5 not done! | A6 shaken out into A5 done!");
}

TEST_F(Closing, AgainstAHoldIsRefusedByItsSentenceAndCanBeAFact) {
    sign("A5");
    page->list()->setCurrentIndex(page->list()->model()->index(1, 0));
    key(Qt::Key_D);
    EXPECT_EQ(row(), 1) << "not on: something stands against it";
    EXPECT_TRUE(lines()[1].problem.contains(QStringLiteral("4.7.2"))) << lines()[1].problem.toStdString();
    EXPECT_EQ(said, lines()[1].problem);
    const size_t before = historyLines();
    key(Qt::Key_W);
    EXPECT_EQ(historyLines(), before);
    EXPECT_TRUE(lives("A4"));
    EXPECT_EQ(shown(), "A1 → A2  | A4 → A5 done? | A6 shaken out into A5 ") << "what was noted stays";
    key(Qt::Key_F);
    EXPECT_EQ(lines()[1].outcomeText().toStdString(), "done, as a fact");
    EXPECT_EQ(lines()[1].problem.toStdString(), "");
    dialogs.expectCorrection = true;
    key(Qt::Key_W);
    EXPECT_EQ(dialogs.asked.size(), 1) << "no name, no fact";
    EXPECT_TRUE(lives("A4"));
    dialogs.correctionAnswer = core::edit::Correction{QStringLiteral("Ana"), QStringLiteral("done before it was seen")};
    key(Qt::Key_W);
    EXPECT_FALSE(lives("A4"));
    EXPECT_EQ(session().history(1).front().reason.toStdString(), "done before it was seen");
    EXPECT_TRUE(dialogs.asked.back().contains(QStringLiteral("4.7.2"))) << dialogs.asked.back().toStdString();
    const auto& holds = desk->reading().plan.holds;
    EXPECT_TRUE(std::ranges::any_of(holds, [&](const auto& h) {
        return desk->reading().snapshot.colony(h.colony).id == ids["A5"];
    })) << "it stays held";
    EXPECT_EQ(problems(), "");
    const auto asked = dialogs.asked.size();
    desk->undo();
    EXPECT_EQ(dialogs.asked.size(), asked) << "no hold rests on the union: A5 is held by its own sign";
    EXPECT_TRUE(lives("A4"));
    EXPECT_FALSE(desk->reading().holdsOf(*desk->reading().find(ids["A5"])).empty()) << "and stays held";
    EXPECT_EQ(problems(), "");
}

TEST_F(Closing, WhatIsNotedOfOneYardWaitsWhileAnotherIsShown) {
    core::Yard mill;
    mill.name = QStringLiteral("Mill Lane");
    write([&](const core::edit::EditContext& c) { return core::edit::newYard(c, mill); });
    const core::YardId here = yard();
    key(Qt::Key_D);
    for (const core::Yard& y : session().yards())
        if (y.name == mill.name) desk->setYard(y.id);
    EXPECT_EQ(shown(), "");
    EXPECT_NE(labelled("closeBarred").indexOf(QStringLiteral("Nothing was planned")), -1);
    desk->setYard(here);
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5  | A6 shaken out into A5 ");
    EXPECT_EQ(row(), 1);
}

TEST_F(Closing, WhatIsWrittenIsTakenBack) {
    key(Qt::Key_D);
    key(Qt::Key_W);
    ASSERT_EQ(shown(), "A1 → A2 done! | A4 → A5  | A6 shaken out into A5 ");
    page->list()->setCurrentIndex(page->list()->model()->index(0, 0));
    key(Qt::Key_D);
    EXPECT_EQ(said.toStdString(), "That is written already: T takes it back.");
    key(Qt::Key_T);
    EXPECT_EQ(shown(), "A1 → A2  | A4 → A5  | A6 shaken out into A5 ");
    EXPECT_TRUE(lives("A1"));
    EXPECT_EQ(problems(), "");
}

TEST_F(Closing, TwoStripsThatCannotBothBeAreRefusedTogether) {
    key(Qt::Key_D);
    key(Qt::Key_C); // A4 → A5: instead into A2, which has the bees of A1 by then
    type("A5 had no queen");
    key(Qt::Key_Tab);
    key(Qt::Key_Down);
    key(Qt::Key_Tab);
    key(Qt::Key_Tab);
    type("A2");
    key(Qt::Key_Return);
    EXPECT_EQ(lines()[1].problem.toStdString(), "") << "alone it may be";
    const size_t before = historyLines();
    key(Qt::Key_W);
    EXPECT_EQ(historyLines(), before) << "all or none";
    EXPECT_TRUE(lines()[1].problem.contains(QStringLiteral("4.7.4"))) << lines()[1].problem.toStdString();
    EXPECT_EQ(row(), 1);
    EXPECT_TRUE(lives("A1"));
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5 changed? | A6 shaken out into A5 ");
}

TEST_F(Closing, ADayToComeIsOnlyLookedAt) {
    desk->setDay(day() + 3);
    EXPECT_NE(labelled("closeBarred").toStdString(), "");
    desk->setDay(day());
    EXPECT_EQ(shown(), "A1 → A2  | A4 → A5  | A6 shaken out into A5 ");
    EXPECT_EQ(labelled("closeBarred").toStdString(), "");
}

TEST_F(Closing, NotesThatCannotBeReadAreNeverThrownAway) {
    const QString path = book.path() + QStringLiteral(".unwritten");
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("no notes of ours");
    }
    dialogs.expectError = true;
    open(book.path());
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_EQ(dialogs.errors[0].toStdString(),
              "Of what was noted and not written yet something could not be read. What could is there again; the file "
              "of before is kept as " +
                  path.toStdString() + ".unread-1.");
    EXPECT_EQ(QFile(path + QStringLiteral(".unread-1")).size(), 16) << "as it was";
    EXPECT_EQ(shown(), "A1 → A2  | A4 → A5  | A6 shaken out into A5 ");
    key(Qt::Key_D);
    EXPECT_EQ(dialogs.errors.size(), 1) << "from then on notes are kept";
    open(book.path());
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5  | A6 shaken out into A5 ");
    EXPECT_EQ(dialogs.errors.size(), 1);
}

TEST_F(Closing, OfNotesCutAtAnyByteTheWholeLinesStand) {
    key(Qt::Key_D);
    key(Qt::Key_D);
    key(Qt::Key_D);
    const ui::close::DraftFile notes(book.path(), desk->session().bookId());
    QFile file(notes.path());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray whole = file.readAll();
    file.close();
    for (qsizetype cut = 0; cut < whole.size() - 3; ++cut) {
        SCOPED_TRACE(cut);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(whole.first(cut));
        file.close();
        const auto found = notes.of(yard(), day());
        EXPECT_EQ(static_cast<qsizetype>(found.all.size()), whole.first(cut).count('}'));
        EXPECT_NE(found.lost, QString());
        EXPECT_EQ(notes.of(yard(), day()).lost, QString()) << "said once";
        EXPECT_TRUE(QFile::remove(notes.path() + QStringLiteral(".unread-1")));
        if (HasFailure()) return;
    }
}

// Another book is put in the place of the one that was noted for: its notes are not offered, and wait for theirs.
TEST_F(Closing, NotesOfAnotherBookOfThatNameAreNeitherOfferedNorLost) {
    key(Qt::Key_D);
    const ui::close::DraftFile ours(book.path(), desk->session().bookId());
    const ui::close::DraftFile theirs(book.path(), QStringLiteral("01234567-89ab-cdef-0123-456789abcdef"));
    ASSERT_EQ(ours.of(yard(), day()).all.size(), 1U);
    EXPECT_EQ(theirs.of(yard(), day()).all.size(), 0U);
    EXPECT_EQ(theirs.of(yard(), day()).lost, QString());
    theirs.keep(yard(), day(), ours.of(yard(), day()).all);
    theirs.keep(yard(), day(), {});
    EXPECT_EQ(ours.of(yard(), day()).all.size(), 1U);
    open(book.path());
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5  | A6 shaken out into A5 ");
}

TEST_F(Closing, OfNotesThatSayNoBookItIsSaidUntilTheyAreKeptAgain) {
    key(Qt::Key_D);
    const QString path = book.path() + QStringLiteral(".unwritten");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray id = desk->session().bookId().toUtf8();
    const QByteArray older = file.readAll().replace("\"book\":\"" + id + "\",", "");
    file.close();
    ASSERT_FALSE(older.contains(id));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(older);
    file.close();
    dialogs.expectError = true;
    open(book.path());
    EXPECT_EQ(dialogs.errors, QStringList(QStringLiteral(
                                  "What is noted here and not written yet was kept by an older version, which did not "
                                  "say of which book it is: look at each line before you write the day.")));
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5  | A6 shaken out into A5 ");
    page->list()->setCurrentIndex(page->list()->model()->index(1, 0));
    key(Qt::Key_D);
    open(book.path());
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5 done? | A6 shaken out into A5 ");
    EXPECT_EQ(dialogs.errors.size(), 1) << "they are this book's now";
}

// The disk is full, or a folder stands in the file's place: said, and kept with the next key that can be.
TEST_F(Closing, NotesThatCannotBeKeptStayInTheListAndAreKeptLater) {
    const std::string path = book.path().toStdString() + ".unwritten";
    dialogs.expectError = true;
    {
        const tests::SmallFiles full(16);
        key(Qt::Key_D);
    }
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_EQ(dialogs.errors[0].toStdString(), "What was noted cannot be kept in " + path +
                                                   ": the disk is full. Write the day before the program is closed.");
    EXPECT_TRUE(page->work().behind());
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5  | A6 shaken out into A5 ");
    desk->setDay(day() - 1);
    EXPECT_EQ(shown().find('?'), std::string::npos) << "another day";
    desk->setDay(day());
    EXPECT_EQ(shown(), "A1 → A2 done? | A4 → A5  | A6 shaken out into A5 ") << "whatever was looked at meanwhile";
    page->list()->setCurrentIndex(page->list()->model()->index(1, 0));
    key(Qt::Key_D);
    EXPECT_FALSE(page->work().behind());
    EXPECT_EQ(ui::close::DraftFile(book.path(), desk->session().bookId()).of(yard(), day()).all.size(), 2u);
    ASSERT_TRUE(QFile::remove(QString::fromStdString(path)));
    ASSERT_TRUE(QDir().mkpath(QString::fromStdString(path)));
    key(Qt::Key_D);
    ASSERT_EQ(dialogs.errors.size(), 2);
    EXPECT_EQ(dialogs.errors[1].toStdString(), "What was noted and not written yet cannot be read from " + path +
                                                   ": a folder of that name stands there. It stays there, and is "
                                                   "there again once it can be read.");
    key(Qt::Key_W);
    EXPECT_EQ(dialogs.errors.size(), 2) << "what is in the book needs no notes";
    EXPECT_EQ(shown(), "A1 → A2 done! | A4 → A5 done! | A6 shaken out into A5 done!");
    EXPECT_EQ(problems(), "");
}

TEST_F(Closing, ByMouseToo) {
    const auto press = [&](const char* text) {
        for (auto* b : page->findChildren<QPushButton*>())
            if (b->text() == QLatin1StringView(text) && b->isVisible()) return QTest::mouseClick(b, Qt::LeftButton);
        ADD_FAILURE() << "no button " << text;
    };
    press("Done");
    EXPECT_TRUE(page->list()->hasFocus()) << "the keys stay with the list";
    const QRect third = page->list()->visualRect(page->list()->model()->index(2, 0));
    QTest::mouseClick(page->list()->viewport(), Qt::LeftButton, {}, third.center());
    press("Done");
    press("Write the day");
    EXPECT_EQ(shown(), "A1 → A2 done! | A4 → A5  | A6 shaken out into A5 done!");
    EXPECT_EQ(problems(), "");
}

/// Nothing went to paper: the strips of the plan as it stands, kept in the book with the first that is written.
struct Unprinted : tests::StepShown<ui::close::ClosePage> {};

TEST_F(Unprinted, ThePlansStripsAreWrittenBackAndTheRestStays) {
    const auto& lines = page->work().lines();
    const auto& plan = desk->reading().plan;
    ASSERT_GE(plan.unions.size(), 1u);
    ASSERT_EQ(lines.lines.size(), plan.unions.size() + plan.shakeOuts.size());
    ASSERT_EQ(lines.lines[0].movedName, desk->reading().snapshot.colony(plan.unions[0].moved).label);
    const size_t count = lines.lines.size();
    ASSERT_GE(count, 2u) << "the book of the test has two unions to plan";
    const QString second = lines.lines[1].title();
    key(Qt::Key_D);
    key(Qt::Key_W);
    ASSERT_EQ(page->work().lines().lines.size(), count) << "the strip that is left is not planned anew";
    EXPECT_EQ(page->work().lines().lines[0].stage, Stage::Written);
    EXPECT_EQ(page->work().lines().lines[1].stage, Stage::Open);
    EXPECT_EQ(page->work().lines().lines[1].title(), second);
    EXPECT_EQ(problems(), "");
    desk->undo();
    EXPECT_TRUE(session().mergeDays(*desk->yard()).empty()) << "one undo for all of it";
}

} // namespace
