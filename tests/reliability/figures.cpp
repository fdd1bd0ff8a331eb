#include "tests/reliability/figures.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>

namespace tests::reliability {

bool longRun() { return std::getenv("YW_LONG") != nullptr; }

void figure(const char* harness, const char* what, qint64 value) {
    std::printf("%s: %s: %lld\n", harness, what, static_cast<long long>(value));
    if (const char* path = std::getenv("YW_FIGURES"))
        std::ofstream(path, std::ios::app) << harness << '\t' << what << '\t' << value << '\n';
}

} // namespace tests::reliability
