#pragma once

#include "ui/board/offers.h"
#include "ui/desk/desk.h"

#include <QWidget>

#include <optional>
#include <utility>

namespace ui::board {

class AskLine;
class MergeDesk;
class VariantTable;
class WhyNotView;

/// What opens above the plan, one at a time: a line to be answered, the sentences about two colonies, the variants side
/// by side.
class Questions : public QWidget {
    Q_OBJECT
public:
    Questions(MergeDesk& merge, desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    void leaveOut(const Offer& offer); ///< asks for the word why
    void limit();
    /// Of the two selected; else two labels are asked for.
    void whyNot();
    void compare();
    /// The plan is another: the sentences shown are told anew.
    void follow();

    AskLine* line() const { return m_ask; }
    WhyNotView* whyNotView() const { return m_why; }
    VariantTable* variants() const { return m_variants; }

signals:
    void left(); ///< by hand: the keys go back to the plan
    void openChanged();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; ///< of its parts, shown and hidden

private:
    void only(const QWidget* part);
    void askTwo();
    void tell(core::ColonyIx a, core::ColonyIx b);

    MergeDesk& m_merge;
    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    AskLine* m_ask;
    WhyNotView* m_why;
    VariantTable* m_variants;
    std::optional<std::pair<core::ColonyId, core::ColonyId>> m_whyNot; ///< whom the sentences shown are of
};

} // namespace ui::board
