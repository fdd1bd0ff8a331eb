#include "core/report/walk_rows.h"

#include <algorithm>

namespace core::report {

namespace {

using rules::MissingKind;

std::vector<WalkAsk> asksOf(MissingKind kind) {
    switch (kind) {
    case MissingKind::Count:
    case MissingKind::CountOld:
    case MissingKind::NoBees:
    case MissingKind::CountBeforeTransfer:
        return {WalkAsk::Count};
    case MissingKind::BroodCheck:
    case MissingKind::Signs:
        return {WalkAsk::BroodCheck};
    case MissingKind::Queen:
        return {WalkAsk::Queen};
    case MissingKind::BroodFrames:
        return {WalkAsk::BroodFrames};
    case MissingKind::Room:
        return {WalkAsk::Count, WalkAsk::Stores, WalkAsk::BroodFrames}; // of one visit (rule 4.7.7)
    case MissingKind::Weight:
        return {WalkAsk::Weight};
    }
    return {};
}

} // namespace

std::vector<WalkRow> walkRows(const Snapshot& s, const std::vector<rules::ColonyMissing>& missing) {
    std::vector<WalkRow> rows;
    for (const rules::ColonyMissing& m : missing) {
        WalkRow row;
        row.colony = m.colony;
        for (const rules::Missing& what : m.what) {
            const auto more = asksOf(what.kind);
            row.asks.insert(row.asks.end(), more.begin(), more.end());
            row.missing.push_back(sentenceOf(s, what));
        }
        std::sort(row.asks.begin(), row.asks.end());
        row.asks.erase(std::unique(row.asks.begin(), row.asks.end()), row.asks.end());
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace core::report
