#pragma once

#include <QString>

namespace core::exchange {

/// Writes the ten files, header only, into folder `dir`, which is made where it is missing; files that are there are
/// replaced. Throws Error(Book) where one cannot be written.
void writeTemplates(const QString& dir);

} // namespace core::exchange
