#include "core/exchange/cell_text.h"
#include "core/exchange/same_as_book.h"

#include <algorithm>
#include <climits>

namespace core::exchange {

namespace {

using Entry = RecordEntry<VisitDraft>;

struct UpperField {
    const char* column;
    std::optional<Quarters> Visit::*member;
};
constexpr UpperField kUpper[] = {{"upper_bees_top", &Visit::upperBeesTop},
                                 {"upper_bees_bottom", &Visit::upperBeesBottom},
                                 {"upper_stores_frames", &Visit::upperStores}};
constexpr UpperField kLower[] = {
    {"bees_top", &Visit::beesTop}, {"bees_bottom", &Visit::beesBottom}, {"stores_frames", &Visit::stores}};

const char* upperColumn(const Visit& visit) {
    for (const UpperField& field : kUpper)
        if (visit.*field.member) return field.column;
    return nullptr;
}

void checkFrames(Ledger& ledger, const Entry& entry) {
    const int box = ledger.colonies[static_cast<size_t>(entry.colony)].box;
    if (box < 0) return;
    const BoxKind& kind = ledger.boxes[static_cast<size_t>(box)].row;
    const auto check = [&](const UpperField& field) {
        const auto value = entry.draft->row.*field.member;
        if (value && value->value > kind.frames * 4)
            ledger.fault(entry.draft->at, field.column,
                         Say::tr("%1 is out of range, expected 0 to the %2 frames of a %3")
                             .arg(framesText(*value))
                             .arg(kind.frames)
                             .arg(kind.name));
    };
    for (const UpperField& field : kLower) check(field);
    for (const UpperField& field : kUpper) check(field);
}

std::vector<Field> fieldsOf(const Visit& given, const Visit& stored) {
    std::vector<Field> fields = {{"boxes", cellText(given.boxes), cellText(stored.boxes)}};
    for (const UpperField& f : kLower)
        fields.push_back({f.column, cellText(given.*f.member), cellText(stored.*f.member)});
    for (const UpperField& f : kUpper)
        fields.push_back({f.column, cellText(given.*f.member), cellText(stored.*f.member)});
    const std::vector<Field> rest = {{"queen", cellText(given.queen), cellText(stored.queen)},
                                     {"brood_frames", cellText(given.broodFrames), cellText(stored.broodFrames)},
                                     {"brood_checked", cellText(given.broodChecked), cellText(stored.broodChecked)},
                                     {"signs", cellText(given.signs), cellText(stored.signs)},
                                     {"supers", cellText(given.supers), cellText(stored.supers)},
                                     {"gross_kg", cellText(given.gross), cellText(stored.gross)},
                                     {"mites", cellText(given.mites), cellText(stored.mites)},
                                     {"mite_sample", cellText(given.miteSample), cellText(stored.miteSample)},
                                     {"by", given.by, stored.by},
                                     {"note", given.note, stored.note}};
    fields.insert(fields.end(), rest.begin(), rest.end());
    return fields;
}

/// True where the visit is new; passes over or faults one whose colony and day the book has.
bool isNew(Ledger& ledger, const Entry& entry, const std::optional<Visit>& stored) {
    if (!stored) return true;
    const QString name = ledger.shown(entry.colony) + u' ' + isoText(stored->day);
    if (sameAsBook(ledger, entry.draft->at, name, fieldsOf(entry.draft->row, *stored)))
        ++ledger.count(FileKind::Visits).passedOver;
    return false;
}

/// Which visits the book has already; the book is asked one by one, or all keys once where there are many.
void dropKnown(Ledger& ledger, std::vector<Entry>& entries) {
    constexpr size_t kFew = 2000;
    const auto idOf = [&](const Entry& e) { return ledger.colonies[static_cast<size_t>(e.colony)].stored; };
    std::vector<std::optional<VisitId>> known(entries.size());
    const auto asked =
        static_cast<size_t>(std::ranges::count_if(entries, [&](const Entry& e) { return bool(idOf(e)); }));
    if (asked > kFew) {
        ledger.c.eachVisitKey([&](VisitId id, ColonyId colony, Day day) {
            const int position = ledger.colonyById.value(colony.value, -1);
            const auto at = std::ranges::lower_bound(entries, std::pair(position, day), {}, [](const Entry& e) {
                return std::pair(e.colony, e.draft->row.day);
            });
            if (at != entries.end() && at->colony == position && at->draft->row.day == day)
                known[static_cast<size_t>(at - entries.begin())] = id;
        });
    }
    std::vector<Entry> kept;
    kept.reserve(entries.size());
    for (size_t i = 0; i < entries.size(); ++i) {
        const auto colony = idOf(entries[i]);
        std::optional<Visit> stored;
        if (colony && asked <= kFew)
            stored = ledger.c.visitOn(colony->id, entries[i].draft->row.day);
        else if (known[i])
            stored = ledger.c.visit(*known[i]);
        if (isNew(ledger, entries[i], stored)) kept.push_back(entries[i]);
    }
    entries = std::move(kept);
}

/// A visit of the files or of the book in the order of days.
struct BoxVisit {
    const Visit* visit;
    Origin at;
};

/// Counts of an upper box at a colony in one box that day: its boxes by the visits and unions up to then.
void checkBoxes(Ledger& ledger, int colony, const std::vector<BoxVisit>& visits, const std::vector<Day>& unions) {
    int boxes = ledger.colonies[static_cast<size_t>(colony)].row.broodBoxes;
    Origin decides = ledger.colonies[static_cast<size_t>(colony)].at;
    auto next = unions.begin();
    for (const BoxVisit& v : visits) {
        for (; next != unions.end() && *next < v.visit->day; ++next) boxes = 2;
        if (v.visit->boxes) {
            boxes = *v.visit->boxes;
            decides = v.at;
        }
        for (; next != unions.end() && *next == v.visit->day; ++next) boxes = 2;
        const char* column = upperColumn(*v.visit);
        if (!column || boxes == 2) continue;
        const QString what = Say::tr("counts of an upper box at “%1”, which is in one brood box on %2, expected none")
                                 .arg(ledger.shown(colony), isoText(v.visit->day));
        if (!v.at.inBook())
            ledger.fault(v.at, column, what);
        else if (!decides.inBook())
            ledger.fault(decides, "boxes", Say::tr("the book has %1").arg(what));
    }
}

std::vector<std::vector<Day>> unionsInto(const Ledger& ledger) {
    std::vector<std::vector<Day>> days(ledger.colonies.size());
    for (const LineageEntry& entry : ledger.lineage)
        if (entry.row.how == LineageHow::United) days[static_cast<size_t>(entry.into)].push_back(entry.row.day);
    for (auto& list : days) std::ranges::sort(list);
    return days;
}

/// Visits of one colony, entries[begin..end), with the book's where the boxes depend on them.
void checkColony(Ledger& ledger, std::span<const Entry> entries, const std::vector<Day>& unions) {
    const auto& colony = ledger.colonies[static_cast<size_t>(entries.front().colony)];
    const bool depends =
        std::ranges::any_of(entries, [](const Entry& e) { return e.draft->row.boxes || upperColumn(e.draft->row); });
    if (!depends) return;
    std::vector<Visit> stored;
    if (colony.stored) stored = ledger.c.visitsOf(colony.stored->id, -1);
    std::vector<BoxVisit> visits;
    visits.reserve(stored.size() + entries.size());
    for (const Visit& v : stored) visits.push_back({&v, {}});
    for (const Entry& e : entries) visits.push_back({&e.draft->row, e.draft->at});
    std::ranges::stable_sort(visits, {}, [](const BoxVisit& v) { return v.visit->day; });
    checkBoxes(ledger, entries.front().colony, visits, unions);
}

std::vector<Entry> placed(Ledger& ledger) {
    std::vector<Entry> entries;
    entries.reserve(ledger.drafts.visits.size());
    for (const VisitDraft& draft : ledger.drafts.visits) {
        ledger.ticker.tick();
        const int colony = ledger.colonyNamed(draft.colony, draft.row.day, draft.at, "colony");
        if (colony < 0 || !ledger.checkLife(colony, draft.row.day, draft.at, "date")) continue;
        entries.push_back({&draft, colony, -1});
        checkFrames(ledger, entries.back());
    }
    std::ranges::sort(entries, {}, [](const Entry& e) { return std::tuple(e.colony, e.draft->row.day, e.draft->at); });
    return entries;
}

/// Faults and drops the second visit of a colony on a day.
void dropTwice(Ledger& ledger, std::vector<Entry>& entries) {
    const auto end = std::unique(entries.begin(), entries.end(), [&](const Entry& a, const Entry& b) {
        const bool twice = a.colony == b.colony && a.draft->row.day == b.draft->row.day;
        if (twice)
            ledger.fault(b.draft->at, "date",
                         Say::tr("“%1” is visited on %2 in %3 too, expected one visit a day")
                             .arg(ledger.shown(a.colony), isoText(a.draft->row.day), ledger.place(a.draft->at)));
        return twice;
    });
    entries.erase(end, entries.end());
}

} // namespace

void mergeVisits(Ledger& ledger) {
    std::vector<Entry> entries = placed(ledger);
    dropTwice(ledger, entries);
    dropKnown(ledger, entries);
    const auto unions = unionsInto(ledger);
    for (size_t begin = 0; begin < entries.size();) {
        size_t end = begin;
        while (end < entries.size() && entries[end].colony == entries[begin].colony) ++end;
        for (size_t i = begin; i < end; ++i) ledger.ticker.tick();
        checkColony(ledger, std::span(entries).subspan(begin, end - begin),
                    unions[static_cast<size_t>(entries[begin].colony)]);
        begin = end;
    }
    ledger.count(FileKind::Visits).added += static_cast<qint64>(entries.size());
    ledger.visits = std::move(entries);
}

} // namespace core::exchange
