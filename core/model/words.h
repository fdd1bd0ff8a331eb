#pragma once

#include <QLatin1StringView>
#include <QString>
#include <QStringView>

#include <optional>
#include <span>

namespace core {

enum class EndKind { Dead, Destroyed, United, ShakenOut, Sold };
enum class QueenSeen { Seen, Eggs, Virgin, DroneLayer, None, LayingWorkers, Unknown };
enum class TransferKind { Frames, Brood, Bees, Box, Feed };
enum class Disease { Afb, Efb };
enum class Verdict { Positive, Negative, Release, Order };
enum class Method { Laboratory, Inspector, Field };
enum class LineageHow { United, ShakenOut, Divided };
enum class FixedKind { Fence, Hedge, Shed, Water, Track, Tree };
/// What is asked of a merge day's plan: a pair in it, a pair not in it, a colony left out, who is host, whose box is on
/// top.
enum class MergeAsk { Pin, Forbid, LeaveOut, Host, Top };
enum class StripOutcome { Done, NotDone, Changed };
/// How the new colonies of a divide come to queens: sealed cells given, queens bought, raised by the bees themselves.
enum class DivideQueens { Cells, Bought, Own };
/// What a colony is fed.
enum class FeedKind { Syrup, Fondant, Sugar, Honey, Pollen, Other };
/// What became of a queen. Superseded: by her own daughter. Replaced: by the keeper. Moved: to head another colony.
enum class QueenFate { Superseded, Replaced, Dead, Missing, Swarmed, Sold, Moved };
/// The paint or disc on a queen.
enum class QueenMark { White, Yellow, Red, Green, Blue, Unmarked };
enum class QueenOrigin { Raised, Bought, Swarm, Emergency, Supersedure };
/// What a sample is of.
enum class SampleMaterial { Brood, Bees, Honey, Debris, Other };
/// How kit that was kept apart came to its end, or can be used again.
enum class KitEndHow { Irradiated, Dipped, Burned, Other };
/// What may have to be reported.
enum class Reportable { Afb, Efb, SmallHiveBeetle, Tropilaelaps, Varroa };
enum class Sign { Afb, Efb, BroodDoubt, Chalkbrood, Sacbrood, Nosema, DeformedWings };

/// The words of files and of the store for an enum, in enum order ("drone-layer"). Never translated.
template <class E> std::span<const char* const> wordsOf();
template <> std::span<const char* const> wordsOf<EndKind>();
template <> std::span<const char* const> wordsOf<QueenSeen>();
template <> std::span<const char* const> wordsOf<TransferKind>();
template <> std::span<const char* const> wordsOf<Disease>();
template <> std::span<const char* const> wordsOf<Verdict>();
template <> std::span<const char* const> wordsOf<Method>();
template <> std::span<const char* const> wordsOf<LineageHow>();
template <> std::span<const char* const> wordsOf<FixedKind>();
template <> std::span<const char* const> wordsOf<MergeAsk>();
template <> std::span<const char* const> wordsOf<StripOutcome>();
template <> std::span<const char* const> wordsOf<DivideQueens>();
template <> std::span<const char* const> wordsOf<FeedKind>();
template <> std::span<const char* const> wordsOf<QueenFate>();
template <> std::span<const char* const> wordsOf<QueenMark>();
template <> std::span<const char* const> wordsOf<QueenOrigin>();
template <> std::span<const char* const> wordsOf<SampleMaterial>();
template <> std::span<const char* const> wordsOf<KitEndHow>();
template <> std::span<const char* const> wordsOf<Reportable>();
template <> std::span<const char* const> wordsOf<Sign>();

template <class E> QString word(E value) { return QString::fromLatin1(wordsOf<E>()[static_cast<size_t>(value)]); }

/// The enum value of exactly this word; nullopt for any other text.
template <class E> std::optional<E> fromWord(QStringView text) {
    const auto words = wordsOf<E>();
    for (size_t i = 0; i < words.size(); ++i)
        if (text == QLatin1StringView(words[i])) return static_cast<E>(i);
    return std::nullopt;
}

/// A set of signs as bits: bit n is the n-th Sign.
struct Signs {
    quint8 bits = 0;
    friend bool operator==(Signs, Signs) = default;
    bool has(Sign s) const { return (bits >> static_cast<int>(s)) & 1; }
    void add(Sign s) { bits = static_cast<quint8>(bits | (1 << static_cast<int>(s))); }
    bool empty() const { return bits == 0; }
    /// afb, efb or brood-doubt: a brood check with one of these is not clean.
    bool broodTrouble() const { return (bits & 0b111) != 0; }
};

} // namespace core
