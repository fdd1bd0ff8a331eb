#pragma once

#include <cstdint>

namespace demo {

/// A number that depends on its four arguments alone: the same book for the same seed, in any order of asking.
/// Source: the finalizer of splitmix64 (Steele, Lea, Flood 2014), from memory.
inline std::uint64_t mixed(std::uint64_t seed, std::uint64_t a, std::uint64_t b, std::uint64_t c) {
    std::uint64_t x =
        seed + 0x9e3779b97f4a7c15U * (a + 1) + 0xbf58476d1ce4e5b9U * (b + 1) + 0x94d049bb133111ebU * (c + 1);
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9U;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebU;
    return x ^ (x >> 31);
}

/// 0..range − 1
inline int chance(int range, std::uint64_t seed, std::uint64_t a, std::uint64_t b, std::uint64_t c = 0) {
    return static_cast<int>(mixed(seed, a, b, c) % static_cast<std::uint64_t>(range));
}

} // namespace demo
