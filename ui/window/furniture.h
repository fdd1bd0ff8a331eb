#pragma once

#include <QObject>

namespace ui::window {

class MainWindow;

/// Keeps in the user's settings what a window looked like, and puts it back: size and state, splitters, the table with
/// its columns and the text size for the machine; yard, place and merge day for each book. A window without it begins
/// as it is built and leaves nothing behind.
class Furniture : public QObject {
    Q_OBJECT
public:
    /// Puts back now what does not belong to a book, and the rest with each book that the window opens.
    explicit Furniture(MainWindow& window);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void putBack();
    void putBackBook();
    void keep() const;
    void leave();
    void keepBook() const;

    MainWindow& m_window;
    bool m_bookPutBack = false; ///< from then on what is seen of it is what the user wants
};

} // namespace ui::window
