#include "core/edit/samples.h"
#include "core/rules/hold.h"
#include "tests/edit/put_right_fixture.h"

#include <QStringList>

namespace tests::edit {

namespace {

class Samples : public PutRight {
protected:
    Samples() { clock.day = kDay + 60; }

    Sample brood(ColonyId colony, Day day = kDay) {
        Sample s;
        s.colony = colony;
        s.day = day;
        s.laboratory = QStringLiteral("Hill laboratory");
        return s;
    }
    static Work taken(const Sample& s) {
        return [=](const EditContext& c) { return takeSample(c, s); };
    }
    static Work now(const Sample& s) {
        return [=](const EditContext& c) { return changeSample(c, s); };
    }
    static Work sent(std::vector<SampleId> ids, Day day) {
        return [=](const EditContext& c) { return sendSamples(c, ids, day); };
    }
    static Work answered(SampleId id, bool positive) {
        return [=](const EditContext& c) { return answerSample(c, id, {positive, {}, QStringLiteral("A-1"), {}}); };
    }
    static Work lost(SampleId id, Day day) {
        return [=](const EditContext& c) { return giveSampleUp(c, id, day); };
    }
    static Work backOf(SampleId id) {
        return [=](const EditContext& c) { return takeBackSample(c, id); };
    }
    static Work resultNow(const Result& r) {
        return [=](const EditContext& c) { return changeResult(c, r); };
    }
    static Work backOf(ResultId id) {
        return [=](const EditContext& c) { return takeBackResult(c, id); };
    }
    Sample only() { return session->samples().at(0); }
    Result answer() { return session->results().at(0); }
    std::string heldAs(ColonyId colony) {
        const Snapshot s = session->snapshot(clock.today());
        QStringList kinds;
        for (const rules::Hold& h : rules::holds(s))
            if (s.colony(h.colony).id == colony) kinds << rules::holdWord(h.kind);
        return kinds.join(u' ').toStdString();
    }
    Result laboratory(ColonyId colony, Day day, Verdict verdict = Verdict::Negative) {
        Result r;
        r.colony = colony;
        r.day = day;
        r.verdict = verdict;
        r.by = QStringLiteral("Hill laboratory");
        return r;
    }
};

TEST_F(Samples, IsTakenSentAndAnswered) {
    Sample s = brood(k5);
    s.laboratory = QStringLiteral("  Hill laboratory ");
    s.number = QStringLiteral(" 12/1 ");
    EXPECT_EQ(done(taken(s)), "Took a sample of 5 on 2026-09-10 (afb, brood) for Hill laboratory");
    EXPECT_EQ(only().laboratory, QStringLiteral("Hill laboratory"));
    EXPECT_EQ(only().number, QStringLiteral("12/1"));
    EXPECT_EQ(done(sent({only().id}, kDay + 2)),
              "Sent the sample of 5 taken on 2026-09-10 (afb, brood) to Hill laboratory on 2026-09-12");
    EXPECT_EQ(refusal(sent({only().id}, kDay + 3)),
              "It is written as sent already, on 2026-09-12: the sample of 5 taken on 2026-09-10 (afb, brood).");
    EXPECT_EQ(done(answered(only().id, false)), "Answer to the sample of 5 taken on 2026-09-10 (afb, brood): negative");
    const Result r = answer();
    EXPECT_EQ(r.colony, k5);
    EXPECT_EQ(r.day, kDay) << "dated the day that it was taken, not the day of the answer";
    EXPECT_EQ(r.verdict, Verdict::Negative);
    EXPECT_EQ(r.method, Method::Laboratory);
    EXPECT_EQ(r.by, QStringLiteral("Hill laboratory"));
    EXPECT_EQ(r.paper, QStringLiteral("A-1"));
    EXPECT_EQ(only().result, r.id);
    EXPECT_EQ(refusal(answered(only().id, true)),
              "The answer to the sample of 5 taken on 2026-09-10 (afb, brood) is in the book.");
    reopen();
    EXPECT_EQ(only().result, r.id);
}

TEST_F(Samples, SeveralAreTakenAndSentInOneUndo) {
    const auto both = [&](const EditContext& c) { return takeSamples(c, {brood(k5), brood(k6)}); };
    EXPECT_EQ(done(both), "Took samples of 2 colonies");
    EXPECT_EQ(done(sent({SampleId{1}, SampleId{2}}, kDay + 1)), "Sent 2 samples on 2026-09-11");
    session->undo();
    EXPECT_FALSE(session->samples()[0].sent || session->samples()[1].sent);
    EXPECT_FALSE(apply([](const EditContext& c) { return takeSamples(c, {}); }));
}

TEST_F(Samples, WhatCannotBeIsRefusedInOneSentence) {
    Sample s = brood(k5);
    s.laboratory = QStringLiteral(" ");
    EXPECT_EQ(refusal(taken(s)), "Laboratory: expected where the sample goes, found nothing.");
    s = brood(k5, dayOf(2026, 4, 30));
    EXPECT_EQ(refusal(taken(s)), "5 began on 2026-05-01; 2026-04-30 is before that.");
    s = brood(k5);
    s.sent = kDay - 1;
    EXPECT_EQ(refusal(taken(s)), "Sent: 2026-09-09 is before it was taken, on 2026-09-10.");
    s.sent = kDay;
    EXPECT_TRUE(apply(taken(s))) << "on the day itself";
    EXPECT_EQ(refusal(lost(only().id, kDay - 1)),
              "Given up: 2026-09-09 is before it was taken or sent, on 2026-09-10.");
    EXPECT_EQ(refusal(backOf(SampleId{9})), "That sample is no longer in the book.");
    s = brood(ColonyId{99});
    EXPECT_EQ(refusal(taken(s)), "That colony is no longer in the book.");
}

TEST_F(Samples, WhatAColonyLeftBehindMayBeSampledAfterItsEnd) {
    end(k5, kDay - 5);
    EXPECT_TRUE(apply(taken(brood(k5))));
    EXPECT_TRUE(apply(answered(only().id, true)));
    EXPECT_EQ(problems(), "");
    // Nothing is sampled before it began.
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.since = kDay + 1; })),
              "5 ended on 2026-09-05; it cannot have begun after that.");
    apply(taken(brood(k6)));
    EXPECT_EQ(refusal(colony(k6, [](Colony& c) { c.since = kDay + 1; })),
              "6 has a sample on 2026-09-10; it cannot have begun after that.");
    EXPECT_EQ(refusal(back(k6)), "6 has a sample on 2026-09-10; only a colony that no record names is taken back.");
}

TEST_F(Samples, GivenUpNoAnswerIsAwaitedUntilOneComesAllTheSame) {
    apply(taken(brood(k5)));
    apply(sent({only().id}, kDay + 1));
    EXPECT_EQ(done(lost(only().id, kDay + 40)),
              "Gave up the sample of 5 taken on 2026-09-10 (afb, brood) on 2026-10-20");
    EXPECT_EQ(refusal(lost(only().id, kDay + 41)), "It is given up already, since 2026-10-20.");
    Sample again = only();
    again.lost.reset();
    EXPECT_EQ(done(now(again)), "Changed the sample of 5 taken on 2026-09-10 (afb, brood)");
    apply(lost(only().id, kDay + 40));
    EXPECT_TRUE(apply(answered(only().id, false)));
    EXPECT_FALSE(only().lost);
    EXPECT_TRUE(only().result);
}

TEST_F(Samples, APositiveAnswerHoldsItsColonyAndANegativeLiftsTheSuspicion) {
    log(k5, kDay - 1, [](Visit& v) { v.signs.add(Sign::Afb); });
    ASSERT_NE(heldAs(k5).find("afb-suspected"), std::string::npos);
    apply(taken(brood(k5)));
    EXPECT_NE(heldAs(k5).find("afb-suspected"), std::string::npos) << "a sample lifts nothing";
    apply(answered(only().id, false));
    EXPECT_EQ(heldAs(k5).find("afb-suspected"), std::string::npos);
    apply(taken(brood(k6)));
    EXPECT_EQ(heldAs(k6).find("afb-confirmed"), std::string::npos) << "a sample holds nothing";
    apply(answered(SampleId{2}, true));
    EXPECT_NE(heldAs(k6).find("afb-confirmed"), std::string::npos);
}

TEST_F(Samples, AnAnswerThatAHoldRestsOnIsTakenBackOnlyAsACorrectionAndIsAwaitedThen) {
    apply(taken(brood(k6)));
    apply(answered(only().id, true));
    const auto work = backOf(answer().id);
    EXPECT_EQ(thrownBy([&] { apply(work); }).kind, Error::Kind::Correction);
    EXPECT_EQ(thrownBy([&] { session->undo(); }).kind, Error::Kind::Correction) << "nor by a plain undo";
    EXPECT_TRUE(only().result);
    const auto line = session->apply(work, Correction{QStringLiteral("Ana"), QStringLiteral("of another hive")});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->text.toStdString(), "Took back afb positive (laboratory) of 6 on 2026-09-10; its sample is awaited "
                                        "again");
    EXPECT_FALSE(only().result);
    EXPECT_TRUE(session->results().empty());
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_TRUE(only().result) << "it is held again";
    EXPECT_EQ(problems(), "");
}

TEST_F(Samples, ANegativeAnswerIsTakenBackAndUndonePlainly) {
    apply(taken(brood(k5)));
    apply(answered(only().id, false));
    EXPECT_EQ(done(backOf(answer().id)),
              "Took back afb negative (laboratory) of 5 on 2026-09-10; its sample is awaited again");
}

TEST_F(Samples, AnAnswerAndItsSampleKeepOneDay) {
    apply(taken(brood(k5)));
    apply(sent({only().id}, kDay + 2));
    apply(answered(only().id, false));
    Result r = answer();
    r.day = kDay + 1;
    EXPECT_EQ(done(resultNow(r)), "Changed afb negative (laboratory) of 5 on 2026-09-10");
    EXPECT_EQ(only().day, kDay + 1);
    Sample s = only();
    s.day = kDay - 1;
    done(now(s));
    EXPECT_EQ(answer().day, kDay - 1);
    r.day = kDay + 3;
    EXPECT_EQ(refusal(resultNow(r)), "Sent: 2026-09-12 is before it was taken, on 2026-09-13.");
    r = answer();
    r.note = QStringLiteral("by telephone");
    done(resultNow(r));
    EXPECT_EQ(only().result, r.id) << "what else is put right leaves it the answer";
    s = only();
    s.colony = k6;
    EXPECT_EQ(refusal(now(s)),
              "It is answered: colony and disease are those of its result. Take the answer back first.");
}

TEST_F(Samples, AResultThatIsNoAnswerAnyMoreLeavesItsSampleAwaited) {
    const std::vector<std::function<void(Result&)>> changes{[this](Result& r) { r.colony = k6; },
                                                            [](Result& r) { r.disease = Disease::Efb; },
                                                            [](Result& r) { r.method = Method::Field; },
                                                            [](Result& r) {
                                                                r.verdict = Verdict::Release;
                                                                r.method = Method::Inspector;
                                                                r.paper = QStringLiteral("R-1");
                                                            }};
    apply(taken(brood(k5)));
    for (const auto& change : changes) {
        apply(answered(only().id, false));
        ASSERT_TRUE(only().result);
        Result r = answer();
        change(r);
        EXPECT_EQ(done(resultNow(r)),
                  "Changed afb negative (laboratory) of 5 on 2026-09-10; its sample is awaited again");
        EXPECT_FALSE(only().result);
        apply(backOf(answer().id));
    }
}

TEST_F(Samples, AResultOfThatDayAnswersTheOneSampleThatAwaitsIt) {
    const auto logged = [&](const Result& r) { return done([=](const EditContext& c) { return logResult(c, r); }); };
    apply(taken(brood(k5)));
    EXPECT_EQ(logged(laboratory(k5, kDay + 1)), "Noted afb negative (laboratory) of 5 on 2026-09-11");
    EXPECT_EQ(logged(laboratory(k6, kDay)), "Noted afb negative (laboratory) of 6 on 2026-09-10");
    EXPECT_FALSE(only().result);
    Result field = laboratory(k5, kDay);
    field.method = Method::Field;
    EXPECT_EQ(logged(field), "Noted afb negative (field) of 5 on 2026-09-10");
    EXPECT_EQ(logged(laboratory(k5, kDay)),
              "Noted afb negative (laboratory) of 5 on 2026-09-10; it answers the sample of that day");
    EXPECT_TRUE(only().result);
    // Of two that await it none is guessed.
    apply([&](const EditContext& c) { return takeSamples(c, {brood(k6), brood(k6)}); });
    EXPECT_EQ(logged(laboratory(k6, kDay)), "Noted afb negative (laboratory) of 6 on 2026-09-10");
    // The one that is named has it, though another awaits the same.
    apply(answered(SampleId{3}, false));
    EXPECT_FALSE(session->samples()[1].result);
    EXPECT_TRUE(session->samples()[2].result);
}

TEST_F(Samples, TakenBackItsResultStays) {
    apply(taken(brood(k6)));
    apply(answered(only().id, true));
    EXPECT_EQ(done(backOf(only().id)), "Took back the sample of 6 taken on 2026-09-10 (afb, brood); its result stays");
    EXPECT_TRUE(session->samples().empty());
    EXPECT_EQ(session->results().size(), 1u);
    EXPECT_NE(heldAs(k6).find("afb-confirmed"), std::string::npos);
}

} // namespace

} // namespace tests::edit
