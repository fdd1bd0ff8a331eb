#pragma once

#include "core/edit/session.h"

#include <QString>
#include <QStringList>

namespace ui::window {

struct ImportedFolder {
    QStringList faults; ///< one sentence each; empty: it was read in
    QString summary;
    bool changed = false;
};

/// Reads yards.csv, colonies.csv, … of one folder into the book, all or nothing. Throws Error.
ImportedFolder importFolderInto(core::edit::Session& session, const QString& folder);

} // namespace ui::window
