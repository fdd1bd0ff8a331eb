#pragma once

#include <cstdlib>

namespace tests {

/// How often a test throws its dice: under sanitizers, where all takes three times as long, half as often; all of it
/// with YW_LONG=1 and in every other build. Each test that halves so says itself that the kinds of cases were reached.
inline int rounds(int all) {
#ifdef __SANITIZE_ADDRESS__
    return std::getenv("YW_LONG") ? all : (all + 1) / 2;
#else
    return std::getenv("YW_SHORT") ? (all + 1) / 2 : all; // to try the short form without sanitizers
#endif
}

} // namespace tests
