#pragma once

#include "core/edit/session.h"

#include <QString>

#include <vector>

namespace ui::records {

/// QueenEnd: the end of a queen that has one, of the same row as the Queen.
enum class RecordKind {
    Began,
    Queen,
    Carry,
    Treatment,
    Sample,
    Result,
    Transfer,
    Feeding,
    MiteFall,
    Visit,
    QueenEnd,
    Lineage,
    End,
    KitEnd
};

/// One record of a colony, or of a yard where it stood, as its card lists it.
struct RecordRow {
    RecordKind kind = RecordKind::Visit;
    qint64 id = 0; ///< of the record's row; of Began and End the colony's
    core::Day day;
    QString title; ///< "Visit", "Treatment of the yard"
    QString words;
    bool ofYard = false;
    friend bool operator==(const RecordRow&, const RecordRow&) = default;
};

/// All records of a colony, living or ended, newest first: its beginning, queens, carries, visits, feedings, counts of
/// fallen mites, transfers,
/// samples, results (and those of yards where it stood), treatments (and those of its yard), unions, shake-outs and
/// divides on either side, its end, the ends of kit that came off it. Throws Error(Book).
std::vector<RecordRow> recordsOf(const core::edit::Session& book, core::ColonyId colony);

} // namespace ui::records
