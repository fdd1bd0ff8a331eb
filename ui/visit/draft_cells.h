#pragma once

#include "core/model/tally_order.h"
#include "ui/visit/visit_draft.h"

namespace ui::visit {

/// The field that a column of the tally sheet is typed into.
Field fieldOf(core::TallyColumn column);

/// What stands in a field, as it is typed: the queen as one letter, signs as letters, boxes as 1 or 2, the day as ISO
/// text; what means nothing there as it stands.
QString typedIn(const VisitDraft& draft, Field field);
/// Whatever it is: what means nothing in that field is kept as unread.
void typeInto(VisitDraft& draft, Field field, const QString& typed);

} // namespace ui::visit
