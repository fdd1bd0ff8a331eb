#include "tests/fuzz/target.h"

#include <QCoreApplication>

#include <cstring>

// One target as libFuzzer drives it; built once for each, YW_FUZZ_TARGET its name.

extern "C" size_t LLVMFuzzerMutate(uint8_t* data, size_t size, size_t most);

namespace {

const tests::fuzz::Target& target() {
    static const tests::fuzz::Target& it = *tests::fuzz::targetNamed(YW_FUZZ_TARGET);
    return it;
}

QByteArray bytesOf(const uint8_t* data, size_t size) {
    return QByteArray(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
}

} // namespace

extern "C" int LLVMFuzzerInitialize(int* argc, char*** argv) {
    static QCoreApplication app(*argc, *argv); // finds the database's driver
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size) {
    target().one(bytesOf(data, size));
    return 0;
}

extern "C" size_t LLVMFuzzerCustomMutator(uint8_t* data, size_t size, size_t most, unsigned int seed) {
    std::mt19937 random(seed);
    if (!target().patches || random() % 4 == 0) return LLVMFuzzerMutate(data, size, most);
    const QByteArray changed =
        tests::fuzz::changedPatch(bytesOf(data, size), random).left(static_cast<qsizetype>(most));
    std::memcpy(data, changed.constData(), static_cast<size_t>(changed.size()));
    return static_cast<size_t>(changed.size());
}
