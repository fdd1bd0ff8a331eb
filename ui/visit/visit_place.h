#pragma once

#include "core/edit/session.h"
#include "ui/visit/visit_draft.h"

#include <optional>

namespace ui::visit {

/// What a visit of this colony on `day` is judged against, as the book now is; `was`: the visit that is changed. Throws
/// Error(BadData) where the colony is gone, Error(Book).
VisitPlace visitPlaceOf(const core::edit::Session& book, core::ColonyId colony, core::Day day,
                        const std::optional<core::Visit>& was = {});

/// What became of the visit that `place.was` says, since then: one sentence, or nothing.
std::optional<QString> movedSince(const core::edit::Session& book, const VisitPlace& place);

} // namespace ui::visit
