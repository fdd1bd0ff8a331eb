#include "ui/start/empty_yard.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::start {

EmptyYard::EmptyYard(QWidget* plan)
    : QWidget(plan),
      m_sentence(new QLabel(this)),
      m_row(new QPushButton(tr("Set up a &row of hives…"), this)),
      m_place(new QPushButton(tr("&Place hives one by one…"), this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(14);
    m_sentence->setWordWrap(true);
    m_sentence->setAlignment(Qt::AlignHCenter);
    all->addWidget(m_sentence);
    m_row->setProperty("primary", true);
    m_row->setObjectName(QStringLiteral("setUpRow"));
    m_place->setObjectName(QStringLiteral("placeHives"));
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(m_row);
    buttons->addSpacing(8);
    buttons->addWidget(m_place);
    buttons->addStretch(1);
    all->addLayout(buttons);
    plan->installEventFilter(this);
    hide();
}

void EmptyYard::setYard(const QString& name) {
    m_sentence->setText(tr("No hive stands in %1 yet. Set up a row of hives, all alike and evenly spaced, or place "
                           "them one by one on the drawing.")
                            .arg(name));
    settle();
}

void EmptyYard::settle() {
    const QWidget* plan = parentWidget();
    const int wide = std::min(std::max(sizeHint().width(), fontMetrics().averageCharWidth() * 64), plan->width() - 40);
    resize(wide, heightForWidth(wide) > 0 ? heightForWidth(wide) : sizeHint().height());
    move((plan->width() - width()) / 2, plan->height() / 3 - height() / 2);
}

bool EmptyYard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) settle();
    return QWidget::eventFilter(watched, event);
}

void EmptyYard::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    settle();
}

/// Enter presses the button that has the keys, as Space does.
void EmptyYard::keyPressEvent(QKeyEvent* event) {
    auto* button = qobject_cast<QPushButton*>(focusWidget());
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    enter&& button ? button->click() : QWidget::keyPressEvent(event);
}

} // namespace ui::start
