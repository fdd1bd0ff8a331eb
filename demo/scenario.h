#pragma once

#include "core/model/rows.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace demo {

/// The story of the fall of 2026, by labels; the caller turns them into ids.
struct StoryColony {
    QString label;
    QString box = QStringLiteral("langstroth-10");
    int broodBoxes = 1;
    std::optional<core::Day> since; ///< not set: as all others
    std::optional<core::Day> ended;
    std::optional<core::EndKind> end;
};
struct StoryVisit {
    QString label;
    core::Visit visit;
};
struct StoryTransfer {
    QString from, to;
    core::Transfer transfer;
};
struct StoryResult {
    QString label; ///< empty: of `yard`
    QString yard;
    core::Result result;
};
struct StoryTreatment {
    QString label;
    QString yard;
    core::Treatment treatment;
};
struct StorySample {
    QString label;
    core::Sample sample;
    QString answer; ///< paper of the story's result that answers it; empty: none
};
/// Kit off a colony, counted in its yard, and how some of it ended.
struct StoryKit {
    QString label;
    QString yard;
    core::Kit kit;
};
struct StoryKitEnd {
    QString label;
    QString yard;
    core::KitEnd end;
};
struct StoryLineage {
    QString colony, into;
    core::Lineage lineage;
};
struct Story {
    std::vector<StoryColony> colonies; ///< only those that differ from the plain: one box langstroth-10, living
    std::vector<StoryVisit> visits;
    std::vector<StoryTransfer> transfers;
    std::vector<StoryResult> results;
    std::vector<StoryTreatment> treatments;
    std::vector<StoryLineage> lineage;
    std::vector<StorySample> samples;
    std::vector<StoryKit> kit;
    std::vector<StoryKitEnd> kitEnds;
    QStringList unchecked; ///< whose brood nobody has looked through this season

    const StoryColony* colony(const QString& label) const;
    /// Its count in September 2026; nullptr where it has none.
    const StoryVisit* fallCountOf(const QString& label) const;
    /// The first day of a colony that the story begins; nullopt for the others.
    std::optional<core::Day> sinceOf(const QString& label) const;
};

/// Larkspur Bottom (A): the merge day, clean. Thistle Acre (B): European foulbrood, a doubt, an order, near Quarry
/// Ledge (C): American foulbrood confirmed and suspected. Upper Tansy (D): spring, divides, a union done. Foxglove
/// Rise (E): too small to help itself.
Story fallStory();

/// Records of the story other than the visits (scenario_records.cpp).
void addStoryRecords(Story& story);
/// Samples on their way, and kit of Quarry Ledge that is kept apart (scenario_papers.cpp).
void addStoryPapers(Story& story);

} // namespace demo
