#pragma once

#include "core/model/row_codec.h"

namespace core::edit {

inline qint64 idValue(qint64 id) { return id; }
template <class Tag> qint64 idValue(Id<Tag> id) { return id.value; }

template <class T> RowChange added(const T& now) { return {tableOf<T>(), idValue(now.id), std::nullopt, toRow(now)}; }
/// `old` and `now` are of one id.
template <class T> RowChange changed(const T& old, const T& now) {
    return {tableOf<T>(), idValue(old.id), toRow(old), toRow(now)};
}
template <class T> RowChange deleted(const T& old) { return {tableOf<T>(), idValue(old.id), toRow(old), std::nullopt}; }

} // namespace core::edit
