#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/quantity.h"

#include <QString>

#include <optional>
#include <vector>

namespace core {

/// Which visits a list shows: those that agree with all that is said.
struct VisitFilter {
    std::optional<YardId> yard; ///< hives that stood in it on the visit's day
    std::optional<Day> from;
    std::optional<Day> until;
    QString label; ///< part of the colony's label, without regard to case
    QString by;    ///< part of the name, without regard to case (of A to Z)
    bool withNote = false;
    bool withSigns = false;
    QString words; ///< in the note, as typed (store/note_words.h)
    friend bool operator==(const VisitFilter&, const VisitFilter&) = default;
};

/// By what a list of visits is sorted. What is not recorded comes last, either way round.
enum class VisitKey { Day, Label, Bees, Stores, Queen, BroodFrames, Weight, Mites, By };

struct VisitOrder {
    VisitKey key = VisitKey::Day;
    bool descending = true;
    friend bool operator==(const VisitOrder&, const VisitOrder&) = default;
};

/// Of all visits that the filter lets through.
struct VisitTotals {
    qint64 visits = 0;
    qint64 colonies = 0;
    qint64 withNote = 0;
    qint64 weighed = 0;
    qint64 grossSum = 0; ///< decagrams, of those weighed
    qint64 miteSamples = 0;
    qint64 mites = 0; ///< in all samples
    qint64 bees = 0;  ///< in all samples
};

} // namespace core
