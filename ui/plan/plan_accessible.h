#pragma once

#include "core/base/id.h"

#include <QAccessibleWidget>

#include <map>

namespace ui::plan {

class PlanView;

/// The plan for a screen reader: a list with a row a hive, in the order of their labels.
class PlanAccessible : public QAccessibleWidget {
public:
    /// From now on plans are shown so; again it does nothing.
    static void install();

    explicit PlanAccessible(PlanView* view);
    ~PlanAccessible() override;

    int childCount() const override;
    QAccessibleInterface* child(int index) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;
    int indexOfChild(const QAccessibleInterface* child) const override;

private:
    PlanView* plan() const;
    mutable std::map<core::ColonyId, QAccessible::Id> m_hives;
};

/// Tells screen readers that the focus is now on the chosen hive.
void announceHive(PlanView& view, core::ColonyId colony);

} // namespace ui::plan
