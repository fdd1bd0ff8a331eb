#include "core/rules/missing.h"

#include "core/rules/last_moved.h"
#include "core/rules/limits.h"
#include "core/rules/pairs.h"
#include "core/rules/work_order.h"

#include <array>

namespace core::rules {

namespace {

constexpr std::array kWords{"count",       "count-old", "no-bees",      "count-before-transfer",
                            "brood-check", "queen",     "brood-frames", "room",
                            "weight",      "signs"};
static_assert(kWords.size() == kMissingKinds);
constexpr int kQuartersAFrame = 4;
/// They bar nothing; seen at the latest visit, they are to be looked at again.
constexpr std::array kLookAgain{Sign::Chalkbrood, Sign::Sacbrood, Sign::Nosema, Sign::DeformedWings};

/// What one colony lacks.
class Lacks {
public:
    Lacks(const DayView& view, ColonyIx colony, const std::optional<Day>& moved)
        : m_view(view), m_facts(view.of(colony)), m_latest(view.s.latestOf(colony)), m_moved(moved) {}

    std::vector<Missing> all() {
        const YardSeasons& seasons = m_view.seasonsOf(m_facts.colony);
        const bool unions = seasons.strength || seasons.queenTrouble;
        if ((unions || seasons.divide) && mayTakePart()) {
            count();
            broodCheck();
            queen();
            if (seasons.divide) broodFrames();
            if (unions) room();
        }
        if (seasons.strength) weight();
        if ((unions || seasons.divide) && mayTakePart()) signs();
        return std::move(m_missing);
    }

private:
    void add(MissingKind kind, std::optional<Day> last, Reason why) {
        m_missing.push_back({kind, last, std::move(why)});
    }

    /// Held for nothing but its missing brood check, which a visit can bring, and without laying workers.
    bool mayTakePart() const {
        const int others = kHoldKindCount - 1;
        for (int kind = 0; kind < others; ++kind)
            if (m_view.heldAsKind(m_facts.colony, static_cast<HoldKind>(kind))) return false;
        return !m_facts.layingWorkers;
    }
    void count() {
        if (m_facts.strength) return countBeforeTransfer();
        Reason why{"4.1"};
        if (m_facts.counted) why.fact("counted", *m_facts.counted);
        switch (m_facts.noStrength) {
        case NoStrength::NoCount:
            return add(MissingKind::Count, m_facts.counted, why.fact("boxes", qint64(m_facts.boxes)));
        case NoStrength::NoBees:
            return add(MissingKind::NoBees, m_facts.counted, why);
        case NoStrength::CountOld:
            return add(MissingKind::CountOld, m_facts.counted, why.limit("strength.max_age_days"));
        }
    }
    void countBeforeTransfer() {
        if (!m_moved || *m_moved < *m_facts.counted) return;
        Reason why{"4.5"};
        why.fact("counted", *m_facts.counted).fact("moved", *m_moved);
        add(MissingKind::CountBeforeTransfer, m_facts.counted, why);
    }
    void broodCheck() {
        if (!m_view.heldAsKind(m_facts.colony, HoldKind::BroodNotChecked)) return;
        std::optional<Day> last;
        for (const SnapCheck& check : m_view.s.checksOf(m_facts.colony)) last = check.day;
        for (const Hold& hold : m_view.holds)
            if (hold.colony == m_facts.colony && hold.kind == HoldKind::BroodNotChecked)
                add(MissingKind::BroodCheck, last, hold.why);
    }
    void queen() {
        if (m_facts.queen != QueenSeen::Unknown && m_facts.queen != QueenSeen::Virgin) return;
        Reason why{"4.2"};
        if (m_facts.queenDay) why.fact("noted", *m_facts.queenDay);
        if (m_facts.queen == QueenSeen::Virgin) why.fact("virgin", qint64(1));
        const bool old = m_facts.queen == QueenSeen::Unknown && m_facts.queenNoted != QueenSeen::Unknown;
        if (old) why.limit("queen.max_age_days");
        add(MissingKind::Queen, m_facts.queenDay, why);
    }
    /// Bees for two parts, and brood not counted: only then does the brood decide.
    void broodFrames() {
        const int two = fixed::kLeastParts * m_view.s.settings.beesPerPart * kQuartersAFrame;
        if (!m_facts.strength || m_facts.strength->value < two) return;
        if (m_facts.broodFrames && m_view.s.on - *m_facts.broodDay <= fixed::kBroodDays) return;
        Reason why{"4.13"};
        if (m_facts.broodDay) why.fact("counted", *m_facts.broodDay).limit("4.13 brood_days");
        add(MissingKind::BroodFrames, m_facts.broodDay, why);
    }
    /// Only a colony that one box could take is brought down to one.
    void room() {
        if (m_facts.boxes != 2 || oneBox(m_view, m_facts.colony) != OneBox::Fits) return;
        if (combNeeded(m_view, m_facts.colony) || !aStrengthToUnite()) return;
        Reason why{"4.7.7"};
        add(MissingKind::Room, m_facts.counted, why.fact("counted", *m_facts.counted).limit("4.7.7 boxes"));
    }
    bool aStrengthToUnite() const {
        return m_facts.strengthClass == StrengthClass::Weak || m_facts.strengthClass == StrengthClass::Medium ||
               m_facts.lacksQueen;
    }
    void weight() {
        const bool noBees = !m_facts.strength && m_facts.noStrength == NoStrength::NoBees;
        const bool foul = m_view.heldAsKind(m_facts.colony, HoldKind::AfbConfirmed) ||
                          m_view.heldAsKind(m_facts.colony, HoldKind::AfbSuspected);
        if (m_facts.gross || noBees || foul || m_facts.layingWorkers) return;
        Reason why{"4.12"};
        why.limit("weigh.max_age_days");
        const auto& seen = m_latest.weight;
        const bool valid = seen && (!m_facts.freshStart || seen->day > *m_facts.freshStart);
        if (valid) why.fact("weighed", seen->day).fact("honey boxes", qint64(seen->supers));
        add(MissingKind::Weight, valid ? std::optional(seen->day) : std::nullopt, why);
    }
    void signs() {
        QStringList names;
        for (const Sign sign : kLookAgain)
            if (m_latest.visitSigns.has(sign)) names += word(sign);
        if (names.isEmpty()) return;
        Reason why{"4.5"};
        why.fact("seen", *m_latest.visit).fact("signs", names.join(QLatin1StringView(", ")));
        add(MissingKind::Signs, m_latest.visit, why);
    }

    const DayView& m_view;
    const ColonyFacts& m_facts;
    const SnapLatest& m_latest;
    const std::optional<Day>& m_moved;
    std::vector<Missing> m_missing;
};

} // namespace

QString missingWord(MissingKind kind) { return QString::fromLatin1(kWords[static_cast<size_t>(kind)]); }

bool planned(const DayView& view, YardIx yard) {
    const YardSeasons& seasons = view.seasons[static_cast<size_t>(yard.value)];
    return seasons.strength || seasons.queenTrouble || seasons.divide;
}

std::vector<ColonyMissing> missingIn(const DayView& view, YardIx yard) {
    const auto moved = lastMoved(view.s);
    std::vector<ColonyMissing> found;
    std::vector<MmPoint> stops;
    for (const ColonyFacts& f : view.facts) {
        if (f.yard != yard) continue;
        auto what = Lacks(view, f.colony, moved[static_cast<size_t>(f.colony.value)]).all();
        if (what.empty()) continue;
        found.push_back({f.colony, std::move(what)});
        stops.push_back(view.placeOf(f.colony).at);
    }
    std::vector<ColonyMissing> walk;
    for (const size_t at : walkRound(view.s.yard(yard).gate, stops)) walk.push_back(std::move(found[at]));
    return walk;
}

} // namespace core::rules
