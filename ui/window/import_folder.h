#pragma once

#include "core/edit/session.h"

#include <QString>
#include <QStringList>

class QWidget;

namespace ui::window {

struct ImportedFolder {
    QStringList faults; ///< one sentence each; empty: it was read in
    QString summary;
    bool changed = false;
    bool stopped = false; ///< by the user; nothing was written
};

/// Reads yards.csv, colonies.csv, … of one folder into the book, all or nothing. Throws Error.
/// `window` shows how far it is and can stop it.
ImportedFolder importFolderInto(core::edit::Session& session, const QString& folder, QWidget& window);

} // namespace ui::window
