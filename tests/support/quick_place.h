#pragma once

#include <QDir>
#include <QFileInfo>
#include <QString>

namespace tests {

/// A path for files that nobody need keep: in memory where the machine has that and TMPDIR does not say otherwise; what
/// is synced there waits for no disk.
inline QString quickPlace(const QString& name) {
    const QFileInfo memory(QStringLiteral("/dev/shm"));
    const bool there = memory.isDir() && memory.isWritable() && !qEnvironmentVariableIsSet("TMPDIR");
    return QDir(there ? memory.filePath() : QDir::tempPath()).filePath(name);
}

} // namespace tests
