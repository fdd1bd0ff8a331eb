#include "core/edit/feedings.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class Feedings : public PutRight {
protected:
    Feeding syrup(ColonyId colony, Day day = kDay) {
        Feeding f;
        f.colony = colony;
        f.day = day;
        f.mix = QStringLiteral("3:2");
        f.volume = Millilitres{10'000};
        return f;
    }
    static Work given(const Feeding& f) {
        return [=](const EditContext& c) { return logFeeding(c, f); };
    }
    static Work now(const Feeding& f) {
        return [=](const EditContext& c) { return changeFeeding(c, f); };
    }
    Feeding first(ColonyId colony) { return session->feedingsOf(colony).at(0); }
};

TEST_F(Feedings, IsLoggedChangedAndTakenBack) {
    Feeding f = syrup(k5);
    f.mix = QStringLiteral(" 3,0 : 2 ");
    f.by = QStringLiteral(" Ana ");
    EXPECT_EQ(done(given(f)), "Fed 5 10 l of syrup 3:2 on 2026-09-10");
    Feeding kept = first(k5);
    EXPECT_EQ(kept.mix, QStringLiteral("3:2"));
    EXPECT_EQ(kept.by, QStringLiteral("Ana"));
    EXPECT_FALSE(apply(now(kept))) << "says so already";
    kept.what = FeedKind::Fondant;
    kept.mix.clear();
    kept.volume.reset();
    kept.weight = Decagrams{250};
    EXPECT_EQ(done(now(kept)), "Changed the feeding of 5 on 2026-09-10 (10 l of syrup 3:2)");
    EXPECT_EQ(first(k5), kept);
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackFeeding(c, kept.id); }),
              "Took back the feeding of 5 on 2026-09-10 (2.5 kg of fondant)");
    EXPECT_EQ(session->feedingsOf(k5).size(), 0u);
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackFeeding(c, kept.id); }),
              "That feeding is no longer in the book.");
}

TEST_F(Feedings, SeveralColoniesAreFedInOneUndo) {
    const auto both = [&](const EditContext& c) { return logFeedings(c, {syrup(k5), syrup(k6)}); };
    EXPECT_EQ(done(both), "Fed 2 colonies 10 l of syrup 3:2 each on 2026-09-10");
    session->undo();
    EXPECT_EQ(session->feedingsOf(k5).size() + session->feedingsOf(k6).size(), 0u);
    Feeding less = syrup(k6);
    less.volume = Millilitres{500};
    EXPECT_EQ(done([&](const EditContext& c) { return logFeedings(c, {syrup(k5), less}); }), "Noted 2 feedings");
    EXPECT_FALSE(apply([](const EditContext& c) { return logFeedings(c, {}); }));
    // One that cannot be: none is written.
    Feeding early = syrup(k6, dayOf(2026, 4, 1));
    EXPECT_EQ(refusal([&](const EditContext& c) {
                  return logFeedings(c, {syrup(k5), early});
              }),
              "6 began on 2026-05-01; 2026-04-01 is before that.");
}

TEST_F(Feedings, WhatCannotBeIsRefusedInOneSentence) {
    Feeding f = syrup(k5);
    f.volume.reset();
    EXPECT_EQ(refusal(given(f)), "Amount: expected a volume or a weight, found nothing.");
    f.volume = Millilitres{1};
    f.weight = Decagrams{1};
    EXPECT_EQ(refusal(given(f)), "Amount: expected a volume or a weight, found both.");
    f.weight.reset();
    f.volume = Millilitres{0};
    EXPECT_EQ(refusal(given(f)), "Amount: 0 l is not from 0.001 to 100.");
    f.volume = Millilitres{100'001};
    EXPECT_EQ(refusal(given(f)), "Amount: 100.001 l is not from 0.001 to 100.");
    f.volume.reset();
    f.weight = Decagrams{10'001};
    EXPECT_EQ(refusal(given(f)), "Amount: 100.01 kg is not from 0.01 to 100.");
    f.weight = Decagrams{10'000};
    f.mix = QStringLiteral("thick");
    EXPECT_EQ(refusal(given(f)), "Mix: “thick” is not sugar to water by weight; expected 3:2, say.");
    f.mix = QStringLiteral("3:2");
    f.what = FeedKind::Sugar;
    EXPECT_EQ(refusal(given(f)), "Mix: only syrup is mixed of sugar and water.");
    f = syrup(ColonyId{99});
    EXPECT_EQ(refusal(given(f)), "That colony is no longer in the book.");
    end(k5, kDay - 1);
    EXPECT_EQ(refusal(given(syrup(k5))), "5 ended on 2026-09-09; 2026-09-10 is after that.");
}

TEST_F(Feedings, LieWithinTheLifeOfTheirColony) {
    apply(given(syrup(k5)));
    EXPECT_EQ(refusal([&](const EditContext& c) { return endColony(c, k5, kDay - 1, EndKind::Dead); }),
              "5 has a feeding on 2026-09-10; it cannot have ended before that.");
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.since = kDay + 1; })),
              "5 has a feeding on 2026-09-10; it cannot have begun after that.");
    EXPECT_EQ(refusal(back(k5)), "5 has a feeding on 2026-09-10; only a colony that no record names is taken back.");
    EXPECT_NE(done([&](const EditContext& c) { return endColony(c, k5, kDay, EndKind::Dead); }), "");
}

} // namespace

} // namespace tests::edit
