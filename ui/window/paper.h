#pragma once

#include "core/edit/session.h"
#include "ui/desk/reading.h"

#include <QString>

#include <functional>

class QWidget;

namespace ui::window {

/// What goes to paper: one yard's merge day.
struct PaperJob {
    const core::edit::Session& session;
    const desk::Reading& reading;
    core::YardIx yard;
};

/// The ways to paper; all throw Error. One that is empty has no button.
struct Paper {
    std::function<void(QWidget* parent, const PaperJob& job)> preview;
    std::function<void(QWidget* parent, const PaperJob& job)> print;
    std::function<void(const PaperJob& job, const QString& path)> pdf;
};

} // namespace ui::window
