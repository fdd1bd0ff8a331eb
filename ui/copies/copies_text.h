#pragma once

#include "core/edit/book_copies.h"

#include <QString>

namespace ui::copies {

/// In a list: "went on apart".
QString standText(const core::edit::BookCopyFound& copy);

/// What was found beside a book as it was opened: one sentence or two.
QString newsText(const std::vector<core::edit::BookCopyFound>& news);

/// "Both begin with the same 212 changes, the last of them on 2026-09-14 18:02. Since then …"
QString comparedText(const core::edit::BooksCompared& compared);

/// All of it as plain text, to paste or print: what to write into one book by hand from the other.
QString wholeText(const QString& copyName, const core::edit::BooksCompared& compared);

QString stampText(const QDateTime& utc);

} // namespace ui::copies
