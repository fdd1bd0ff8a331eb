#include "ui/board/board_actions.h"

#include "core/edit/merge_variant.h"
#include "ui/board/merge_desk.h"

#include <QAction>
#include <QWidget>

#include <algorithm>

namespace ui::board {

using core::MergeAsk;

QAction* BoardActions::add(const QString& text, const char* keys, const QString& tip) {
    auto* action = new QAction(text, this);
    if (*keys) action->setShortcut(QKeySequence(QLatin1StringView(keys)));
    action->setStatusTip(tip);
    m_board->addAction(action);
    return action;
}

BoardActions::BoardActions(MergeDesk& merge, QWidget* board) : QObject(board), m_merge(merge), m_board(board) {
    m_asks[static_cast<size_t>(MergeAsk::Pin)] =
        add(tr("&Pin the pair"), "Ctrl+I", tr("These two are united, whatever the rest; the same again unpins them"));
    m_asks[static_cast<size_t>(MergeAsk::Forbid)] =
        add(tr("&Forbid the pair"), "Ctrl+B", tr("These two are not united; the same again allows them"));
    m_asks[static_cast<size_t>(MergeAsk::LeaveOut)] =
        add(tr("&Leave the colony out…"), "Ctrl+E", tr("In no union and no shake-out, and no host; with a word why"));
    m_asks[static_cast<size_t>(MergeAsk::Host)] =
        add(tr("Turn the &host"), "Ctrl+R", tr("The other one is carried; the same again leaves it to the rule"));
    m_asks[static_cast<size_t>(MergeAsk::Top)] =
        add(tr("Turn the &boxes"), "Ctrl+U", tr("The other box on top; the same again leaves it to the setting"));
    limit = add(tr("Li&mit…"), "Ctrl+M", tr("At most so many unions, or the hours that the crew has"));
    whyNot = add(tr("&Why not?…"), "Ctrl+Y", tr("What stands against two colonies"));
    newVariant = add(tr("&New variant"), "Ctrl+Shift+V", tr("A copy of what is asked, to be changed by itself"));
    nextVariant = add(tr("The ne&xt variant"), "Ctrl+J", tr("Show the next variant of this merge day"));
    compare = add(tr("&Compare the variants"), "Ctrl+Shift+J", tr("Figures side by side, and where they differ"));
    dropVariant = add(tr("Drop this &variant"), "", tr("With all that was asked of it; undo brings it back"));
    dropUnmet = add(tr("Drop what can be no m&ore"), "Ctrl+Shift+X", tr("Wishes that the book now speaks against"));
    for (const MergeAsk ask : {MergeAsk::Pin, MergeAsk::Forbid, MergeAsk::LeaveOut, MergeAsk::Host, MergeAsk::Top})
        connect(of(ask), &QAction::triggered, this, [this, ask] {
            const auto it = std::ranges::find(m_offers, ask, &Offer::ask);
            if (it != m_offers.end()) emit offerTaken(Offer(*it)); // they are others once it is taken
        });
    connect(newVariant, &QAction::triggered, &merge, &MergeDesk::addVariant);
    connect(nextVariant, &QAction::triggered, &merge, &MergeDesk::nextVariant);
    connect(dropVariant, &QAction::triggered, &merge, &MergeDesk::dropVariant);
    connect(dropUnmet, &QAction::triggered, &merge, &MergeDesk::dropUnmet);
    connect(&merge, &MergeDesk::changed, this, &BoardActions::follow);
    follow();
    setOffers({});
}

void BoardActions::follow() {
    newVariant->setEnabled(static_cast<int>(m_merge.variants().size()) < core::edit::kMergeVariants);
    nextVariant->setEnabled(m_merge.variants().size() > 1);
    compare->setEnabled(m_merge.variants().size() > 1);
    dropVariant->setEnabled(!m_merge.variants().empty());
    dropVariant->setText(m_merge.variants().size() > 1 ? tr("Drop this &variant") : tr("Drop all that is asked (&v)"));
    dropUnmet->setEnabled(!m_merge.unmet().empty());
}

void BoardActions::setOffers(const std::vector<Offer>& offers) {
    m_offers = offers;
    for (const MergeAsk ask : {MergeAsk::Pin, MergeAsk::Forbid, MergeAsk::LeaveOut, MergeAsk::Host, MergeAsk::Top})
        of(ask)->setEnabled(std::ranges::find(offers, ask, &Offer::ask) != offers.end());
}

} // namespace ui::board
