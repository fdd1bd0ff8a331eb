#pragma once

#include "core/model/rows.h"
#include "core/model/snapshot.h"
#include "core/rules/colony_figures.h"
#include "core/rules/divide_checks.h"
#include "core/rules/facts.h"
#include "core/rules/merge_request.h"
#include "core/rules/plan.h"

#include <map>
#include <optional>
#include <vector>

namespace ui::desk {

/// A question kept in the book whose answer is marked on the plan.
struct Asked {
    core::Question question;
    std::vector<core::ColonyIx> found;
    int noFigure = 0; ///< living colonies of which a figure that it asks for is not recorded
};

/// The book as it stands on one day, and what the rules say of it: read and worked out once, shown by everything.
struct Reading {
    core::Snapshot snapshot;
    std::vector<core::rules::ColonyFacts> facts;   ///< one a living colony, in the snapshot's order
    core::rules::Plan plan;                        ///< of all yards, as its merge days ask
    std::vector<core::rules::MergeWish> wishes;    ///< the merge days of that day, one a yard that has one
    std::vector<core::rules::Unmet> unmet;         ///< of the wishes
    std::vector<core::rules::DivideDue> divideDue; ///< looks at new colonies that are due; all yards
    core::rules::PlanRequest request;              ///< what the plan was made by

    std::optional<core::ColonyIx> find(core::ColonyId colony) const; ///< living that day
    std::optional<core::YardIx> find(core::YardId yard) const;
    const core::rules::ColonyFacts& factsOf(core::ColonyIx colony) const {
        return facts[static_cast<size_t>(colony.value)];
    }
    std::vector<core::rules::Hold> holdsOf(core::ColonyIx colony) const;
    /// The merge day of the yard, where one is saved for the day.
    const core::rules::MergeWish* wishOf(core::YardId yard) const;
    /// The union that carries or hosts it.
    const core::rules::Union* unionOf(core::ColonyIx colony) const;

    /// The names of the questions on the plan that find it.
    QStringList askedOf(core::ColonyIx colony) const;
    /// What lists show of each colony, ended ones too; worked out when it is asked for.
    std::vector<core::rules::ColonyFigures> figures() const;

    std::map<core::ColonyId, core::ColonyIx> byId; ///< the living
    std::vector<Asked> asked;                      ///< questions marked on the plan, by name
};

/// Throws Error where the rules do.
Reading readingOf(core::Snapshot snapshot, std::vector<core::rules::MergeWish> wishes = {});

/// Asks those of the questions that are marked on the plan.
void askQuestions(Reading& reading, const std::vector<core::Question>& questions);

/// One line of the list of yards: how many hives, and what is to be done.
struct YardLine {
    core::YardId yard;
    QString name;
    int hives = 0;
    QString status; ///< "3 unions · 1 held", "not counted", "nothing to do"
};
std::vector<YardLine> yardLines(const Reading& reading);

} // namespace ui::desk
