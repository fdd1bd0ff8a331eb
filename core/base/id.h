#pragma once

#include <QtGlobal>

#include <compare>

namespace core {

/// The rowid of one table's row, > 0. One type a table: mixing two does not compile. "None" is std::optional.
template <class Tag> struct Id {
    qint64 value = 0;
    friend auto operator<=>(Id, Id) = default;
};

using YardId = Id<struct YardTag>;
using StandId = Id<struct StandTag>;
using BoxKindId = Id<struct BoxKindTag>;
using ColonyId = Id<struct ColonyTag>;
using PlacementId = Id<struct PlacementTag>;
using VisitId = Id<struct VisitTag>;
using TransferId = Id<struct TransferTag>;
using ResultId = Id<struct ResultTag>;
using TreatmentId = Id<struct TreatmentTag>;
using LineageId = Id<struct LineageTag>;
using PersonId = Id<struct PersonTag>;
using FixedThingId = Id<struct FixedThingTag>;
using MergeDayId = Id<struct MergeDayTag>;
using MergeChoiceId = Id<struct MergeChoiceTag>;
using MergeStripId = Id<struct MergeStripTag>;
using DivideChoiceId = Id<struct DivideChoiceTag>;
using DivideStripId = Id<struct DivideStripTag>;
using FeedingId = Id<struct FeedingTag>;
using QueenId = Id<struct QueenTag>;
using FileMappingId = Id<struct FileMappingTag>;
using PhraseId = Id<struct PhraseTag>;
using QuestionId = Id<struct QuestionTag>;
using SampleId = Id<struct SampleTag>;
using MiteFallId = Id<struct MiteFallTag>;
using StripsOutId = Id<struct StripsOutTag>;
using KitEndId = Id<struct KitEndTag>;
using NotifiableId = Id<struct NotifiableTag>;
using KeeperId = Id<struct KeeperTag>;

} // namespace core
