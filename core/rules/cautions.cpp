#include "core/rules/cautions.h"

#include "core/rules/calc/mites.h"
#include "core/rules/drift.h"
#include "core/rules/last_moved.h"
#include "core/rules/limits.h"
#include "core/rules/pairs.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace core::rules {

namespace {

constexpr int kMitesMaxAgeDays = fixed::kSampleDays;
constexpr Quarters kMuchHeavier = fixed::kMuchHeavier;
constexpr size_t kKinds = 9;

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

} // namespace

/// Causes by kind; a kind with several is one caution.
class Cautions::Reasons {
public:
    void add(CautionKind kind, Found found, std::vector<ColonyIx> colonies) {
        add({kind, std::move(found.because), std::move(colonies), std::move(found.why)});
    }
    void add(Caution caution) {
        if (caution.because.isEmpty()) return;
        auto& same = m_found[static_cast<size_t>(caution.kind)];
        const auto told = [&](const Caution& c) { return c.because == caution.because; };
        if (std::none_of(same.begin(), same.end(), told)) same.push_back(std::move(caution));
    }
    void add(std::vector<Caution> cautions) {
        for (Caution& c : cautions) add(std::move(c));
    }
    std::vector<Caution> cautions() {
        std::vector<Caution> out;
        for (auto& same : m_found) {
            if (same.empty()) continue;
            out.push_back(std::move(same.front()));
            Caution& first = out.back();
            for (size_t i = 1; i < same.size(); ++i) {
                first.because += u' ' + same[i].because;
                first.colonies.insert(first.colonies.end(), same[i].colonies.begin(), same[i].colonies.end());
                first.why.add(same[i].why);
            }
        }
        return out;
    }

private:
    std::array<std::vector<Caution>, kKinds> m_found;
};

Cautions::Cautions(const DayView& view)
    : m_view(view), m_nearAfb(nearAfb(*view.evidence)), m_lastTransfer(lastMoved(view.s)), m_held(view.s.yards.size()) {
    for (const ColonyFacts& f : view.facts)
        if (view.held(f.colony)) m_held[static_cast<size_t>(f.yard.value)].push_back(f.colony);
}

std::vector<Caution> Cautions::of(ColonyIx c) const {
    Reasons reasons;
    reasons.add(CautionKind::MitesHigh, mites(c), {c});
    reasons.add(CautionKind::Masked, masked(c), {c});
    reasons.add(CautionKind::Signs, signs(c), {c});
    reasons.add(CautionKind::CountBeforeTransfer, countBeforeTransfer(c), {c});
    reasons.add(CautionKind::QueenUnknown, queenUnknown(c), {c});
    const NearAfb& near = m_nearAfb[static_cast<size_t>(m_view.of(c).yard.value)];
    reasons.add(CautionKind::NearAfb, {near.because, near.why}, {});
    return reasons.cautions();
}

std::vector<Caution> Cautions::of(const Union& united) const {
    Reasons reasons;
    reasons.add(of(united.moved));
    reasons.add(of(united.host));
    reasons.add(CautionKind::RoomUnknown, roomUnknown(united), united.consolidate);
    reasons.add(CautionKind::DriftToHeld, driftToHeld(united.moved), {united.moved});
    reasons.add(CautionKind::LowerHeavier, lowerHeavier(united), {united.lower, united.upper});
    return reasons.cautions();
}

std::vector<Caution> Cautions::of(const ShakeOut& shaken, std::span<const ColonyIx> hosts) const {
    Reasons reasons;
    reasons.add(of(shaken.colony));
    for (const ColonyIx host : hosts) reasons.add(of(host));
    reasons.add(CautionKind::DriftToHeld, driftToHeld(shaken.colony), {shaken.colony});
    return reasons.cautions();
}

Cautions::Found Cautions::mites(ColonyIx c) const {
    const auto& sample = m_view.of(c).mites;
    if (!sample || m_view.s.on - sample->day > kMitesMaxAgeDays) return {};
    const Settings& settings = m_view.s.settings;
    const bool spring = m_view.seasonsOf(c).firstHalf;
    const Millionths limit = spring ? settings.mitesSpring : settings.mitesFall;
    if (qint64(sample->mites) * 100'000'000 <= limit.value * sample->sample) return {};
    const char* months = spring ? "4.5 spring_months" : "4.5 fall_months";
    Reason why{"4.5"};
    why.southern = m_view.southern(c);
    why.fact("colony", c).fact("sampled", sample->day).fact("mites", qint64(sample->mites));
    why.fact("bees", qint64(sample->sample));
    why.limit(spring ? "mites.spring" : "mites.fall").limit(months).limit("4.5 sample_days");
    QString because =
        QStringLiteral("%1: %2 mites among %3 bees on %4, %5 in 100%6, above %7. That is the limit from %8; a sample "
                       "counts for %9 days.")
            .arg(m_view.name(c), QString::number(sample->mites), QString::number(sample->sample), isoText(sample->day),
                 QString::number(calc::mitesPerHundred({sample->mites, sample->sample}), 'f', 2), sampleRange(*sample),
                 decimalText(limit.value, 6), limitText(settings, months, why.southern),
                 QString::number(kMitesMaxAgeDays));
    return {std::move(because), std::move(why)};
}

Cautions::Found Cautions::masked(ColonyIx c) const {
    const SnapCheck* check = m_view.evidence->checks.latestClean(c, Day{0}, m_view.s.on);
    if (!check || !m_view.evidence->checks.masked(*check)) return {};
    const auto treated = m_view.evidence->treated.latestKnown(c, check->day);
    Reason why{"4.4.3"};
    why.fact("colony", c).fact("checked", check->day).limit("trace.masked_days");
    if (treated) why.fact("antibiotic", *treated);
    QString because =
        QStringLiteral("%1: an antibiotic given on %2 may have hidden foulbrood at the clean brood check of %3; it may "
                       "hide it for %4 days.")
            .arg(m_view.name(c), treated ? isoText(*treated) : QString(), isoText(check->day),
                 QString::number(m_view.evidence->limits.traceMaskedDays));
    return {std::move(because), std::move(why)};
}

Cautions::Found Cautions::signs(ColonyIx c) const {
    const Signs seen = m_view.s.latestOf(c).visitSigns;
    QStringList names;
    for (const Sign sign : {Sign::Chalkbrood, Sign::Sacbrood, Sign::Nosema, Sign::DeformedWings})
        if (seen.has(sign)) names += word(sign);
    if (names.isEmpty()) return {};
    const QString all = names.join(QLatin1StringView(", "));
    const Day seenOn = *m_view.s.latestOf(c).visit;
    Reason why{"4.5"};
    why.fact("colony", c).fact("seen", seenOn).fact("signs", all);
    return {QStringLiteral("%1: %2 seen on %3.").arg(m_view.name(c), all, isoText(seenOn)), std::move(why)};
}

Cautions::Found Cautions::countBeforeTransfer(ColonyIx c) const {
    const ColonyFacts& f = m_view.of(c);
    const auto& moved = m_lastTransfer[static_cast<size_t>(c.value)];
    if (!f.strength || !moved || *moved < *f.counted) return {};
    Reason why{"4.5"};
    why.fact("colony", c).fact("counted", *f.counted).fact("moved", *moved);
    return {QStringLiteral("%1: counted on %2; bees or comb went from it or to it on %3.")
                .arg(m_view.name(c), isoText(*f.counted), isoText(*moved)),
            std::move(why)};
}

Cautions::Found Cautions::queenUnknown(ColonyIx c) const {
    const ColonyFacts& f = m_view.of(c);
    if (f.queen != QueenSeen::Unknown && f.queen != QueenSeen::Virgin) return {};
    Reason why{"4.2"};
    why.fact("colony", c);
    if (f.queenDay) why.fact("noted", *f.queenDay);
    if (f.queen == QueenSeen::Virgin)
        return {QStringLiteral("%1: its queen is a virgin.").arg(m_view.name(c)), std::move(why)};
    QString because = QStringLiteral("%1: whether it has a queen is not known.").arg(m_view.name(c));
    if (f.queenDay && f.queenNoted != QueenSeen::Unknown) {
        why.limit("queen.max_age_days");
        because += QStringLiteral(" A queen, or what she leaves, was seen last on %1, %2 days ago; more than %3 is too "
                                  "long.")
                       .arg(isoText(*f.queenDay))
                       .arg(m_view.s.on - *f.queenDay)
                       .arg(m_view.s.settings.queenMaxAgeDays);
    }
    return {std::move(because), std::move(why)};
}

Cautions::Found Cautions::roomUnknown(const Union& united) const {
    QStringList unknown;
    Reason why{"4.7.7"};
    for (const ColonyIx c : united.consolidate) {
        if (combNeeded(m_view, c)) continue;
        unknown += m_view.name(c);
        why.fact("colony", c).fact("counted", *m_view.of(c).counted);
    }
    if (unknown.isEmpty()) return {};
    return {
        QStringLiteral("%1: brood frames and the stores of both boxes were not all noted when the bees were counted; "
                       "whether all fits into one box is not known.")
            .arg(unknown.join(QLatin1StringView(", "))),
        std::move(why.limit("4.7.7 boxes"))};
}

Cautions::Found Cautions::lowerHeavier(const Union& united) const {
    const auto lower = allStores(m_view.of(united.lower));
    const auto upper = allStores(m_view.of(united.upper));
    if (!lower || !upper || lower->value - upper->value < kMuchHeavier.value) return {};
    const Settings& settings = m_view.s.settings;
    Reason why{"4.5"};
    why.fact("below", united.lower).fact("stores below", *lower).fact("above", united.upper);
    why.fact("stores above", *upper).limit("4.5 heavier_frames").limit("weigh.max_age_days").limit("order");
    return {
        QStringLiteral("%1, below, holds %2 frames of stores, %3, above, only %4; the winter cluster ends up above. "
                       "From %5 more on it matters; stores noted up to %6 ago count.")
            .arg(m_view.name(united.lower), framesText(*lower), m_view.name(united.upper), framesText(*upper),
                 limitText(settings, "4.5 heavier_frames"), limitText(settings, "weigh.max_age_days")),
        std::move(why)};
}

Cautions::Found Cautions::driftToHeld(ColonyIx emptied) const {
    const SnapStay& stand = m_view.placeOf(emptied);
    QStringList near;
    Reason why{"4.5"};
    for (const ColonyIx held : m_held[static_cast<size_t>(stand.yard.value)]) {
        if (!withinDrift(m_view.s.settings, stand.at, m_view.placeOf(held).at)) continue;
        near += driftName(m_view.s, held, stand.at, m_view.placeOf(held).at);
        why.fact("held", held);
    }
    if (near.isEmpty()) return {};
    return {QStringLiteral("Foragers of %1 may drift from its empty stand to held %2, up to %3 away.")
                .arg(m_view.name(emptied), near.join(QLatin1StringView(", ")),
                     limitText(m_view.s.settings, "move.drift_m")),
            std::move(why.limit("move.drift_m"))};
}

} // namespace core::rules
