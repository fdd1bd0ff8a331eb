#include "ui/busy/panel.h"

#include "ui/look/colours.h"
#include "ui/look/type.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::busy {

Panel::Panel(const QString& sentence, QWidget& window, Others others, Keys keys)
    : QFrame(&window),
      m_doing(new QLabel(this)),
      m_bar(new QProgressBar(this)),
      m_stop(new QPushButton(tr("Sto&p"), this)) {
    setObjectName(QStringLiteral("busyPanel"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setPalette(look::paletteOf(look::coloursOf(window)));
    m_bar->setAccessibleName(sentence);
    m_bar->setTextVisible(false);
    m_stop->setToolTip(tr("Nothing is changed then (Esc)"));
    m_doing->setProperty("quiet", true);
    m_doing->setObjectName(QStringLiteral("busyDoing"));
    auto* title = new QLabel(sentence, this);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(18, 14, 18, 14);
    auto* across = new QHBoxLayout;
    across->addWidget(m_bar, 1);
    across->addWidget(m_stop);
    down->addWidget(title);
    down->addLayout(across);
    down->addWidget(m_doing);
    resize(std::max(sizeHint().width(), window.fontMetrics().averageCharWidth() * 60), sizeHint().height());
    move((window.width() - width()) / 2, (window.height() - height()) / 2);
    show();
    raise();
    m_busy = std::make_unique<Busy>(window, *m_bar, *m_stop, others, keys);
    connect(m_busy.get(), &Busy::told, m_doing, &QLabel::setText);
}

Panel::~Panel() = default;

QString Panel::doing() const { return m_doing->text(); }

} // namespace ui::busy
