#pragma once

#include "core/base/progress.h"
#include "core/edit/session.h"

#include <cstdint>

namespace demo {

struct DemoSize {
    int colonies = 96;      ///< 1..200000; from 96 on the five yards of the story are among them
    int years = 2;          ///< of visits, 1..20; the last is 2026
    std::uint64_t seed = 1; ///< the same numbers give the same content
    int yardSize = 50;      ///< hives in a yard at the most, outside the story
    bool story = true;      ///< false: plain yards alone
};

/// Fills an empty book with an invented operation: yards, hives and visits of some years up to its merge day, and
/// (with room for it) a story around the fall of 2026 in which every kind of hold, caution and advice occurs. All of it
/// goes through the session, a few large edits, and is told to `progress`; stopped, the book is unfinished. No place,
/// person or firm in it exists; its yards lie in mid-ocean.
void fillDemoBook(core::edit::Session& session, const DemoSize& size, const core::Progress& progress = {});

/// The day of the story's merge day, and of its spring look.
core::Day demoMergeDay();  ///< 2026-09-20
core::Day demoSpringDay(); ///< 2026-05-05

} // namespace demo
