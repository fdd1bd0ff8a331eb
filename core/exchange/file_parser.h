#pragma once

#include "core/edit/change_set.h"
#include "core/exchange/drafts.h"
#include "core/exchange/fault.h"
#include "core/exchange/import.h"

#include <vector>

namespace core::exchange {

/// All files of an import, read.
struct Parsed {
    Drafts drafts;
    std::vector<edit::Attachment> texts; ///< each file as it was; only while there are no faults
};

/// Reads the files one after the other; what is wrong in them becomes faults.
Parsed parseFiles(const ImportFiles& files, Faults& faults);

} // namespace core::exchange
