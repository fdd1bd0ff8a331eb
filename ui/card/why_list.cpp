#include "ui/card/why_list.h"

#include "ui/look/type.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::card {

namespace {

QLabel* lineOf(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setProperty("quiet", true);
    return label;
}

} // namespace

WhyList::WhyList(const std::vector<WhyText>& whys, bool unfolded, QWidget* parent)
    : QWidget(parent), m_button(new QPushButton(tr("Rules and limits"), this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(3);
    for (const WhyText& why : whys) {
        if (!why.text.isEmpty()) {
            QLabel* text =
                lineOf(why.title.isEmpty() ? why.text : QStringLiteral("%1: %2").arg(why.title, why.text), this);
            text->setToolTip(why.tip);
            all->addWidget(text);
        }
        QLabel* rules =
            lineOf(why.text.isEmpty() ? QStringLiteral("%1: %2").arg(why.title, why.rules) : why.rules, this);
        rules->setFont(look::lesserFont(font()));
        rules->setContentsMargins(12, 0, 0, 2);
        rules->setToolTip(why.tip);
        all->addWidget(rules);
        m_rules.push_back(rules);
    }
    m_button->setObjectName(QStringLiteral("rulesAndLimits"));
    m_button->setProperty("plain", true);
    m_button->setCheckable(true);
    m_button->setChecked(unfolded);
    m_button->setAccessibleDescription(tr("Shows by which rule and limits the plan says so"));
    connect(m_button, &QPushButton::toggled, this, [this](bool on) {
        unfold(on);
        emit unfoldAsked(on);
    });
    all->addWidget(m_button, 0, Qt::AlignLeft);
    unfold(unfolded);
}

void WhyList::unfold(bool unfolded) {
    for (QWidget* rules : m_rules) rules->setVisible(unfolded);
    m_button->setText(unfolded ? tr("Hide rules and limits") : tr("Rules and limits"));
}

} // namespace ui::card
