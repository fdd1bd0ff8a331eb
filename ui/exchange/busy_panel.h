#pragma once

#include "ui/exchange/busy.h"

#include <QFrame>

#include <memory>

class QLabel;
class QProgressBar;
class QPushButton;

namespace ui::exchange {

/// Over the middle of a window while it reads or writes much: how far it is, and a button that stops it. Gone with this
/// object.
class BusyPanel : public QFrame {
    Q_OBJECT
public:
    BusyPanel(const QString& sentence, QWidget& window);

    core::exchange::ImportWatch watch() { return m_busy->watch(); }
    QPushButton* stopButton() const { return m_stop; }

private:
    QProgressBar* m_bar;
    QPushButton* m_stop;
    std::unique_ptr<Busy> m_busy; ///< made once the panel is shown, gone before its parts
};

} // namespace ui::exchange
