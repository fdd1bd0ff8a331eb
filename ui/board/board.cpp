#include "ui/board/board.h"

#include "ui/board/board_actions.h"
#include "ui/board/board_head.h"
#include "ui/board/notices.h"
#include "ui/board/questions.h"
#include "ui/card/card_whys.h"
#include "ui/look/reason_text.h"

#include <QAction>
#include <QLabel>
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
      m_questions(new Questions(*m_merge, desk, dialogs, this)),
      m_list(new BoardList(this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    for (QWidget* part : std::initializer_list<QWidget*>{m_head, m_notices, m_questions}) all->addWidget(part);
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
    connect(m_questions, &Questions::left, this, [this] { m_list->setFocus(Qt::OtherFocusReason); });
    connect(m_questions, &Questions::openChanged, this, &Board::showSide);
}

void Board::connectActions() {
    connect(m_actions, &BoardActions::offerTaken, this, &Board::take);
    connect(m_actions->limit, &QAction::triggered, m_questions, &Questions::limit);
    connect(m_actions->whyNot, &QAction::triggered, m_questions, &Questions::whyNot);
    connect(m_actions->compare, &QAction::triggered, m_questions, &Questions::compare);
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
    m_questions->follow();
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
    const bool shown = m_united && m_questions->isHidden() && height() >= kRoomForSide * fontMetrics().height();
    m_asUnited->setVisible(shown);
    m_side->setVisible(shown);
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

void Board::take(const Offer& offer) {
    if (offer.on && offer.ask == core::MergeAsk::LeaveOut && m_merge->barred().isEmpty())
        m_questions->leaveOut(offer);
    else
        m_merge->take(offer);
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
    menu->addActions({m_actions->whyNot, m_actions->limit, m_actions->newVariant, m_actions->nextVariant,
                      m_actions->compare, m_actions->dropVariant});
    menu->popup(globalAt);
}

} // namespace ui::board
