#pragma once

#include "ui/close/close_lines.h"

#include <QWidget>

#include <vector>

class QHBoxLayout;
class QPushButton;

namespace ui::close {

/// What can be done with the strip that the list is on: buttons, their keys in words, and the same as actions for a
/// menu. Tells the key alone: whoever presses it in the list does the same.
class CloseFoot : public QWidget {
    Q_OBJECT
public:
    explicit CloseFoot(QWidget* parent = nullptr);

    /// `line`: the one the list is on, or nullptr; `may`: something can be noted here; `drafted`: something is.
    void show(const Line* line, bool may, bool drafted);
    QPushButton* writeButton() const { return m_write; }

signals:
    void asked(int key); ///< Qt::Key

private:
    QPushButton* add(QHBoxLayout* line, const QString& text, const QString& tip, char key);

    std::vector<QPushButton*> m_note; ///< note something of the line
    QPushButton *m_fact, *m_another, *m_back, *m_write;
};

} // namespace ui::close
