#pragma once

#include <map>
#include <set>
#include <string>

#include "tests/support/slow_book.h"

/// A second reading of the rules of holds (4.4, with 4.0 for places and half years), written from their text alone and
/// kept slow and plain, so that the real one can be compared with it.
namespace tests::support {

/// The kinds of holds of every colony living on `onDay`, by its label; an empty set where it has none.
std::map<std::string, std::set<std::string>> slowHolds(const SlowBook& book, int onDay);

} // namespace tests::support
