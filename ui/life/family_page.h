#pragma once

#include "ui/life/life_page.h"

namespace ui::close {
class KeyList;
}

namespace ui::life {

class FamilyModel;
class TimeRuler;

/// From where a colony's bees came and into whom they went, as lines in time. Up and Down go from row to row, Left to
/// where one came from, Right to where it went; Enter shows the card of that colony.
class FamilyPage : public LifePage {
    Q_OBJECT
public:
    FamilyPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);
    QWidget* keys() override;
    close::KeyList* list() const { return m_list; }
    const FamilyModel& model() const { return *m_model; }
    QString reading() const; ///< of the row that the keys are in

signals:
    void colonyAsked(core::ColonyId colony);

protected:
    void fill() override;

private:
    bool pressed(int key);
    void follow(bool back);
    void read();

    FamilyModel* m_model;
    TimeRuler* m_ruler;
    close::KeyList* m_list;
    QLabel* m_reading;
};

} // namespace ui::life
