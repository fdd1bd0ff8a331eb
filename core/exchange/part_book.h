#pragma once

#include <QString>

namespace core::exchange {

/// The path of a new book under another name, in the folder of the book that it becomes when keep() is called; without
/// that it is removed again. So an import makes its book whole or not at all.
class PartBook {
public:
    /// Throws Error(Book) where the folder of `path` is missing or cannot be written.
    explicit PartBook(const QString& path);
    ~PartBook();
    PartBook(const PartBook&) = delete;
    PartBook& operator=(const PartBook&) = delete;

    const QString& path() const { return m_part; }
    /// The book must be closed. Throws Error(Book) where there is a file of its name meanwhile.
    void keep();

private:
    QString m_path;
    QString m_part;
};

} // namespace core::exchange
