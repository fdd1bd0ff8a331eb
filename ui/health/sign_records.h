#pragma once

#include "core/edit/session.h"

#include <vector>

namespace ui::health {

/// A record that foulbrood, or a doubt of it, rests on: a sign at a visit, or a positive.
struct SignRecord {
    core::ColonyId colony;
    core::Day day;
    core::Sign what = core::Sign::Afb; ///< Afb, Efb or BroodDoubt
    bool found = false;                ///< by a laboratory or an inspector
    friend bool operator==(const SignRecord&, const SignRecord&) = default;
};

/// Those that the change brought into the book, whichever way: a form, a grid, several together, an import, a redo.
/// By what, then day. Throws Error(Book).
std::vector<SignRecord> signsBrought(const core::edit::ChangeSet& change, const core::edit::Session& book);

/// Whether the book still has it.
bool stands(const SignRecord& record, const core::edit::Session& book);

} // namespace ui::health
