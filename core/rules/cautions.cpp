#include "core/rules/cautions.h"

#include "core/rules/calc/mites.h"
#include "core/rules/nearby.h"
#include "core/rules/pairs.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace core::rules {

namespace {

constexpr int kMitesMaxAgeDays = 45;
constexpr Quarters kMuchHeavier{8}; // 2 frames of stores
constexpr size_t kKinds = 9;
__extension__ using Wide = __int128;

/// Reasons by kind; a kind with several reasons is one caution.
class Reasons {
public:
    void add(CautionKind kind, const QString& why) {
        if (!why.isEmpty() && !at(kind).contains(why)) at(kind) += why;
    }
    std::vector<Caution> cautions() const {
        std::vector<Caution> out;
        for (size_t k = 0; k < kKinds; ++k)
            if (!m_why[k].isEmpty()) out.push_back({static_cast<CautionKind>(k), m_why[k].join(u' ')});
        return out;
    }
    void add(const std::vector<Caution>& cautions) {
        for (const Caution& c : cautions) add(c.kind, c.because);
    }

private:
    QStringList& at(CautionKind kind) { return m_why[static_cast<size_t>(kind)]; }

    std::array<QStringList, kKinds> m_why;
};

/// Valid stores of the colony, both boxes of a two-box colony together.
std::optional<Quarters> allStores(const ColonyFacts& f) {
    if (f.boxes == 1) return f.stores;
    if (!f.stores || !f.upperStores) return std::nullopt;
    return *f.stores + *f.upperStores;
}

/// " (2.1 to 6.9 by the size of the sample)"
QString sampleRange(const SnapMites& sample) {
    const auto range = calc::mitesInterval({sample.mites, sample.sample});
    return range ? QStringLiteral(" (%1 to %2 by the size of the sample)")
                       .arg(QString::number(range->low, 'f', 1), QString::number(range->high, 'f', 1))
                 : QString();
}

std::vector<std::optional<Day>> lastTransfers(const Snapshot& s, size_t living) {
    std::vector<std::optional<Day>> out(living);
    const auto mark = [&](ColonyIx colony, Day day) {
        const auto i = static_cast<size_t>(colony.value);
        if (i < living && (!out[i] || *out[i] < day)) out[i] = day;
    };
    for (const SnapTransfer& t : s.transfers) {
        if (t.what == TransferKind::Feed) continue;
        mark(t.from, t.day);
        mark(t.to, t.day);
    }
    for (const SnapLineage& l : s.lineage)
        if (l.how == LineageHow::ShakenOut) mark(l.into, l.day);
    return out;
}

} // namespace

Cautions::Cautions(const DayView& view)
    : m_view(view),
      m_nearAfb(nearAfb(*view.evidence)),
      m_lastTransfer(lastTransfers(view.s, view.facts.size())),
      m_held(view.s.yards.size()) {
    for (const ColonyFacts& f : view.facts)
        if (view.held(f.colony)) m_held[static_cast<size_t>(f.yard.value)].push_back(f.colony);
}

std::vector<Caution> Cautions::of(ColonyIx c) const {
    Reasons reasons;
    reasons.add(CautionKind::MitesHigh, mites(c));
    reasons.add(CautionKind::Masked, masked(c));
    reasons.add(CautionKind::Signs, signs(c));
    reasons.add(CautionKind::CountBeforeTransfer, countBeforeTransfer(c));
    reasons.add(CautionKind::QueenUnknown, queenUnknown(c));
    reasons.add(CautionKind::NearAfb, m_nearAfb[static_cast<size_t>(m_view.of(c).yard.value)]);
    return reasons.cautions();
}

std::vector<Caution> Cautions::of(const Union& united) const {
    Reasons reasons;
    reasons.add(of(united.moved));
    reasons.add(of(united.host));
    reasons.add(CautionKind::RoomUnknown, roomUnknown(united));
    reasons.add(CautionKind::DriftToHeld, driftToHeld(united.moved));
    reasons.add(CautionKind::LowerHeavier, lowerHeavier(united));
    return reasons.cautions();
}

std::vector<Caution> Cautions::of(const ShakeOut& shaken, std::span<const ColonyIx> hosts) const {
    Reasons reasons;
    reasons.add(of(shaken.colony));
    for (const ColonyIx host : hosts) reasons.add(of(host));
    reasons.add(CautionKind::DriftToHeld, driftToHeld(shaken.colony));
    return reasons.cautions();
}

QString Cautions::mites(ColonyIx c) const {
    const auto& sample = m_view.of(c).mites;
    if (!sample || m_view.s.on - sample->day > kMitesMaxAgeDays) return {};
    const Settings& settings = m_view.s.settings;
    const Millionths limit = m_view.seasonsOf(c).firstHalf ? settings.mitesSpring : settings.mitesFall;
    if (qint64(sample->mites) * 100'000'000 <= limit.value * sample->sample) return {};
    return QStringLiteral("%1: %2 mites among %3 bees on %4, %5 in 100%6, above %7.")
        .arg(m_view.name(c), QString::number(sample->mites), QString::number(sample->sample), isoText(sample->day),
             QString::number(calc::mitesPerHundred({sample->mites, sample->sample}), 'f', 2), sampleRange(*sample),
             decimalText(limit.value, 6));
}

QString Cautions::masked(ColonyIx c) const {
    const SnapCheck* check = m_view.evidence->checks.latestClean(c, Day{0}, m_view.s.on);
    if (!check || !m_view.evidence->checks.masked(*check)) return {};
    const auto treated = m_view.evidence->treated.latestKnown(c, check->day);
    return QStringLiteral("%1: an antibiotic given on %2 may have hidden foulbrood at the clean brood check of %3.")
        .arg(m_view.name(c), treated ? isoText(*treated) : QString(), isoText(check->day));
}

QString Cautions::signs(ColonyIx c) const {
    const Signs seen = m_view.s.latestOf(c).visitSigns;
    QStringList names;
    for (const Sign sign : {Sign::Chalkbrood, Sign::Sacbrood, Sign::Nosema, Sign::DeformedWings})
        if (seen.has(sign)) names += word(sign);
    if (names.isEmpty()) return {};
    return QStringLiteral("%1: %2 seen on %3.")
        .arg(m_view.name(c), names.join(QLatin1StringView(", ")), isoText(*m_view.s.latestOf(c).visit));
}

QString Cautions::countBeforeTransfer(ColonyIx c) const {
    const ColonyFacts& f = m_view.of(c);
    const auto& moved = m_lastTransfer[static_cast<size_t>(c.value)];
    if (!f.strength || !moved || *moved < *f.counted) return {};
    return QStringLiteral("%1: counted on %2; bees or comb went from it or to it on %3.")
        .arg(m_view.name(c), isoText(*f.counted), isoText(*moved));
}

QString Cautions::queenUnknown(ColonyIx c) const {
    switch (m_view.of(c).queen) {
    case QueenSeen::Unknown:
        return QStringLiteral("%1: whether it has a queen is not known.").arg(m_view.name(c));
    case QueenSeen::Virgin:
        return QStringLiteral("%1: its queen is a virgin.").arg(m_view.name(c));
    default:
        return {};
    }
}

QString Cautions::roomUnknown(const Union& united) const {
    QStringList unknown;
    for (const ColonyIx c : united.consolidate)
        if (!combNeeded(m_view, c)) unknown += m_view.name(c);
    if (unknown.isEmpty()) return {};
    return QStringLiteral(
               "%1: brood frames and the stores of both boxes were not all noted when the bees were counted; "
               "whether all fits into one box is not known.")
        .arg(unknown.join(QLatin1StringView(", ")));
}

QString Cautions::lowerHeavier(const Union& united) const {
    const auto lower = allStores(m_view.of(united.lower));
    const auto upper = allStores(m_view.of(united.upper));
    if (!lower || !upper || lower->value - upper->value < kMuchHeavier.value) return {};
    return QStringLiteral("%1, below, holds %2 frames of stores, %3, above, only %4; the winter cluster ends up above.")
        .arg(m_view.name(united.lower), framesText(*lower), m_view.name(united.upper), framesText(*upper));
}

QString Cautions::driftToHeld(ColonyIx emptied) const {
    const SnapStay& stand = m_view.placeOf(emptied);
    const Wide limit = m_view.s.settings.moveDriftM.value; // micrometres
    const LengthUnit unit = m_view.s.settings.showLength;
    QStringList near;
    for (const ColonyIx held : m_held[static_cast<size_t>(stand.yard.value)]) {
        const qint64 squared = squaredDistance(stand.at, m_view.placeOf(held).at); // mm²
        if (Wide(squared) * 1'000'000 > limit * limit) continue;
        near += QStringLiteral("%1 (%2 %3)")
                    .arg(m_view.name(held), decimalText(distanceTenths(stand.at, m_view.placeOf(held).at, unit), 1),
                         unitSign(unit));
    }
    if (near.isEmpty()) return {};
    return QStringLiteral("Foragers of %1 may drift from its empty stand to held %2.")
        .arg(m_view.name(emptied), near.join(QLatin1StringView(", ")));
}

} // namespace core::rules
