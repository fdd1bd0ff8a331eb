#pragma once

#include <string_view>

namespace core::exchange {

/// Position of the first byte that is not part of well-formed UTF-8 (no overlong forms, no surrogates), or npos.
size_t firstBadUtf8(std::string_view text);

} // namespace core::exchange
