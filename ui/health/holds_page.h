#pragma once

#include "ui/desk/while_shown.h"

#include <QWidget>

class QCheckBox;

namespace ui::board {
class RowList;
}

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

/// Who is held, why, and which record would lift it from what day; first of all what to do now, where foulbrood may be
/// there; and what was planned that the holds now bar.
class HoldsPage : public QWidget {
    Q_OBJECT
public:
    HoldsPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    board::RowList* list() const { return m_list; }
    QCheckBox* everywhere() const { return m_everywhere; }
    QString alarm() const;   ///< what to do now; empty: nothing
    QString broken() const;  ///< what the holds bar; empty: nothing
    QString summary() const; ///< "5 of 12 hives are held"

signals:
    void contactsAsked(core::ColonyId colony);

private:
    void build();
    void read();

    desk::Desk& m_desk;
    board::RowList* m_list;
    look::WrappedLabel* m_alarm;
    look::WrappedLabel* m_broken;
    look::WrappedLabel* m_summary;
    QCheckBox* m_everywhere;
    desk::WhileShown* m_follow;
};

} // namespace ui::health
