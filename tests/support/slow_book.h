#pragma once

#include <cstddef>
#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

/// The rows that holds rest on, straight from the CSV files: standard library only, days counted from 1970-01-01,
/// colonies and yards named by their row's index, columns that no hold reads left out.
namespace tests::support {

struct SlowYard {
    std::string yard;
    std::optional<double> latitudeDeg;
};

struct SlowColony {
    std::string label;
    std::size_t yard = 0;
    int since = 0;
    std::optional<int> ended; ///< as in its own row; unions and shake-outs of the lineage end it too
    std::string end;
};

struct SlowVisit {
    std::size_t colony = 0;
    int day = 0;
    std::optional<int> broodFrames;
    std::optional<int> broodChecked;
    std::set<std::string> signs;
};

struct SlowTransfer {
    int day = 0;
    std::size_t from = 0;
    std::size_t to = 0;
    std::string what;
};

struct SlowResult {
    std::optional<std::size_t> colony;
    std::optional<std::size_t> yard;
    int day = 0;
    std::string disease;
    std::string result;
    std::string method;
};

struct SlowTreatment {
    std::optional<std::size_t> colony;
    std::optional<std::size_t> yard;
    int day = 0;
    bool antibiotic = false;
};

struct SlowLineage {
    int day = 0;
    std::string how;
    std::size_t colony = 0;
    std::size_t into = 0;
};

struct SlowPlacement {
    std::size_t colony = 0;
    int day = 0;
    std::size_t yard = 0;
};

struct SlowBook {
    std::vector<SlowYard> yards;
    std::vector<SlowColony> colonies;
    std::vector<SlowVisit> visits;
    std::vector<SlowTransfer> transfers;
    std::vector<SlowResult> results;
    std::vector<SlowTreatment> treatments;
    std::vector<SlowLineage> lineage;
    std::vector<SlowPlacement> placements;
    std::map<std::string, int> settings; ///< the whole-number ones
};

/// Days since 1970-01-01 of an ISO day (`2026-09-20`), and back. Throws std::runtime_error on anything else.
int slowDay(const std::string& iso);
std::string slowIso(int day);

/// Reads yards.csv, colonies.csv, visits.csv, transfers.csv, results.csv, treatments.csv, lineage.csv, placements.csv
/// and settings.csv of `folder`; a missing file has no rows. The book is taken to be valid: only what cannot be
/// resolved throws (std::runtime_error). Labels are folded in ASCII only.
SlowBook readSlowBook(const std::filesystem::path& folder);

} // namespace tests::support
