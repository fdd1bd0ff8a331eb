#pragma once

#include "core/edit/session.h"
#include "ui/plan/scene.h"

#include <optional>

namespace ui::time {

/// Quick drawings of one yard on other days, while the desk stays on its own: who stands there, how strong, and what is
/// held, by the same rules. Holds rest on the whole book: it is read once, and then goes back in memory.
class Glance {
public:
    explicit Glance(const core::edit::Session& session) : m_session(session) {}

    /// The book has changed.
    void forget() { m_whole.reset(); }
    /// Without a plan of unions. Empty where the book has no such yard. Throws Error(Book).
    plan::Scene sceneOf(core::YardId yard, core::Day day);

private:
    const core::edit::Session& m_session;
    std::optional<core::Snapshot> m_whole; ///< for holds
};

} // namespace ui::time
