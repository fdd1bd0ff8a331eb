#include "ui/board/board.h"

#include "ui/board/ask_line.h"
#include "ui/board/board_actions.h"
#include "ui/board/board_head.h"
#include "ui/board/notices.h"
#include "ui/board/pair_typed.h"
#include "ui/board/variant_table.h"
#include "ui/board/why_not.h"
#include "ui/card/card_whys.h"
#include "ui/look/reason_text.h"

#include <QAction>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::board {

namespace {
constexpr int kRoomForSide = 34; // lines of text, below which the board is too low for the drawing
}

Board::Board(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_merge(new MergeDesk(desk, dialogs, this)),
      m_actions(new BoardActions(*m_merge, this)),
      m_head(new BoardHead(*m_merge, *m_actions, this)),
      m_notices(new Notices(*m_merge, this)),
      m_ask(new AskLine(this)),
      m_why(new WhyNotView(this)),
      m_variants(new VariantTable(*m_merge, this)),
      m_list(new BoardList(this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    for (QWidget* part : std::initializer_list<QWidget*>{m_head, m_notices, m_ask, m_why, m_variants})
        all->addWidget(part);
    for (QWidget* panel : std::initializer_list<QWidget*>{m_ask, m_why, m_variants}) panel->installEventFilter(this);
    all->addWidget(m_list, 1);
    buildFoot(all);
    connect(m_head, &BoardHead::dayAsked, this, &Board::dayAsked);
    connectList();
    connectActions();
}

void Board::connectList() {
    connect(m_list, &BoardList::chosenByHand, this, &Board::rowChosen);
    connect(m_list, &BoardList::entered, this, [this](int row) {
        if (model().at(row).colony) emit opened(*model().at(row).colony);
    });
    connect(m_list, &BoardList::offerTaken, this, &Board::take);
    connect(m_list, &BoardList::whyNotAsked, m_actions->whyNot, &QAction::trigger);
    connect(m_list, &BoardList::menuAsked, this, &Board::showMenu);
    const auto back = [this] { m_list->setFocus(Qt::OtherFocusReason); };
    connect(m_ask, &AskLine::closed, this, back);
    connect(m_why, &WhyNotView::closed, this, back);
    connect(m_variants, &VariantTable::closed, this, back);
}

void Board::connectActions() {
    connect(m_actions, &BoardActions::offerTaken, this, &Board::take);
    connect(m_why, &WhyNotView::offerTaken, this, [this](const Offer& offer) {
        if (!m_merge->take(offer)) return;
        m_why->hide();
        m_list->setFocus(Qt::OtherFocusReason);
    });
    connect(m_actions->limit, &QAction::triggered, this, &Board::askLimit);
    connect(m_actions->whyNot, &QAction::triggered, this, &Board::askWhyNot);
    connect(m_actions->compare, &QAction::triggered, this, [this] {
        onlyPanel(m_variants);
        guarded(m_dialogs, [this] { m_variants->compare(); });
        m_variants->setFocus(Qt::OtherFocusReason);
    });
    connect(&m_desk, &desk::Desk::selectedChanged, this, &Board::showActions);
}

void Board::buildFoot(QVBoxLayout* all) {
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(20, 6, 20, 0);
    m_asUnited = new QLabel(tr("As united"), this);
    m_asUnited->setProperty("quiet", true);
    foot->addWidget(m_asUnited);
    m_side = new card::ElevationView(this);
    foot->addWidget(m_side);
    auto* buttons = new QHBoxLayout;
    auto* preview = new QPushButton(tr("Pre&view"), this);
    auto* pdf = new QPushButton(tr("P&DF…"), this);
    auto* print = new QPushButton(tr("&Print worksheet"), this);
    print->setProperty("primary", true);
    connect(preview, &QPushButton::clicked, this, &Board::previewAsked);
    connect(pdf, &QPushButton::clicked, this, &Board::pdfAsked);
    connect(print, &QPushButton::clicked, this, &Board::printAsked);
    buttons->addWidget(preview);
    buttons->addWidget(pdf);
    buttons->addStretch(1);
    buttons->addWidget(print);
    foot->addLayout(buttons);
    all->addLayout(foot);
}

void Board::show(const desk::Reading& reading, core::YardIx yard) {
    m_telling = true;
    m_reading = &reading;
    m_yard = yard;
    m_list->open(-1);
    m_list->rows().setRows(boardRows(reading, yard, m_merge->barred().isEmpty()), &reading.snapshot);
    m_head->show(reading, yard);
    open(-1);
    m_telling = false;
    followWhyNot();
}

void Board::setChosen(std::optional<core::ColonyId> colony) {
    showActions();
    const int row = colony ? model().rowAbout(*colony) : -1;
    const auto now = m_list->current();
    if (colony && now && model().at(*now).about(*colony)) return open(*now);
    m_telling = true;
    open(row);
    m_list->setCurrentIndex(row < 0 ? QModelIndex() : model().index(row));
    if (row < 0) m_list->clearSelection();
    if (row >= 0) m_list->scrollTo(model().index(row));
    m_telling = false;
}

/// Rule and limits; and what was given up, worked out only for the one that is looked at: a matching of its yard.
void Board::unfold(int row) {
    if (row < 0 || !m_reading) return;
    const BoardRow& opened = model().at(row);
    if (!opened.rules.isEmpty() || !opened.colony || opened.why.rule[0] == 0) return;
    const auto ix = opened.atRisk ? m_reading->find(*opened.colony) : std::nullopt;
    m_list->rows().unfold(row, look::rulesText(m_reading->snapshot, opened.why),
                          ix ? card::givenUpText(*m_reading, *ix) : QString());
}

void Board::open(int row) {
    unfold(row);
    const core::rules::Union* united = nullptr;
    if (row >= 0 && m_reading && model().at(row).kind == RowKind::Union)
        if (const auto ix = m_reading->find(*model().at(row).colony)) united = m_reading->unionOf(*ix);
    m_united = united;
    showSide();
    if (united) m_side->setSide(card::unitedSideOf(*m_reading, *united));
    m_list->open(row);
}

/// The drawing gives way to whatever is open above the list, and to a list that would have no room.
void Board::showSide() {
    const bool open = !m_ask->isHidden() || !m_why->isHidden() || !m_variants->isHidden();
    const bool shown = m_united && !open && height() >= kRoomForSide * fontMetrics().height();
    m_asUnited->setVisible(shown);
    m_side->setVisible(shown);
}

bool Board::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent) showSide();
    return QWidget::eventFilter(watched, event);
}

void Board::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    showSide();
}

void Board::rowChosen(int row) {
    if (m_telling || !model().at(row).colony) return;
    open(row);
    const core::ColonyId colony = *model().at(row).colony;
    if (!m_reading->find(colony)) return; // asked of one that lives no more
    emit chosen(colony);
}

/// What can be asked of the two selected, or of the one chosen and its union.
std::vector<Offer> Board::offersNow() const {
    if (!m_merge->barred().isEmpty()) return {};
    const auto& selected = m_desk.selected();
    const auto& asked = m_merge->asked().choices;
    if (selected.size() == 2) {
        auto offers = offersOfPair(m_desk.reading(), asked, selected[0], selected[1]);
        if (std::ranges::find(offers, core::MergeAsk::LeaveOut, &Offer::ask) == offers.end())
            for (const core::ColonyId colony : selected)
                offers.push_back(offerOfColony(m_desk.reading(), asked, colony));
        return offers;
    }
    const auto chosen = m_desk.chosen();
    const auto ix = chosen ? m_desk.reading().find(*chosen) : std::nullopt;
    if (!ix) return {};
    const core::rules::Union* u = m_desk.reading().unionOf(*ix);
    if (!u) return {offerOfColony(m_desk.reading(), asked, *chosen)};
    const auto id = [this](core::ColonyIx c) { return m_desk.reading().snapshot.colony(c).id; };
    auto offers = offersOfPair(m_desk.reading(), asked, id(u->moved), id(u->host));
    std::ranges::stable_partition(offers, [&](const Offer& o) { // of the two, the one chosen is left out
        return o.ask != core::MergeAsk::LeaveOut || o.a == *chosen;
    });
    return offers;
}

void Board::showActions() { m_actions->setOffers(offersNow()); }

QList<QAction*> Board::chosenActions() const {
    using core::MergeAsk;
    QList<QAction*> out;
    for (const MergeAsk ask : {MergeAsk::Pin, MergeAsk::Forbid, MergeAsk::LeaveOut, MergeAsk::Host, MergeAsk::Top})
        out << m_actions->of(ask);
    return out << m_actions->whyNot;
}

void Board::onlyPanel(QWidget* panel) {
    for (QWidget* other : std::initializer_list<QWidget*>{m_ask, m_why, m_variants})
        if (other != panel) other->hide();
}

/// The sentences shown are of the plan as it is now.
void Board::followWhyNot() {
    if (m_why->isHidden() || !m_whyNot) return;
    const auto a = m_desk.reading().find(m_whyNot->first), b = m_desk.reading().find(m_whyNot->second);
    if (!a || !b) return m_why->hide();
    tellWhyNot(*a, *b);
}

void Board::take(const Offer& offer) {
    if (!offer.on || offer.ask != core::MergeAsk::LeaveOut || !m_merge->barred().isEmpty()) {
        m_merge->take(offer);
        return;
    }
    onlyPanel(m_ask);
    m_ask->ask(tr("Leave %1 out. Why?").arg(labelOf(m_desk.reading(), offer.a)), {},
               tr("A word for the worksheet, or nothing. Enter leaves it out, Escape does not."),
               [this, offer](const QString& typed) {
                   return m_merge->take(offer, typed) ? QString() : tr("It was not left out.");
               });
}

void Board::askLimit() {
    if (const QString why = m_merge->barred(); !why.isEmpty()) return emit m_desk.said(why);
    onlyPanel(m_ask);
    const core::MergeDay& day = m_merge->asked().day;
    m_ask->ask(tr("At most how many unions, or how long?"), limitAsTyped({day.most, day.minutes}),
               tr("6 is six unions; 3 h or 90 min is what the crew has; nothing: no limit."),
               [this](const QString& typed) {
                   const auto limit = limitTyped(typed);
                   if (!limit)
                       return tr("“%1” is no limit: a number of unions (6) or a time (3 h, 90 min).").arg(typed);
                   return m_merge->limitTo(*limit) ? QString() : tr("The limit was not changed.");
               });
}

void Board::askWhyNot() {
    const auto& selected = m_desk.selected();
    if (selected.size() == 2) {
        const auto a = m_desk.reading().find(selected[0]), b = m_desk.reading().find(selected[1]);
        if (a && b) return tellWhyNot(*a, *b);
    }
    onlyPanel(m_ask);
    const auto chosen = m_desk.chosen();
    m_ask->ask(tr("Which two are not united, and why?"),
               chosen ? labelOf(m_desk.reading(), *chosen) + QStringLiteral(" + ") : QString(),
               tr("Two labels: K2 + K7. Or select two hives on the plan first."), [this](const QString& typed) {
                   const PairTyped pair = pairTyped(m_desk.reading(), typed);
                   if (!pair.problem.isEmpty()) return pair.problem;
                   m_ask->hide();
                   tellWhyNot(pair.a, pair.b);
                   return QString();
               });
    m_ask->line()->end(false);
}

void Board::tellWhyNot(core::ColonyIx a, core::ColonyIx b) {
    onlyPanel(m_why);
    guarded(m_dialogs, [&] {
        const WhyNotText text = board::whyNot(m_desk.reading(), a, b);
        std::optional<Offer> pin;
        const auto id = [this](core::ColonyIx c) { return m_desk.reading().snapshot.colony(c).id; };
        if (text.mayUnite && m_merge->barred().isEmpty()) {
            const auto offers = offersOfPair(m_desk.reading(), m_merge->asked().choices, id(a), id(b));
            pin = offers.front();
        }
        m_whyNot = {id(a), id(b)};
        m_why->tell(text, pin);
    });
}

void Board::showMenu(int row, const QPoint& globalAt) {
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("boardMenu"));
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (row >= 0)
        for (const Offer& offer : model().at(row).offers) {
            QAction* action = menu->addAction(QString(offer.said).replace(u'&', QStringLiteral("&&")));
            connect(action, &QAction::triggered, this, [this, offer] { take(offer); });
        }
    if (!menu->isEmpty()) menu->addSeparator();
    menu->addActions({m_actions->whyNot, m_actions->limit, m_actions->newVariant, m_actions->compare});
    menu->popup(globalAt);
}

} // namespace ui::board
