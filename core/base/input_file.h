#pragma once

#include <QString>

namespace core {

/// Before a file is opened for reading: what stands there (links followed) in the place of a plain file, "a folder",
/// "a pipe", …: a pipe would be waited for, and a device has no end. Empty: a plain file, or nothing is there.
QString noPlainFile(const QString& path);

} // namespace core
