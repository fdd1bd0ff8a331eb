#include "ui/records/hive_fields.h"

#include "core/edit/edit_context.h"
#include "ui/form/book_options.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/record_form.h"
#include "ui/start/compass.h"
#include "ui/start/new_hives.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ui::records {

namespace edit = core::edit;
using form::Kind;
using form::Values;

namespace {

constexpr int kFirstYear = 1990;
constexpr int kLastYear = 2100;
constexpr qint64 kRoomMm = 700;

void judgeLabel(form::Judge& judge, const Values& values, const edit::Session& book, core::Day since,
                std::optional<core::ColonyId> own) {
    if (!judge.need(kLabel, Records::tr("The colony needs a label."))) return;
    const QString label = form::typed(values, kLabel);
    if (label.contains(u'@')) return judge.add(kLabel, Records::tr("A label holds no @."));
    std::vector<core::Colony> others;
    book.read([&](const edit::EditContext& c) { others = c.coloniesLabelled(label); });
    for (const core::Colony& other : others) {
        if (other.id == own || (other.ended && *other.ended < since)) continue;
        if (other.ended)
            judge.add(
                kLabel,
                Records::tr("%1 is free as a label from %2 on.").arg(other.label, look::dayText(*other.ended + 1)));
        else
            judge.add(kLabel, Records::tr("%1 lives since %2.").arg(other.label, look::dayText(other.since)));
        return;
    }
}

} // namespace

std::vector<form::Field> hiveFields(const edit::Session& book) {
    return {{.key = kLabel, .label = Records::tr("&Label"), .spoken = Records::tr("Label of the colony")},
            {.key = kBox,
             .kind = Kind::Choice,
             .label = Records::tr("Bo&x kind"),
             .spoken = Records::tr("Kind of box"),
             .options = form::boxOptions(book)},
            {.key = kBroodBoxes,
             .kind = Kind::Choice,
             .label = Records::tr("B&rood boxes at first"),
             .spoken = Records::tr("Brood boxes at first"),
             .options = {{QStringLiteral("1"), Records::tr("one")}, {QStringLiteral("2"), Records::tr("two")}}},
            {.key = kQueenBorn,
             .kind = Kind::Whole,
             .label = Records::tr("&Queen born"),
             .spoken = Records::tr("Year the queen was born"),
             .hint = Records::tr("year")}};
}

void putHive(Values& values, const core::Colony& colony, const edit::Session& book) {
    values[kLabel] = colony.label;
    for (const core::BoxKind& kind : book.boxKinds())
        if (kind.id == colony.box) values[kBox] = kind.name;
    values[kBroodBoxes] = QString::number(colony.broodBoxes);
    values[kQueenBorn] = form::typedWhole(colony.queenBorn);
}

void readHive(const Values& values, const edit::Session& book, core::Colony& colony) {
    colony.label = form::typed(values, kLabel);
    if (const auto kind = start::boxNamed(book, form::typed(values, kBox))) colony.box = kind->id;
    colony.broodBoxes = form::wholeOf(values, kBroodBoxes).value_or(1);
    colony.queenBorn = form::wholeOf(values, kQueenBorn);
}

void judgeHive(form::Judge& judge, const Values& values, const edit::Session& book, core::Day since,
               std::optional<core::ColonyId> own) {
    judgeLabel(judge, values, book, since, own);
    judge.whole(kQueenBorn, kFirstYear, kLastYear);
}

form::Field headingField() {
    return {.key = kHeading,
            .label = Records::tr("&Entrance looks"),
            .spoken = Records::tr("Where the entrance looks"),
            .hint = Records::tr("S, south-east or 135")};
}

void judgeHeading(form::Judge& judge, const Values& values) {
    const QString text = form::typed(values, kHeading);
    if (!text.isEmpty() && !start::parseDirection(text))
        judge.add(kHeading, Records::tr("A compass word such as S or south-east, or whole degrees, 0 to 359."));
}

std::optional<int> headingOf(const Values& values) { return start::parseDirection(form::typed(values, kHeading)); }

std::vector<core::Stand> freeStands(const edit::Session& book, core::YardId yard, core::Day day) {
    std::vector<core::Stand> out;
    book.read([&](const edit::EditContext& c) {
        for (core::Stand& stand : c.standsOf(yard)) {
            const auto stays = c.placementsAt(stand.id);
            const bool taken =
                std::ranges::any_of(stays, [day](const core::Placement& p) { return !p.until || *p.until > day; });
            if (!stand.removed && !taken) out.push_back(std::move(stand));
        }
    });
    return out;
}

std::optional<core::MmPoint> spotBeside(core::MmPoint at, int headingDeg, const std::vector<core::MmPoint>& taken) {
    for (const int metres : {2, 3, 4, 6}) // half metres
        for (const int turn : {90, 270, 180, 0}) {
            const double angle = (headingDeg + turn) * std::numbers::pi / 180;
            const core::MmPoint spot{at.x + static_cast<qint32>(std::lround(std::sin(angle) * metres * 50)) * 10,
                                     at.y + static_cast<qint32>(std::lround(std::cos(angle) * metres * 50)) * 10};
            const bool free = std::ranges::all_of(
                taken, [&](core::MmPoint p) { return core::squaredDistance(p, spot) >= kRoomMm * kRoomMm; });
            if (free) return spot;
        }
    return std::nullopt;
}

} // namespace ui::records
