#pragma once

#include "core/base/error.h"

namespace core {

/// The content of a book is not as this program writes it; some of it may be read all the same (core/edit/salvage.h).
/// Caught by reference, never copied as an Error: the type is what tells it.
class Damaged : public Error {
public:
    explicit Damaged(const QString& userMessage, const QString& detail = {}) : Error(Kind::Book, userMessage, detail) {}
};

/// A file that does not say that it is a book of this program: it never was one, or its beginning is lost.
class NoBook : public Error {
public:
    explicit NoBook(const QString& userMessage, const QString& detail = {}) : Error(Kind::Book, userMessage, detail) {}
};

} // namespace core
