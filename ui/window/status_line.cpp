#include "ui/window/status_line.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>

#include <algorithm>

namespace ui::window {

namespace {
constexpr int kLeastRoom = 120;
constexpr int kGap = 14;
} // namespace

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent),
      m_saying(new QLabel(this)),
      m_dot(new QLabel(QStringLiteral("·"), this)),
      m_saved(new QPushButton(this)),
      m_advice(new QLabel(tr("Advice only: local law, inspectors, veterinarians and labels decide"), this)) {
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(kGap, 1, kGap, 2);
    across->setSpacing(5);
    m_saying->setObjectName(QStringLiteral("saying"));
    m_saying->setTextFormat(Qt::PlainText);
    m_saying->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_saying->setMinimumWidth(1);
    m_saved->setObjectName(QStringLiteral("savedButton"));
    m_saved->setProperty("plain", true);
    m_advice->setProperty("quiet", true);
    across->addWidget(m_saying);
    across->addWidget(m_dot);
    across->addWidget(m_saved);
    across->addStretch(1);
    across->addWidget(m_advice);
    connect(m_saved, &QPushButton::clicked, this, &StatusLine::historyAsked);
    settle();
}

void StatusLine::setBook(Book book) {
    m_book = book;
    settle();
}

void StatusLine::say(const QString& sentence) {
    // Where an edit failed, the form it was typed into gives the reason as well.
    if (m_kind != Kind::NotSaved || sentence != m_why) take(Kind::Plain, sentence);
}
void StatusLine::sayDone(const QString& sentence) { take(Kind::Done, sentence); }
void StatusLine::sayNotSaved(const QString& why) {
    m_why = why;
    take(Kind::NotSaved, tr("Not saved: %1").arg(why.left(1).toLower() + why.mid(1)));
}

void StatusLine::take(Kind kind, const QString& sentence) {
    m_kind = kind;
    m_sentence = sentence;
    settle();
    QAccessibleEvent spoken(m_saying, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&spoken);
}

void StatusLine::hint(const QString& sentence) {
    m_hint = sentence;
    elide();
}

QString StatusLine::saying() const { return m_kind == Kind::Done ? tr("%1 · saved").arg(m_sentence) : m_sentence; }

void StatusLine::settle() {
    m_saved->setVisible(m_book != Book::None);
    m_dot->setVisible(m_kind == Kind::Done && m_book != Book::None);
    const bool failed = m_kind == Kind::NotSaved;
    m_saved->setText(m_book == Book::ReadOnly ? tr("reading only") : failed ? tr("not saved") : tr("saved"));
    const QString opens = tr("opens the history of changes");
    m_saved->setToolTip(m_book == Book::ReadOnly ? tr("Nothing can be changed in this window; %1").arg(opens)
                        : failed                 ? tr("The last edit is not in the book; %1").arg(opens)
                                                 : tr("Every edit is in the book when it is made; %1").arg(opens));
    m_saved->setAccessibleName(tr("%1: %2").arg(m_saved->text(), opens));
    m_saying->setAccessibleName(m_sentence.isEmpty() ? tr("Status line") : saying());
    if (m_saying->property("warns").toBool() != failed) {
        m_saying->setProperty("warns", failed);
        m_saying->style()->polish(m_saying);
    }
    elide();
}

void StatusLine::elide() {
    const QString& text = m_hint.isEmpty() ? m_sentence : m_hint;
    const int others =
        m_advice->sizeHint().width() + (m_saved->isHidden() ? 0 : m_saved->sizeHint().width()) + 5 * kGap;
    const int room = std::max(width() - others, kLeastRoom);
    const QString shown = m_saying->fontMetrics().elidedText(text, Qt::ElideRight, room);
    m_saying->setText(shown);
    m_saying->setToolTip(shown == text ? QString() : text);
}

void StatusLine::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    elide();
}

void StatusLine::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) elide();
}

} // namespace ui::window
