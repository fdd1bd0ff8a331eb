#pragma once

#include <QString>

namespace ui::backup {

/// The folder of all books' backups on this machine.
QString folder();
/// Another one from now on; empty: the usual one.
void setFolder(const QString& path);

} // namespace ui::backup
