#include "core/edit/correction_guard.h"
#include "core/edit/put_right.h"
#include "tests/edit/edit_fixture.h"

#include <random>

namespace tests::edit {

namespace {

const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};
const Day kFirst = dayOf(2026, 5, 1);
constexpr int kDays = 120;

/// A small book full of trouble: few colonies in three yards, many gifts, signs, results and treatments.
class TroubledBook : public EditTest {
public:
    void TestBody() override {}

    explicit TroubledBook(unsigned seed) : m_dice(seed) {
        for (const char* name : {"A", "B", "C"}) m_yards.push_back(newYard(QString::fromLatin1(name)));
        for (int i = 0; i < 9; ++i)
            newColony(m_yards[static_cast<size_t>(i % 3)], QString::number(i + 1), {i * 1000, 0}, kFirst);
        for (int i = 0; i < 14; ++i) add([this](const EditContext& c) { return gift(c); });
        for (int i = 0; i < 6; ++i) add([this](const EditContext& c) { return visitOf(c); });
        for (int i = 0; i < 14; ++i) add([this](const EditContext& c) { return resultOf(c); });
        for (int i = 0; i < 3; ++i) add([this](const EditContext& c) { return treatmentOf(c); });
        clock.day = kFirst + kDays + 60;
    }

    std::vector<StandingHolds> everyDay() const {
        std::vector<StandingHolds> days;
        for (int i = 0; i <= kDays; ++i) days.push_back(standingHolds(session->snapshot(kFirst + i)));
        return days;
    }
    /// Takes one record back; whether it was asked about, and whether a hold was lifted on any day at all.
    void takeBack(const Edit& work) {
        bool asked = false;
        try {
            session->apply(work);
        } catch (const Error& e) {
            if (e.kind() == Error::Kind::BadData) return;
            EXPECT_EQ(e.kind(), Error::Kind::Correction) << e.what();
            asked = true;
            session->apply(work, kWhy);
        }
        bool lifted = false;
        for (int i = 0; i <= kDays && !lifted; ++i)
            lifted = !liftedHolds(m_before[static_cast<size_t>(i)], session->snapshot(kFirst + i)).isEmpty();
        ++tried;
        rested += lifted;
        missed += lifted && !asked;
        session->undo(kWhy);
    }
    void takeEachBack() {
        m_before = everyDay();
        for (qint64 id = 1; id <= 14; ++id) {
            takeBack([=](const EditContext& c) { return takeBackTransfer(c, TransferId{id}); });
            takeBack([=](const EditContext& c) { return takeBackResult(c, ResultId{id}); });
        }
        for (qint64 id = 1; id <= 6; ++id)
            takeBack([=](const EditContext& c) { return takeBackVisit(c, VisitId{id}); });
        for (qint64 id = 1; id <= 3; ++id)
            takeBack([=](const EditContext& c) { return takeBackTreatment(c, TreatmentId{id}); });
    }
    int tried = 0;
    int rested = 0;
    int missed = 0;

private:
    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_dice); }
    Day day() { return kFirst + upTo(kDays); }
    ColonyId colony() { return ColonyId{1 + upTo(8)}; }
    void add(const Edit& work) {
        try {
            session->apply(work);
        } catch (const Error&) { // the day has a visit already, or it would give to itself
            return;
        }
    }
    ChangeSet gift(const EditContext& c) {
        return logTransfer(c, {{}, day(), colony(), colony(), static_cast<TransferKind>(upTo(4)), {}, {}});
    }
    ChangeSet visitOf(const EditContext& c) {
        Visit v;
        v.colony = colony();
        v.day = day();
        v.broodFrames = v.broodChecked = 5;
        if (upTo(1)) v.signs.add(static_cast<Sign>(upTo(2)));
        return logVisit(c, v);
    }
    ChangeSet resultOf(const EditContext& c) {
        Result r;
        r.colony = colony();
        r.day = day();
        const int dice = upTo(9);
        r.verdict = dice < 3 ? Verdict::Positive : dice < 7 ? Verdict::Negative : Verdict::Release;
        if (dice == 9) r.verdict = Verdict::Order;
        r.disease = upTo(3) ? Disease::Afb : Disease::Efb;
        r.method = Method::Inspector;
        r.by = QStringLiteral("the inspector");
        r.paper = QStringLiteral("7");
        return logResult(c, r);
    }
    ChangeSet treatmentOf(const EditContext& c) {
        Treatment t;
        t.colony = colony();
        t.day = day();
        t.product = QStringLiteral("powder");
        t.substance = QStringLiteral("salt");
        t.antibiotic = true;
        return logTreatment(c, t);
    }

    std::mt19937 m_dice;
    std::vector<YardId> m_yards;
    std::vector<StandingHolds> m_before;
};

/// Against all days one by one: whether a hold rested on the record on any of them.
TEST(CorrectionSearch, FindsTheHoldsThatRestedOnARecordOnAnyDay) {
    int tried = 0;
    int rested = 0;
    int missed = 0;
    for (unsigned seed = 1; seed <= 1; ++seed) {
        TroubledBook book(seed);
        book.takeEachBack();
        tried += book.tried;
        rested += book.rested;
        missed += book.missed;
    }
    EXPECT_GT(rested, 10) << tried;
    EXPECT_EQ(missed, 0) << "of " << rested << " records that holds rested on, of " << tried;
}

} // namespace

} // namespace tests::edit
