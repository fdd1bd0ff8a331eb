#pragma once

#include "core/edit/session.h"

#include <QString>
#include <QStringList>

#include <memory>

namespace ui::window {

struct ImportedFolder {
    QStringList faults; ///< one sentence each; empty: it was read in
    QString summary;
    bool changed = false;
};

/// Reads yards.csv, colonies.csv, … of one folder into the book, all or nothing. Throws Error.
ImportedFolder importFolderInto(core::edit::Session& session, const QString& folder);

/// For writing; where another holds the book, for reading only. Throws Error(Book).
std::unique_ptr<core::edit::Session> openOrRead(const QString& path, const core::Clock& clock);

} // namespace ui::window
