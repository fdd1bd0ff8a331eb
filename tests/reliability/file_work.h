#pragma once

#include "tests/reliability/workload.h"

#include <ostream>

namespace tests::reliability {

/// Something done to whole files of a folder: a book made, migrated, copied, put in another's place.
struct FileWork {
    std::string name;
    bool oldSystem = false; ///< as CutVfs::setOldSystem
    std::function<void(const QString& folder)> prepare;
    /// Calls `said` each time that a user has been told that something is done.
    std::function<void(const QString& folder, const std::function<void()>& said)> run;
    /// What is wrong with the folder as it is found when the work was cut after so many `said`, or nothing. Goes on
    /// with it as a user would.
    std::function<std::string(const QString& folder, int said)> faultOf;
};

inline void PrintTo(const FileWork& work, std::ostream* to) { *to << work.name; }

/// Each kind of it; in the short form the oldest book alone is migrated.
std::vector<FileWork> fileWorks();

} // namespace tests::reliability
