#include "ui/pick/find_line.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QStyle>

namespace ui::pick {

namespace {
constexpr int kFromTheCorner = 12;
constexpr int kLabelDigits = 9;   // wide, the line
constexpr int kAnswerDigits = 34; // wide, what is found
} // namespace

FindLine::FindLine(desk::Desk& desk, plan::PlanView& plan)
    : QFrame(&plan), m_desk(desk), m_plan(plan), m_line(new QLineEdit(this)), m_answer(new QLabel(this)) {
    setObjectName(QStringLiteral("findLine"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setCursor(Qt::ArrowCursor);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(10, 6, 10, 6);
    auto* name = new QLabel(tr("Hive"), this);
    across->addWidget(name);
    across->addWidget(m_line);
    across->addWidget(m_answer, 1);
    m_line->setAccessibleName(tr("Label of a hive"));
    m_line->setToolTip(tr("Enter chooses the hive, ↑ and ↓ go through what was found, Escape goes back"));
    m_line->installEventFilter(this);
    m_answer->setObjectName(QStringLiteral("findAnswer"));
    m_answer->setWordWrap(true);
    connect(m_line, &QLineEdit::textEdited, this, &FindLine::look);
    connect(m_line, &QLineEdit::returnPressed, this, &FindLine::accept);
    connect(&m_plan, &plan::PlanView::labelTyped, this, &FindLine::open);
    connect(&m_desk, &desk::Desk::read, this, [this] {
        if (isVisible()) look();
    });
    connect(&m_desk, &desk::Desk::yardChanged, this, [this] {
        if (isVisible()) leave(false);
    });
    hide();
}

void FindLine::open(const QString& begins) {
    if (!isVisible()) {
        m_before = m_plan.sight();
        m_yard = m_desk.yard();
    }
    m_line->setFixedWidth(kLabelDigits * fontMetrics().horizontalAdvance(u'0') + 16);
    m_line->setText(begins);
    move(kFromTheCorner, kFromTheCorner);
    QFrame::show();
    raise();
    m_line->setFocus(Qt::OtherFocusReason);
    m_line->deselect();
    look();
}

QString FindLine::answer() const { return m_answer->text(); }

void FindLine::look() {
    const auto yard = m_desk.yard() ? m_desk.reading().find(*m_desk.yard()) : std::nullopt;
    m_found = findLabels(m_desk.reading(), yard, m_line->text());
    if (!m_found.empty()) return show(0);
    m_plan.setMarked({}, {});
    if (m_line->text().trimmed().isEmpty())
        tell(tr("Type a label: the plan flies to it."), false);
    else
        tell(nothingFound(), true);
}

QString FindLine::nothingFound() const {
    return tr("No living hive is called that. Ctrl + F finds those that ended too.");
}

/// That one of those found, and rings around all of them.
void FindLine::show(size_t at) {
    m_at = at;
    const Found& now = m_found[at];
    std::vector<core::ColonyId> here;
    for (const Found& f : m_found)
        if (f.here) here.push_back(f.colony);
    m_plan.setMarked(std::move(here), now.here ? std::optional(now.colony) : std::nullopt);
    if (now.here) m_plan.flyTo(now.colony);
    const QString count =
        m_found.size() == 1 ? now.label : tr("%1 · %2 of %3").arg(now.label).arg(at + 1).arg(m_found.size());
    if (now.here) return tell(count, false);
    tell(now.yard.isEmpty() ? tr("%1 stands in no yard.").arg(count)
                            : tr("%1 stands in %2: Enter goes there.").arg(count, now.yard),
         false);
}

/// On the line, and to those who do not see it.
void FindLine::tell(const QString& answer, bool warns) {
    m_answer->setText(answer);
    if (m_answer->property("warns").toBool() != warns) {
        m_answer->setProperty("warns", warns);
        m_answer->style()->unpolish(m_answer);
        m_answer->style()->polish(m_answer);
    }
    const int widest = kAnswerDigits * fontMetrics().horizontalAdvance(u'0');
    m_answer->setMinimumWidth(std::min(widest, m_answer->fontMetrics().horizontalAdvance(answer) + 4));
    resize(sizeHint().boundedTo({m_plan.width() - 2 * kFromTheCorner, m_plan.height()}));
    if (layout()->hasHeightForWidth()) resize(width(), layout()->totalHeightForWidth(width()));
    m_line->setAccessibleDescription(answer);
    QAccessibleEvent changed(m_line, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void FindLine::accept() {
    if (m_found.empty()) return;
    const Found found = m_found[m_at];
    if (!found.here && found.yard.isEmpty()) return;
    leave(false);
    m_desk.choose(found.colony);
    m_plan.flyTo(found.colony);
    if (!found.here) emit m_desk.said(tr("%1, in %2.").arg(found.label, found.yard));
}

void FindLine::leave(bool back) {
    if (isHidden()) return;
    const bool had = m_line->hasFocus();
    hide();
    m_found.clear();
    m_plan.setMarked({}, {});
    if (had) m_plan.setFocus(Qt::OtherFocusReason);
    if (back && m_desk.yard() == m_yard) m_plan.flyBack(m_before);
}

/// What the line does not take itself stays here: the plan below has other uses for keys.
void FindLine::keyPressEvent(QKeyEvent* event) {
    const int count = static_cast<int>(m_found.size());
    const int by = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    if (event->key() == Qt::Key_Escape) leave(true);
    if (by != 0 && count > 0) show(static_cast<size_t>((static_cast<int>(m_at) + by + count) % count));
}

bool FindLine::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut) {
        const Qt::FocusReason why = static_cast<QFocusEvent*>(event)->reason();
        if (why != Qt::ActiveWindowFocusReason && why != Qt::PopupFocusReason) leave(false);
    }
    return QFrame::eventFilter(watched, event);
}

/// Clicks on it are not the plan's.
bool FindLine::event(QEvent* event) {
    const bool mouse = event->type() == QEvent::MouseButtonPress || event->type() == QEvent::MouseButtonRelease ||
                       event->type() == QEvent::MouseMove || event->type() == QEvent::Wheel ||
                       event->type() == QEvent::ContextMenu;
    return QFrame::event(event) || mouse;
}

} // namespace ui::pick
