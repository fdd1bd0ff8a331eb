#include "ui/close/close_foot.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::close {

using core::StripOutcome;

QPushButton* CloseFoot::add(QHBoxLayout* line, const QString& text, const QString& tip, char key) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tr("%1 (%2)").arg(tip).arg(QLatin1Char(key)));
    made->setFocusPolicy(Qt::TabFocus);                // a click leaves the keys with the list
    const auto ask = [this, key] { emit asked(key); }; // of letters the key is the letter
    connect(made, &QPushButton::clicked, this, ask);
    auto* action = new QAction(QStringLiteral("%1\t%2").arg(text).arg(QLatin1Char(key)), this);
    action->setStatusTip(tip);
    connect(action, &QAction::triggered, this, ask);
    addAction(action);
    line->addWidget(made);
    return made;
}

CloseFoot::CloseFoot(QWidget* parent) : QWidget(parent) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 4, 20, 0);
    auto* above = new QHBoxLayout;
    auto* first = new QHBoxLayout;
    auto* second = new QHBoxLayout;
    m_fact = add(above, tr("It was done: a fact"), tr("Written although a rule stands against it"), 'F');
    m_fact->setObjectName(QStringLiteral("closeFact"));
    m_note = {add(first, tr("Done"), tr("As it is on the strip"), 'D'), add(first, tr("Not done…"), tr("And why"), 'N'),
              add(first, tr("Changed…"), tr("Something else was done instead"), 'C')};
    m_another = add(second, tr("Another…"), tr("Something that was not on the sheet"), 'A');
    m_back = add(second, tr("Take back"), tr("What is written of this strip"), 'T');
    second->addStretch(1);
    m_write = add(second, tr("Write the day"), tr("All that is noted, in one edit"), 'W');
    m_write->setProperty("primary", true);
    m_write->setObjectName(QStringLiteral("closeWrite"));
    for (QHBoxLayout* line : {above, first, second}) {
        if (line != second) line->addStretch(1);
        all->addLayout(line);
    }
    auto* keys = new QLabel(tr("D done · N not done · C changed · A another · F a fact · Del clears · T takes back · "
                               "Enter goes on · W writes the day"),
                            this);
    keys->setProperty("quiet", true);
    keys->setWordWrap(true);
    all->addWidget(keys);
}

void CloseFoot::show(const Line* line, bool may, bool drafted) {
    const bool noting = may && line && (line->stage == Stage::Open || line->stage == Stage::Drafted);
    for (QPushButton* button : m_note) button->setEnabled(noting);
    m_another->setEnabled(may);
    m_back->setEnabled(may && line && line->stage == Stage::Written);
    const bool fact = may && line && line->stage == Stage::Drafted && line->outcome != StripOutcome::NotDone &&
                      (line->asFact || !line->problem.isEmpty());
    m_fact->setVisible(fact);
    m_fact->setText(fact && line->asFact ? tr("Not as a fact") : tr("It was done: a fact"));
    m_write->setEnabled(may && drafted);
}

} // namespace ui::close
