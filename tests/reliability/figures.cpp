#include "tests/reliability/figures.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>

namespace tests::reliability {

namespace {

const char* wordOf(Sum sum) {
    constexpr const char* kWords[] = {"-", "cuts", "faults", "kills", "inputs", "edits", "losses"};
    return kWords[static_cast<size_t>(sum)];
}

unsigned diceOfRun() {
    const char* given = std::getenv("YW_SEED");
    const unsigned seed =
        given ? static_cast<unsigned>(std::strtoul(given, nullptr, 10)) : std::random_device()() % 1'000'000'000;
    std::printf("seed of this run: YW_SEED=%u\n", seed);
    std::fflush(stdout);
    return seed;
}

} // namespace

bool longRun() { return std::getenv("YW_LONG") != nullptr; }

unsigned seedOfRun() {
    static const unsigned seed = diceOfRun();
    return seed;
}

void figure(const char* harness, const char* what, qint64 value, Sum sum) {
    std::printf("%s: %s: %lld\n", harness, what, static_cast<long long>(value));
    if (const char* path = std::getenv("YW_FIGURES"))
        std::ofstream(path, std::ios::app) << harness << '\t' << what << '\t' << value << '\t' << wordOf(sum) << '\n';
}

} // namespace tests::reliability
