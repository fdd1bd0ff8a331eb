#pragma once

#include "core/edit/backups.h"

namespace ui::backup {

/// Here and to the second: "2026-09-20 14:03:11".
QString stampText(const QDateTime& utc);

/// What putting the backup in the book's place would change, as sentences and lines, one below the other.
QString comparedText(const core::edit::BackupCompared& compared);

/// What is asked before holds go with the book of now: names them.
QString holdsQuestion(const QStringList& holds);

} // namespace ui::backup
