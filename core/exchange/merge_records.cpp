#include "core/exchange/pass_over.h"
#include "core/model/setting_table.h"

#include <map>

namespace core::exchange {

namespace {

std::optional<qint64> storedColony(const Ledger& ledger, int colony) {
    const auto& stored = ledger.colonies[static_cast<size_t>(colony)].stored;
    return stored ? std::optional(stored->id.value) : std::nullopt;
}

/// The row with the ids of the book; nothing where a colony or yard is new.
std::optional<Transfer> inBook(const Ledger& ledger, const RecordEntry<TransferDraft>& entry) {
    const auto from = storedColony(ledger, entry.colony);
    const auto to = storedColony(ledger, entry.other);
    if (!from || !to) return std::nullopt;
    Transfer row = entry.draft->row;
    row.from = ColonyId{*from};
    row.to = ColonyId{*to};
    return row;
}

template <class Draft> auto inBook(const Ledger& ledger, const RecordEntry<Draft>& entry) {
    auto row = std::optional(entry.draft->row);
    if (entry.colony >= 0) {
        const auto colony = storedColony(ledger, entry.colony);
        if (!colony) return decltype(row)();
        row->colony = ColonyId{*colony};
    } else {
        const YardEntry& yard = ledger.yards[static_cast<size_t>(entry.other)];
        if (!yard.at.inBook()) return decltype(row)();
        row->yard = yard.row.id;
    }
    return row;
}

bool mayComeLater(TransferKind what) { return what != TransferKind::Brood && what != TransferKind::Bees; }

void checkTransfer(Ledger& ledger, const RecordEntry<TransferDraft>& entry) {
    const TransferDraft& draft = *entry.draft;
    const ColonyEntry& giver = ledger.colonies[static_cast<size_t>(entry.colony)];
    if (entry.colony == entry.other) {
        ledger.fault(draft.at, "to",
                     Say::tr("“%1” with itself, expected another colony").arg(ledger.shown(entry.other)));
        return;
    }
    ledger.checkLife(entry.other, draft.row.day, draft.at, "to");
    const bool later = giver.row.ended && draft.row.day > *giver.row.ended && mayComeLater(draft.row.what);
    if (!later) ledger.checkLife(entry.colony, draft.row.day, draft.at, "from");
}

/// The colony or yard of a row; false, after a fault, where there is none.
template <class Draft> bool findSubject(Ledger& ledger, const Draft& draft, RecordEntry<Draft>& entry) {
    entry.draft = &draft;
    if (draft.subject.colony)
        entry.colony = ledger.colonyNamed(*draft.subject.colony, draft.row.day, draft.at, "colony");
    else
        entry.other = ledger.yardNamed(draft.subject.yard, draft.at);
    return entry.colony >= 0 || entry.other >= 0;
}

} // namespace

void mergeTransfers(Ledger& ledger) {
    for (const TransferDraft& draft : ledger.drafts.transfers) {
        ledger.ticker.tick();
        RecordEntry<TransferDraft> entry{&draft, -1, -1};
        entry.colony = ledger.colonyNamed(draft.from, draft.row.day, draft.at, "from");
        entry.other = ledger.colonyNamed(draft.to, draft.row.day, draft.at, "to");
        if (entry.colony < 0 || entry.other < 0) continue;
        checkTransfer(ledger, entry);
        ledger.transfers.push_back(entry);
    }
    passOver<Transfer>(ledger, FileKind::Transfers, ledger.transfers, [&](const auto& e) { return inBook(ledger, e); });
}

void mergeResults(Ledger& ledger) {
    for (const ResultDraft& draft : ledger.drafts.results) {
        ledger.ticker.tick();
        RecordEntry<ResultDraft> entry;
        if (!findSubject(ledger, draft, entry)) continue;
        const auto since = [&] { return ledger.colonies[static_cast<size_t>(entry.colony)].row.since; };
        if (entry.colony >= 0 && draft.row.day < since())
            ledger.checkLife(entry.colony, draft.row.day, draft.at, "date");
        ledger.results.push_back(entry);
    }
    passOver<Result>(ledger, FileKind::Results, ledger.results, [&](const auto& e) { return inBook(ledger, e); });
}

void mergeTreatments(Ledger& ledger) {
    for (const TreatmentDraft& draft : ledger.drafts.treatments) {
        ledger.ticker.tick();
        RecordEntry<TreatmentDraft> entry;
        if (!findSubject(ledger, draft, entry)) continue;
        if (entry.colony >= 0) ledger.checkLife(entry.colony, draft.row.day, draft.at, "date");
        ledger.treatments.push_back(entry);
    }
    passOver<Treatment>(ledger, FileKind::Treatments, ledger.treatments,
                        [&](const auto& e) { return inBook(ledger, e); });
}

void mergeSettings(Ledger& ledger) {
    Settings before = ledger.c.settings();
    Settings after = before;
    std::map<QString, const SettingDraft*> given;
    for (const SettingDraft& draft : ledger.drafts.settings) {
        ledger.ticker.tick();
        const SettingInfo* info = settingNamed(draft.name);
        if (!info) {
            ledger.fault(
                draft.at, "name",
                Say::tr("“%1” is no setting, expected a name that `yardwright settings` lists").arg(draft.name));
            continue;
        }
        const auto value = applySetting(after, draft.name, draft.value);
        if (!value) {
            ledger.fault(draft.at, "value",
                         Say::tr("“%1” is out of range for %2, expected %3").arg(draft.value, draft.name, info->range));
            continue;
        }
        const auto [other, first] = given.emplace(info->name, &draft);
        if (!first) {
            ledger.fault(
                draft.at, "name",
                Say::tr("%1 stands in %2 too, expected it once").arg(draft.name, ledger.place(other->second->at)));
            continue;
        }
        KindCount& count = ledger.count(FileKind::Settings);
        if (*value == settingText(before, draft.name)) {
            ++count.passedOver;
            continue;
        }
        ++count.changed;
        ledger.settings.push_back({info->name, *value});
    }
}

} // namespace core::exchange
