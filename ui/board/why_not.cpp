#include "ui/board/why_not.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::board {

namespace {
constexpr int kLinesSeen = 9;  // at once; the rest is scrolled to
constexpr int kLinesLeast = 3; // in a low window
} // namespace

WhyNotView::WhyNotView(QWidget* parent) : QFrame(parent) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 4, 20, 6);
    all->setSpacing(4);
    m_title = new QLabel(this);
    QFont bold = m_title->font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_title->setWordWrap(true);
    m_scroll = new QScrollArea(this);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setAccessibleName(tr("What stands against the two"));
    m_lines = new QLabel(m_scroll);
    m_lines->setWordWrap(true);
    m_lines->setTextFormat(Qt::PlainText);
    m_lines->setAlignment(Qt::AlignTop);
    m_scroll->setWidget(m_lines);
    m_pin = new QPushButton(tr("Pin the two"), this);
    m_close = new QPushButton(tr("Close"), this);
    m_close->setProperty("plain", true);
    auto* across = new QHBoxLayout;
    across->addWidget(m_pin);
    across->addStretch(1);
    across->addWidget(m_close);
    all->addWidget(m_title);
    all->addWidget(m_scroll);
    all->addLayout(across);
    connect(m_close, &QPushButton::clicked, this, &WhyNotView::leave);
    connect(m_pin, &QPushButton::clicked, this, [this] {
        if (m_offer) emit offerTaken(Offer(*m_offer));
    });
    hide();
}

void WhyNotView::tell(const WhyNotText& text, const std::optional<Offer>& pin) {
    m_title->setText(tr("Why not %1?").arg(text.title));
    m_lines->setText(text.lines.join(QStringLiteral("\n\n")));
    m_offer = pin;
    m_pin->setVisible(pin.has_value());
    if (pin) m_pin->setText(QString(pin->said).replace(u'&', QStringLiteral("&&")));
    const int width = std::max(160, parentWidget()->width() - 60);
    const int most = kLinesSeen * m_lines->fontMetrics().lineSpacing();
    const int needed = m_lines->heightForWidth(width) + 8;
    m_scroll->setMaximumHeight(std::clamp(needed, m_lines->fontMetrics().lineSpacing() + 8, most));
    m_scroll->setMinimumHeight(std::min(m_scroll->maximumHeight(), kLinesLeast * m_lines->fontMetrics().lineSpacing()));
    if (isVisible()) return;
    show();
    m_close->setFocus(Qt::OtherFocusReason);
}

QString WhyNotView::text() const { return m_lines->text(); }

void WhyNotView::leave() {
    if (isHidden()) return;
    hide();
    emit closed();
}

void WhyNotView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return leave();
    QFrame::keyPressEvent(event);
}

} // namespace ui::board
