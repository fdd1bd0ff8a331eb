#pragma once

#include <QString>

#include <functional>

class QSaveFile;

namespace ui::print {

/// Fills a file beside `file` and renames it when whole. Throws Error(Book) with its name and why where it cannot be
/// opened, filled (false) or kept; then nothing is there that was not.
void writeFile(const QString& file, const std::function<bool(QSaveFile&)>& fill);

} // namespace ui::print
