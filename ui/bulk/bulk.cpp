#include "ui/bulk/bulk.h"

#include "core/edit/bulk_change.h"
#include "ui/bulk/colonies_form.h"
#include "ui/bulk/visits_form.h"

#include <algorithm>

namespace ui::bulk {

namespace edit = core::edit;

namespace {

bool tell(desk::Desk& desk, const QString& why) {
    emit desk.said(why);
    return false;
}

/// Whether something can be begun with so many of them.
bool mayBegin(desk::Desk& desk, size_t many, const QString& none) {
    if (many == 0) return tell(desk, none);
    if (many > edit::kMostAtOnce)
        return tell(desk,
                    Bulk::tr("%1 are selected; at most %2 are changed at once.").arg(many).arg(edit::kMostAtOnce));
    if (const QString barred = desk.writeBarred(); !barred.isEmpty()) return tell(desk, barred);
    return true;
}

QString noVisits() { return Bulk::tr("Select visits first: they are changed together."); }
QString noHives() { return Bulk::tr("Select hives first: they are changed together."); }

} // namespace

bool changeVisits(desk::Desk& desk, const std::vector<core::VisitId>& visits, const Open& open) {
    return mayBegin(desk, visits.size(), noVisits()) && open(std::make_unique<VisitsForm>(desk.session(), visits));
}

bool takeBackVisits(desk::Desk& desk, const std::vector<core::VisitId>& visits) {
    if (!mayBegin(desk, visits.size(), noVisits())) return false;
    const QString what =
        visits.size() == 1 ? Bulk::tr("Take back 1 visit") : Bulk::tr("Take back %1 visits").arg(visits.size());
    return desk.save(what, [visits](const edit::EditContext& c) { return edit::takeBackVisits(c, visits); });
}

bool changeSelected(desk::Desk& desk, const Open& open) {
    return mayBegin(desk, desk.selected().size(), noHives()) &&
           open(std::make_unique<ColoniesForm>(desk.session(), desk.selected()));
}

bool visitSelected(desk::Desk& desk, const Open& open) {
    if (!mayBegin(desk, desk.selected().size(), noHives())) return false;
    const core::Day day = std::min(desk.day(), desk.today());
    return open(std::make_unique<SameVisitForm>(desk.session(), desk.selected(), day, desk.author()));
}

} // namespace ui::bulk
