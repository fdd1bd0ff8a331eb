#pragma once

#include "core/base/day.h"
#include "core/report/sheet.h"

#include <QString>

#include <variant>

// The short code on every page: it ties the paper to the book, the yard, the day and the revision, so that a loose page
// can be told apart from one of an older plan. The same on all pages of one print; the page's number stands beside it.
//
// Sixteen characters in four groups, "7K2M-93QD-RXA4-H6WB", of 32 that are not mistaken for each other (no 0, 1, I, O).
// Fifteen carry 75 bits, first to last:
//   20 bits  mark of the book (bookMark of its uuid)
//   14 bits  yard, its number in the book (16383: that or more)
//   16 bits  day, counted from 2000-01-01 (0: that or before)
//    2 bits  variant of the merge day; 0: none is saved
//   20 bits  revision: of the merge day, or of the book where none is saved (1048575: that or more)
//    3 bits  which sheet, in the order of Sheet
// The last is a check letter: the sum over the field of 32 elements (x^5 + x^2 + 1) of each character times a power of
// its own. It betrays every slip in one character and every two that are swapped.

namespace core::report {

struct PageCode {
    quint32 book = 0; ///< of bookMark
    qint64 yard = 1;
    Day day;
    int variant = 0; ///< 1 to 3, 0: no merge day is saved
    qint64 revision = 0;
    Sheet sheet = Sheet::MergeDay;
    friend bool operator==(const PageCode&, const PageCode&) = default;
};

/// Twenty bits of a book's uuid: two books in a million share one.
quint32 bookMark(const QString& uuid);

QString pageCodeText(const PageCode& code);

/// What the typed code says: groups apart or not, small letters or large. Else why it cannot be one.
enum class CodeFault { Length, Character, Check };
std::variant<PageCode, CodeFault> readPageCode(const QString& typed);

} // namespace core::report
