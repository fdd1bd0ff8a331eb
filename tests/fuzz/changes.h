#pragma once

#include "tests/fuzz/target.h"

#include <random>
#include <vector>

namespace tests::fuzz {

/// What a target is given to begin with: the files of its corpus, and words that mean something to it.
struct Stock {
    std::vector<QByteArray> corpus;
    std::vector<QByteArray> words;
};
Stock stockOf(const Target& target);

/// An input of the corpus with a few things changed at random; the same `random` gives the same on every machine.
QByteArray changed(const Target& target, const Stock& stock, std::mt19937& random);

} // namespace tests::fuzz
