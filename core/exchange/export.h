#pragma once

#include "core/edit/session.h"

#include <QString>

namespace core::exchange {

/// Writes the ten files into folder `dir`, which is made where it is missing; files that are there are replaced, each
/// whole or not at all. Rows are in natural order of yard and label, then by day, so that the same book gives the same
/// bytes, and importing the ten into a new book and exporting that gives them again. Where the book has kit,
/// `kit.csv` is written too. Throws Error(Book): the book fails, or the folder or a file cannot be written.
void exportBook(edit::Session& session, const QString& dir);

} // namespace core::exchange
