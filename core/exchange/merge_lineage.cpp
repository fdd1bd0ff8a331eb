#include "core/exchange/same_as_book.h"

#include <algorithm>
#include <map>

namespace core::exchange {

namespace {

bool ends(LineageHow how) { return how != LineageHow::Divided; }
EndKind endOf(LineageHow how) { return how == LineageHow::United ? EndKind::United : EndKind::ShakenOut; }

using Key = std::tuple<Day, LineageHow, int, int>;

Key keyOf(const LineageEntry& entry) { return {entry.row.day, entry.row.how, entry.colony, entry.into}; }

/// The colony's `ended` and `end` by its own row must be the lineage's.
bool agrees(Ledger& ledger, const LineageEntry& entry, const ColonyEntry& colony) {
    const QString name = ledger.shown(entry.colony);
    const bool ownRow = !colony.endAt.inBook();
    if (colony.row.ended && *colony.row.ended != entry.row.day) {
        ledger.fault(ownRow ? colony.endAt : entry.at, ownRow ? "ended" : "date",
                     Say::tr("“%1” ended on %2, but its lineage row says %3, expected one day")
                         .arg(name, isoText(*colony.row.ended), isoText(entry.row.day)));
        return false;
    }
    if (colony.row.end && *colony.row.end != endOf(entry.row.how)) {
        ledger.fault(ownRow ? colony.endAt : entry.at, ownRow ? "end" : "how",
                     Say::tr("“%1” ended %2, but its lineage row says %3, expected the same")
                         .arg(name, word(*colony.row.end), word(entry.row.how)));
        return false;
    }
    return true;
}

void endColony(Ledger& ledger, const LineageEntry& entry, int position) {
    ColonyEntry& colony = ledger.colonies[static_cast<size_t>(entry.colony)];
    if (colony.endLineage >= 0) {
        const LineageEntry& other = ledger.lineage[static_cast<size_t>(colony.endLineage)];
        ledger.fault(
            entry.at, "colony",
            Say::tr("“%1” is %2 on %3 too (%4), expected one end")
                .arg(ledger.shown(entry.colony), word(other.row.how), isoText(other.row.day), ledger.place(other.at)));
        return;
    }
    colony.endLineage = position;
    if (!agrees(ledger, entry, colony) || colony.row.ended) return;
    colony.row.ended = entry.row.day;
    colony.row.end = endOf(entry.row.how);
    colony.endAt = entry.at;
    colony.endColumn = "date";
    colony.touched = true;
}

void faultBornTwice(Ledger& ledger, const LineageEntry& entry, const LineageEntry& other) {
    ledger.fault(entry.at, "into",
                 Say::tr("“%1” is divided from “%2” too (%3), expected one row")
                     .arg(ledger.shown(entry.into), ledger.shown(other.colony), ledger.place(other.at)));
}

/// Which rows end in a circle: following each from its colony to its `into` comes back to it.
std::vector<size_t> circles(const std::vector<LineageEntry>& rows, const std::vector<size_t>& day) {
    std::map<int, size_t> from;
    for (const size_t i : day) from.emplace(rows[i].colony, i);
    std::vector<size_t> found;
    for (const size_t i : day) {
        int at = rows[i].into;
        for (size_t steps = 0; steps <= from.size() && at != rows[i].colony; ++steps) {
            const auto next = from.find(at);
            if (next == from.end()) break;
            at = rows[next->second].into;
        }
        if (at == rows[i].colony) found.push_back(i);
    }
    return found;
}

void checkCircles(Ledger& ledger) {
    std::map<Day, std::vector<size_t>> byDay;
    for (size_t i = 0; i < ledger.lineage.size(); ++i)
        if (ends(ledger.lineage[i].row.how)) byDay[ledger.lineage[i].row.day].push_back(i);
    for (const auto& [day, rows] : byDay) {
        const bool fromFile = std::ranges::any_of(rows, [&](size_t i) { return !ledger.lineage[i].at.inBook(); });
        if (rows.size() < 2 || !fromFile) continue;
        for (const size_t i : circles(ledger.lineage, rows)) {
            const LineageEntry& entry = ledger.lineage[i];
            if (entry.at.inBook()) continue;
            ledger.fault(entry.at, "into",
                         Say::tr("the unions and shake-outs of %1 go round in a circle through “%2”, expected one "
                                 "colony that lives on")
                             .arg(isoText(day), ledger.shown(entry.into)));
        }
    }
}

/// A colony its own ancestor by divides alone: follows mothers back, each colony having one at most.
void checkAncestors(Ledger& ledger) {
    std::map<int, int> mother;
    for (const LineageEntry& entry : ledger.lineage)
        if (!ends(entry.row.how)) mother.emplace(entry.into, entry.colony);
    for (const LineageEntry& entry : ledger.lineage) {
        if (ends(entry.row.how) || entry.at.inBook()) continue;
        int at = entry.colony;
        for (size_t steps = 0; steps <= mother.size() && at != entry.into; ++steps) {
            const auto next = mother.find(at);
            if (next == mother.end()) break;
            at = next->second;
        }
        if (at == entry.into)
            ledger.fault(
                entry.at, "into",
                Say::tr("“%1” is its own ancestor by divides, expected another mother").arg(ledger.shown(entry.into)));
    }
}

void checkLiving(Ledger& ledger, const LineageEntry& entry) {
    const ColonyEntry& into = ledger.colonies[static_cast<size_t>(entry.into)];
    const bool divided = !ends(entry.row.how);
    if (entry.at.inBook()) {
        // A row of the book can only fall after an end that the files give.
        for (const int side : {entry.colony, entry.into}) {
            const ColonyEntry& colony = ledger.colonies[static_cast<size_t>(side)];
            if (colony.endedNow() && entry.row.day > *colony.row.ended)
                ledger.checkLife(side, entry.row.day, colony.endAt, colony.endColumn);
        }
        return;
    }
    if (divided && into.row.since != entry.row.day)
        ledger.fault(entry.at, "into",
                     Say::tr("“%1” begins on %2, expected a colony that begins on the day of the divide (%3)")
                         .arg(ledger.shown(entry.into), isoText(into.row.since), isoText(entry.row.day)));
    if (!divided) ledger.checkLife(entry.into, entry.row.day, entry.at, "into");
    ledger.checkLife(entry.colony, entry.row.day, entry.at, "date");
}

void checkEndsHaveRows(Ledger& ledger) {
    for (size_t i = 0; i < ledger.colonies.size(); ++i) {
        const ColonyEntry& colony = ledger.colonies[i];
        if (!colony.touched || colony.endLineage >= 0) continue;
        if (colony.row.end != EndKind::United && colony.row.end != EndKind::ShakenOut) continue;
        ledger.fault(colony.endAt, "end",
                     Say::tr("“%1” is %2 without a row in lineage, expected one of %3")
                         .arg(ledger.shown(static_cast<int>(i)), word(*colony.row.end), isoText(*colony.row.ended)));
    }
}

} // namespace

void mergeLineage(Ledger& ledger) {
    std::map<Key, int> known;
    std::map<int, int> born;
    for (size_t i = 0; i < ledger.lineage.size(); ++i) {
        const LineageEntry& entry = ledger.lineage[i];
        known.emplace(keyOf(entry), static_cast<int>(i));
        if (!ends(entry.row.how)) born.emplace(entry.into, static_cast<int>(i));
    }
    for (const LineageDraft& draft : ledger.drafts.lineage) {
        ledger.ticker.tick();
        LineageEntry entry{draft.at, draft.row, -1, -1};
        entry.colony = ledger.colonyNamed(draft.colony, draft.row.day, draft.at, "colony");
        entry.into = ledger.colonyNamed(draft.into, draft.row.day, draft.at, "into");
        if (entry.colony < 0 || entry.into < 0) continue;
        if (entry.colony == entry.into) {
            ledger.fault(draft.at, "into",
                         Say::tr("“%1” with itself, expected another colony").arg(ledger.shown(entry.into)));
            continue;
        }
        if (const auto found = known.find(keyOf(entry)); found != known.end()) {
            const LineageEntry& other = ledger.lineage[static_cast<size_t>(found->second)];
            const QString name = ledger.shown(entry.colony) + u' ' + word(entry.row.how);
            if (!other.at.inBook())
                faultTwice(ledger, draft.at, "colony", name, other.at);
            else if (sameAsBook(ledger, draft.at, name,
                                {{"by", draft.row.by, other.row.by}, {"note", draft.row.note, other.row.note}}))
                ++ledger.count(FileKind::Lineage).passedOver;
            continue;
        }
        const int position = static_cast<int>(ledger.lineage.size());
        if (!ends(entry.row.how)) {
            const auto [other, first] = born.emplace(entry.into, position);
            if (!first) {
                faultBornTwice(ledger, entry, ledger.lineage[static_cast<size_t>(other->second)]);
                continue;
            }
        }
        known.emplace(keyOf(entry), position);
        ledger.lineage.push_back(entry);
        ++ledger.count(FileKind::Lineage).added;
        if (ends(entry.row.how)) endColony(ledger, entry, position);
    }
}

void checkLineage(Ledger& ledger) {
    for (const LineageEntry& entry : ledger.lineage) checkLiving(ledger, entry);
    checkCircles(ledger);
    checkAncestors(ledger);
    checkEndsHaveRows(ledger);
}

} // namespace core::exchange
