#pragma once

#include <QTableView>

class QMenu;

namespace ui::table {

/// A table whose columns can be moved, sized, sorted by and hidden, by mouse and by keys, and put back as they were.
/// Its first column names the row and is always shown. Rows are of one height, however many there are.
class ColumnTable : public QTableView {
    Q_OBJECT
public:
    explicit ColumnTable(QWidget* parent = nullptr);

    /// As wide as their text; once, and not where they were put back.
    void fitColumnsOnce();
    void fitColumns();
    QByteArray columns() const;
    /// As columns() gave them; of a table with other columns nothing is taken over.
    void putBackColumns(const QByteArray& columns);
    /// One command a column: shown or not, and sorted by.
    void fill(QMenu& menu);

protected:
    /// Sorted by the first column. The model is this one's for good.
    void takeModel(QAbstractItemModel* model);
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void sizeRows();
    void moveColumn(int by);
    QString title(int column) const;
    int columnsOfModel() const;

    bool m_fitted = false;
    int m_digit = 0; ///< wide, when rows and columns were last sized
};

} // namespace ui::table
