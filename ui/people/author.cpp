#include "ui/people/author.h"

#include <QSettings>

namespace ui::people {

namespace {
QString key() { return QStringLiteral("writtenBy"); }
} // namespace

QString lastAuthor() { return QSettings().value(key()).toString(); }

void rememberAuthor(const QString& name) { QSettings().setValue(key(), name); }

} // namespace ui::people
