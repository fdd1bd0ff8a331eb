#pragma once

#include "core/edit/correction_guard.h"
#include "core/edit/correction_sources.h"
#include "core/store/database.h"

#include <QString>

namespace core::edit {

/// Judges one change within its transaction: by the holds that begin with the records it takes away or alters, and by
/// all holds before and after it on the days on which they may differ (daysToJudge).
class CorrectionCheck {
public:
    /// Reads the holds before, where the change is one that may lift any.
    CorrectionCheck(const store::Database& db, const ChangeSet& change, Day today);
    /// Once the change is written: the question that names the holds that are gone; empty: none is.
    QString afterwards() const;

private:
    void readBefore(const ChangeSet& change, Day today);

    const store::Database& m_db;
    std::map<Day, StandingHolds> m_before;
    std::vector<Beginning> m_beginnings;
    std::set<ColonyId> m_ended;
};

} // namespace core::edit
