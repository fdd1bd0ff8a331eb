#include "ui/visit/visit_place.h"

#include "core/base/error.h"
#include "core/edit/edit_context.h"
#include "ui/form/book_options.h"

#include <QCoreApplication>

namespace ui::visit {

namespace {

struct Places {
    Q_DECLARE_TR_FUNCTIONS(Places)
};

constexpr int kAllVisits = 1'000'000;

} // namespace

VisitPlace visitPlaceOf(const core::edit::Session& book, core::ColonyId id, core::Day day,
                        const std::optional<core::Visit>& was) {
    const auto colony = book.colony(id);
    if (!colony) throw core::Error(core::Error::Kind::BadData, Places::tr("That colony is no longer in the book."));
    VisitPlace place;
    place.colony = id;
    place.label = form::nameOn(book, *colony, day);
    place.since = colony->since;
    place.ended = colony->ended;
    place.today = book.clock().today();
    place.was = was;
    place.weightUnit = book.settings().showWeight;
    book.read([&](const core::edit::EditContext& c) {
        if (const auto kind = c.boxKind(colony->box)) place.frames = kind->frames;
        place.boxesNow = c.boxesAt(id, was && was->boxes ? day - 1 : day);
        for (const core::Visit& v : c.visitsOf(id, kAllVisits))
            if (!was || v.id != was->id) place.visited.push_back(v.day);
    });
    return place;
}

std::optional<QString> movedSince(const core::edit::Session& book, const VisitPlace& place) {
    if (!place.was) return std::nullopt;
    std::optional<core::Visit> now;
    book.read([&](const core::edit::EditContext& c) { now = c.visit(place.was->id); });
    if (!now) return Places::tr("This visit was taken back meanwhile; what is typed here cannot be saved over it.");
    if (*now == *place.was) return std::nullopt;
    return Places::tr("This visit was changed meanwhile. What is typed here stays; saving writes it over that change.");
}

} // namespace ui::visit
