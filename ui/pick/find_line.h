#pragma once

#include "ui/desk/desk.h"
#include "ui/pick/find_labels.h"
#include "ui/plan/plan_view.h"

#include <QFrame>

class QLabel;
class QLineEdit;

namespace ui::pick {

/// A line over the plan for a label: what is found is ringed as it is typed, and the first flown to. Enter chooses it,
/// Up and Down go through what was found, Escape goes back to where the plan was.
class FindLine : public QFrame {
    Q_OBJECT
public:
    FindLine(desk::Desk& desk, plan::PlanView& plan);

    void open(const QString& begins);
    QLineEdit* line() const { return m_line; }
    /// "A3 · 1 of 5", where it stands, or that nothing was found.
    QString answer() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool event(QEvent* event) override;

private:
    void look();
    void show(size_t at);
    void tell(const QString& answer, bool warns);
    void accept();
    void leave(bool back);
    QString nothingFound() const;

    desk::Desk& m_desk;
    plan::PlanView& m_plan;
    QLineEdit* m_line;
    QLabel* m_answer;
    std::vector<Found> m_found;
    size_t m_at = 0;
    plan::Sight m_before;
    std::optional<core::YardId> m_yard; ///< when it was opened
};

} // namespace ui::pick
