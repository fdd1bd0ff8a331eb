#include "ui/close/key_foot.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::close {

KeyFoot::KeyFoot(QWidget* parent) : QWidget(parent) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 4, 20, 0);
    m_rows = new QVBoxLayout;
    all->addLayout(m_rows);
    m_keys = new QLabel(this);
    m_keys->setProperty("quiet", true);
    m_keys->setWordWrap(true);
    all->addWidget(m_keys);
}

void KeyFoot::setKeys(const QString& words) { m_keys->setText(words); }

QHBoxLayout* KeyFoot::lineOf(size_t row) {
    while (m_lines.size() <= row) {
        auto* line = new QHBoxLayout;
        line->addStretch(1);
        m_rows->addLayout(line);
        m_lines.push_back(line);
    }
    return m_lines[row];
}

QPushButton* KeyFoot::made(const QString& text, const QString& tip, char key) {
    auto* button = new QPushButton(text, this);
    button->setToolTip(tr("%1 (%2)").arg(tip).arg(QLatin1Char(key)));
    button->setFocusPolicy(Qt::TabFocus); // a click leaves the keys with the list
    const auto ask = [this, key] { emit asked(key); };
    connect(button, &QPushButton::clicked, this, ask);
    auto* action = new QAction(QStringLiteral("%1\t%2").arg(text).arg(QLatin1Char(key)), this);
    action->setStatusTip(tip);
    connect(action, &QAction::triggered, this, ask);
    addAction(action);
    return button;
}

QPushButton* KeyFoot::add(size_t row, const QString& text, const QString& tip, char key) {
    QHBoxLayout* line = lineOf(row);
    auto* button = made(text, tip, key);
    int stretch = 0; // all that were added stand before it
    while (!line->itemAt(stretch)->spacerItem()) ++stretch;
    line->insertWidget(stretch, button);
    return button;
}

QPushButton* KeyFoot::addLast(size_t row, const QString& text, const QString& tip, char key) {
    auto* button = made(text, tip, key);
    button->setProperty("primary", true);
    lineOf(row)->addWidget(button);
    return button;
}

} // namespace ui::close
