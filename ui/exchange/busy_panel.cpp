#include "ui/exchange/busy_panel.h"

#include "ui/look/colours.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::exchange {

BusyPanel::BusyPanel(const QString& sentence, QWidget& window)
    : QFrame(&window), m_bar(new QProgressBar(this)), m_stop(new QPushButton(tr("Sto&p"), this)) {
    setObjectName(QStringLiteral("busyPanel"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setPalette(look::paletteOf(look::coloursOf(window)));
    m_bar->setAccessibleName(sentence);
    m_bar->setTextVisible(false);
    m_stop->setToolTip(tr("Nothing is written then (Esc)"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(18, 14, 18, 14);
    auto* across = new QHBoxLayout;
    across->addWidget(m_bar, 1);
    across->addWidget(m_stop);
    down->addWidget(new QLabel(sentence, this));
    down->addLayout(across);
    resize(std::max(sizeHint().width(), window.fontMetrics().averageCharWidth() * 60), sizeHint().height());
    move((window.width() - width()) / 2, (window.height() - height()) / 2);
    show();
    raise();
    m_busy = std::make_unique<Busy>(window, *m_bar, *m_stop);
}

} // namespace ui::exchange
