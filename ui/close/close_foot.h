#pragma once

#include "ui/close/close_lines.h"
#include "ui/close/key_foot.h"

namespace ui::close {

/// What can be done with the strip that the list is on.
class CloseFoot : public KeyFoot {
    Q_OBJECT
public:
    explicit CloseFoot(QWidget* parent = nullptr);

    /// `line`: the one the list is on, or nullptr; `may`: something can be noted here; `drafted`: something is.
    void show(const Line* line, bool may, bool drafted);
    QPushButton* writeButton() const { return m_write; }

private:
    QPushButton* m_fact;
    std::vector<QPushButton*> m_note; ///< note something of the line
    QPushButton *m_another, *m_back, *m_write;
};

} // namespace ui::close
