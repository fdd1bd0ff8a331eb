#include "ui/close/close_foot.h"

#include <QPushButton>

namespace ui::close {

using core::StripOutcome;

CloseFoot::CloseFoot(QWidget* parent) : KeyFoot(parent) {
    m_fact = add(0, tr("It was done: a fact"), tr("Written although a rule stands against it"), 'F');
    m_fact->setObjectName(QStringLiteral("closeFact"));
    m_note = {add(1, tr("Done"), tr("As it is on the strip"), 'D'), add(1, tr("Not done…"), tr("And why"), 'N'),
              add(1, tr("Changed…"), tr("Something else was done instead"), 'C')};
    m_another = add(2, tr("Another…"), tr("Something that was not on the sheet"), 'A');
    m_back = add(2, tr("Take back"), tr("What is written of this strip"), 'T');
    m_write = addLast(2, tr("Write the day"), tr("All that is noted, in one edit"), 'W');
    m_write->setObjectName(QStringLiteral("closeWrite"));
    setKeys(tr("D done · N not done · C changed · A another · F a fact · Del clears · T takes back · Enter goes on · "
               "W writes the day"));
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
