#pragma once

#include <cstdlib>

/// Whether YW_MUTANT asks for this mutant; see tests/mutate.sh.
inline bool ywMutant(int number) {
    static const int chosen = [] {
        const char* asked = std::getenv("YW_MUTANT");
        return asked ? std::atoi(asked) : 0;
    }();
    return chosen == number;
}
