#pragma once

#include "core/base/error.h"
#include "core/edit/session.h"

#include <QString>

#include <memory>

class QWidget;

namespace ui::window {

struct OpenedBook {
    std::unique_ptr<core::edit::Session> session;
    QString onlyRead; ///< why it can only be read, one sentence; empty: it can be written
};

/// For writing; where another holds the book or the disk forbids it, for reading only. A book of an older version is
/// brought up to date first, which `window` shows and can stop: no session then. Throws Error(Book).
OpenedBook openOrRead(const QString& path, const core::Clock& clock, QWidget& window);

/// "Ana on barn-laptop has this book open since 14:05: here it can only be read." What stood against writing, as a
/// sentence for the window.
QString onlyReadSince(const core::Error& against, const core::Clock& clock);

} // namespace ui::window
