#include "ui/copies/copies_notice.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ui::copies {

CopiesNotice::CopiesNotice(QWidget* parent)
    : QFrame(parent),
      m_said(new QLabel(this)),
      m_look(new QPushButton(tr("Compare… (Ctrl+Alt+O)"), this)),
      m_later(new QPushButton(tr("Not now"), this)) {
    setObjectName(QStringLiteral("copiesNotice"));
    setProperty("banner", true);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(20, 8, 14, 8);
    across->setSpacing(14);
    m_said->setWordWrap(true);
    m_said->setTextFormat(Qt::PlainText);
    m_said->setTextInteractionFlags(Qt::TextSelectableByMouse);
    across->addWidget(m_said, 1);
    m_look->setToolTip(tr("What the copy has that this book has not, and the other way round"));
    m_later->setToolTip(tr("It is said again when the book is opened next"));
    across->addWidget(m_look);
    across->addWidget(m_later);
    connect(m_look, &QPushButton::clicked, this, &CopiesNotice::lookAsked);
    connect(m_later, &QPushButton::clicked, this, [this] { tell({}); });
    hide();
}

void CopiesNotice::tell(const QString& sentence) {
    m_said->setText(sentence);
    m_said->setAccessibleName(sentence);
    setVisible(!sentence.isEmpty());
    if (sentence.isEmpty()) return;
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QString CopiesNotice::said() const { return m_said->text(); }

} // namespace ui::copies
