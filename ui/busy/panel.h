#pragma once

#include "ui/busy/busy.h"

#include <QFrame>

#include <memory>

class QLabel;
class QProgressBar;
class QPushButton;

namespace ui::busy {

/// Over the middle of a window while something long is done: what, how far it is, and a button that stops it. Gone with
/// this object.
class Panel : public QFrame {
    Q_OBJECT
public:
    Panel(const QString& sentence, QWidget& window, Others others = Others::Wait, Keys keys = Keys::ToStop);
    ~Panel() override;

    Busy& busy() { return *m_busy; }
    QPushButton* stopButton() const { return m_stop; }
    QProgressBar* bar() const { return m_bar; }
    QString doing() const; ///< as it is shown

private:
    QLabel* m_doing;
    QProgressBar* m_bar;
    QPushButton* m_stop;
    std::unique_ptr<Busy> m_busy; ///< made once the panel is shown, gone before its parts
};

} // namespace ui::busy
