#include "ui/life/life_page.h"

#include "ui/look/type.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ui::life {

LifePage::LifePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_heading(new QLabel(this)),
      m_line(new QLabel(this)),
      m_below(new QVBoxLayout) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(14, 12, 14, 12);
    all->setSpacing(6);
    for (QLabel* label : {m_heading, m_line}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        all->addWidget(label);
    }
    m_line->setProperty("quiet", true);
    all->addLayout(m_below, 1);
}

void LifePage::setColony(std::optional<core::ColonyId> colony) {
    m_colony = colony;
    m_stale = true;
    if (isVisible()) refill();
}

void LifePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) refill();
}

void LifePage::refill() {
    guarded(m_dialogs, [this] {
        fill();
        m_stale = false;
    });
}

void LifePage::say(const QString& heading, const QString& line) {
    m_heading->setFont(look::headingFont(font()));
    m_heading->setText(heading);
    m_heading->setVisible(!heading.isEmpty());
    m_line->setText(line);
    m_line->setVisible(!line.isEmpty());
}

} // namespace ui::life
