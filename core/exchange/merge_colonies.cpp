#include "core/base/natural_order.h"
#include "core/exchange/cell_text.h"
#include "core/exchange/same_as_book.h"

#include <algorithm>

namespace core::exchange {

namespace {

constexpr int kDefaultHeading = 180;

int colonyOf(const Ledger& ledger, LabelId label, Day since) {
    const auto index = static_cast<size_t>(label.value);
    if (index >= ledger.byLabel.size()) return -1;
    for (const int i : ledger.byLabel[index])
        if (ledger.colonies[static_cast<size_t>(i)].row.since == since) return i;
    return -1;
}

const StayEntry& firstStay(const Ledger& ledger, const ColonyEntry& entry) {
    const auto found =
        std::ranges::find_if(entry.stays, [&](int i) { return ledger.stays[static_cast<size_t>(i)].row.first; });
    return ledger.stays[static_cast<size_t>(found == entry.stays.end() ? entry.stays.front() : *found)];
}

/// The year that the book has is that of the queen who heads it now; the file leaves it blank or says an earlier one's.
bool saysOfQueens(const Ledger& ledger, const ColonyDraft& draft, const ColonyEntry& entry) {
    if (draft.row.queenBorn == entry.row.queenBorn) return true;
    const auto queens = ledger.c.queensOf(entry.row.id);
    if (queens.empty() || queens.back().born != entry.row.queenBorn) return false;
    return !draft.row.queenBorn || std::ranges::find(queens, draft.row.queenBorn, &Queen::born) != queens.end();
}

std::vector<Field> fieldsOf(const Ledger& ledger, const ColonyDraft& draft, const ColonyEntry& entry) {
    const StayEntry& stay = firstStay(ledger, entry);
    const StandEntry& stand = ledger.stands[static_cast<size_t>(stay.stand)];
    const auto metres = [](qint32 mm) { return metresText(Millimetres{mm}); };
    const auto heading = [](const std::optional<int>& h) { return QString::number(h.value_or(kDefaultHeading)); };
    // Names match without regard to case.
    const auto name = [](const QString& given, const QString& stored) {
        return folded(given) == folded(stored) ? stored : given;
    };
    const QString& yard = ledger.yards[static_cast<size_t>(stand.yard)].row.name;
    const QString& box = ledger.boxes[static_cast<size_t>(entry.box)].row.name;
    return {{"yard", name(draft.place.yard, yard), yard},
            {"stand", name(draft.place.stand, stand.row.name), stand.row.name},
            {"x_m", metres(draft.place.point.x), metres(stand.row.at.x)},
            {"y_m", metres(draft.place.point.y), metres(stand.row.at.y)},
            {"heading_deg", heading(draft.place.headingDeg), heading(stay.row.headingDeg)},
            {"brood_boxes", QString::number(draft.row.broodBoxes), QString::number(entry.row.broodBoxes)},
            {"box", name(draft.box, box), box},
            {"queen_born", cellText(saysOfQueens(ledger, draft, entry) ? entry.row.queenBorn : draft.row.queenBorn),
             cellText(entry.row.queenBorn)}};
}

/// A blank end may be filled in; one by a union or shake-out may be left blank.
void mergeEnd(Ledger& ledger, const ColonyDraft& draft, ColonyEntry& entry) {
    const Colony& stored = *entry.stored;
    KindCount& count = ledger.count(FileKind::Colonies);
    if (draft.row.ended && !stored.ended) {
        entry.row.ended = draft.row.ended;
        entry.row.end = draft.row.end;
        entry.endAt = draft.at;
        entry.touched = true;
        ++count.changed;
        return;
    }
    const bool byLineage = stored.end == EndKind::United || stored.end == EndKind::ShakenOut;
    if (!draft.row.ended && byLineage) {
        ++count.passedOver;
        return;
    }
    const std::vector<Field> fields = {{"ended", cellText(draft.row.ended), cellText(stored.ended)},
                                       {"end", cellText(draft.row.end), cellText(stored.end)}};
    if (sameAsBook(ledger, draft.at, draft.row.label, fields)) ++count.passedOver;
}

void addNew(Ledger& ledger, const ColonyDraft& draft) {
    ColonyEntry entry;
    entry.at = draft.at;
    entry.row = draft.row;
    entry.label = draft.label;
    entry.endAt = draft.at;
    entry.touched = true;
    entry.box = ledger.boxNamed(draft.box, draft.at);
    const int yard = ledger.yardNamed(draft.place.yard, draft.at);
    const int stand = yard < 0 ? -1 : ledger.standFor(yard, draft.place, draft.at);
    const int colony = ledger.addColony(std::move(entry));
    ++ledger.count(FileKind::Colonies).added;
    if (stand < 0) return;
    StayEntry stay;
    stay.at = draft.at;
    stay.colony = colony;
    stay.stand = stand;
    stay.row.headingDeg = draft.place.headingDeg;
    stay.row.since = draft.row.since;
    stay.row.first = true;
    ledger.addStay(std::move(stay));
}

} // namespace

void mergeColonies(Ledger& ledger) {
    for (const ColonyDraft& draft : ledger.drafts.colonies) {
        ledger.ticker.tick();
        const int found = colonyOf(ledger, draft.label, draft.row.since);
        if (found < 0) {
            addNew(ledger, draft);
            continue;
        }
        ColonyEntry& entry = ledger.colonies[static_cast<size_t>(found)];
        if (entry.isNew())
            faultTwice(ledger, draft.at, "colony", draft.row.label + u'@' + isoText(draft.row.since), entry.at);
        else if (sameAsBook(ledger, draft.at, draft.row.label, fieldsOf(ledger, draft, entry)))
            mergeEnd(ledger, draft, entry);
    }
}

void checkLabels(Ledger& ledger) {
    for (const std::vector<int>& bearers : ledger.byLabel) {
        for (size_t i = 1; i < bearers.size(); ++i) {
            const ColonyEntry& before = ledger.colonies[static_cast<size_t>(bearers[i - 1])];
            const ColonyEntry& after = ledger.colonies[static_cast<size_t>(bearers[i])];
            if (before.row.ended && *before.row.ended < after.row.since) continue;
            const Origin at = after.isNew() ? after.at : before.at.inBook() ? before.endAt : before.at;
            ledger.fault(
                at, "colony",
                Say::tr("“%1” names two colonies on %2: one of %3 and one of %4, expected lives that share no day")
                    .arg(after.row.label, isoText(after.row.since), ledger.lifeOf(bearers[i - 1]),
                         ledger.lifeOf(bearers[i])));
        }
    }
}

} // namespace core::exchange
