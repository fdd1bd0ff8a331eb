#pragma once

#include "ui/entry/entry_desk.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QMenu;
class QToolButton;

namespace ui::form {
class DayEdit;
}

namespace ui::entry {

/// Above the grid: what is carried from visit to visit, the hive to go to, and which columns are shown.
class EntryHead : public QWidget {
    Q_OBJECT
public:
    EntryHead(desk::Desk& desk, QWidget* parent);

    void show(const Carried& carried);
    /// What stands in the lines; nullopt: the day is none, or has not come yet.
    std::optional<Carried> carried() const;
    bool byLabel() const;
    form::DayEdit* day() const { return m_day; }
    QLineEdit* by() const { return m_by; }
    QLineEdit* weather() const { return m_weather; }
    QLineEdit* goTo() const { return m_goTo; }
    QCheckBox* byLabelBox() const { return m_byLabel; }
    QMenu* columns() const { return m_columns; }
    void goToLabel(); ///< its line has the keys
    void openColumns();

signals:
    void carriedChanged(const Carried& carried);
    void labelTyped(const QString& label);
    void done(); ///< Enter in day, by or weather: on to the grid

private:
    void suggestPeople();
    void tell();

    desk::Desk& m_desk;
    form::DayEdit* m_day;
    QLineEdit* m_by;
    QLineEdit* m_weather;
    QLineEdit* m_goTo;
    QCheckBox* m_byLabel;
    QToolButton* m_columnsButton;
    QMenu* m_columns;
    QLabel* m_problem;
};

} // namespace ui::entry
