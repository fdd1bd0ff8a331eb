#include "ui/board/questions.h"

#include "ui/board/ask_line.h"
#include "ui/board/merge_desk.h"
#include "ui/board/pair_typed.h"
#include "ui/board/variant_table.h"
#include "ui/board/why_not.h"

#include <QEvent>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>

namespace ui::board {

Questions::Questions(MergeDesk& merge, desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_merge(merge),
      m_desk(desk),
      m_dialogs(dialogs),
      m_ask(new AskLine(this)),
      m_why(new WhyNotView(this)),
      m_variants(new VariantTable(merge, this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    for (QWidget* part : std::initializer_list<QWidget*>{m_ask, m_why, m_variants}) {
        all->addWidget(part);
        part->installEventFilter(this);
    }
    connect(m_ask, &AskLine::closed, this, &Questions::left);
    connect(m_why, &WhyNotView::closed, this, &Questions::left);
    connect(m_variants, &VariantTable::closed, this, &Questions::left);
    connect(m_why, &WhyNotView::offerTaken, this, [this](const Offer& offer) {
        if (!m_merge.take(offer)) return;
        m_why->hide();
        emit left();
    });
    hide();
}

bool Questions::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent) {
        setVisible(!m_ask->isHidden() || !m_why->isHidden() || !m_variants->isHidden());
        emit openChanged();
    }
    return QWidget::eventFilter(watched, event);
}

void Questions::only(const QWidget* part) {
    show();
    for (QWidget* other : std::initializer_list<QWidget*>{m_ask, m_why, m_variants})
        if (other != part) other->hide();
}

void Questions::leaveOut(const Offer& offer) {
    only(m_ask);
    m_ask->ask(tr("Leave %1 out. Why?").arg(labelOf(m_desk.reading(), offer.a)), {},
               tr("A word for the worksheet, or nothing. Enter leaves it out, Escape does not."),
               [this, offer](const QString& typed) {
                   return m_merge.take(offer, typed) ? QString() : tr("It was not left out.");
               });
}

void Questions::limit() {
    if (const QString why = m_merge.barred(); !why.isEmpty()) return emit m_desk.said(why);
    only(m_ask);
    const core::MergeDay& day = m_merge.asked().day;
    m_ask->ask(tr("At most how many unions, or how long?"), limitAsTyped({day.most, day.minutes}),
               tr("6 is six unions; 3 h or 90 min is what the crew has; nothing: no limit."),
               [this](const QString& typed) {
                   const auto limit = limitTyped(typed);
                   if (!limit)
                       return tr("“%1” is no limit: a number of unions (6) or a time (3 h, 90 min).").arg(typed);
                   return m_merge.limitTo(*limit) ? QString() : tr("The limit was not changed.");
               });
}

void Questions::whyNot() {
    const auto& selected = m_desk.selected();
    const auto a = selected.size() == 2 ? m_desk.reading().find(selected[0]) : std::nullopt;
    const auto b = selected.size() == 2 ? m_desk.reading().find(selected[1]) : std::nullopt;
    if (a && b)
        tell(*a, *b);
    else
        askTwo();
}

void Questions::askTwo() {
    only(m_ask);
    const auto chosen = m_desk.chosen();
    m_ask->ask(tr("Which two are not united, and why?"),
               chosen ? labelOf(m_desk.reading(), *chosen) + QStringLiteral(" + ") : QString(),
               tr("Two labels: K2 + K7. Or select two hives on the plan first."), [this](const QString& typed) {
                   const PairTyped pair = pairTyped(m_desk.reading(), typed);
                   if (!pair.problem.isEmpty()) return pair.problem;
                   tell(pair.a, pair.b);
                   return QString();
               });
    m_ask->line()->end(false);
}

void Questions::tell(core::ColonyIx a, core::ColonyIx b) {
    only(m_why);
    guarded(m_dialogs, [&] {
        const desk::Reading& r = m_desk.reading();
        const WhyNotText text = board::whyNot(r, a, b);
        const core::ColonyId first = r.snapshot.colony(a).id, second = r.snapshot.colony(b).id;
        std::optional<Offer> pin;
        if (text.mayUnite && m_merge.barred().isEmpty())
            pin = offersOfPair(r, m_merge.asked().choices, first, second).front();
        m_whyNot = {first, second};
        m_why->tell(text, pin);
    });
}

void Questions::compare() {
    only(m_variants);
    guarded(m_dialogs, [this] { m_variants->compare(); });
    m_variants->table()->setFocus(Qt::OtherFocusReason);
}

void Questions::follow() {
    if (m_why->isHidden() || !m_whyNot) return;
    const auto a = m_desk.reading().find(m_whyNot->first), b = m_desk.reading().find(m_whyNot->second);
    if (!a || !b) return m_why->hide();
    tell(*a, *b);
}

} // namespace ui::board
