#pragma once

#include "core/edit/after_union.h"
#include "ui/records/record_form.h"

#include <memory>

namespace ui::after {

/// A union that failed: what came of it, and the one question that this leaves. `day`: when it was seen; `note`: what
/// was answered of it already.
std::unique_ptr<records::RecordForm> failureForm(const core::edit::Session& book, core::ColonyId colony, core::Day day,
                                                 const QString& by, const QString& note);
/// A colony found without bees: its cause, and what of the brood was looked at for foulbrood. `colony`: with its name
/// the form begins.
std::unique_ptr<records::RecordForm> lossForm(const core::edit::Session& book, std::optional<core::ColonyId> colony,
                                              core::Day day, const QString& by);

/// What is to be said once a loss is written: of its comb, of those who decide.
QString afterLoss(core::edit::BroodFound brood);

/// A form that may write a loss.
class LossAsked {
public:
    virtual ~LossAsked() = default;
    /// What of the brood was looked at; not set: the values write no loss.
    virtual std::optional<core::edit::BroodFound> brood(const form::Values& values) const = 0;
};

} // namespace ui::after
