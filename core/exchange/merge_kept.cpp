#include "core/exchange/cell_text.h"
#include "core/exchange/pass_over.h"
#include "core/exchange/same_as_book.h"

#include <algorithm>
#include <map>

namespace core::exchange {

namespace {

using QueenEntry = RecordEntry<QueenDraft>;
using MiteFallEntry = RecordEntry<MiteFallDraft>;

ColonyEntry& colonyAt(Ledger& ledger, int position) { return ledger.colonies[static_cast<size_t>(position)]; }

std::optional<Feeding> storedFeeding(Ledger& ledger, const RecordEntry<FeedingDraft>& entry) {
    const auto& stored = colonyAt(ledger, entry.colony).stored;
    if (!stored) return std::nullopt;
    Feeding row = entry.draft->row;
    row.colony = stored->id;
    return row;
}

/// The colony that she was raised from, as a file would name it; blank for none.
QString motherText(Ledger& ledger, int position) {
    if (position < 0) return {};
    const ColonyEntry& mother = colonyAt(ledger, position);
    return mother.row.label + u'@' + isoText(mother.row.since);
}

/// True where the book has her row: passed over, or a fault where it says otherwise.
bool known(Ledger& ledger, const QueenEntry& entry, const std::vector<Queen>& stored) {
    const Queen& given = entry.draft->row;
    const auto found = std::ranges::find(stored, given.since, &Queen::since);
    if (found == stored.end()) return false;
    const int mother = found->mother ? ledger.colonyById.value(found->mother->value, -1) : -1;
    const std::vector<Field> fields = {
        {"until", cellText(given.until), cellText(found->until)},
        {"fate", cellText(given.fate), cellText(found->fate)},
        {"born", cellText(given.born), cellText(found->born)},
        {"mark", cellText(given.mark), cellText(found->mark)},
        {"tag", given.tag, found->tag},
        {"origin", cellText(given.origin), cellText(found->origin)},
        {"source", given.source, found->source},
        {"mother", motherText(ledger, entry.other), motherText(ledger, mother)},
        {"note", given.note, found->note},
    };
    const QString name = ledger.shown(entry.colony) + u' ' + isoText(given.since);
    if (sameAsBook(ledger, entry.draft->at, name, fields)) ++ledger.count(FileKind::Queens).passedOver;
    return true;
}

/// The same of a count of fallen mites: one a colony a day.
bool known(Ledger& ledger, const MiteFallEntry& entry) {
    const auto& colony = colonyAt(ledger, entry.colony).stored;
    const std::vector<MiteFall> stored = colony ? ledger.c.miteFallsOf(colony->id) : std::vector<MiteFall>{};
    const MiteFall& given = entry.draft->row;
    const auto found = std::ranges::find(stored, given.day, &MiteFall::day);
    if (found == stored.end()) return false;
    const std::vector<Field> fields = {
        {"days", QString::number(given.days), QString::number(found->days)},
        {"mites", QString::number(given.mites), QString::number(found->mites)},
        {"by", given.by, found->by},
        {"note", given.note, found->note},
    };
    const QString name = ledger.shown(entry.colony) + u' ' + isoText(given.day);
    if (sameAsBook(ledger, entry.draft->at, name, fields)) ++ledger.count(FileKind::MiteFalls).passedOver;
    return true;
}

/// One of a colony's queens, of the files or the book.
struct Reign {
    Day since;
    std::optional<Day> until;
    Origin at;
};

/// One queen at a time: the fault is the row's of the files, the later of two.
void checkReigns(Ledger& ledger, int colony, std::vector<Reign> reigns) {
    std::ranges::stable_sort(reigns, {}, &Reign::since);
    for (size_t i = 0; i + 1 < reigns.size(); ++i) {
        const Reign& one = reigns[i];
        const Reign& next = reigns[i + 1];
        if (one.until && *one.until <= next.since) continue;
        const Origin at = next.at.inBook() ? one.at : next.at;
        if (at.inBook()) continue; // both are the book's
        const QString name = ledger.shown(colony);
        if (next.at.inBook())
            ledger.fault(at, "until",
                         Say::tr("“%1” has another queen from %2 on, expected an end up to that day")
                             .arg(name, isoText(next.since)));
        else if (one.until)
            ledger.fault(at, "since",
                         Say::tr("%1 where “%2” has another queen until %3, expected that day or later")
                             .arg(isoText(next.since), name, isoText(*one.until)));
        else
            ledger.fault(at, "since",
                         Say::tr("%1 where “%2” has another queen since %3, expected what became of that one first")
                             .arg(isoText(next.since), name, isoText(one.since)));
    }
}

/// The colony's own row says the year of the queen that heads it: of one that the files bring too. What they say of a
/// new colony itself stands.
void tellYear(Ledger& ledger, int colony, const std::vector<Queen>& inBook, const std::vector<const Queen*>& brought) {
    if (brought.empty()) return;
    const Queen& last = **std::ranges::max_element(brought, {}, &Queen::since);
    ColonyEntry& entry = colonyAt(ledger, colony);
    const bool later = std::ranges::any_of(inBook, [&](const Queen& q) { return q.since > last.since; });
    if (later || entry.row.queenBorn == last.born || (entry.isNew() && entry.row.queenBorn)) return;
    entry.row.queenBorn = last.born;
    if (entry.stored && !entry.endedNow()) ++ledger.count(FileKind::Colonies).changed;
}

/// False, after a fault, where she cannot have headed the colony so.
bool checkLives(Ledger& ledger, const QueenEntry& entry) {
    const QueenDraft& draft = *entry.draft;
    if (!ledger.checkLife(entry.colony, draft.row.since, draft.at, "since")) return false;
    if (draft.row.until && !ledger.checkLife(entry.colony, *draft.row.until, draft.at, "until")) return false;
    if (entry.other < 0 || colonyAt(ledger, entry.other).row.since <= draft.row.since) return true;
    ledger.fault(draft.at, "mother",
                 Say::tr("“%1” begins on %2, after “since”, expected a colony that had begun")
                     .arg(ledger.shown(entry.other), isoText(colonyAt(ledger, entry.other).row.since)));
    return false;
}

} // namespace

void mergeFeedings(Ledger& ledger) {
    for (const FeedingDraft& draft : ledger.drafts.feedings) {
        ledger.ticker.tick();
        RecordEntry<FeedingDraft> entry{&draft, -1, -1};
        entry.colony = ledger.colonyNamed(draft.colony, draft.row.day, draft.at, "colony");
        if (entry.colony < 0) continue;
        ledger.checkLife(entry.colony, draft.row.day, draft.at, "date");
        ledger.feedings.push_back(entry);
    }
    passOver<Feeding>(ledger, FileKind::Feedings, ledger.feedings,
                      [&](const RecordEntry<FeedingDraft>& e) { return storedFeeding(ledger, e); });
}

void mergeMiteFalls(Ledger& ledger) {
    std::map<std::pair<int, Day>, Origin> seen;
    for (const MiteFallDraft& draft : ledger.drafts.miteFalls) {
        ledger.ticker.tick();
        MiteFallEntry entry{&draft, -1, -1};
        entry.colony = ledger.colonyNamed(draft.colony, draft.row.day, draft.at, "colony");
        if (entry.colony < 0 || !ledger.checkLife(entry.colony, draft.row.day, draft.at, "date") ||
            !ledger.checkLife(entry.colony, draft.row.day - draft.row.days, draft.at, "days"))
            continue;
        const auto [twice, fresh] = seen.emplace(std::pair(entry.colony, draft.row.day), draft.at);
        if (!fresh)
            faultTwice(ledger, draft.at, "date", ledger.shown(entry.colony) + u' ' + isoText(draft.row.day),
                       twice->second);
        else if (!known(ledger, entry)) {
            ledger.miteFalls.push_back(entry);
            ++ledger.count(FileKind::MiteFalls).added;
        }
    }
}

void mergeQueens(Ledger& ledger) {
    std::map<int, std::vector<QueenEntry>> ofColony;
    for (const QueenDraft& draft : ledger.drafts.queens) {
        ledger.ticker.tick();
        QueenEntry entry{&draft, -1, -1};
        entry.colony = ledger.colonyNamed(draft.colony, draft.row.since, draft.at, "colony");
        if (draft.mother) entry.other = ledger.colonyNamed(*draft.mother, draft.row.since, draft.at, "mother");
        if (entry.colony < 0 || (draft.mother && entry.other < 0) || !checkLives(ledger, entry)) continue;
        auto& others = ofColony[entry.colony];
        const auto twice =
            std::ranges::find_if(others, [&](const QueenEntry& e) { return e.draft->row.since == draft.row.since; });
        if (twice != others.end()) {
            faultTwice(ledger, draft.at, "since", ledger.shown(entry.colony) + u' ' + isoText(draft.row.since),
                       twice->draft->at);
            continue;
        }
        others.push_back(entry);
    }
    for (const auto& [colony, entries] : ofColony) {
        const auto& stored = colonyAt(ledger, colony).stored;
        const std::vector<Queen> inBook = stored ? ledger.c.queensOf(stored->id) : std::vector<Queen>{};
        std::vector<Reign> reigns;
        std::vector<const Queen*> brought;
        for (const Queen& q : inBook) reigns.push_back({q.since, q.until, {}});
        for (const QueenEntry& entry : entries) {
            if (known(ledger, entry, inBook)) continue;
            reigns.push_back({entry.draft->row.since, entry.draft->row.until, entry.draft->at});
            ledger.queens.push_back(entry);
            brought.push_back(&entry.draft->row);
            ++ledger.count(FileKind::Queens).added;
        }
        checkReigns(ledger, colony, std::move(reigns));
        tellYear(ledger, colony, inBook, brought);
    }
}

} // namespace core::exchange
