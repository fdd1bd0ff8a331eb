#pragma once

#include "core/model/note_found.h"
#include "core/model/row.h"

#include <array>

namespace core::store {

/// Where notes are. `day`, `colony` and `yard` are the columns that say of what; "NULL": none.
struct Notes {
    Table table;
    const char* column;
    const char* day;
    const char* colony;
    const char* yard;
};
/// In the order of NoteOf.
inline constexpr std::array<Notes, kNoteOfCount> kNotes{{{Table::Visit, "note", "day", "colony", "NULL"},
                                                         {Table::Colony, "note", "since", "id", "NULL"},
                                                         {Table::Yard, "note", "NULL", "NULL", "id"},
                                                         {Table::Transfer, "note", "day", "giver", "NULL"},
                                                         {Table::Result, "note", "day", "colony", "yard"},
                                                         {Table::Treatment, "reason", "day", "colony", "yard"},
                                                         {Table::Lineage, "note", "day", "colony", "NULL"},
                                                         {Table::Feeding, "note", "day", "colony", "NULL"},
                                                         {Table::Queen, "note", "since", "colony", "NULL"},
                                                         {Table::Sample, "note", "day", "colony", "NULL"},
                                                         {Table::MiteFall, "note", "day", "colony", "NULL"},
                                                         {Table::KitEnd, "note", "day", "colony", "yard"}}};
/// The key of a record's words is kKinds × its id + its place in kNotes.
constexpr int kKinds = 16;

inline const Notes& notes(NoteOf of) { return kNotes[static_cast<size_t>(of)]; }

} // namespace core::store
