#include "core/edit/correction_check.h"

#include "core/base/error.h"
#include "core/edit/yard_stays.h"
#include "core/store/reads.h"
#include "core/store/snapshot_reader.h"
#include "core/store/trouble_days.h"

namespace core::edit {

namespace {

constexpr int kMostDaysOfRecords = 4;

/// A sign's row has no day of its own: its visit's.
void addSignDays(const store::Database& db, const ChangeSet& change, std::set<Day>& days) {
    for (const RowChange& row : change.rows) {
        if (row.table != Table::VisitSign || !row.before) continue;
        const auto* visit = std::get_if<qint64>(&row.before->at(0));
        if (const auto found = visit ? store::visit(db, VisitId{*visit}) : std::nullopt) days.insert(found->day);
    }
}

void addRangeDays(const store::Database& db, const ChangeSet& change, std::set<Day>& days) {
    for (const BulkDelete& range : change.gone) {
        if (range.table != Table::VisitSign && range.table != Table::Result) continue;
        const qint64 last = range.firstId + range.count - 1;
        for (const Day day : store::troubleDays(db, range.table, range.firstId, last, kMostDaysOfRecords))
            days.insert(day);
    }
}

/// The latest few.
std::set<Day> latestOf(const std::set<Day>& days) {
    std::set<Day> latest;
    for (auto day = days.rbegin(); day != days.rend() && latest.size() < kMostDaysOfRecords; ++day) latest.insert(*day);
    return latest;
}

} // namespace

CorrectionCheck::CorrectionCheck(const store::Database& db, const ChangeSet& change, Day today) : m_db(db) {
    if (!touchesRecord(change, true) || !store::anyTrouble(db)) return;
    if (!touchesRecord(change, false) && sameYards(db, change)) return;
    for (const Day day : daysOf(change, today)) {
        StandingHolds standing = standingHolds(store::readSnapshot(db, day));
        if (!standing.empty()) m_before.emplace(day, std::move(standing));
    }
}

std::set<Day> CorrectionCheck::daysOf(const ChangeSet& change, Day today) const {
    std::set<Day> touched = touchedDays(change);
    addSignDays(m_db, change, touched);
    addRangeDays(m_db, change, touched);
    std::set<Day> days = latestOf(touched);
    if (!touched.empty())
        if (const auto first = store::firstTrouble(m_db, *touched.begin())) days.insert(*first);
    days.insert(today);
    if (const auto last = store::lastDay(m_db)) days.insert(*last);
    return days;
}

void CorrectionCheck::afterwards() const {
    // The latest day first: what holds now matters most.
    for (auto day = m_before.rbegin(); day != m_before.rend(); ++day) {
        const QStringList lifted = liftedHolds(day->second, store::readSnapshot(m_db, day->first));
        if (!lifted.isEmpty()) throw Error(Error::Kind::Correction, correctionSentence(lifted, day->first));
    }
}

} // namespace core::edit
