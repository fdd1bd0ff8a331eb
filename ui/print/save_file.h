#pragma once

#include <QString>

#include <functional>

class QIODevice;

namespace ui::print {

/// Fills a file and gives it its name when whole. Throws Error(Book) with its name and why where it cannot be
/// filled (false), written or kept, or where a book stands; then nothing is there that was not.
void writeFile(const QString& file, const std::function<bool(QIODevice&)>& fill);

} // namespace ui::print
