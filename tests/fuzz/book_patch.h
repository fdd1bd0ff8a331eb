#pragma once

#include <QByteArray>

#include <optional>
#include <random>

// Books as a stranger might give them: a sound one, and what is changed in it, a line each. Small, and nearer to what
// goes wrong than bytes at random. An input that begins as a database file does is one. The lines:

// clang-format off
//   base N              golden book of version N (the first line; else 7)
//   cell T R C VALUE    table, row, column by their place (modulo); VALUE: n, i123, r1.5, tText, xHEX (text), bHEX (blob)
//   gone T R            a row deleted
//   sql TEXT            any statements; checks and foreign keys are off, the schema can be written
//   hist N HEX          what line N of the history did: these bytes, packed
//   byte OFFSET HEX     bytes of the file written over, after all of the above
//   copy A B, swap A B  page A over page B; both exchanged
//   cut N               the file ends there
//   journal HEX, wal HEX   a file beside the book
//   super TEXT          a journal beside the book that ends with the name of another file, as SQLite writes it
// clang-format on

namespace tests::fuzz {

struct PatchedBook {
    QByteArray book;
    std::optional<QByteArray> journal;
    std::optional<QByteArray> wal;
};

/// `other`: the file that a journal is made to name. nullopt: the changes make no file.
std::optional<PatchedBook> patchedBook(const QByteArray& input, const QByteArray& other);

} // namespace tests::fuzz
