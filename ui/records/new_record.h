#pragma once

#include "core/edit/session.h"
#include "ui/form/form.h"

#include <QString>

#include <memory>
#include <vector>

namespace ui::records {

/// What can be noted of a colony besides a visit.
enum class NewRecord {
    Feeding,
    Transfer,
    Sample,
    Result,
    Treatment,
    MiteFall,
    Queen,
    QueenEnd,
    Union,
    Divide,
    End,
    ColonyData,
    NewColony
};

/// One line of the menu.
struct NewRecordWords {
    NewRecord what;
    QString text; ///< with its mnemonic
    QString keys;
    QString tip;
};
std::vector<NewRecordWords> newRecordWords();

/// Whether it can be noted of a colony that lives, or of one that has ended.
bool isOf(NewRecord what, const core::Colony& colony);

/// The form of a new record of this colony, begun on `day`. Throws Error(BadData) with a sentence where it cannot be.
/// `selected`: feed is given to all of them, a sample taken of all of them alike where there are several.
std::unique_ptr<form::Form> newForm(const core::edit::Session& book, NewRecord what, const core::Colony& colony,
                                    core::Day day, const std::vector<core::ColonyId>& selected = {});

} // namespace ui::records
