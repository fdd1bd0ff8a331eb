#include "ui/people/who_keeps.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace ui::people {

WhoKeeps::WhoKeeps(QWidget* parent) : QWidget(parent), m_name(new QLineEdit(this)), m_problem(new QLabel(this)) {
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(16, 8, 16, 8);
    auto* question = new QLabel(tr("&Who keeps this book?"), this);
    question->setBuddy(m_name);
    m_name->setAccessibleName(tr("Who keeps this book: a name"));
    m_name->setPlaceholderText(tr("Your name, written beside what you change"));
    m_name->setMinimumWidth(m_name->fontMetrics().averageCharWidth() * 40);
    m_problem->setProperty("warns", true);
    m_problem->setWordWrap(true);
    auto* keep = new QPushButton(tr("Write under this name"), this);
    auto* later = new QPushButton(tr("Later"), this);
    later->setProperty("plain", true);
    later->setToolTip(tr("Under Book, Written by, at any time"));
    across->addWidget(question);
    across->addWidget(m_name);
    across->addWidget(keep);
    across->addWidget(later);
    across->addWidget(m_problem, 1);
    across->addStretch(1);
    connect(m_name, &QLineEdit::returnPressed, this, &WhoKeeps::give);
    connect(m_name, &QLineEdit::textEdited, m_problem, &QLabel::clear);
    connect(keep, &QPushButton::clicked, this, &WhoKeeps::give);
    connect(later, &QPushButton::clicked, this, &WhoKeeps::later);
}

void WhoKeeps::ask(const QString& name) {
    m_name->setText(name);
    m_problem->clear();
}

void WhoKeeps::refuse(const QString& why) {
    m_problem->setText(why);
    m_name->setFocus(Qt::OtherFocusReason);
}

void WhoKeeps::give() {
    const QString name = m_name->text().simplified();
    if (name.isEmpty()) return refuse(tr("A name, or Later."));
    emit named(name);
}

void WhoKeeps::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    emit later();
}

} // namespace ui::people
