#pragma once

#include "core/base/day.h"
#include "core/base/id.h"

#include <QString>

#include <optional>
#include <vector>

namespace core {

/// The record that a note is of; its number is part of the key of the words in the book (note_words).
enum class NoteOf {
    Visit,
    Colony,
    Yard,
    Transfer,
    Result,
    Treatment,
    Lineage,
    Feeding,
    Queen,
    Sample,
    MiteFall,
    KitEnd
};
constexpr int kNoteOfCount = 12;

/// A part of a text that was looked for.
struct TextMark {
    qsizetype from = 0;
    qsizetype length = 0;
    friend bool operator==(const TextMark&, const TextMark&) = default;
};

/// One note with the words looked for.
struct NoteFound {
    NoteOf of = NoteOf::Visit;
    qint64 id = 0;                  ///< of the record
    std::optional<ColonyId> colony; ///< of a transfer the giver, of a union the colony that ended
    std::optional<YardId> yard;     ///< of a yard, or of a result or treatment of a yard
    std::optional<Day> day;         ///< of a colony or queen the first; a yard has none
    QString text;                   ///< some two dozen words of the note around those found
    std::vector<TextMark> marks;    ///< what was found, within `text`, in its order
};

/// Newest first.
struct NotesFound {
    std::vector<NoteFound> notes;
    int count = 0;     ///< of all that have the words, as far as was looked
    bool more = false; ///< not all were looked at: those that were written last
};

} // namespace core
