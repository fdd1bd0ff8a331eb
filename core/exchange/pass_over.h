#pragma once

#include "core/exchange/ledger.h"
#include "core/exchange/row_key.h"
#include "core/model/row_codec.h"

#include <map>
#include <utility>
#include <vector>

namespace core::exchange {

/// Passes over as many of equal rows as the book has; those beyond are new. `toBook`: the row of an entry with the ids
/// of the book; nothing where a colony or yard is new.
template <class T, class Draft, class ToBook>
void passOver(Ledger& ledger, FileKind kind, std::vector<RecordEntry<Draft>>& entries, ToBook toBook) {
    std::map<QString, qint64> asked;
    std::vector<QString> keys(entries.size());
    for (size_t i = 0; i < entries.size(); ++i) {
        const auto row = toBook(entries[i]);
        if (!row) continue;
        keys[i] = rowKey(toRow(*row));
        asked.emplace(keys[i], 0);
    }
    if (!asked.empty()) {
        ledger.c.eachRow(tableOf<T>(), [&](qint64, Row&& cells) {
            if (const auto found = asked.find(rowKey(cells)); found != asked.end()) ++found->second;
        });
    }
    std::vector<RecordEntry<Draft>> kept;
    for (size_t i = 0; i < entries.size(); ++i) {
        if (!keys[i].isEmpty() && asked[keys[i]]-- > 0)
            ++ledger.count(kind).passedOver;
        else
            kept.push_back(entries[i]);
    }
    ledger.count(kind).added += static_cast<qint64>(kept.size());
    entries = std::move(kept);
}

} // namespace core::exchange
