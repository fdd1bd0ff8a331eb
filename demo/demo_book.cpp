#include "demo/demo_book.h"

#include "core/base/error.h"
#include "core/edit/edit_context.h"
#include "core/model/row_codec.h"
#include "demo/fixed_ground.h"
#include "demo/ground.h"
#include "demo/medicine_told.h"
#include "demo/queens_and_feed.h"
#include "demo/scenario.h"
#include "demo/seasons.h"

#include <QHash>

#include <algorithm>
#include <memory>

namespace demo {

using core::Table;
using core::edit::BulkInsert;
using core::edit::ChangeSet;
using core::edit::EditContext;

namespace {

/// One hive of the demo with the ids that its rows take.
struct Hive {
    QString label;
    int yard = 0;   ///< position in Plan::yards
    int number = 0; ///< in its yard
    core::ColonyId id;
};

struct Made {
    DemoSize size;
    std::vector<DemoYard> yards;
    std::vector<Hive> hives;
    Story story;
    bool storyIn = false;
    QHash<QString, core::ColonyId> ids;
    qint64 firstYard = 1;
    qint64 firstColony = 1;
    core::Progress progress; ///< of the step that runs

    /// In the story's yards the story takes over in August; a hive that it leaves unchecked was seen in April alone.
    Rounds roundsOf(const Hive& hive) const {
        if (!yards[static_cast<size_t>(hive.yard)].story) return {size.years, 9};
        return {size.years, story.unchecked.contains(hive.label) ? 1 : 5};
    }
    core::Day firstDay() const { return core::dayOf(std::min(2026 - size.years + 1, 2025), 4, 1); }
    core::Day sinceOf(const Hive& hive) const { return story.sinceOf(hive.label).value_or(firstDay()); }
};

Made ground(const DemoSize& size) {
    Made made;
    made.size = size;
    made.yards = demoYards(size);
    made.storyIn = made.yards.front().story;
    if (made.storyIn) made.story = fallStory();
    for (size_t y = 0; y < made.yards.size(); ++y)
        for (int n = 0; n < made.yards[y].hives; ++n)
            made.hives.push_back({made.yards[y].code + QString::number(n + 1), static_cast<int>(y), n, {}});
    return made;
}

template <class T> void addRows(ChangeSet& change, const EditContext& c, std::vector<T> rows) {
    if (rows.empty()) return;
    const qint64 first = c.nextId(core::tableOf<T>());
    const auto count = static_cast<qint64>(rows.size());
    change.bulk.push_back({core::tableOf<T>(), first, count,
                           [kept = std::move(rows)](qint64 n) { return core::toRow(kept[static_cast<size_t>(n)]); }});
}

core::Yard yardRow(const DemoYard& y) {
    core::Yard yard;
    yard.name = y.name;
    yard.latitudeDeg = y.latitudeDeg;
    yard.longitudeDeg = y.longitudeDeg;
    yard.gateX = core::Millimetres{0};
    yard.gateY = core::Millimetres{0};
    return yard;
}

core::Colony colonyRow(const Made& made, const Hive& hive, core::BoxKindId box) {
    core::Colony colony;
    colony.label = hive.label;
    colony.since = made.sinceOf(hive);
    colony.box = box;
    colony.queenBorn = 2026 - chance(3, made.size.seed, static_cast<std::uint64_t>(hive.id.value), 11);
    if (const StoryColony* told = made.story.colony(hive.label)) {
        colony.broodBoxes = told->broodBoxes;
        colony.ended = told->ended;
        colony.end = told->end;
    }
    return colony;
}

core::ColonyId idOf(const Made& made, const QString& label) { return made.ids.value(label); }

std::vector<core::Lineage> lineageOf(const Made& made) {
    std::vector<core::Lineage> lineage;
    for (StoryLineage l : made.story.lineage) {
        l.lineage.colony = idOf(made, l.colony);
        l.lineage.into = idOf(made, l.into);
        lineage.push_back(l.lineage);
    }
    return lineage;
}

ChangeSet placeHives(const EditContext& c, Made& made) {
    made.firstYard = c.nextId(Table::Yard);
    made.firstColony = c.nextId(Table::Colony);
    const qint64 firstStand = c.nextId(Table::Stand);
    std::vector<core::Yard> yards;
    for (const DemoYard& y : made.yards) yards.push_back(yardRow(y));
    std::vector<core::Stand> stands;
    std::vector<core::Colony> colonies;
    std::vector<core::Placement> placements;
    for (size_t i = 0; i < made.hives.size(); ++i) {
        Hive& hive = made.hives[i];
        const DemoYard& yard = made.yards[static_cast<size_t>(hive.yard)];
        hive.id = {made.firstColony + static_cast<qint64>(i)};
        made.ids.insert(hive.label, hive.id);
        const StoryColony* told = made.story.colony(hive.label);
        const auto box = c.boxKindNamed(told ? told->box : QStringLiteral("langstroth-10"));
        if (!box)
            throw core::Error(core::Error::Kind::Internal,
                              QStringLiteral("The shipped box kinds are not in the book."));
        stands.push_back(
            {{}, {made.firstYard + hive.yard}, QString::number(hive.number + 1), hiveAt(yard, hive.number), false});
        colonies.push_back(colonyRow(made, hive, box->id));
        placements.push_back({{},
                              hive.id,
                              {firstStand + static_cast<qint64>(i)},
                              headingOf(yard, hive.number),
                              colonies.back().since,
                              colonies.back().ended,
                              true});
    }
    ChangeSet change;
    change.text = QStringLiteral("Placed %1 hives in %2 yards").arg(made.hives.size()).arg(made.yards.size());
    std::vector<core::FixedThing> fixed;
    for (size_t y = 0; y < made.yards.size(); ++y)
        for (core::FixedThing& thing : fixedThingsOf(made.yards[y], {made.firstYard + static_cast<qint64>(y)}))
            fixed.push_back(std::move(thing));
    addRows(change, c, std::move(yards));
    addRows(change, c, std::move(fixed));
    addRows(change, c, std::move(stands));
    addRows(change, c, std::move(colonies));
    addRows(change, c, std::move(placements));
    if (made.storyIn) addRows(change, c, lineageOf(made)); // with the ends that rest on it
    return change;
}

/// The plain visits of a span of hives: rows are made when they are written, none is kept.
ChangeSet visitHives(const EditContext& c, const Made& made, size_t from, size_t to) {
    // Where each hive's visits begin: only the story's hives have fewer, or begin later.
    auto begins = std::make_shared<std::vector<qint64>>();
    auto skipped = std::make_shared<std::vector<int>>();
    qint64 count = 0;
    for (size_t i = from; i < to; ++i) {
        const Rounds rounds = made.roundsOf(made.hives[i]);
        int skip = 0;
        while (skip < rounds.count() &&
               plainVisit(rounds, skip, made.hives[i].yard, static_cast<int>(i), made.size.seed).day <
                   made.sinceOf(made.hives[i]))
            ++skip;
        begins->push_back(count);
        skipped->push_back(skip);
        count += rounds.count() - skip;
    }
    ChangeSet change;
    change.text = QStringLiteral("Logged %1 visits").arg(count);
    change.bulk.push_back(
        {Table::Visit, c.nextId(Table::Visit), count, [&made, from, begins, skipped](qint64 n) {
             const auto at =
                 static_cast<size_t>(std::upper_bound(begins->begin(), begins->end(), n) - begins->begin()) - 1;
             const Hive& hive = made.hives[from + at];
             made.progress.at(static_cast<qint64>(from + at), static_cast<qint64>(made.hives.size()));
             const int visit = static_cast<int>(n - (*begins)[at]) + (*skipped)[at];
             core::Visit row =
                 plainVisit(made.roundsOf(hive), visit, hive.yard, static_cast<int>(from + at), made.size.seed);
             row.colony = hive.id;
             return core::toRow(row);
         }});
    return change;
}

/// What the queens, the feed and the boards of a hive are made of. Those of whom the story's count saw nothing are
/// missing.
Kept keptOf(const Made& made, size_t at) {
    const Hive& hive = made.hives[at];
    const Hive& before = made.hives[at > 0 ? at - 1 : at];
    Kept kept;
    kept.colony = hive.id;
    kept.neighbour = before.yard == hive.yard ? before.id : hive.id;
    kept.neighbourSince = made.sinceOf(before);
    kept.since = made.sinceOf(hive);
    if (const StoryColony* own = made.story.colony(hive.label)) kept.ended = own->ended;
    kept.born = colonyRow(made, hive, {}).queenBorn;
    const bool told = made.yards[static_cast<size_t>(hive.yard)].story;
    if (const StoryVisit* count = told ? made.story.fallCountOf(hive.label) : nullptr) {
        const auto queen = count->visit.queen;
        const bool none = queen == core::QueenSeen::None || queen == core::QueenSeen::LayingWorkers;
        if (none) kept.missing = count->visit.day;
        const auto gross = count->visit.gross;
        kept.light = gross && *gross < core::Decagrams{2400};
    }
    constexpr int kBoards = 8; // of a yard that has them
    const auto story = [&](const char* name) {
        return told && made.yards[static_cast<size_t>(hive.yard)].name == QLatin1StringView(name);
    };
    kept.treated = story("Upper Tansy");
    kept.board = hive.number < kBoards && (kept.treated || story("Larkspur Bottom"));
    kept.years = made.size.years;
    kept.seed = made.size.seed;
    return kept;
}

/// Adds the rows of each hive from `from` to `to`, made when they are written: none is kept.
template <class T>
void addEach(ChangeSet& change, const EditContext& c, const Made& made, size_t from, size_t to,
             std::vector<T> (*make)(const Kept&)) {
    struct Next {
        size_t hive;
        size_t row = 0;
        std::vector<T> rows;
    };
    qint64 count = 0;
    for (size_t i = from; i < to; ++i) count += static_cast<qint64>(make(keptOf(made, i)).size());
    if (count == 0) return;
    auto next = std::make_shared<Next>(Next{from, 0, {}});
    change.bulk.push_back({core::tableOf<T>(), c.nextId(core::tableOf<T>()), count, [&made, make, next](qint64) {
                               made.progress.at(static_cast<qint64>(next->hive),
                                                static_cast<qint64>(made.hives.size()));
                               while (next->row == next->rows.size()) {
                                   next->rows = make(keptOf(made, next->hive++));
                                   next->row = 0;
                               }
                               return core::toRow(next->rows[next->row++]);
                           }});
}

ChangeSet keepHives(const EditContext& c, const Made& made, size_t from, size_t to) {
    ChangeSet change;
    change.text = QStringLiteral("Noted the queens, the feed and the mites fallen of %1 hives").arg(to - from);
    addEach<core::Queen>(change, c, made, from, to, queensOf);
    addEach<core::Feeding>(change, c, made, from, to, feedingsOf);
    addEach<core::MiteFall>(change, c, made, from, to, miteFallsOf);
    return change;
}

/// One frame of brood a year from each plain hive to the next in its yard, in June.
ChangeSet equaliseHives(const EditContext& c, const Made& made) {
    std::vector<std::pair<size_t, size_t>> pairs;
    for (size_t i = 0; i + 1 < made.hives.size(); ++i)
        if (made.hives[i].yard == made.hives[i + 1].yard && !made.yards[static_cast<size_t>(made.hives[i].yard)].story)
            pairs.emplace_back(i, i + 1);
    const auto perYear = static_cast<qint64>(pairs.size());
    ChangeSet change;
    change.text = QStringLiteral("Logged %1 transfers").arg(perYear * made.size.years);
    if (perYear == 0) return change;
    change.bulk.push_back({Table::Transfer, c.nextId(Table::Transfer), perYear * made.size.years,
                           [&made, perYear, kept = std::move(pairs)](qint64 n) {
                               const auto& [from, to] = kept[static_cast<size_t>(n % perYear)];
                               made.progress.at(n, perYear * made.size.years);
                               core::Transfer t;
                               t.day = core::dayOf(2026 - made.size.years + 1 + static_cast<int>(n / perYear), 6, 18) +
                                       static_cast<int>(from % 5);
                               t.from = made.hives[from].id;
                               t.to = made.hives[to].id;
                               t.what = core::TransferKind::Brood;
                               t.count = 1;
                               return core::toRow(t);
                           }});
    return change;
}

std::optional<core::YardId> yardIdOf(const Made& made, const QString& name) {
    for (size_t y = 0; y < made.yards.size(); ++y)
        if (made.yards[y].name == name) return core::YardId{made.firstYard + static_cast<qint64>(y)};
    return std::nullopt;
}

void addSigns(ChangeSet& change, const EditContext& c, qint64 firstVisit, const std::vector<StoryVisit>& visits) {
    qint64 id = c.nextId(Table::VisitSign);
    for (size_t i = 0; i < visits.size(); ++i)
        for (size_t s = 0; s < core::wordsOf<core::Sign>().size(); ++s)
            if (visits[i].visit.signs.has(static_cast<core::Sign>(s)))
                change.rows.push_back(
                    {Table::VisitSign, id++, std::nullopt,
                     core::Row{firstVisit + static_cast<qint64>(i), core::word(static_cast<core::Sign>(s))}});
}

/// Whom a story record is about: exactly one of colony and yard.
template <class Told, class RowType> RowType aimed(const Made& made, const Told& told, RowType row) {
    if (told.label.isEmpty())
        row.yard = yardIdOf(made, told.yard);
    else
        row.colony = idOf(made, told.label);
    return row;
}

/// Nobody: name, address and numbers are invented.
core::Keeper keeperOfDemo() {
    return {{},
            QStringLiteral("Wren Hollowmoor"),
            QStringLiteral("3 Drover's End\nFoxglove Rise"),
            QStringLiteral("0000 0123"),
            QStringLiteral("DEMO-042"),
            {}};
}

void tellPapers(const EditContext& c, const Made& made, ChangeSet& change, qint64 firstResult) {
    std::vector<core::Sample> samples;
    for (StorySample s : made.story.samples) {
        s.sample.colony = idOf(made, s.label);
        const auto& results = made.story.results;
        const auto answer = std::ranges::find_if(
            results, [&](const StoryResult& r) { return !s.answer.isEmpty() && r.result.paper == s.answer; });
        if (answer != results.end()) s.sample.result = core::ResultId{firstResult + (answer - results.begin())};
        samples.push_back(s.sample);
    }
    addRows(change, c, std::move(samples));
    std::vector<core::Kit> kit;
    for (const StoryKit& k : made.story.kit) {
        kit.push_back(k.kit);
        kit.back().yard = yardIdOf(made, k.yard);
        kit.back().colony = idOf(made, k.label);
    }
    addRows(change, c, std::move(kit));
    std::vector<core::KitEnd> ends;
    for (const StoryKitEnd& e : made.story.kitEnds) {
        ends.push_back(e.end);
        ends.back().yard = yardIdOf(made, e.yard);
        ends.back().colony = idOf(made, e.label);
    }
    addRows(change, c, std::move(ends));
}

ChangeSet tellStory(const EditContext& c, const Made& made) {
    ChangeSet change;
    change.text = QStringLiteral("Logged the fall of 2026");
    std::vector<core::Visit> visits;
    for (const StoryVisit& v : made.story.visits) {
        visits.push_back(v.visit);
        visits.back().colony = idOf(made, v.label);
    }
    addSigns(change, c, c.nextId(Table::Visit), made.story.visits);
    addRows(change, c, std::move(visits));
    std::vector<core::Transfer> transfers;
    for (StoryTransfer t : made.story.transfers) {
        t.transfer.from = idOf(made, t.from);
        t.transfer.to = idOf(made, t.to);
        transfers.push_back(t.transfer);
    }
    addRows(change, c, std::move(transfers));
    const qint64 firstResult = c.nextId(Table::Result);
    std::vector<core::Result> results;
    for (const StoryResult& r : made.story.results) results.push_back(aimed(made, r, r.result));
    addRows(change, c, std::move(results));
    tellPapers(c, made, change, firstResult);
    std::vector<core::Treatment> treatments;
    for (const StoryTreatment& t : made.story.treatments) treatments.push_back(aimed(made, t, t.treatment));
    addRows(change, c, std::move(treatments));
    addRows(change, c, std::vector<core::Keeper>{keeperOfDemo()});
    return change;
}

} // namespace

core::Day demoMergeDay() { return core::dayOf(2026, 9, 20); }
core::Day demoSpringDay() { return core::dayOf(2026, 5, 5); }

void fillDemoBook(core::edit::Session& session, const DemoSize& size, const core::Progress& progress) {
    constexpr double kPlaced = 0.05, kVisited = 0.7, kKept = 0.9; // of the way, as measured with 20,000 colonies
    Made made = ground(size);
    session.setAuthor(QStringLiteral("Wren"));
    const auto begin = [&](double from, double to, const char* what) {
        made.progress = progress.part(from, to, QString::fromLatin1(what));
        made.progress.at(0);
    };
    begin(0, kPlaced, "Placing the hives");
    session.apply([&](const EditContext& c) { return placeHives(c, made); });
    constexpr size_t kHivesAnEdit = 5000;
    begin(kPlaced, kVisited, "Writing the visits down");
    for (size_t from = 0; from < made.hives.size(); from += kHivesAnEdit)
        session.apply([&](const EditContext& c) {
            return visitHives(c, made, from, std::min(from + kHivesAnEdit, made.hives.size()));
        });
    begin(kVisited, kKept, "Noting queens, feed and mites");
    for (size_t from = 0; from < made.hives.size(); from += kHivesAnEdit)
        session.apply([&](const EditContext& c) {
            return keepHives(c, made, from, std::min(from + kHivesAnEdit, made.hives.size()));
        });
    begin(kKept, 1, "Moving frames between hives");
    session.apply([&](const EditContext& c) { return equaliseHives(c, made); });
    if (!made.storyIn) return;
    session.apply([&](const EditContext& c) { return tellStory(c, made); });
    tellMedicine(session);
}

} // namespace demo
