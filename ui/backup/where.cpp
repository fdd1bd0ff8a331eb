#include "ui/backup/where.h"

#include <QDir>
#include <QSettings>
#include <QStandardPaths>

namespace ui::backup {

namespace {

QString key() { return QStringLiteral("backupFolder"); }

QString usual() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("backups"));
}

} // namespace

QString folder() {
    const QString chosen = QSettings().value(key()).toString();
    return chosen.isEmpty() ? usual() : chosen;
}

void setFolder(const QString& path) {
    const QString clean = path.trimmed().isEmpty() ? QString() : QDir::cleanPath(path.trimmed());
    QSettings().setValue(key(), clean == usual() ? QString() : clean);
}

} // namespace ui::backup
