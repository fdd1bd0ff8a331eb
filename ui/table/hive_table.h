#pragma once

#include "ui/table/hive_model.h"

#include <QTableView>

class QMenu;

namespace ui::table {

/// The table beside the plan: the same hives, the same chosen one. Its columns can be moved, sized, sorted by and
/// hidden, by mouse and by keys.
class HiveTable : public QTableView {
    Q_OBJECT
public:
    explicit HiveTable(QWidget* parent = nullptr);

    void showHives(const desk::Reading& reading, std::optional<core::YardIx> yard);
    /// `lead` is among them; it has the keys.
    void setSelected(const std::vector<core::ColonyId>& colonies, std::optional<core::ColonyId> lead);
    /// As wide as their text; once, and not where they were put back.
    void fitColumnsOnce();
    void fitColumns();
    QByteArray columns() const;
    /// As columns() gave them; of a table with other columns nothing is taken over.
    void putBackColumns(const QByteArray& columns);
    /// One command a column: shown or not, and sorted by.
    void fill(QMenu& menu);

signals:
    /// By hand: one or several, `lead` among them.
    void selectAsked(const std::vector<core::ColonyId>& colonies, core::ColonyId lead);
    void opened(core::ColonyId colony);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void sizeRows();
    void tellSelected();
    void moveColumn(int by);
    QString title(int column) const;

    HiveModel* m_hives;
    HiveSorter* m_sorter;
    bool m_telling = false;
    bool m_fitted = false;
    int m_digit = 0; ///< wide, when rows and columns were last sized
};

} // namespace ui::table
