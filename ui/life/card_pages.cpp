#include "ui/life/card_pages.h"

#include "ui/card/colony_card.h"
#include "ui/life/family_page.h"
#include "ui/life/over_time_page.h"
#include "ui/life/places_page.h"

namespace ui::life {

CardPages::CardPages(desk::Desk& desk, Dialogs& dialogs, card::ColonyCard* card, QWidget* parent)
    : Paged(tr("Pages of the colony"), parent),
      m_card(card),
      m_overTime(new OverTimePage(desk, dialogs, this)),
      m_family(new FamilyPage(desk, dialogs, this)),
      m_places(new PlacesPage(desk, dialogs, this)) {
    addPage(tr("Now"), tr("What it is like and what is to be done"), m_card);
    addPage(tr("Over time"), tr("Strength, stores, weight, mites and queen as charts"), m_overTime, m_overTime->keys());
    addPage(tr("Family"), tr("From where it came, and into whom it went"), m_family, m_family->keys());
    addPage(tr("Places"), tr("Where its hive stood"), m_places, m_places->keys());
    connect(m_family, &FamilyPage::colonyAsked, this, [this](core::ColonyId colony) {
        showNow();
        emit colonyAsked(colony);
    });
}

void CardPages::setColony(std::optional<core::ColonyId> colony) {
    for (LifePage* page : std::initializer_list<LifePage*>{m_overTime, m_family, m_places}) page->setColony(colony);
}

void CardPages::showNow() { look::Paged::show(m_card); }

} // namespace ui::life
