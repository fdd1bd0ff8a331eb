#include "ui/copies/offers.h"

#include <QAction>
#include <QBoxLayout>
#include <QPushButton>

namespace ui::copies {

void Offers::offer(const QList<QAction*>& actions) {
    auto* across = qobject_cast<QBoxLayout*>(m_banner.layout());
    for (const auto& [action, button] : m_buttons) {
        button->hide();
        button->deleteLater(); // it may be the one just pressed
    }
    m_buttons.clear();
    QWidget* own = across->itemAt(across->count() - 1)->widget();
    QWidget* before = nullptr;
    for (QAction* action : actions) {
        auto* button = new QPushButton(action->text(), &m_banner);
        button->setToolTip(action->statusTip());
        QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
        across->insertWidget(across->indexOf(own), button);
        button->show();
        if (before) QWidget::setTabOrder(before, button);
        before = button;
        m_buttons.append({action, button});
    }
    if (before) QWidget::setTabOrder(before, own);
}

QPushButton* Offers::buttonOf(const QAction* action) const {
    for (const auto& [offered, button] : m_buttons)
        if (offered == action) return button;
    return nullptr;
}

} // namespace ui::copies
