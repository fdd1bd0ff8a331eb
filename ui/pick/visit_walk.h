#pragma once

#include "ui/desk/desk.h"

#include <functional>

namespace ui::visit {
class VisitForm;
}

namespace ui::pick {

/// The selected hives' visits one after the other, along a short walk from the gate: when one is saved the next one's
/// form opens.
class VisitWalk : public QObject {
    Q_OBJECT
public:
    /// Opens a hive's visit form (false: it could not be), or with nothing closes it.
    using Form = std::function<bool(std::optional<core::ColonyId>)>;

    VisitWalk(desk::Desk& desk, visit::VisitForm& form, Form turn, QObject* parent);

    /// From the first; under way, on to the next without a visit of this one.
    void goOn();
    /// These, in this order; they stand in the yard shown. One that is under way is left.
    void walk(std::vector<core::ColonyId> order);
    void saved(core::ColonyId colony); ///< a new visit was
    void left();                       ///< the form was, without saving

private:
    bool underWay() const;
    void begin();
    bool openFrom(size_t at);
    void end();

    desk::Desk& m_desk;
    visit::VisitForm& m_form;
    Form m_turn;
    std::vector<core::ColonyId> m_order; ///< empty: none under way
    size_t m_at = 0;
    int m_saved = 0;
};

} // namespace ui::pick
