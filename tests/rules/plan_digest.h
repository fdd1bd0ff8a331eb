#pragma once

#include "core/rules/plan.h"

#include <QString>
#include <QStringList>

#include <map>

namespace tests::rules {

/// All that a plan says but places, headings and sentences, a line a thing; labels by `names` (the same where missing),
/// days as days from the plan's.
QStringList digestOf(const core::Snapshot& s, const core::rules::Plan& plan,
                     const std::map<QString, QString>& names = {});

/// All that is left out of that: every sentence, place and heading.
QStringList sentencesOf(const core::rules::Plan& plan);

} // namespace tests::rules
