#pragma once

#include "core/base/day.h"

#include <QLineEdit>

#include <optional>

namespace ui::form {

/// A day as typed text; up and down go on and back by a day, page up and down by a week.
class DayEdit : public QLineEdit {
    Q_OBJECT
public:
    DayEdit(core::Day today, QWidget* parent);

    void setToday(core::Day today) { m_today = today; }
    /// nullopt: what stands there is none.
    std::optional<core::Day> day() const;
    void setDay(core::Day day);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    core::Day m_today;
};

} // namespace ui::form
