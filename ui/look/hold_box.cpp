#include "ui/look/hold_box.h"

#include "ui/look/barrier.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace ui::look {

HoldBox::HoldBox(const QString& letter, const QString& title, const QString& because, const QString& lift,
                 QWidget* parent)
    : QFrame(parent), m_letter(letter) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(kBarrierWide + 12, 8, 12, 10);
    all->setSpacing(4);
    const auto add = [&](const QString& text, bool bold) {
        if (text.isEmpty()) return;
        auto* label = new QLabel(text, this);
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        if (bold) {
            QFont f = label->font();
            f.setBold(true);
            label->setFont(f);
        }
        all->addWidget(label);
    };
    add(title, true);
    add(because, false);
    add(lift, false);
    setAccessibleName(tr("Hold %1: %2").arg(letter, title));
    setAccessibleDescription(because + u' ' + lift);
}

void HoldBox::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing, true);
    paintBarrier(p, QRectF(rect()).adjusted(1, 1, -1, -1), m_letter, font(), coloursOf(*this));
}

} // namespace ui::look
