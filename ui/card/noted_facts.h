#pragma once

#include "core/edit/session.h"
#include "ui/card/card_content.h"

namespace ui::card {

/// Adds what is noted of the queen that heads the colony that day and of feed given up to it: facts after those of the
/// rules, and her mark to the drawing. Throws Error(Book).
void addNoted(CardContent& card, const core::edit::Session& book, const desk::Reading& reading, core::ColonyIx colony);

/// Of these queens of one colony the one that heads it that day; nullptr: none that is noted.
const core::Queen* headOn(const std::vector<core::Queen>& queens, core::Day day);

} // namespace ui::card
