#pragma once

#include "ui/desk/reading.h"

#include <QWidget>

#include <vector>

class QDateEdit;
class QHBoxLayout;
class QLabel;
class QPushButton;

namespace ui::board {

class BoardActions;
class MergeDesk;

/// The merge day's name, day and figures, its variants and its limit.
class BoardHead : public QWidget {
    Q_OBJECT
public:
    BoardHead(MergeDesk& merge, BoardActions& actions, QWidget* parent = nullptr);
    void show(const desk::Reading& reading, core::YardIx yard);
    QDateEdit* day() const { return m_day; }
    /// By number; nullptr where there is none such.
    QPushButton* variant(int number) const;

signals:
    void dayAsked(core::Day day);

private:
    void buildTitle();
    void buildButtons(BoardActions& actions);
    void showVariants();
    QString whereText(const desk::Reading& reading, core::YardIx yard) const;

    MergeDesk& m_merge;
    QDateEdit* m_day;
    QLabel* m_where;
    QLabel* m_expected;
    QHBoxLayout* m_numbers;
    std::vector<QPushButton*> m_variants; ///< by number, from 1
    QPushButton* m_compare;
    QPushButton* m_limit;
    bool m_telling = false;
};

} // namespace ui::board
