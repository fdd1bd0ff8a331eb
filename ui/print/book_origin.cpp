#include "ui/print/book_origin.h"

#include "ui/print/paper_choice.h"

namespace ui::print {

qint64 revisionOf(const core::edit::Session& book) {
    const auto history = book.history(1);
    return history.empty() ? 0 : history.front().seq;
}

core::report::PageOrigin originOf(const core::edit::Session& book) {
    return {usualPaper(), book.bookTitle(), revisionOf(book), book.clock().today()};
}

} // namespace ui::print
