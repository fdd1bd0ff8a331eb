#pragma once

#include <QWidget>

#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui::close {

/// Buttons below a list that is worked by single letters, the letters in words, and the same as actions for a menu.
/// Tells the key alone: whoever presses it in the list does the same.
class KeyFoot : public QWidget {
    Q_OBJECT
public:
    explicit KeyFoot(QWidget* parent = nullptr);

    /// In the row of that number, which is made where it is not there. `key`: a capital letter, which Qt::Key is too.
    QPushButton* add(size_t row, const QString& text, const QString& tip, char key);
    /// The primary one, at the right end of its row.
    QPushButton* addLast(size_t row, const QString& text, const QString& tip, char key);
    void setKeys(const QString& words);

signals:
    void asked(int key); ///< Qt::Key

private:
    QPushButton* made(const QString& text, const QString& tip, char key);
    QHBoxLayout* lineOf(size_t row);

    QVBoxLayout* m_rows;
    std::vector<QHBoxLayout*> m_lines;
    QLabel* m_keys;
};

} // namespace ui::close
