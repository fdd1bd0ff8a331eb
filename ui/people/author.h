#pragma once

#include <QString>

namespace ui::people {

/// The name that was last written under on this machine; empty: none yet.
QString lastAuthor();
void rememberAuthor(const QString& name);

} // namespace ui::people
