#include "ui/form/day_edit.h"

#include "ui/form/typed.h"

#include <QKeyEvent>

namespace ui::form {

namespace {

int stepOf(int key) {
    switch (key) {
    case Qt::Key_Up:
        return 1;
    case Qt::Key_Down:
        return -1;
    case Qt::Key_PageUp:
        return 7;
    case Qt::Key_PageDown:
        return -7;
    default:
        return 0;
    }
}

} // namespace

DayEdit::DayEdit(core::Day today, QWidget* parent) : QLineEdit(parent), m_today(today) {
    setToolTip(tr("2026-09-15, 15 Sep 2026, 15.9. or yesterday; the up and down keys change it by a day"));
}

std::optional<core::Day> DayEdit::day() const { return parseDay(text(), m_today); }

void DayEdit::setDay(core::Day day) { setText(typedDay(day)); }

void DayEdit::keyPressEvent(QKeyEvent* event) {
    const int step = stepOf(event->key());
    if (step == 0) return QLineEdit::keyPressEvent(event);
    const auto day = this->day();
    if (day || text().trimmed().isEmpty()) setText(typedDay(day ? *day + step : m_today));
    selectAll();
}

} // namespace ui::form
