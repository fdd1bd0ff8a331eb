#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace ui::board {

class MergeDesk;

/// Above the plan: that its day is being written back, what is asked and cannot be, and what the last change did.
class Notices : public QFrame {
    Q_OBJECT
public:
    explicit Notices(MergeDesk& merge, QWidget* parent = nullptr);

    QLabel* difference() const { return m_difference; }
    QLabel* unmet() const { return m_unmet; }
    QPushButton* drop() const { return m_drop; }
    QLabel* closing() const { return m_closing; }

private:
    void showAll();
    void showDifference();
    void showUnmet();

    MergeDesk& m_merge;
    QLabel* m_closing;
    QFrame* m_unmetBox;
    QLabel* m_unmet;
    QPushButton* m_drop;
    QLabel* m_difference;
    QPushButton* m_more;
    bool m_all = false; ///< of a long difference every line
};

} // namespace ui::board
