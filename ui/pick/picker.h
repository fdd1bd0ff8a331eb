#pragma once

#include "ui/desk/desk.h"
#include "ui/pick/by_rule.h"

namespace ui::plan {
class PlanView;
}

namespace ui::pick {

class FindLine;

/// Finds and selects hives of the yard shown, and says how many are selected. Made for one book.
class Picker : public QObject {
    Q_OBJECT
public:
    enum class Whole { All, Others, None };

    Picker(desk::Desk& desk, plan::PlanView& plan, QObject* parent);

    void find();
    /// Those of the yard that the rule names; where there are none, says so and leaves the selection.
    void select(const RuleWords& by);
    void select(Whole what);
    FindLine* line() const { return m_line; }

private:
    std::optional<core::YardIx> yard() const;
    void take(const std::vector<core::ColonyId>& colonies);
    void sayCount();

    desk::Desk& m_desk;
    FindLine* m_line;
    size_t m_were = 0; ///< selected, when it was last said
};

} // namespace ui::pick
