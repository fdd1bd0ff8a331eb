#pragma once

#include "core/model/rows.h"
#include "core/rules/question.h"

#include <QString>

namespace ui::find {

QString whatText(core::rules::AskWhat what); ///< "days without a visit"
QString howText(core::rules::AskHow how);    ///< "more than"
/// "eggs seen", "September", "yes" of the value of a choice.
QString choiceText(core::rules::AskWhat what, int position);
/// "weight, kg less than 32 and weighed in is September"; figures in kilograms and frames.
QString askText(const core::rules::Ask& ask);

/// A question that is offered: under a name, not kept yet (its id is 0).
core::Question readyQuestion(core::rules::ReadyAsk which);

} // namespace ui::find
