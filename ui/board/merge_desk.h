#pragma once

#include "core/edit/merge_day.h"
#include "core/rules/merge_request.h"
#include "core/rules/plan_difference.h"
#include "ui/board/limit_text.h"
#include "ui/board/offers.h"
#include "ui/desk/desk.h"

#include <QObject>

#include <optional>
#include <vector>

namespace ui::board {

/// What is asked of the merge day shown, as the book keeps it; each change of it is one edit. Knows what the last
/// change did to the plan.
class MergeDesk : public QObject {
    Q_OBJECT
public:
    MergeDesk(desk::Desk& desk, Dialogs& dialogs, QObject* parent = nullptr);

    /// Of the yard shown; `day.id` 0: nothing is kept yet, the plan is as the rules propose it.
    const core::edit::MergeAsked& asked() const { return m_asked; }
    /// Those kept for the yard and day, by number.
    const std::vector<core::MergeDay>& variants() const { return m_variants; }
    /// What is asked and cannot be, of the yard shown.
    const std::vector<core::rules::Unmet>& unmet() const { return m_unmet; }
    /// Something came of a strip of that day: what was planned stays as it was.
    bool closing() const { return m_closing; }
    /// Why nothing can be asked now; empty: it can.
    QString barred() const;
    /// What the last change did to the plan; nullopt: nothing was changed since the yard and day are shown.
    const std::optional<core::rules::PlanDifference>& difference() const { return m_difference; }

    /// Asks, or takes back what was asked. False: it cannot be, and why was said.
    bool take(const Offer& offer, const QString& why = {});
    bool limitTo(const Limit& limit);
    /// Takes back what is asked and cannot be.
    void dropUnmet();
    /// A copy of what is asked, as the first number that is free; it is the one shown then.
    void addVariant();
    void showVariant(int variant);
    void nextVariant();
    /// The one shown, with all that was asked of it.
    void dropVariant();

    const desk::Desk& desk() const { return m_desk; }
    Dialogs& dialogs() const { return m_dialogs; }

signals:
    void changed(); ///< what is asked was read anew

private:
    void readAgain();
    void compare(core::YardIx yard);
    bool save(const core::edit::MergeAsked& asked);
    bool saveAsked(core::edit::MergeChoices choices, const Limit& limit);
    bool mayAsk();
    int newest() const;
    QString barredPin(const Offer& offer) const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    core::edit::MergeAsked m_asked;
    std::vector<core::MergeDay> m_variants;
    std::vector<core::rules::Unmet> m_unmet;
    bool m_closing = false;
    core::rules::PlanGist m_gist; ///< of the plan last shown
    std::optional<core::rules::PlanDifference> m_difference;
};

} // namespace ui::board
