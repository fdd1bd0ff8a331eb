#pragma once

#include "core/model/row.h"

#include <QString>

namespace core::exchange {

/// A row's cells as one text: equal for equal rows only.
QString rowKey(const Row& row);

} // namespace core::exchange
