#pragma once

#include <QString>

#include <initializer_list>

class QComboBox;
class QHBoxLayout;
class QLineEdit;
class QToolButton;
class QWidget;

namespace ui::find {

// The parts above a table that say which rows it shows.

QLineEdit* filterLine(QWidget* parent, const QString& hint, const QString& spoken);
QComboBox* filterList(QWidget* parent, const QString& spoken);
/// A button that opens a menu, which is the caller's.
QToolButton* menuButton(QWidget* parent, const QString& text, const QString& tip);
/// Side by side in the tab order; `wide` takes the room that is left, else it stays free at the right.
QHBoxLayout* rowOf(std::initializer_list<QWidget*> parts, QWidget* wide);

} // namespace ui::find
