#include "tests/fuzz/target.h"

#include <algorithm>
#include <array>
#include <cstring>

namespace tests::fuzz {

namespace {

constexpr std::array kTargets = {Target{"csv", csvOne, 4096},
                                 Target{"mapping", mappingOne, 4096},
                                 Target{"settings", settingsOne, 1024},
                                 Target{"book", bookOne, 1024, true},
                                 Target{"drafts", draftsOne, 2048},
                                 Target{"history", historyOne, 1024},
                                 Target{"salvage", salvageOne, 1024, true},
                                 Target{"words", wordsOne, 512}};

} // namespace

std::span<const Target> targets() { return kTargets; }

const Target* targetNamed(const char* name) {
    const auto at = std::ranges::find_if(kTargets, [&](const Target& t) { return std::strcmp(t.name, name) == 0; });
    return at == kTargets.end() ? nullptr : &*at;
}

} // namespace tests::fuzz
