#pragma once

#include "tests/exchange/workbench.h"

#include <random>
#include <string>
#include <vector>

namespace tests::exchange {

/// Files that make a valid book, with a name for messages.
struct Sample {
    std::string name;
    Texts files;
};

/// The three worked yards of tests/data/yards.
std::vector<Sample> workedYards();
/// The cases of tests/data/hold-stories.json as files.
std::vector<Sample> holdStories();
/// A random book, the same for the same seed.
Sample randomSample(unsigned seed);

/// A number from 0 to below `count`: the same on every machine for the same seed.
size_t below(std::mt19937& random, size_t count);
/// The same rows, their order and that of the columns mixed; no cell holds a line end or a quote.
Texts shuffled(const Texts& files, std::mt19937& random);

/// The first row that differs, of each; empty where the lists are the same.
QString firstDifference(const QStringList& a, const QStringList& b);
/// Every row of every table of the book, ids too, without its history.
QStringList rowsOf(const Workbench& bench);

} // namespace tests::exchange
