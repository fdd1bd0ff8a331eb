#pragma once

#include "core/edit/correction_guard.h"
#include "core/store/database.h"

namespace core::edit {

/// Judges one change by the holds before and after it, within its transaction: today, on the book's last day, on the
/// days of the records that it takes away, and on the first day of trouble after them.
class CorrectionCheck {
public:
    /// Reads the holds before, where the change is one that may lift any.
    CorrectionCheck(const store::Database& db, const ChangeSet& change, Day today);
    /// Once the change is written: throws Error(Correction) naming the holds that are gone.
    void afterwards() const;

private:
    std::set<Day> daysOf(const ChangeSet& change, Day today) const;

    const store::Database& m_db;
    std::map<Day, StandingHolds> m_before;
};

} // namespace core::edit
