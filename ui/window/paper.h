#pragma once

#include "core/edit/session.h"
#include "ui/desk/reading.h"
#include "ui/print/paper_choice.h"

#include <QString>

#include <functional>
#include <optional>
#include <vector>

class QWidget;

namespace ui::window {

/// What goes to paper: one yard's merge day, or a sheet for its visits.
struct PaperJob {
    const core::edit::Session& session;
    const desk::Reading& reading;
    core::YardIx yard;
    print::PaperChoice choice = {};
    /// The merge day that the pages are of, as it is saved or will be once they went to paper; null: none.
    const core::rules::MergeWish* wish = nullptr;
    std::optional<core::ColonyId> colony = {}; ///< of a card
    std::vector<core::ColonyId> round = {};    ///< of a tally sheet: these alone, in this order; empty: all
};

/// The ways to paper; all throw Error. One that is empty has no button. True: it went to the printer.
struct Paper {
    std::function<bool(QWidget* parent, const PaperJob& job)> preview;
    std::function<bool(QWidget* parent, const PaperJob& job)> print;
    std::function<void(const PaperJob& job, const QString& path)> pdf;
};

} // namespace ui::window
