#include "core/edit/divide_day.h"
#include "core/edit/edits.h"
#include "core/edit/feedings.h"
#include "core/edit/file_mappings.h"
#include "core/edit/keeper.h"
#include "core/edit/merge_day.h"
#include "core/edit/notifiables.h"
#include "core/edit/people.h"
#include "core/edit/phrases.h"
#include "core/edit/put_right.h"
#include "core/edit/queens.h"
#include "core/edit/question.h"
#include "core/edit/row_change.h"
#include "core/edit/samples.h"
#include "core/edit/survey.h"
#include "core/exchange/export.h"
#include "core/exchange/import.h"
#include "core/model/fixed_shape.h"
#include "core/rules/question.h"
#include "core/store/migration.h"
#include "core/store/snapshot_reader.h"
#include "tests/store/snapshot_text.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTextStream>

using namespace core;

namespace {

struct StillClock : Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC); }
    Day today() const override { return dayOf(2026, 11, 25); }
};

const Clock& clock() {
    static const StillClock still;
    return still;
}

QString golden(int version, const char* extension) {
    return QStringLiteral(YW_SOURCE_DIR "/tests/golden/version-%1.%2").arg(version).arg(QLatin1String(extension));
}

/// What version 6 brought.
void addVisitsTables(const edit::Session& session, QStringList& lines) {
    const auto shown = [](const auto& row) {
        QStringList cells;
        for (const Value& v : toRow(row))
            cells << std::visit(
                [](const auto& cell) {
                    using Cell = std::decay_t<decltype(cell)>;
                    if constexpr (std::is_same_v<Cell, std::monostate>)
                        return QStringLiteral("-");
                    else if constexpr (std::is_same_v<Cell, QString>)
                        return cell;
                    else
                        return QString::number(cell);
                },
                v);
        return cells.join(u' ');
    };
    for (const Feeding& f : session.feedingsBetween(dayOf(2000, 1, 1), dayOf(2100, 1, 1)))
        lines << QStringLiteral("feeding ") + shown(f);
    for (const Queen& q : session.queens()) lines << QStringLiteral("queen ") + shown(q);
    for (const FileMapping& m : session.fileMappings()) lines << QStringLiteral("mapping ") + shown(m);
    for (const Phrase& x : session.phrases()) lines << QStringLiteral("phrase ") + shown(x);
    for (const Question& x : session.questions()) lines << QStringLiteral("question ") + shown(x);
    // Version 7
    for (const Sample& x : session.samples()) lines << QStringLiteral("sample ") + shown(x);
    for (const MiteFall& x : session.miteFalls(dayOf(2000, 1, 1), dayOf(2100, 1, 1)))
        lines << QStringLiteral("fallen ") + shown(x);
    for (const StripsOut& x : session.stripsOut()) lines << QStringLiteral("out ") + shown(x);
    for (const KitEnd& x : session.kitEnds()) lines << QStringLiteral("end ") + shown(x);
    for (const Notifiable& x : session.notifiables()) lines << QStringLiteral("notifiable ") + shown(x);
    if (const auto keeper = session.keeper()) lines << QStringLiteral("keeper ") + shown(*keeper);
}

QString textOf(const edit::Session& session) {
    QStringList lines;
    for (const char* on : {"2026-05-05", "2026-09-20", "2026-11-25"}) {
        lines << QStringLiteral("on ") + QLatin1String(on);
        // All checks, so that the text does not depend on which of them are read.
        Snapshot s = store::readSnapshot(*store::Database::open(session.path(), store::Access::ReadOnly), day(on),
                                         store::Checks::All);
        lines << linesOf(s);
    }
    for (const Person& p : session.people())
        lines << QStringLiteral("person %1 %2").arg(p.name, QLatin1String(p.active ? "active" : "not active"));
    for (const Yard& yard : session.yards())
        for (const FixedThing& f : session.fixedThingsOf(yard.id))
            lines << QStringLiteral("fixed %1 %2 %3: %4 %5")
                         .arg(yard.name, word(f.kind), f.name, pointsText(f.points))
                         .arg(f.radius ? f.radius->value : 0);
    for (const Yard& yard : session.yards())
        for (const MergeDay& d : session.mergeDays(yard.id)) {
            lines << QStringLiteral("merge day %1 %2 revision %3").arg(yard.name, isoText(d.day)).arg(d.revision);
            for (const MergeChoice& x : session.choicesOf(d.id)) lines << word(x.what) + u' ' + x.note;
            for (const MergeStrip& x : session.stripsOf(d.id))
                lines << QStringLiteral("strip %1 %2 %3")
                             .arg(x.position)
                             .arg(x.outcome ? word(*x.outcome) : QString(), x.note);
            if (d.queens) lines << QStringLiteral("queens ") + word(*d.queens);
            for (const DivideChoice& x : session.divideChoicesOf(d.id))
                lines << QStringLiteral("divide in %1 at most: %2").arg(x.parts).arg(x.note);
            for (const DivideStrip& x : session.divideStripsOf(d.id))
                lines << QStringLiteral("divide %1 in %2, %3: %4 %5")
                             .arg(x.position)
                             .arg(x.parts)
                             .arg(word(x.queens), x.outcome ? word(*x.outcome) : QString(), x.note);
        }
    addVisitsTables(session, lines);
    lines << QStringLiteral("history");
    for (const edit::HistoryLine& h : session.history(100))
        lines << QStringLiteral("%1 %2 %3: %4").arg(h.seq).arg(h.at.toString(Qt::ISODate), h.by, h.text);
    return lines.join(u'\n') + u'\n';
}

void survey(edit::Session& session) {
    const YardId yard = session.yards().front().id;
    const FixedThing hedge{{}, yard, FixedKind::Hedge, "north hedge", {{-4000, 9000}, {8000, 9500}}, {}};
    const FixedThing tree{{}, yard, FixedKind::Tree, {}, {{-3000, -6000}}, Millimetres{1800}};
    const FixedThing shed{{}, yard, FixedKind::Shed, {}, {{9000, 0}, {12000, 0}, {12000, 2500}, {9000, 2500}}, {}};
    for (const FixedThing& thing : {hedge, tree, shed})
        session.apply([&](const edit::EditContext& c) { return edit::addFixedThing(c, thing); });
    session.apply([](const edit::EditContext& c) { return edit::takeBackFixedThing(c, {3}); });
    const Stand stand = session.standsOf(yard).front();
    session.apply([&](const edit::EditContext& c) {
        return edit::moveStands(c, yard, {{stand.id, stand.at + MmPoint{-150, 50}}});
    });
    session.apply([&](const edit::EditContext& c) { return edit::putGate(c, yard, {500, -7000}); });
}

void divides(edit::Session& session, const MergeDay& day, ColonyId one, ColonyId other) {
    edit::DividesAsked asked{day.yard, day.day, 1, DivideQueens::Cells, {{}}};
    asked.choices.front().colony = other;
    asked.choices.front().note = "its queen is to be tried";
    session.apply([&](const edit::EditContext& c) { return edit::askDivides(c, asked); });
    std::vector<DivideStrip> strips(2);
    strips[0].colony = one;
    strips[1].colony = other;
    strips[0].queens = strips[1].queens = DivideQueens::Cells;
    session.apply([&](const edit::EditContext& c) { return edit::printDivides(c, day.id, strips); });
    edit::DivideClose close;
    close.yard = day.yard;
    close.day = day.day;
    close.colony = one;
    close.queens = DivideQueens::Own;
    close.outcome = StripOutcome::Changed;
    close.note = "bees given to a neighbour";
    session.apply([&](const edit::EditContext& c) { return edit::closeDivide(c, close); });
}

void mergeDay(edit::Session& session) {
    edit::MergeAsked asked;
    asked.day.yard = session.yards().front().id;
    asked.day.day = dayOf(2026, 5, 5);
    MergeChoice pin, out;
    session.read([&](const edit::EditContext& c) {
        const auto stands = c.standsOf(asked.day.yard);
        const auto at = [&](size_t n) { return c.placementsAt(stands.at(n).id).front().colony; };
        pin.colony = at(0);
        pin.other = at(1);
        out.colony = at(2);
    });
    pin.note = "neighbours";
    out.what = MergeAsk::LeaveOut;
    asked.choices = {pin, out};
    session.apply([&](const edit::EditContext& c) { return edit::saveMergeDay(c, asked); });
    asked.day.id = session.mergeDays(asked.day.yard).front().id;
    asked.day.most = 4;
    session.apply([&](const edit::EditContext& c) { return edit::saveMergeDay(c, asked); });
    divides(session, asked.day, pin.colony, out.colony);
    const edit::StripClose strip{
        asked.day.yard, asked.day.day, LineageHow::United, pin.colony, *pin.other, StripOutcome::NotDone, "rain", {}};
    session.apply([&](const edit::EditContext& c) { return edit::closeStrip(c, strip); });
}

void visits(edit::Session& session) {
    const auto apply = [&](auto edit) { session.apply(edit); };
    const auto colony = [](const edit::EditContext& c) { return c.colonyNamed(u"K1", clock().today()).value().id; };
    apply([&](const edit::EditContext& c) {
        return edit::logFeeding(
            c, {{}, colony(c), dayOf(2026, 9, 1), FeedKind::Syrup, "3:2", Millilitres{4000}, {}, "A. Keeper", {}});
    });
    apply([&](const edit::EditContext& c) {
        Queen queen;
        queen.colony = colony(c);
        queen.since = dayOf(2026, 6, 1);
        queen.born = 2026;
        queen.mark = QueenMark::White;
        queen.tag = "14";
        return edit::newQueen(c, queen);
    });
    apply([](const edit::EditContext& c) { return edit::addPhrase(c, "cb", "Calm on the comb."); });
    apply([](const edit::EditContext& c) {
        return edit::keepFileMapping(c, {{}, "scale", "visits", "day;hive;kg", R"({"kind":"visits"})"});
    });
    apply([](const edit::EditContext& c) {
        return edit::keepQuestion(c, {{},
                                      "Not seen for long",
                                      "colonies",
                                      rules::askJson({{rules::AskWhat::DaysUnvisited, rules::AskHow::Above, 14}}),
                                      true});
    });
}

void health(edit::Session& session) {
    const auto apply = [&](auto edit) { session.apply(edit); };
    const auto colony = [](const edit::EditContext& c) { return c.colonyNamed(u"K1", clock().today()).value().id; };
    apply([](const edit::EditContext& c) {
        return edit::setKeeper(c, {{}, "A. Keeper", "1 Lane", "", "R-1", "Inland"});
    });
    apply([](const edit::EditContext& c) {
        return edit::addNotifiable(c, {{}, "Inland", Reportable::Efb, true, "the office", "its leaflet"});
    });
    for (const char* number : {"S-1", "S-2"})
        apply([&](const edit::EditContext& c) {
            Sample sample;
            sample.colony = colony(c);
            sample.day = dayOf(2026, 8, 20);
            sample.disease = number[2] == '1' ? Disease::Afb : Disease::Efb;
            sample.laboratory = "bee laboratory";
            sample.number = number;
            sample.sent = dayOf(2026, 8, 21);
            return edit::takeSample(c, sample);
        });
    const SampleId first = session.samples().front().id;
    apply([&](const edit::EditContext& c) { return edit::answerSample(c, first, {false, "", "P-7", ""}); });
    Treatment treatment;
    apply([&](const edit::EditContext& c) {
        treatment.colony = colony(c);
        treatment.day = dayOf(2026, 9, 1);
        treatment.product = "strips";
        treatment.substance = "thymol";
        treatment.days = 20;
        treatment.withdrawalDays = 0;
        return edit::logTreatment(c, treatment);
    });
    treatment = session.treatments().back();
    treatment.batch = "B 12";
    treatment.days = 21;
    session.apply([&](const edit::EditContext& c) { return edit::changeTreatment(c, treatment); },
                  edit::Correction{"A. Keeper", "read off the box"});
    apply([&](const edit::EditContext& c) {
        return edit::ChangeSet{
            QStringLiteral("Wrote down mites and strips"),
            {edit::added(MiteFall{{1}, colony(c), dayOf(2026, 7, 20), 5, 20, "A. Keeper", ""}),
             edit::added(StripsOut{{1}, treatment.id, colony(c), dayOf(2026, 9, 22), "A. Keeper", ""}),
             edit::added(KitEnd{
                 {1}, dayOf(2026, 6, 1), {}, "floor", colony(c), 2, KitEndHow::Other, "A. Keeper", "", "scorched"})},
            {},
            {},
            {}};
    });
}

void makeBook(const QString& path) {
    exchange::ImportFiles files;
    for (const char* yard : {"kiln-field", "brook-end", "tansy-lane"})
        for (const exchange::FileKind kind : exchange::kFileKinds) {
            const QString file = QStringLiteral(YW_TEST_DATA "/yards/%1/").arg(QLatin1String(yard)) + fileName(kind);
            if (QFile::exists(file)) files.files.push_back({kind, file});
        }
    ASSERT_TRUE(exchange::importIntoBook(path, clock(), files, false).good());
    const auto session = edit::Session::open(path, clock());
    session->setAuthor("A. Keeper");
    Visit visit;
    session->apply([&](const edit::EditContext& c) {
        visit.colony = c.colonyNamed(u"K1", clock().today()).value().id;
        visit.day = dayOf(2026, 11, 20);
        visit.gross = Decagrams{3525};
        visit.signs.add(Sign::Chalkbrood);
        visit.note = "quiet";
        return edit::logVisit(c, visit);
    });
    session->apply([&](const edit::EditContext& c) {
        return edit::carryHive(c, visit.colony, {30'000, 30'000}, dayOf(2026, 11, 21));
    });
    session->apply([](const edit::EditContext& c) { return edit::setSetting(c, "gain.min", "60"); });
    session->undo();
    session->undo();
    session->redo();
    session->apply([](const edit::EditContext& c) { return edit::addPerson(c, "A. Keeper"); });
    session->apply([](const edit::EditContext& c) { return edit::addPerson(c, "B. Keeper"); });
    session->apply([](const edit::EditContext& c) { return edit::changePerson(c, {{2}, "B. Keeper", false}); });
    survey(*session);
    mergeDay(*session);
    visits(*session);
    health(*session);
}

class Golden : public testing::Test {
protected:
    /// Where asked, makes the book of this version anew (see tests/golden/README.md).
    static void SetUpTestSuite() {
        if (qEnvironmentVariableIsEmpty("YW_UPDATE_GOLDEN")) return;
        const int version = store::bookMigrations().back().version;
        const QString path = golden(version, "yardwright");
        QFile::remove(path);
        makeBook(path);
        QFile text(golden(version, "txt"));
        ASSERT_TRUE(text.open(QIODevice::WriteOnly));
        text.write(textOf(*edit::Session::open(path, clock(), edit::Session::Access::ReadOnly)).toUtf8());
    }
};

TEST_F(Golden, BooksOfEveryVersionAreReadAsTheyWere) {
    for (const store::Migration& step : store::bookMigrations()) {
        SCOPED_TRACE(step.version);
        QTemporaryDir dir;
        const QString path = dir.filePath("book.yardwright");
        ASSERT_TRUE(QFile::copy(golden(step.version, "yardwright"), path));
        QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
        QFile expected(golden(step.version, "txt"));
        ASSERT_TRUE(expected.open(QIODevice::ReadOnly));
        const auto session = edit::Session::open(path, clock()); // migrates an older one
        const bool older = step.version < store::bookMigrations().back().version;
        EXPECT_EQ(QFile::exists(dir.filePath(QStringLiteral("book.version-%1.yardwright").arg(step.version))), older);
        EXPECT_EQ(session->check(), QStringList());
        EXPECT_EQ(textOf(*session).toStdString(), expected.readAll().toStdString());
    }
}

TEST_F(Golden, TheOldEditsCanStillBeTakenBackAndDoneAgain) {
    QTemporaryDir dir;
    const QString path = dir.filePath("book.yardwright");
    ASSERT_TRUE(QFile::copy(golden(1, "yardwright"), path));
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    const auto session = edit::Session::open(path, clock());
    const Snapshot before = session->snapshot(clock().today());
    EXPECT_TRUE(session->redoText().has_value());
    const edit::Correction correction{"A. Keeper", "typed by mistake"};
    int undone = 0;
    while (session->undo(correction)) ++undone;
    EXPECT_EQ(undone, 3); // the carry, the visit, the import
    EXPECT_TRUE(session->snapshot(clock().today()).colonies.empty());
    EXPECT_EQ(session->check(), QStringList());
    while (undone-- > 0) EXPECT_TRUE(session->redo(correction).has_value());
    EXPECT_EQ(linesOf(session->snapshot(clock().today())), linesOf(before));
    EXPECT_EQ(session->check(), QStringList());
}

/// The words of notes that were written before there was a search are found.
TEST_F(Golden, NotesOfABookOfVersionFiveAreFound) {
    QTemporaryDir dir;
    const QString path = dir.filePath("book.yardwright");
    ASSERT_TRUE(QFile::copy(golden(5, "yardwright"), path));
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    const auto session = edit::Session::open(path, clock());
    const NotesFound found = session->notesFound("Quiet", 10);
    ASSERT_EQ(found.notes.size(), 1u);
    EXPECT_EQ(found.notes[0].of, NoteOf::Visit);
    EXPECT_EQ(found.notes[0].day, dayOf(2026, 11, 20));
    session->undo(edit::Correction{"A. Keeper", "typed by mistake"});
    EXPECT_EQ(session->check(), QStringList());
}

/// What was new since then can be used in it.
TEST_F(Golden, AnOldBookIsWorkedOnIsCheckedAndWrittenOut) {
    QTemporaryDir dir;
    const QString path = dir.filePath("book.yardwright");
    ASSERT_TRUE(QFile::copy(golden(1, "yardwright"), path));
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    const auto session = edit::Session::open(path, clock());
    EXPECT_TRUE(session->people().empty());
    session->apply([](const edit::EditContext& c) { return edit::addPerson(c, "Ana"); });
    EXPECT_EQ(session->people().size(), 1u);
    EXPECT_EQ(session->check(), QStringList());
    exchange::exportBook(*session, dir.filePath("csv"));
    QFile people(dir.filePath("csv/people.csv"));
    ASSERT_TRUE(people.open(QIODevice::ReadOnly));
    EXPECT_EQ(people.readAll(), "name,active\nAna,yes\n");
    session->undo();
    EXPECT_TRUE(session->people().empty());
    const YardId yard = session->yards().front().id;
    EXPECT_TRUE(session->fixedThingsOf(yard).empty());
    survey(*session);
    EXPECT_EQ(session->fixedThingsOf(yard).size(), 2u);
    EXPECT_EQ(session->check(), QStringList());
    for (int i = 0; i < 6; ++i) session->undo();
    EXPECT_TRUE(session->fixedThingsOf(yard).empty());
    EXPECT_EQ(session->check(), QStringList());
}

} // namespace
