#pragma once

#include "core/edit/correction_guard.h"
#include "core/edit/session.h"

namespace tests::soak {

using namespace core;
using namespace core::edit;

/// The holds of one day that no undo or taking back may lift, as they were.
class HoldWatch {
public:
    HoldWatch(const Session& session, Day on) : m_on(on), m_before(standingHolds(session.snapshot(on))) {}

    /// Those that are gone since, as text; empty: none.
    std::string lifted(const Session& session) const {
        return liftedHolds(m_before, session.snapshot(m_on)).join(QStringLiteral(", ")).toStdString();
    }

private:
    Day m_on;
    StandingHolds m_before;
};

} // namespace tests::soak
