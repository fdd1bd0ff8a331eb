#pragma once

#include <QByteArray>

#include <optional>

namespace core::edit {

/// What qCompress() packed. nullopt where it is none of that, or more than `most` bytes: a small prepared file would
/// otherwise fill the memory.
std::optional<QByteArray> unpacked(const QByteArray& packed, qint64 most);

} // namespace core::edit
