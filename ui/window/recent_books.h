#pragma once

#include <QString>
#include <QStringList>

namespace ui::window {

/// Paths of books opened before and still there, newest first, at most eight; kept in the user's settings.
QStringList recentBooks();
void rememberBook(const QString& path);

} // namespace ui::window
