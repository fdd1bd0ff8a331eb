#pragma once

#include "core/base/day.h"
#include "ui/form/form.h"

#include <QWidget>

#include <functional>

namespace ui::form {

/// The widget that edits a field: named, reached by Tab; its object name is "field." and the key. A day goes on and
/// back by the up and down keys. `changed` is called with each keystroke.
QWidget* makeEditor(const Field& field, core::Day today, QWidget* parent, const std::function<void()>& changed);

/// What stands in it.
QString typedIn(const QWidget& editor);
void setTyped(QWidget& editor, const QString& text);

/// In a form that scrolls the wheel is for scrolling; it does not change what was chosen. A choice's list is spoken as
/// the choice is.
void setUpInForm(QWidget& editor);

} // namespace ui::form
