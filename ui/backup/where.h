#pragma once

#include <QDateTime>
#include <QString>

namespace ui::backup {

/// The folder of all books' backups on this machine.
QString folder();
/// Another one from now on; empty: the usual one.
void setFolder(const QString& path);

/// Where a book that gives way to a backup is kept, beside it: "NAME before 2026-09-20 140311.yardwright".
QString asideOf(const QString& book, const QDateTime& now);

} // namespace ui::backup
