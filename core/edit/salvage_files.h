#pragma once

#include "core/edit/salvage.h"

// Names of what a salvage makes: the new book, and the account as a text beside it.

namespace core::edit {

QString salvageTextPath(const QString& book);
/// Throws Error(Book).
void writeSalvageText(const QString& path, const QString& text);

/// Throws Error(Book) where the book or its text cannot be made since something is there.
void needNewName(const QString& book);
/// The same of the place that was said beforehand, which may be the damaged book's own.
void needOtherPlace(const SalvageFrom& from);

} // namespace core::edit
