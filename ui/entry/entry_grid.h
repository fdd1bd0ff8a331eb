#pragma once

#include "ui/entry/entry_model.h"

#include <QTableView>

class QLineEdit;

namespace ui::entry {

/// The grid that visits are typed into: the current cell is a line, Tab and Enter go on through the fields that are
/// open, the arrows to where they point. What the keys mean for the row is its owner's.
class EntryGrid : public QTableView {
    Q_OBJECT
public:
    EntryGrid(EntryWork& work, EntryModel& model, QWidget* parent);

    int row() const; ///< −1: none
    /// To a cell; nullopt: the first that is open. The keys come along where the grid or `keys` has them.
    void goTo(int row, std::optional<int> section = {}, bool keys = false);
    void openLine();
    /// The keys go on to what stands after the grid.
    void leaveForward();
    QLineEdit* line() const; ///< of the current cell; nullptr: none is open
    void fitColumns();

signals:
    void rowMoved();
    void saveAsked(bool byTab); ///< the current row, and on to the next
    void saveAllAsked();
    void leaveAsked(); ///< Escape with nothing to undo in the cell
    void keyTyped();
    void phraseAsked(QLineEdit& line);

protected:
    void currentChanged(const QModelIndex& now, const QModelIndex& before) override;
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    bool pressed(QLineEdit& line, const QKeyEvent& key);
    bool acrossOrDown(QLineEdit& line, int key);
    std::optional<int> openSection(int row, int from, int by) const;
    void goOn(bool byTab);
    void goBack();
    bool escape(QLineEdit& line);
    bool hasKeys() const;

    EntryWork& m_work;
    EntryModel& m_model;
    bool m_opening = false;
};

} // namespace ui::entry
