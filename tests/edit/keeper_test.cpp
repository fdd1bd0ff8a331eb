#include "core/edit/keeper.h"

#include "core/edit/notifiables.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

class KeeperPapers : public EditTest {
protected:
    std::optional<HistoryLine> set(const Keeper& k) {
        return apply([&](const EditContext& c) { return setKeeper(c, k); });
    }
    std::optional<HistoryLine> add(const Notifiable& n) {
        return apply([&](const EditContext& c) { return addNotifiable(c, n); });
    }
    std::string refused(const Notifiable& n) {
        return thrownBy([&] { add(n); }).message;
    }
    std::string refused(const Keeper& k) {
        return thrownBy([&] { set(k); }).message;
    }
    const Keeper ines{{}, "Ines Beispiel", "1 Long Lane\nOver Yonder", "0000 1", "DE-7", "Germany"};
    const Notifiable own{{}, "Atlantis", Reportable::Afb, true, "the harbour office", "a letter"};
};

TEST_F(KeeperPapers, TheKeeperIsWrittenPutRightTakenBackAndUndone) {
    EXPECT_FALSE(session->keeper());
    ASSERT_TRUE(set({{}, "  Ines   Beispiel ", " 1 Long  Lane \n\n Over Yonder\n", " 0000 1", "DE-7 ", " Germany "}));
    reopen();
    Keeper kept = ines;
    kept.id = session->keeper()->id;
    EXPECT_EQ(session->keeper(), kept);
    EXPECT_FALSE(set(ines)) << "nothing changed";
    Keeper moved = ines;
    moved.address = "2 Short Lane";
    moved.registration.clear();
    set(moved);
    EXPECT_EQ(session->undoText(), "Changed what is recorded of the keeper of the book: Ines Beispiel");
    EXPECT_EQ(session->keeper()->address, "2 Short Lane");
    apply([](const EditContext& c) { return takeBackKeeper(c); });
    EXPECT_FALSE(session->keeper());
    EXPECT_EQ(thrownBy([&] { apply([](const EditContext& c) { return takeBackKeeper(c); }); }).message,
              "No keeper is recorded in this book.");
    for (int i = 0; i < 2; ++i) session->undo();
    EXPECT_EQ(session->keeper(), kept);
    session->undo();
    EXPECT_FALSE(session->keeper());
    EXPECT_EQ(problems(), "");
}

TEST_F(KeeperPapers, AKeeperHasANameAndNothingIsTooLong) {
    Keeper k = ines;
    k.name = " ";
    EXPECT_EQ(refused(k), "Name: expected 1 to 60 characters, found 0.");
    k = ines;
    k.address = QString(501, u'x');
    EXPECT_EQ(refused(k), "Address: expected at most 500 characters, found 501.");
    k = ines;
    k.place = QString(61, u'x');
    EXPECT_EQ(refused(k), "Place whose rules hold: expected at most 60 characters, found 61.");
    k = ines;
    k.contact = QString(201, u'x');
    EXPECT_EQ(refused(k), "Contact: expected at most 200 characters, found 201.");
    k = ines;
    k.registration = QString(201, u'x');
    EXPECT_EQ(refused(k), "Registration: expected at most 200 characters, found 201.");
    EXPECT_FALSE(session->keeper());
    set({{}, "Only a name", {}, {}, {}, {}});
    EXPECT_EQ(session->keeper()->name, "Only a name");
    EXPECT_EQ(problems(), "");
}

TEST_F(KeeperPapers, ALineOfWhatMustBeReportedIsAddedChangedTakenBackAndUndone) {
    add(own);
    EXPECT_EQ(session->undoText(), "Wrote down: American foulbrood must be reported in Atlantis");
    reopen();
    ASSERT_EQ(session->notifiables().size(), 1u);
    Notifiable now = session->notifiables().front();
    EXPECT_EQ(now.tell, "the harbour office");
    EXPECT_FALSE(apply([&](const EditContext& c) { return changeNotifiable(c, now); })) << "nothing changed";
    now.must = false;
    apply([&](const EditContext& c) { return changeNotifiable(c, now); });
    EXPECT_EQ(session->undoText(), "Put right: American foulbrood need not be reported in Atlantis");
    apply([&](const EditContext& c) { return takeBackNotifiable(c, now.id); });
    EXPECT_TRUE(session->notifiables().empty());
    EXPECT_EQ(thrownBy([&] { apply([&](const EditContext& c) { return takeBackNotifiable(c, now.id); }); }).message,
              "That line is no longer in the book.");
    session->undo();
    session->undo();
    EXPECT_TRUE(session->notifiables().front().must);
    session->undo();
    EXPECT_TRUE(session->notifiables().empty());
    EXPECT_EQ(problems(), "");
}

TEST_F(KeeperPapers, OfAPlaceAndDiseaseThereIsOneLine) {
    add(own);
    Notifiable again = own;
    again.place = " ATLANTIS ";
    EXPECT_EQ(refused(again), "Atlantis has a line of its own for American foulbrood already: change that one.");
    again.disease = Reportable::Varroa;
    add(again);
    Notifiable second = session->notifiables().back();
    second.disease = Reportable::Afb;
    EXPECT_EQ(thrownBy([&] { apply([&](const EditContext& c) { return changeNotifiable(c, second); }); }).kind,
              Error::Kind::BadData);
    again.place.clear();
    EXPECT_EQ(refused(again), "Place: expected 1 to 60 characters, found 0.");
    again.place = "Somewhere";
    again.tell = QString(201, u'x');
    EXPECT_EQ(refused(again), "Whom to tell: expected at most 200 characters, found 201.");
    EXPECT_EQ(session->notifiables().size(), 2u);
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
