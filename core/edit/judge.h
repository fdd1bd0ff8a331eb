#pragma once

#include "core/edit/edit_context.h"

namespace core::edit {

/// Judges what alters or takes away rows that others rest on: the lives, places, counts, lineage and labels of all
/// colonies that the rows name, as they would be once written. Throws Error(BadData) with the record that stands
/// against it.
void judge(const EditContext& c, const std::vector<RowChange>& rows);

// The parts, of one colony; `after`: the book as it would be.

void judgeLife(const EditContext& after, const Colony& colony);    ///< every record lies within its life
void judgePlaces(const EditContext& after, const Colony& colony);  ///< one stand after the other, none of them shared
void judgeCounts(const EditContext& after, const Colony& colony);  ///< no visit counts a box or frames that are not
void judgeLineage(const EditContext& after, const Colony& colony); ///< ends, births, circles
void judgeQueens(const EditContext& after, const Colony& colony);  ///< one queen at a time
void judgeLabel(const EditContext& after, const QString& label);   ///< no result is older than the label

} // namespace core::edit
