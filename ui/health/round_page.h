#pragma once

#include "ui/desk/while_shown.h"

#include <QWidget>

class QPushButton;

namespace ui::board {
class RowList;
}

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

/// Whose brood is to be looked at before the fall unions, in the shown yard and the order of a walk; until when the
/// checks of the others count; to be printed as a tally sheet or gone through form by form.
class RoundPage : public QWidget {
    Q_OBJECT
public:
    RoundPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    board::RowList* list() const { return m_list; }
    QPushButton* printButton() const { return m_print; }
    QPushButton* pdfButton() const { return m_pdf; }
    QPushButton* walkButton() const { return m_walk; }
    QString summary() const; ///< "5 of 12 hives have no brood check that …"
    QString alarm() const;   ///< what to do now, where foulbrood may be in the yard; empty: nothing
    /// Those to check, in the order of the walk.
    const std::vector<core::ColonyId>& round() const { return m_round; }

signals:
    void visitsAsked(const std::vector<core::ColonyId>& order); ///< their forms, one after the other
    void printAsked(const std::vector<core::ColonyId>& order);
    void pdfAsked(const std::vector<core::ColonyId>& order);

private:
    void build();
    void read();
    void walkFrom(std::optional<core::ColonyId> first);

    desk::Desk& m_desk;
    std::vector<core::ColonyId> m_round;
    board::RowList* m_list;
    look::WrappedLabel* m_alarm;
    look::WrappedLabel* m_summary;
    look::WrappedLabel* m_from;
    look::WrappedLabel* m_others;
    QPushButton* m_walk;
    QPushButton* m_print;
    QPushButton* m_pdf;
};

} // namespace ui::health
