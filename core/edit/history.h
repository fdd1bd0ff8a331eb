#pragma once

#include "core/base/id.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

// What the book's history shows. Nothing here changes it.

namespace core::edit {

/// One line of the book's history.
struct HistoryLine {
    enum class Kind { Do, Undo, Redo };

    qint64 seq = 0;
    QDateTime at; ///< UTC
    QString by;
    QString text;
    QString reason; ///< of a correction
    Kind kind = Kind::Do;
    std::optional<qint64> of; ///< of an undo or redo: the `do` line
    bool takenBack = false;   ///< a `do` line whose edit is not in the book at present (filled in pages and details)
};

/// Which lines are asked for: all that is set must hold.
struct HistoryFilter {
    std::optional<ColonyId> colony; ///< a row names it, itself or through its visit
    std::optional<YardId> yard; ///< a row names it, or through its stand, or the colony's stay there on the row's day
    QString text;               ///< in the sentence, the name or the reason, without regard to case
    std::optional<QDateTime> from;
    std::optional<QDateTime> until; ///< before this
    friend bool operator==(const HistoryFilter&, const HistoryFilter&) = default;
};

/// Lines newest first, and where to read on.
struct HistoryPage {
    std::vector<HistoryLine> lines;
    std::optional<qint64> next; ///< give it as `before`; nullopt: that was all
};

/// One field of a record: from what to what, in words. nullopt: the record was not there, or is no longer.
struct FieldWords {
    QString field;
    std::optional<QString> from;
    std::optional<QString> to;
    friend bool operator==(const FieldWords&, const FieldWords&) = default;
};

/// What a line did to one record.
struct ChangeWords {
    enum class How { Added, Changed, TakenAway };

    QString what; ///< "Visit of K5 on 2026-09-14"
    How how = How::Changed;
    std::vector<FieldWords> fields; ///< of a new or lost record those that are recorded, else those that differ
};

struct HistoryDetail {
    HistoryLine line;
    std::vector<ChangeWords> changes;
    qint64 more = 0; ///< records of this line that are not among them
};

} // namespace core::edit
