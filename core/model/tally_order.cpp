#include "core/model/tally_order.h"

#include <QLatin1StringView>

#include <algorithm>

namespace core {

namespace {

// Seen, Eggs, Virgin, DroneLayer, None, LayingWorkers, Unknown.
constexpr QLatin1StringView kQueenLetters("sevdnlu");
// Afb, Efb, BroodDoubt, Chalkbrood, Sacbrood, Nosema, DeformedWings (wings).
constexpr QLatin1StringView kSignLetters("aedcsnw");

template <class E> std::optional<E> valueOf(QLatin1StringView letters, QChar letter) {
    const auto at = letters.indexOf(letter.toLower());
    return at < 0 ? std::nullopt : std::optional(static_cast<E>(at));
}

} // namespace

QChar tallyLetter(QueenSeen seen) { return kQueenLetters[static_cast<qsizetype>(seen)]; }
QChar tallyLetter(Sign sign) { return kSignLetters[static_cast<qsizetype>(sign)]; }
std::optional<QueenSeen> queenOfLetter(QChar letter) { return valueOf<QueenSeen>(kQueenLetters, letter); }
std::optional<Sign> signOfLetter(QChar letter) { return valueOf<Sign>(kSignLetters, letter); }

bool recorded(const Visit& v, TallyColumn column) {
    switch (column) {
    case TallyColumn::BeesTop:
        return v.beesTop.has_value();
    case TallyColumn::BeesBottom:
        return v.beesBottom.has_value();
    case TallyColumn::UpperTop:
        return v.upperBeesTop.has_value();
    case TallyColumn::UpperBottom:
        return v.upperBeesBottom.has_value();
    case TallyColumn::Queen:
        return v.queen.has_value();
    case TallyColumn::Brood:
        return v.broodFrames.has_value();
    case TallyColumn::Checked:
        return v.broodChecked.has_value();
    case TallyColumn::Signs:
        return !v.signs.empty();
    case TallyColumn::Stores:
        return v.stores.has_value();
    case TallyColumn::UpperStores:
        return v.upperStores.has_value();
    case TallyColumn::Supers:
        return v.supers.has_value();
    case TallyColumn::Weight:
        return v.gross.has_value();
    case TallyColumn::Mites:
        return v.mites.has_value();
    case TallyColumn::Sample:
        return v.miteSample.has_value();
    case TallyColumn::Boxes:
        return v.boxes.has_value();
    case TallyColumn::Note:
        return !v.note.isEmpty();
    }
    return false;
}

std::vector<TallyColumn> columnsUsed(const std::vector<Visit>& visits) {
    std::vector<TallyColumn> out;
    for (const TallyColumn column : kTallyOrder)
        if (std::ranges::any_of(visits, [&](const Visit& v) { return recorded(v, column); })) out.push_back(column);
    return out;
}

} // namespace core
