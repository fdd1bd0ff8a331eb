#include "core/edit/correction_check.h"

#include "core/edit/correction_days.h"
#include "core/edit/yard_stays.h"
#include "core/store/reads.h"
#include "core/store/snapshot_reader.h"
#include "core/store/trouble_days.h"
#include "core/store/trouble_links.h"

#include <algorithm>

namespace core::edit {

namespace {

/// Up to so many colonies it is cheaper to follow links one by one than to read the whole book.
constexpr int kMostFollowed = 1000;

} // namespace

CorrectionCheck::CorrectionCheck(const store::Database& db, const ChangeSet& change, Day today) : m_db(db) {
    if (!touchesRecord(change, true) || !store::anyTrouble(db)) return;
    if (!touchesRecord(change, false) && sameYards(db, change)) return;
    readBefore(change, today);
}

void CorrectionCheck::readBefore(const ChangeSet& change, Day today) {
    m_beginnings = beginningsIn(m_db, change);
    Touched touched = touchedBy(m_db, change);
    if (!touched.wholeBook && !store::troubleLinked(m_db, touched.colonies, touched.yards, kMostFollowed)) return;
    const Day last = std::max(today, store::lastDay(m_db).value_or(today));
    const Snapshot latest = store::readSnapshot(m_db, last);
    for (const Day day : daysToJudge(latest, touched, today)) {
        StandingHolds standing = standingHolds(day == last ? latest : store::readSnapshot(m_db, day));
        if (!standing.empty()) m_before.emplace(day, std::move(standing));
    }
    m_ended = std::move(touched.endedNow);
}

QString CorrectionCheck::afterwards() const {
    // The latest day first: what holds now matters most.
    for (auto day = m_before.rbegin(); day != m_before.rend(); ++day) {
        const QStringList lifted = liftedHolds(day->second, store::readSnapshot(m_db, day->first), m_ended);
        if (!lifted.isEmpty()) return correctionSentence(lifted, day->first);
    }
    if (m_beginnings.empty()) return {};
    const Day day = m_beginnings.front().day;
    QStringList names;
    for (const Beginning& beginning : m_beginnings)
        if (beginning.day == day && !names.contains(beginning.hold)) names << beginning.hold;
    return beginningSentence(names, day);
}

} // namespace core::edit
