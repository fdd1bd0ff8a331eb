#pragma once

#include "core/base/progress.h"

#include <QString>

#include <functional>

class QWidget;

namespace ui::busy {

/// Long work that touches neither the window nor the window's session, in a thread of its own; the window shows how far
/// it is, is painted, takes no other input, and can stop it. Returns when it is over: false where it was stopped.
/// Throws what the work throws. What the work reads must not change meanwhile: give it a copy, or a session of its own.
bool run(QWidget& window, const QString& sentence, const std::function<void(const core::Progress&)>& work);

} // namespace ui::busy
