#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

/// Invented small books in which holds come and go, for comparing two readings of the rules of holds with each other.
namespace tests::support {

struct RandomBook {
    std::map<std::string, std::string> files; ///< "visits.csv" → its text; a file without rows is left out
    std::vector<std::string> days;            ///< ISO days worth asking for, in order: limits and the days beside them
};

/// A valid book of 2 or 3 yards, 6 to 14 colonies and some 60 to 200 rows over three years: many events of one day, and
/// many exactly 21, 30, 42, 60, 150, 365 or 548 days apart, or a day more or less. The same seed gives the same book on
/// every machine.
RandomBook randomBook(std::uint64_t seed);

/// Writes the files into `folder`, which is made if missing.
void writeRandomBook(const RandomBook& book, const std::filesystem::path& folder);

} // namespace tests::support
