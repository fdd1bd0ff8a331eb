#include "core/edit/put_right.h"
#include "core/store/row_store.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

// What stands in the medicine book is corrected, never erased, for five years. Sources: Regulation (EU) 2019/6 article
// 108 and the Veterinary Medicines Regulations 2013: at least five years after the treatment or the disposal.
class MedicineGuard : public EditTest {
protected:
    const Correction why{QStringLiteral("Ana"), QStringLiteral("wrong product noted")};
    YardId north = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0}, dayOf(2020, 5, 1));
    Treatment t = treatment(dayOf(2026, 9, 10));

    static Treatment treatment(Day day) {
        Treatment made;
        made.id = TreatmentId{1};
        made.colony = ColonyId{1};
        made.day = day;
        made.product = QStringLiteral("Hazel strips");
        made.substance = QStringLiteral("thymol");
        made.quantity = 2;
        made.days = 42;
        return made;
    }
    void log() {
        apply([&](const EditContext& c) { return logTreatment(c, t); });
    }
    std::optional<HistoryLine> change(const Treatment& now, const std::optional<Correction>& by = {}) {
        return session->apply([&](const EditContext& c) { return changeTreatment(c, now); }, by);
    }
    /// Asks for a correction and writes nothing.
    std::string asked(const std::function<void()>& work) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy(work);
        EXPECT_EQ(thrown.kind, Error::Kind::Correction) << thrown.message;
        EXPECT_EQ(rowsText(path()), before);
        EXPECT_EQ(problems(), "");
        return thrown.message;
    }
    std::vector<MedicineChange> changes() const { return session->medicineChanges(); }
};

TEST_F(MedicineGuard, AFilledFieldIsCorrectedWithReasonAndNameAndItsOldValueStays) {
    log();
    Treatment now = t;
    now.quantity = 3;
    EXPECT_EQ(asked([&] { change(now); }),
              "The medicine book must keep what it says of the treatment of 5 with Hazel strips on 2026-09-10, until "
              "2031-10-22: the old words stay to be read. That is a correction of the record: give a reason and a "
              "name.");
    ASSERT_TRUE(change(now, why));
    ASSERT_EQ(changes().size(), 1u);
    const MedicineChange told = changes().front();
    EXPECT_EQ(told.treatment, t.id);
    EXPECT_EQ(told.by, why.by);
    EXPECT_EQ(told.reason, why.reason);
    EXPECT_EQ(told.at, clock.nowUtc());
    EXPECT_EQ(told.before, t);
    EXPECT_EQ(told.after, now);
    EXPECT_EQ(problems(), "");
}

TEST_F(MedicineGuard, ABlankIsFilledInWithoutACorrectionAndEmptiedOnlyWithOne) {
    log();
    Treatment now = t;
    now.disposed = dayOf(2026, 11, 1);
    now.disposedHow = QStringLiteral("handed in");
    now.supplier = QStringLiteral("Alder farm store");
    now.withdrawalDays = 0; // typed: no longer blank
    EXPECT_TRUE(change(now));
    EXPECT_EQ(changes().size(), 1u) << "it is told all the same: who filled it in, and when";
    Treatment other = now;
    other.withdrawalDays.reset();
    asked([&] { change(other); });
    asked([&] { session->undo(); });
    EXPECT_TRUE(session->undo(why));
    EXPECT_EQ(session->treatments(), std::vector{t});
    EXPECT_TRUE(session->redo()) << "fills the blanks in again";
}

TEST_F(MedicineGuard, ATreatmentTakenBackStaysToBeRead) {
    log();
    const auto back = [&](const std::optional<Correction>& by) {
        session->apply([&](const EditContext& c) { return takeBackTreatment(c, t.id); }, by);
    };
    EXPECT_EQ(asked([&] { back({}); }),
              "The medicine book must keep the treatment of 5 with Hazel strips on 2026-09-10, until 2031-10-22: it "
              "stays to be read, struck through. That is a correction of the record: give a reason and a name.");
    back(why);
    EXPECT_TRUE(session->treatments().empty());
    ASSERT_EQ(changes().size(), 1u);
    EXPECT_EQ(changes().front().before, t);
    EXPECT_FALSE(changes().front().after);
    session->undo(); // puts it back: nothing is erased
    ASSERT_EQ(changes().size(), 2u);
    EXPECT_FALSE(changes().back().before);
    EXPECT_EQ(changes().back().after, t);
    asked([&] { session->redo(); });
    reopen();
    EXPECT_EQ(changes().size(), 2u);
    EXPECT_EQ(problems(), "");
}

// Decided for the sake of the rule: even a moment after it was typed an entry is struck through, not erased. Nothing
// else that was typed meanwhile asks.
TEST_F(MedicineGuard, PlainUndoRightAfterTypingAsksToo) {
    log();
    asked([&] { session->undo(); });
    newYard(QStringLiteral("South"));
    EXPECT_TRUE(session->undo()) << "the yard is no medicine";
    EXPECT_TRUE(session->undo(why));
    ASSERT_EQ(changes().size(), 1u);
    EXPECT_EQ(changes().front().before, t);
    EXPECT_TRUE(session->redo()) << "adds the entry again";
    asked([&] { session->takeBack(session->history(9).back().seq + 2); });
}

TEST_F(MedicineGuard, AfterTheYearsOfTheSettingItAsksNoMore) {
    // Last day 2021-09-21, five years after: the first day free is 2026-09-21; the clock stands at 2026-09-20.
    t.day = dayOf(2021, 8, 10);
    log();
    Treatment now = t;
    now.quantity = 9;
    asked([&] { change(now); });
    clock.day = dayOf(2026, 9, 21);
    EXPECT_TRUE(change(now));
    clock.day = dayOf(2026, 9, 20);
    const Edit fewer = [](const EditContext& c) {
        return setSetting(c, QStringLiteral("records.years"), QStringLiteral("3"));
    };
    asked([&] { session->apply(fewer); });
    EXPECT_TRUE(session->apply(fewer, why));
    EXPECT_TRUE(session->undo()) << "more years again";
    asked([&] { session->redo(); });
    asked([&] { session->undo(); });
}

TEST_F(MedicineGuard, DisposalAndStripsKeepItLonger) {
    t.day = dayOf(2021, 1, 10);
    t.disposed = dayOf(2021, 12, 1);
    log();
    asked([&] { session->undo(); });
}

TEST_F(MedicineGuard, AnImportIsUndoneOnlyWithACorrectionAndItsEntriesStay) {
    const auto import = [&](const EditContext& c) {
        ChangeSet change{QStringLiteral("Imported"), {}, {}, {}, {}};
        change.bulk.push_back({Table::Treatment, c.nextId(Table::Treatment), 3, [this](qint64 i) {
                                   Treatment each = t;
                                   each.day = t.day + static_cast<int>(i);
                                   return toRow(each);
                               }});
        return change;
    };
    apply(import);
    EXPECT_TRUE(changes().empty());
    EXPECT_EQ(asked([&] { session->undo(); }),
              "The medicine book must keep the treatment of 5 with Hazel strips on 2026-09-10, and 2 more, until "
              "2031-10-22: it stays to be read, struck through. That is a correction of the record: give a reason and "
              "a name.");
    session->undo(why);
    ASSERT_EQ(changes().size(), 3u);
    EXPECT_EQ(changes()[2].treatment, TreatmentId{3});
    EXPECT_EQ(changes()[2].before->day, t.day + 2);
    session->redo();
    EXPECT_EQ(changes().size(), 6u);
    EXPECT_EQ(problems(), "");
}

// A hold never goes behind the question of the medicine book: both are said.
TEST_F(MedicineGuard, BothQuestionsAreAskedAtOnce) {
    const auto sign = [&](const EditContext& c) {
        Visit v;
        v.colony = k5;
        v.day = dayOf(2026, 8, 1);
        v.broodFrames = v.broodChecked = 5;
        v.signs.add(Sign::Efb);
        return logVisit(c, v);
    };
    apply(sign);
    t.antibiotic = true;
    t.day = dayOf(2026, 8, 20);
    log();
    Visit clean;
    clean.colony = k5;
    clean.day = dayOf(2026, 9, 18);
    clean.broodFrames = clean.broodChecked = 5;
    visit(clean);
    // Rule 4.4.11: within 42 days of an antibiotic the clean check does not end efb.
    const std::string said =
        asked([&] { session->apply([&](const EditContext& c) { return takeBackTreatment(c, t.id); }); });
    EXPECT_NE(said.find("5: efb"), std::string::npos) << said;
    EXPECT_NE(said.find("The medicine book must keep"), std::string::npos) << said;
}

TEST_F(MedicineGuard, CheckComparesItsIndexWithTheHistoryBothWays) {
    log();
    session->undo(why);
    const QString file = path();
    session.reset();
    rawSql(file, "DELETE FROM medicine_line");
    session = Session::open(path(), clock);
    EXPECT_EQ(problems(), "The medicine book does not know that treatment 1 was altered by line 4.");
    session.reset();
    rawSql(file, "INSERT INTO medicine_line VALUES (1, 4), (7, 1)");
    session = Session::open(path(), clock);
    EXPECT_EQ(problems(), "The medicine book says of treatment 7 that line 1 altered it; it did not.");
}

TEST_F(MedicineGuard, TheIndexOfABookOfAnEarlierVersionIsMadeFromItsHistory) {
    log();
    session->undo(why);
    const auto known = changes();
    session.reset();
    // As the migration leaves it.
    rawSql(path(), "DELETE FROM medicine_line; INSERT INTO medicine_line SELECT 0, max(seq) FROM history");
    session = Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_EQ(changes(), known) << "one that only reads cannot make it, and reads the history";
    session.reset();
    session = Session::open(path(), clock);
    EXPECT_EQ(changes(), known);
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
