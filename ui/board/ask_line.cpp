#include "ui/board/ask_line.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace ui::board {

AskLine::AskLine(QWidget* parent) : QFrame(parent) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 4, 20, 6);
    all->setSpacing(4);
    m_question = new QLabel(this);
    m_question->setWordWrap(true);
    auto* across = new QHBoxLayout;
    m_line = new QLineEdit(this);
    m_line->setObjectName(QStringLiteral("askLine"));
    m_line->setAccessibleName(tr("Answer"));
    m_question->setBuddy(m_line);
    auto* ok = new QPushButton(tr("OK"), this);
    auto* no = new QPushButton(tr("Leave it"), this);
    no->setProperty("plain", true);
    connect(ok, &QPushButton::clicked, this, &AskLine::accept);
    connect(no, &QPushButton::clicked, this, &AskLine::leave);
    connect(m_line, &QLineEdit::returnPressed, this, &AskLine::accept);
    across->addWidget(m_line, 1);
    across->addWidget(ok);
    across->addWidget(no);
    m_hint = new QLabel(this);
    m_hint->setWordWrap(true);
    m_hint->setProperty("quiet", true);
    all->addWidget(m_question);
    all->addLayout(across);
    all->addWidget(m_hint);
    hide();
}

void AskLine::ask(const QString& question, const QString& start, const QString& hint, Take take) {
    m_question->setText(question);
    m_line->setText(start);
    m_line->setAccessibleName(question);
    m_line->setAccessibleDescription(hint);
    m_hintText = hint;
    m_take = std::move(take);
    m_hint->setProperty("warns", false);
    m_hint->setText(hint);
    m_hint->setVisible(!hint.isEmpty());
    show();
    m_line->selectAll();
    m_line->setFocus(Qt::OtherFocusReason);
}

QString AskLine::problem() const { return m_hint->property("warns").toBool() ? m_hint->text() : QString(); }

void AskLine::accept() {
    if (!m_take) return;
    const Take take = m_take; // it may ask the next question
    const QString problem = take(m_line->text());
    if (problem.isEmpty()) return leave();
    m_hint->setText(problem);
    m_hint->setProperty("warns", true);
    m_hint->setProperty("quiet", false);
    m_hint->style()->unpolish(m_hint);
    m_hint->style()->polish(m_hint);
    m_hint->show();
    m_line->setFocus(Qt::OtherFocusReason);
}

void AskLine::leave() {
    if (isHidden()) return;
    hide();
    m_hint->setProperty("warns", false);
    m_hint->setProperty("quiet", true);
    m_hint->style()->unpolish(m_hint);
    m_hint->style()->polish(m_hint);
    emit closed();
}

void AskLine::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return leave();
    QFrame::keyPressEvent(event);
}

} // namespace ui::board
