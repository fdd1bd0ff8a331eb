#include "core/base/natural_order.h"
#include "core/exchange/cell_text.h"
#include "core/exchange/same_as_book.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace core::exchange {

namespace {

/// A treatment of the book or of the files that a row may mean.
struct Meant {
    qint64 stored = 0;
    const TreatmentDraft* fresh = nullptr;
    friend auto operator<=>(const Meant&, const Meant&) = default;
};
/// Its colony's and yard's positions (−1: none), its day, its product folded.
using TreatmentKey = std::tuple<int, int, Day, QString>;

std::multimap<TreatmentKey, Meant> treatmentsByKey(Ledger& ledger) {
    std::multimap<TreatmentKey, Meant> found;
    ledger.c.each<Treatment>([&](const Treatment& t) {
        const int colony = t.colony ? ledger.colonyById.value(t.colony->value, -1) : -1;
        const int yard = t.yard ? ledger.yardById.value(t.yard->value, -1) : -1;
        found.emplace(TreatmentKey{colony, yard, t.day, folded(t.product)}, Meant{t.id.value, nullptr});
    });
    for (const auto& entry : ledger.treatments)
        found.emplace(TreatmentKey{entry.colony, entry.other, entry.draft->row.day, folded(entry.draft->row.product)},
                      Meant{0, entry.draft});
    return found;
}

} // namespace

void mergeStripsOut(Ledger& ledger) {
    if (ledger.drafts.stripsOut.empty()) return;
    const auto treatments = treatmentsByKey(ledger);
    std::map<std::pair<qint64, int>, StripsOut> inBook;
    ledger.c.each<StripsOut>([&](const StripsOut& out) {
        inBook.emplace(std::pair(out.treatment.value, ledger.colonyById.value(out.colony.value, -1)), out);
    });
    std::set<std::pair<Meant, int>> taken;
    for (const StripsOutDraft& draft : ledger.drafts.stripsOut) {
        const int colony = ledger.colonyNamed(draft.colony, draft.treated, draft.at, "colony");
        const int yard = draft.yard.isEmpty() ? -1 : ledger.yardNamed(draft.yard, draft.at);
        if (colony < 0 || (yard < 0 && !draft.yard.isEmpty())) continue;
        const auto [first, last] = treatments.equal_range(
            TreatmentKey{draft.yard.isEmpty() ? colony : -1, yard, draft.treated, folded(draft.product)});
        // Of several alike, the first that no row has taken.
        const auto free = std::find_if(first, last, [&](const auto& t) { return !taken.contains({t.second, colony}); });
        if (free == last) {
            ledger.fault(draft.at, "treated",
                         Say::tr("%1 has no treatment with “%2” that day, or it is named twice; expected one")
                             .arg(isoText(draft.treated), draft.product));
            continue;
        }
        taken.emplace(free->second, colony);
        const auto stored = free->second.stored ? inBook.find({free->second.stored, colony}) : inBook.end();
        if (stored == inBook.end()) {
            ledger.stripsOut.push_back({&draft, colony, free->second.stored, free->second.fresh});
            ++ledger.count(FileKind::StripsOut).added;
            continue;
        }
        const std::vector<Field> fields = {{"date", isoText(draft.row.day), isoText(stored->second.day)},
                                           {"by", draft.row.by, stored->second.by},
                                           {"note", draft.row.note, stored->second.note}};
        if (sameAsBook(ledger, draft.at, ledger.shown(colony) + u' ' + isoText(draft.treated), fields))
            ++ledger.count(FileKind::StripsOut).passedOver;
    }
}

} // namespace core::exchange
