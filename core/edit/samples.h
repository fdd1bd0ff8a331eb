#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <optional>
#include <vector>

// Samples on their way to a laboratory. A sample itself holds and lifts nothing: its answer does, which is a result of
// its own, dated the day that the sample was taken. So a sample that is answered agrees with its result in colony,
// disease and day; where the one's day is put right, the other's follows. A sample may be taken of what a colony left
// behind (comb, dead bees, honey, debris): not before the colony began, but after its end too. Throws Error(BadData)
// with one sentence where it cannot be.

namespace core::edit {

/// Its id is given; it is not answered and not given up.
ChangeSet takeSample(const EditContext& c, const Sample& sample);
/// One of each colony, all else alike; one undo. Empty: none.
ChangeSet takeSamples(const EditContext& c, const std::vector<Sample>& samples);
/// `now.id` names it; its answer stays as it is. Of one that is answered neither colony nor disease changes.
ChangeSet changeSample(const EditContext& c, const Sample& now);
/// All were sent that day, to the laboratory that each names; one undo. Those sent before are refused.
ChangeSet sendSamples(const EditContext& c, const std::vector<SampleId>& samples, Day day);

/// What a laboratory wrote of a sample.
struct SampleAnswer {
    bool positive = false;
    QString by; ///< who says so; empty: the laboratory that it went to
    QString paper;
    QString note;
};
/// Writes the result and names it as the sample's answer. One that was given up is answered all the same.
ChangeSet answerSample(const EditContext& c, SampleId id, const SampleAnswer& answer);
/// Lost, spoilt or never answered: no answer is awaited from that day on.
ChangeSet giveSampleUp(const EditContext& c, SampleId id, Day day);
/// The sample goes; a result that answered it stays in the book by itself.
ChangeSet takeBackSample(const EditContext& c, SampleId id);

// For the edits of results.

/// Adds to the change, which writes the result `r` of a laboratory: the one sample that awaits just this answer (of its
/// colony, disease and day) has it. Several such samples: none of them is guessed.
void answerAwaited(const EditContext& c, const Result& r, ChangeSet& change);
/// Adds to the change, which alters `old`: the sample that it answered follows its day; where it is no longer an answer
/// of a laboratory to that sample, or is taken back (`now` not set), the sample is awaited again.
void followAnswer(const EditContext& c, const Result& old, const std::optional<Result>& now, ChangeSet& change);

} // namespace core::edit
