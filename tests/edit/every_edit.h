#pragma once

#include "core/edit/divide_day.h"
#include "core/edit/feedings.h"
#include "core/edit/file_mappings.h"
#include "core/edit/hive_row.h"
#include "core/edit/kit.h"
#include "core/edit/merge_day.h"
#include "core/edit/mite_falls.h"
#include "core/edit/put_right.h"
#include "core/edit/queens.h"
#include "core/edit/question.h"
#include "core/edit/samples.h"
#include "core/edit/survey.h"
#include "tests/edit/random_edits.h"

#include <algorithm>
#include <string>
#include <utility>

namespace tests::edit {

/// Random edits out of all that there are: records made, put right and taken back. Some are refused.
class EveryEdit {
public:
    explicit EveryEdit(unsigned seed) : m_some(seed) {}

    int upTo(int most) { return m_some.upTo(most); }
    /// What was tried, then its change.
    std::pair<std::string, ChangeSet> next(const EditContext& c);

private:
    ColonyId colony(const EditContext& c);
    Day day() { return dayOf(2026, 5, 1) + upTo(60); }
    /// A day near this one: small corrections go through more often than wild ones.
    Day near(Day day) { return day + upTo(6) - 3; }
    template <class T> std::optional<T> any(const EditContext& c);

    std::pair<std::string, ChangeSet> made(const EditContext& c);
    std::pair<std::string, ChangeSet> changed(const EditContext& c);
    std::pair<std::string, ChangeSet> takenBack(const EditContext& c);
    std::pair<std::string, ChangeSet> surveyed(const EditContext& c);
    std::pair<std::string, ChangeSet> merged(const EditContext& c);
    std::pair<std::string, ChangeSet> divided(const EditContext& c);
    std::pair<std::string, ChangeSet> kit(const EditContext& c);
    std::pair<std::string, ChangeSet> fed(const EditContext& c);
    std::pair<std::string, ChangeSet> fallen(const EditContext& c);
    std::pair<std::string, ChangeSet> headed(const EditContext& c);
    std::pair<std::string, ChangeSet> sampled(const EditContext& c);
    std::pair<std::string, ChangeSet> kitEnded(const EditContext& c);
    std::pair<std::string, ChangeSet> question(const EditContext& c);
    std::pair<std::string, ChangeSet> together(const EditContext& c);
    KitPlace pile(const EditContext& c);
    std::pair<std::string, ChangeSet> mapping(const EditContext& c);

    std::pair<std::string, ChangeSet> stripped(const EditContext& c);
    ChangeSet visit(const EditContext& c);
    Divide divideDraft(const EditContext& c);
    std::pair<std::string, ChangeSet> phrase(const EditContext& c);
    std::pair<std::string, ChangeSet> papers(const EditContext& c);
    ChangeSet unite(const EditContext& c);
    ChangeSet row(const EditContext& c);
    ChangeSet carrySome(const EditContext& c);
    ChangeSet result(const EditContext& c);
    ChangeSet treatment(const EditContext& c);
    ChangeSet boxKind(const EditContext& c);
    void see(Visit& v);

    ChangeSet colonyNow(const EditContext& c);
    ChangeSet visitNow(const EditContext& c);
    ChangeSet transferNow(const EditContext& c);
    ChangeSet resultNow(const EditContext& c);
    ChangeSet treatmentNow(const EditContext& c);
    ChangeSet lineageNow(const EditContext& c);
    ChangeSet placementNow(const EditContext& c);
    ChangeSet yardNow(const EditContext& c);
    ChangeSet boxKindNow(const EditContext& c);
    FixedThing thing();

    RandomEdits m_some;
};

template <class T> std::optional<T> EveryEdit::any(const EditContext& c) {
    constexpr int kMostIds = 40; // that small books use
    const qint64 last = c.nextId(tableOf<T>()) - 1;
    if (last < 1) return std::nullopt;
    return c.find<T>(1 + upTo(static_cast<int>(std::min<qint64>(last, kMostIds)) - 1));
}

} // namespace tests::edit
