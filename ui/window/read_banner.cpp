#include "ui/window/read_banner.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ui::window {

ReadBanner::ReadBanner(QWidget* parent)
    : QFrame(parent), m_why(new QLabel(this)), m_again(new QPushButton(tr("Try again"), this)) {
    setObjectName(QStringLiteral("readBanner"));
    setProperty("banner", true);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(20, 8, 14, 8);
    across->setSpacing(14);
    m_why->setWordWrap(true);
    m_why->setTextFormat(Qt::PlainText);
    m_why->setTextInteractionFlags(Qt::TextSelectableByMouse);
    across->addWidget(m_why, 1);
    m_again->setToolTip(tr("Change this book here, where the other window is gone (F5)"));
    m_again->setAccessibleName(tr("Try again to change this book here"));
    across->addWidget(m_again);
    connect(m_again, &QPushButton::clicked, this, &ReadBanner::tryAgainAsked);
    hide();
}

void ReadBanner::show(const QString& why) {
    const bool news = why != m_why->text();
    m_why->setText(why);
    m_why->setAccessibleName(why);
    setVisible(!why.isEmpty());
    if (!news || why.isEmpty()) return;
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QString ReadBanner::shown() const { return m_why->text(); }

} // namespace ui::window
