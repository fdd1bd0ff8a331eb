#pragma once

#include "core/edit/after_union.h"
#include "core/model/snapshot.h"
#include "core/rules/plan.h"

#include <QCoreApplication>

#include <map>
#include <optional>
#include <vector>

namespace ui::after {

/// Translation context of the step.
struct Afterwards {
    Q_DECLARE_TR_FUNCTIONS(Afterwards)
};

/// What was answered of a union and is not written yet.
struct Answers {
    std::optional<bool> paperGone, oneQueen, eggs;
    QString text() const;  ///< "paper gone · queen? · eggs?"
    QString known() const; ///< "paper gone"
};

/// One check that is due, as it is shown; or the heading of those that follow.
struct DueRow {
    QString heading; ///< not empty: a heading alone
    core::ColonyId colony;
    QString name;
    QString yard;
    core::rules::DueKind what = core::rules::DueKind::UnionCheck;
    core::Day on;
    int late = 0;    ///< days that it is overdue
    QString title;   ///< "K4: look whether the union took"
    QString why;     ///< with whom, since when
    QString product; ///< of a treatment that is to come out
    Answers answers;
    bool ended = false;                  ///< it lives no more
    QString when(core::Day today) const; ///< "25 Sep, 3 days over"
    QString spoken(core::Day today) const;
};

/// What is due on the snapshot's day (rule 4.14), in the order of the rule: overdue first. `only`: one yard.
std::vector<DueRow> dueRows(const core::Snapshot& s, const std::vector<core::rules::Due>& due,
                            std::optional<core::YardId> only, const std::map<core::ColonyId, Answers>& answers);

/// What is due, by the rule alone.
std::vector<core::rules::Due> dueOn(const core::Snapshot& s);

} // namespace ui::after
