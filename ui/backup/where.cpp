#include "ui/backup/where.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace ui::backup {

namespace {

struct Where {
    Q_DECLARE_TR_FUNCTIONS(Where)
};

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

QString asideOf(const QString& book, const QDateTime& now) {
    const QFileInfo file(book);
    return file.absolutePath() + u'/' +
           Where::tr("%1 before %2.%3")
               .arg(file.completeBaseName(), now.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HHmmss")),
                    file.suffix());
}

} // namespace ui::backup
