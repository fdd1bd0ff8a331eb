#pragma once

#include "core/edit/book_copies.h"

#include <QString>

#include <vector>

namespace ui::copies {

/// Those of the copies that have, or may have, edits that the book has not, and that nobody has looked at on this
/// machine as they are now.
std::vector<core::edit::BookCopyFound> news(const QString& bookId, const std::vector<core::edit::BookCopyFound>& all);

/// Somebody has looked at them.
void know(const QString& bookId, const std::vector<core::edit::BookCopyFound>& all);

/// Somebody has made the file of this name, and is not told of it.
void knowFile(const QString& bookId, const QString& name);

} // namespace ui::copies
