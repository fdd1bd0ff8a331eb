#include "ui/window/recent_books.h"

#include <QFileInfo>
#include <QSettings>

namespace ui::window {

namespace {
constexpr int kMost = 8;
QString key() { return QStringLiteral("recentBooks"); }
} // namespace

QStringList recentBooks() {
    QStringList there;
    for (const QString& path : QSettings().value(key()).toStringList())
        if (QFileInfo::exists(path)) there << path;
    return there.mid(0, kMost);
}

void rememberBook(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList paths = recentBooks();
    paths.removeAll(whole);
    paths.prepend(whole);
    QSettings().setValue(key(), paths.mid(0, kMost));
}

} // namespace ui::window
