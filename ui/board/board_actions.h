#pragma once

#include "ui/board/offers.h"

#include <QObject>

#include <array>
#include <vector>

class QAction;
class QWidget;

namespace ui::board {

class MergeDesk;

/// What the board can do, with its keys; they stand in the window's menu "Merge day" while the board is shown.
class BoardActions : public QObject {
    Q_OBJECT
public:
    BoardActions(MergeDesk& merge, QWidget* board);

    /// What can be asked of the hives that are chosen: the texts and whether they are enabled follow.
    void setOffers(const std::vector<Offer>& offers);
    QAction* of(core::MergeAsk ask) const { return m_asks[static_cast<size_t>(ask)]; }
    QAction *limit, *whyNot, *newVariant, *nextVariant, *compare, *dropVariant, *dropUnmet;

signals:
    void offerTaken(const ui::board::Offer& offer);

private:
    QAction* add(const QString& text, const char* keys, const QString& tip);
    void follow();

    MergeDesk& m_merge;
    QWidget* m_board;
    std::array<QAction*, 5> m_asks; ///< by MergeAsk
    std::vector<Offer> m_offers;
};

} // namespace ui::board
