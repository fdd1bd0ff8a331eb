#include "core/rules/calc/papers.h"
#include "core/rules/calc/recheck.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

// Days of rechecks, quarantine and papers.

namespace {

using namespace core;
using namespace core::rules::calc;

const Day kDay = dayOf(2026, 7, 16);
const Settings kDefaults;

TEST(Recheck, DefaultsAgainstPrintedDays) {
    expectPublished({
        {kEfbPlan, double(efbRecheck(kDay, {}, kDefaults).check - kDay), 6 * 7, 0},
        {kImdorf, double(doubtRecheck(kDay, false, {}, kDefaults).check - kDay), 21, 0}, // a worker brood cycle
        {kTropilaelaps, double(withoutTropilaelaps(kDay) - kDay), 21, 1},                // longer than 21 days
    });
}

// Source: own calculation by rule 4.4.8, 4.4.11 and 4.4.12.
TEST(Recheck, WithoutAnAntibiotic) {
    EXPECT_EQ(isoText(afbContactRecheck(kDay, {}, kDefaults).negative), "2026-08-27"); // + 42
    EXPECT_EQ(isoText(afbContactRecheck(kDay, {}, kDefaults).check), "2026-09-14");    // + 60
    EXPECT_EQ(isoText(efbRecheck(kDay, {}, kDefaults).negative), "2026-08-27");
    EXPECT_EQ(isoText(doubtRecheck(kDay, true, {}, kDefaults).negative), "2026-08-06"); // + 21
    EXPECT_EQ(isoText(doubtRecheck(kDay, false, {}, kDefaults).negative), "2026-07-16");
}

TEST(Recheck, AnAntibioticMasksChecks) {
    const Day treated = kDay - 10;
    EXPECT_EQ(afbContactRecheck(kDay, treated, kDefaults).check, treated + 549); // the first day no longer masked
    EXPECT_EQ(afbContactRecheck(kDay, treated, kDefaults).negative, kDay + 42);
    EXPECT_EQ(doubtRecheck(kDay, false, treated, kDefaults).check, treated + 549);
    EXPECT_EQ(efbRecheck(kDay, kDay + 1, kDefaults).check, kDay + 44);
    EXPECT_EQ(efbRecheck(kDay, kDay + 1, kDefaults).negative, kDay + 44);
    EXPECT_EQ(efbRecheck(kDay, kDay - 1, kDefaults).check, kDay + 42);
    EXPECT_EQ(afbContactRecheck(kDay, kDay - 489, kDefaults).check, kDay + 60);
    EXPECT_EQ(afbContactRecheck(kDay, kDay - 488, kDefaults).check, kDay + 61);
}

TEST(Recheck, FollowsStricterSettings) {
    Settings strict;
    strict.afbRecheckDays = 90;
    strict.efbClearDays = 60;
    EXPECT_EQ(afbContactRecheck(kDay, {}, strict).check, kDay + 90);
    EXPECT_EQ(efbRecheck(kDay, {}, strict).check, kDay + 60);
    EXPECT_EQ(quarantineFrom(kDay, strict).until, kDay + 90);
}

TEST(Quarantine, LastsToTheLatestOfItsRechecks) {
    const Quarantine q = quarantineFrom(kDay, kDefaults);
    EXPECT_EQ(q.until, kDay + 60);
    EXPECT_EQ(q.efb.check, kDay + 42);
    EXPECT_EQ(q.afb.negative, kDay + 42);
}

PaperFault certificate(const char* issued, const char* moved) {
    return germanCertificate(*parseIsoDay(QString::fromLatin1(issued)), *parseIsoDay(QString::fromLatin1(moved)));
}

// Source: own calculation from Bienenseuchen-Verordnung § 5(1).
TEST(Papers, GermanCertificate) {
    EXPECT_EQ(certificate("2023-08-31", "2024-05-20"), PaperFault::IssuedBeforeSeptember);
    EXPECT_EQ(certificate("2023-09-01", "2024-05-31"), PaperFault::None);
    EXPECT_EQ(certificate("2023-09-01", "2024-06-01"), PaperFault::None);
    EXPECT_EQ(certificate("2023-09-01", "2024-06-02"), PaperFault::OlderThanNineMonths);
    EXPECT_EQ(certificate("2024-03-15", "2024-12-20"), PaperFault::OlderThanNineMonths);
    EXPECT_EQ(certificate("2024-03-15", "2024-03-14"), PaperFault::NotIssuedYet);
    EXPECT_EQ(certificate("2024-03-15", "2024-03-15"), PaperFault::None);
}

// Source: own calculation from Bienenseuchen-Verordnung § 11(1) no. 1.
TEST(Papers, GermanAreaIsInspectedAgain) {
    const DayRange days = germanAreaRecheck(dayOf(2025, 12, 31));
    EXPECT_EQ(isoText(days.first), "2026-02-28");
    EXPECT_EQ(isoText(days.last), "2026-09-30");
}

// Source: own calculation from the AFB Order 1998, clause 32(3).
TEST(Papers, NewZealandCertificate) {
    EXPECT_EQ(isoText(newZealandCertificateDue(dayOf(2026, 11, 1))), "2026-11-15");
    EXPECT_EQ(isoText(newZealandCertificateDue(dayOf(2026, 11, 30))), "2026-12-14");
    EXPECT_EQ(isoText(newZealandCertificateDue(dayOf(2026, 12, 5))), "2026-12-14");
}

TEST(Papers, RecordsAreKeptForYears) {
    EXPECT_EQ(isoText(keptUntil(dayOf(2026, 8, 20), 5)), "2031-08-20");
    EXPECT_EQ(isoText(keptUntil(dayOf(2024, 2, 29), 5)), "2029-02-28");
    for (const CertificateLife& life : certificateLives()) EXPECT_GT(life.days, 0) << life.what;
}

} // namespace
