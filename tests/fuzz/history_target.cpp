#include "core/edit/history_codec.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <cmath>

// What a line of the history keeps, before it is packed: any bytes are a record, which is the same when it is written
// and read again, or are refused.

namespace tests::fuzz {

using namespace core;

namespace {

template <class Read> auto readOrNothing(const Read& read) {
    std::optional<decltype(read())> found;
    try {
        found = read();
    } catch (const Error& e) {
        needWellSaid(e);
        need(e.kind() == Error::Kind::Book, "a line that cannot be read is the book's fault");
    }
    return found;
}

bool hasNaN(const Row& row) {
    return std::ranges::any_of(
        row, [](const Value& v) { return std::holds_alternative<double>(v) && std::isnan(std::get<double>(v)); });
}

void readRecord(const QByteArray& packed) {
    const auto record = readOrNothing([&] { return edit::decode(packed); });
    const auto keys = readOrNothing([&] { return edit::decodeKeys(packed); });
    if (!record) return;
    need(keys && keys->rows.size() == record->rows.size(), "a line has the same rows by its keys");
    for (const RowChange& change : record->rows)
        if ((change.before && hasNaN(*change.before)) || (change.after && hasNaN(*change.after)))
            return; // equal to nothing
    need(edit::decode(edit::encode(*record)) == *record, "a line is read as it was written");
}

} // namespace

void historyOne(const QByteArray& input) {
    const QByteArray packed = qCompress(input, 1);
    readRecord(packed);
    readRecord(input); // as no packing at all
    for (const Table table : {Table::Visit, Table::Colony, Table::Setting})
        readOrNothing([&] { return edit::decodeRows(table, packed); });
}

} // namespace tests::fuzz
