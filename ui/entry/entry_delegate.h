#pragma once

#include <QStyledItemDelegate>

#include <functional>

class QKeyEvent;
class QLineEdit;

namespace ui::entry {

/// Paints what is typed with what stood there at the visit before beside it, small; a line for the cell that has the
/// keys, each key told on at once.
class EntryDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    /// True: the key moved on, saved or left; the line does not get it.
    using Pressed = std::function<bool(QLineEdit& line, const QKeyEvent& key)>;

    EntryDelegate(Pressed pressed, QObject* parent);

    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget*, QAbstractItemModel*, const QModelIndex&) const override {} // each key was told already
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    Pressed m_pressed;
    mutable bool m_typing = false; ///< the line says it; it is not told back
};

} // namespace ui::entry
