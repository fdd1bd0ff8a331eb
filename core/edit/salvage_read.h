#pragma once

#include "core/base/progress.h"
#include "core/edit/salvage.h"
#include "core/store/database.h"
#include "core/store/remains.h"

namespace core::edit {

/// What a damaged book is put together from.
struct SalvageSources {
    std::unique_ptr<store::Remains> remains;
    std::unique_ptr<store::Database> backup; ///< nullptr: there is none in order
};

/// Reads the file, and looks for a sound backup of it, which may tell where its tables begin. Says in `account` what is
/// wrong and which backup it is. `folder`: for a backup that is brought up to date. Throws as Salvage::read.
SalvageSources readSources(const SalvageFrom& from, const QString& folder, SalvageAccount& account,
                           const Progress& progress);

} // namespace core::edit
