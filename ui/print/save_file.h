#pragma once

#include "core/base/error.h"

class QSaveFile;

namespace ui::print {

/// Error(Book) with the file's name and why.
core::Error cannotWrite(const QSaveFile& out);

} // namespace ui::print
