#include "core/model/words.h"

namespace core {

namespace {

constexpr const char* kEnds[] = {"dead", "destroyed", "united", "shaken-out", "sold"};
constexpr const char* kQueens[] = {"seen", "eggs", "virgin", "drone-layer", "none", "laying-workers", "unknown"};
constexpr const char* kTransfers[] = {"frames", "brood", "bees", "box", "feed"};
constexpr const char* kDiseases[] = {"afb", "efb"};
constexpr const char* kVerdicts[] = {"positive", "negative", "release", "order"};
constexpr const char* kMethods[] = {"laboratory", "inspector", "field"};
constexpr const char* kHows[] = {"united", "shaken-out", "divided"};
constexpr const char* kFixed[] = {"fence", "hedge", "shed", "water", "track", "tree"};
constexpr const char* kAsks[] = {"pin", "forbid", "leave-out", "host", "top"};
constexpr const char* kOutcomes[] = {"done", "not-done", "changed"};
constexpr const char* kDivideQueens[] = {"cells", "bought", "own"};
constexpr const char* kFeeds[] = {"syrup", "fondant", "sugar", "honey", "pollen", "other"};
constexpr const char* kFates[] = {"superseded", "replaced", "dead", "missing", "swarmed", "sold", "moved"};
constexpr const char* kMarks[] = {"white", "yellow", "red", "green", "blue", "unmarked"};
constexpr const char* kOrigins[] = {"raised", "bought", "swarm", "emergency", "supersedure"};
constexpr const char* kMaterials[] = {"brood", "bees", "honey", "debris", "other"};
constexpr const char* kKitEnds[] = {"irradiated", "dipped", "burned", "other"};
constexpr const char* kReportable[] = {"afb", "efb", "small-hive-beetle", "tropilaelaps", "varroa"};
constexpr const char* kSigns[] = {"afb", "efb", "brood-doubt", "chalkbrood", "sacbrood", "nosema", "deformed-wings"};

} // namespace

template <> std::span<const char* const> wordsOf<EndKind>() { return kEnds; }
template <> std::span<const char* const> wordsOf<QueenSeen>() { return kQueens; }
template <> std::span<const char* const> wordsOf<TransferKind>() { return kTransfers; }
template <> std::span<const char* const> wordsOf<Disease>() { return kDiseases; }
template <> std::span<const char* const> wordsOf<Verdict>() { return kVerdicts; }
template <> std::span<const char* const> wordsOf<Method>() { return kMethods; }
template <> std::span<const char* const> wordsOf<LineageHow>() { return kHows; }
template <> std::span<const char* const> wordsOf<FixedKind>() { return kFixed; }
template <> std::span<const char* const> wordsOf<MergeAsk>() { return kAsks; }
template <> std::span<const char* const> wordsOf<StripOutcome>() { return kOutcomes; }
template <> std::span<const char* const> wordsOf<DivideQueens>() { return kDivideQueens; }
template <> std::span<const char* const> wordsOf<FeedKind>() { return kFeeds; }
template <> std::span<const char* const> wordsOf<QueenFate>() { return kFates; }
template <> std::span<const char* const> wordsOf<QueenMark>() { return kMarks; }
template <> std::span<const char* const> wordsOf<QueenOrigin>() { return kOrigins; }
template <> std::span<const char* const> wordsOf<SampleMaterial>() { return kMaterials; }
template <> std::span<const char* const> wordsOf<KitEndHow>() { return kKitEnds; }
template <> std::span<const char* const> wordsOf<Reportable>() { return kReportable; }
template <> std::span<const char* const> wordsOf<Sign>() { return kSigns; }

} // namespace core
