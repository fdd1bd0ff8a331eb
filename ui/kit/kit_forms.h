#pragma once

#include "core/edit/kit.h"
#include "ui/records/record_form.h"

#include <memory>

namespace ui::kit {

/// A pile as it is counted: `pile` is where the form begins; `part` empty: a kind is asked for.
std::unique_ptr<form::Form> countForm(const core::edit::Session& book, const core::rules::KitPlace& pile,
                                      std::optional<int> count);
/// Some of the pile come to another state or place; `count` are there.
std::unique_ptr<form::Form> moveForm(const core::edit::Session& book, const core::rules::KitPlace& pile, int count);

} // namespace ui::kit
