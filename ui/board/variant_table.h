#pragma once

#include "ui/board/variants.h"

#include <QFrame>

class QLabel;
class QPushButton;
class QTableWidget;

namespace ui::board {

class MergeDesk;

/// The variants of a merge day side by side: their figures, and the pairs in which they differ. A column's title shows
/// that variant.
class VariantTable : public QFrame {
    Q_OBJECT
public:
    explicit VariantTable(MergeDesk& merge, QWidget* parent = nullptr);

    void compare(); ///< reads and shows
    QTableWidget* table() const { return m_table; }

signals:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fill(const std::vector<VariantFigures>& variants);
    void leave();

    MergeDesk& m_merge;
    QTableWidget* m_table;
    QLabel* m_note;
    std::vector<int> m_numbers; ///< of the columns
};

} // namespace ui::board
