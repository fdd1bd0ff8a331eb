#pragma once

#include "ui/desk/desk.h"
#include "ui/look/paged.h"

namespace ui::card {
class ColonyCard;
}

namespace ui::life {

class FamilyPage;
class LifePage;
class OverTimePage;
class PlacesPage;

/// The right side's colony under tabs: its card of now, its figures over time, its family, its places.
class CardPages : public look::Paged {
    Q_OBJECT
public:
    /// `card` becomes the first page.
    CardPages(desk::Desk& desk, Dialogs& dialogs, card::ColonyCard* card, QWidget* parent);

    void setColony(std::optional<core::ColonyId> colony);
    void showNow();
    OverTimePage* overTime() const { return m_overTime; }
    FamilyPage* family() const { return m_family; }
    PlacesPage* places() const { return m_places; }

signals:
    void colonyAsked(core::ColonyId colony); ///< its card is to be shown

private:
    card::ColonyCard* m_card;
    OverTimePage* m_overTime;
    FamilyPage* m_family;
    PlacesPage* m_places;
};

} // namespace ui::life
