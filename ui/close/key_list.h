#pragma once

#include <QListView>

#include <functional>

namespace ui::close {

/// A list of rows as wide as the list, worked by single keys: letters, Enter, Delete. What they do is its owner's.
class KeyList : public QListView {
    Q_OBJECT
public:
    /// True: the key was meant for it.
    using Pressed = std::function<bool(int key)>;

    KeyList(const QString& name, Pressed pressed, QWidget* parent);

    /// Called with the width of the rows whenever it changes, before they are laid out again.
    void setWidthListener(std::function<void(int)> listener);
    int row() const;    ///< −1: none
    void goTo(int row); ///< nothing where there is no such row

signals:
    void rowMoved();
    void keysCame(); ///< the focus, by a key or a click

protected:
    void currentChanged(const QModelIndex& now, const QModelIndex& before) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    Pressed m_pressed;
    std::function<void(int)> m_width;
};

} // namespace ui::close
