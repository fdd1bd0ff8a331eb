#include "demo/scenario.h"

#include <algorithm>
#include <array>
#include <span>

namespace demo {

using core::Quarters;
using core::QueenSeen;

namespace {

/// What was seen at the fall count of one colony: frames in quarters, weight in kilograms (0: not weighed).
struct Seen {
    const char* label;
    int quarters;
    QueenSeen queen = QueenSeen::Eggs;
    int kilograms = 0;
    int storesQuarters = 12;
    int mites = 3; ///< of 300 bees
};

constexpr auto kEggs = QueenSeen::Eggs;
constexpr auto kSeen = QueenSeen::Seen;

constexpr Seen kLarkspurBottom[] = {
    {"A1", 34, kEggs, 38},
    {"A2", 14, kSeen, 24, 20},
    {"A3", 21, kEggs, 27, 8},
    {"A4", 11, kEggs, 22, 20, 14},
    {"A5", 24, kSeen, 29, 8},
    {"A7", 18, kEggs, 26},
    {"A8", 15, QueenSeen::LayingWorkers},
    {"A9", 5, kEggs},
    {"A10", 7, kEggs},
    {"A11", 26, QueenSeen::None, 31, 10},
    {"A15", 13, kEggs, 23, 20},
    {"A16", 22, QueenSeen::Unknown, 28, 8},
    {"A17", 16, kEggs, 24, 18},
    {"A18", 15, kSeen, 25, 9},
    {"A20", 40, kSeen, 41},
    {"A21", 10, QueenSeen::Virgin},
    {"A22", 17, kEggs, 26, 19},
    {"A23", 28, kEggs, 23},
    {"A24", 18, QueenSeen::DroneLayer, 24},
    {"A25", 9, kEggs, 21, 17},
    {"A26", 12, kEggs, 23, 18},
    {"A27", 19, kSeen, 26, 12},
    {"A28", 20, kEggs, 28, 7},
    {"A29", 23, kEggs, 30, 8},
    {"A30", 25, kSeen, 31, 8},
    {"A31", 30, kEggs, 33},
    {"A32", 32, kEggs, 36},
    {"A33", 36, kSeen, 39},
    {"A34", 16, QueenSeen::None, 25},
    {"A35", 16, kEggs, 24, 18},
    {"A36", 10, kEggs, 22, 17},
};
constexpr Seen kThistleAcre[] = {
    {"B1", 33, kSeen, 37},      {"B2", 13, kEggs, 23, 18},  {"B3", 21, kEggs, 28, 8},   {"B4", 24, kEggs, 30, 9},
    {"B5", 22, kEggs, 27},      {"B6", 15, kEggs, 24, 18},  {"B7", 29, kSeen, 33},      {"B8", 12, kEggs, 22, 17},
    {"B9", 19, kEggs, 25},      {"B10", 26, kEggs, 31, 9},  {"B11", 17, kEggs, 25, 18}, {"B12", 23, kSeen, 29},
    {"B13", 35, kEggs, 38},     {"B14", 14, kEggs, 23, 18}, {"B15", 20, kEggs, 27, 8},  {"B16", 31, kEggs, 34},
    {"B17", 11, kEggs, 22, 17}, {"B18", 22, kSeen, 28, 8},  {"B19", 18, kEggs, 25, 15}, {"B20", 27, kEggs, 32},
    {"B21", 37, kEggs, 40},     {"B22", 16, kEggs, 24, 18}, {"B23", 25, kEggs, 30, 8},  {"B24", 6, kEggs},
};
constexpr Seen kQuarryLedge[] = {
    {"C1", 24, kEggs, 29},  {"C2", 21, kEggs, 27},  {"C3", 13, kEggs, 23},  {"C4", 30, kSeen, 34},
    {"C5", 18, kEggs, 25},  {"C6", 26, kEggs, 31},  {"C7", 16, kEggs, 24},  {"C8", 33, kEggs, 37},
    {"C9", 22, kEggs, 28},  {"C10", 12, kEggs, 22}, {"C11", 28, kSeen, 32}, {"C12", 20, kEggs, 27},
    {"C13", 15, kEggs, 24}, {"C14", 35, kEggs, 38},
};
constexpr Seen kUpperTansy[] = {
    {"D1", 30, kEggs, 34},    {"D2", 33, kSeen, 36},      {"D3", 14, kEggs, 23, 18},  {"D4", 34, kEggs, 52},
    {"D5", 22, kEggs, 28, 8}, {"D6", 26, kEggs, 31},      {"D7", 12, kEggs, 22, 17},  {"D8", 36, kEggs, 40},
    {"D9", 21, kEggs, 27, 8}, {"D10", 38, kSeen, 41},     {"D11", 17, kEggs, 25, 18}, {"D12", 29, kEggs, 33},
    {"D13", 24, kEggs, 30},   {"D14", 15, kEggs, 24, 18}, {"D15", 32, kEggs, 36},     {"D16", 23, kEggs, 29},
    {"D18", 28, kSeen, 32},
};
constexpr Seen kFoxgloveRise[] = {{"E1", 6, kEggs}, {"E2", 4, kSeen}, {"E3", 19, kEggs, 26}, {"E4", 7, kEggs}};

core::Visit visitOn(int month, int day) {
    core::Visit v;
    v.day = core::dayOf(2026, month, day);
    v.by = QStringLiteral("Wren");
    return v;
}

void setBrood(core::Visit& v, int frames, int checked) {
    v.broodFrames = frames;
    v.broodChecked = checked;
}

/// August: the brood looked through, the mites counted. September: the count.
void addRound(Story& story, const Seen& seen) {
    const QString label = QString::fromLatin1(seen.label);
    core::Visit august = visitOn(8, 24);
    setBrood(august, 4, story.unchecked.contains(label) ? 2 : 4);
    august.queen = kEggs;
    august.mites = seen.mites;
    august.miteSample = 300;
    core::Visit september = visitOn(9, 14);
    september.beesTop = Quarters{seen.quarters};
    september.beesBottom = Quarters{seen.quarters};
    september.queen = seen.queen;
    if (seen.kilograms > 0) september.gross = core::Decagrams{seen.kilograms * 100};
    september.stores = Quarters{seen.storesQuarters};
    const bool queenless = seen.queen == QueenSeen::None || seen.queen == QueenSeen::LayingWorkers;
    september.broodFrames = queenless ? 0 : std::min(4, seen.quarters / 5);
    story.visits.push_back({label, august});
    story.visits.push_back({label, september});
}

core::Visit& visitOf(Story& story, const char* label, int month, int day) {
    const core::Day on = core::dayOf(2026, month, day);
    for (StoryVisit& v : story.visits)
        if (v.label == QLatin1StringView(label) && v.visit.day == on) return v.visit;
    story.visits.push_back({QString::fromLatin1(label), visitOn(month, day)});
    return story.visits.back().visit;
}

void addTwoBoxHives(Story& story) {
    for (const char* label : {"A6", "A19", "D4", "D8"})
        story.colonies.push_back({QString::fromLatin1(label), QStringLiteral("langstroth-10"), 2, {}, {}, {}});
    core::Visit& low = visitOf(story, "A6", 9, 14); // 1.5 below, 2.5 above; brood and stores not written down
    low.beesTop = Quarters{8};
    low.beesBottom = Quarters{4};
    low.upperBeesTop = low.upperBeesBottom = Quarters{10};
    low.queen = kEggs;
    setBrood(visitOf(story, "A6", 8, 24), 4, 4);
    core::Visit& heavy = visitOf(story, "A19", 9, 14);
    heavy.beesTop = heavy.beesBottom = Quarters{22};
    heavy.upperBeesTop = heavy.upperBeesBottom = Quarters{16};
    heavy.stores = Quarters{32};
    heavy.upperStores = Quarters{14};
    heavy.queen = kSeen;
    heavy.gross = core::Decagrams{4650};
    setBrood(visitOf(story, "A19", 8, 24), 7, 7);
    core::Visit& host = visitOf(story, "D4", 9, 14);
    host.boxes = 1;
    core::Visit& spring = visitOf(story, "D8", 5, 4); // wintered upwards: the lower box stands empty
    spring.beesTop = spring.beesBottom = Quarters{0};
    spring.upperBeesTop = spring.upperBeesBottom = Quarters{22};
    spring.queen = kEggs;
    setBrood(spring, 5, 5);
    visitOf(story, "D8", 6, 2).boxes = 1;
}

void addSingleFindings(Story& story) {
    visitOf(story, "A12", 7, 30).beesTop = Quarters{17}; // not counted since: too old
    setBrood(visitOf(story, "A12", 8, 24), 4, 4);
    setBrood(visitOf(story, "A13", 8, 24), 5, 5);
    visitOf(story, "A13", 9, 14).note = QStringLiteral("Lid stuck, not opened.");
    setBrood(visitOf(story, "A14", 8, 24), 3, 3);
    visitOf(story, "A14", 9, 14).beesTop = Quarters{0};
    visitOf(story, "A14", 9, 14).note = QStringLiteral("Silent. Wasps at the entrance.");
    visitOf(story, "A15", 9, 14).signs.add(core::Sign::Chalkbrood);
    visitOf(story, "B5", 8, 24).signs.add(core::Sign::Efb);
    visitOf(story, "B9", 9, 14).signs.add(core::Sign::BroodDoubt);
    visitOf(story, "B9", 9, 14).note = QStringLiteral("Sunken cappings on one frame, did not rope.");
    visitOf(story, "C2", 9, 14).signs.add(core::Sign::Afb);
    visitOf(story, "C2", 9, 14).note = QStringLiteral("Two cells rope. Closed up.");
    visitOf(story, "C7", 9, 14).signs.add(core::Sign::Afb);
    core::Visit& spring = visitOf(story, "D1", 5, 3);
    spring.beesTop = spring.beesBottom = Quarters{40};
    spring.queen = kEggs;
    setBrood(spring, 9, 9);
    setBrood(visitOf(story, "D17", 8, 24), 3, 3);
}

} // namespace

const StoryColony* Story::colony(const QString& label) const {
    const auto found = std::ranges::find(colonies, label, &StoryColony::label);
    return found == colonies.end() ? nullptr : &*found;
}

const StoryVisit* Story::fallCountOf(const QString& label) const {
    const auto found = std::ranges::find_if(
        visits, [&](const StoryVisit& v) { return v.label == label && v.visit.day == core::dayOf(2026, 9, 14); });
    return found == visits.end() ? nullptr : &*found;
}

std::optional<core::Day> Story::sinceOf(const QString& label) const {
    const StoryColony* c = colony(label);
    return c ? c->since : std::nullopt;
}

Story fallStory() {
    Story story;
    story.unchecked = {QStringLiteral("A7"), QStringLiteral("E3")}; // two of four brood frames, then the rain came
    const std::array<std::span<const Seen>, 5> yards = {kLarkspurBottom, kThistleAcre, kQuarryLedge, kUpperTansy,
                                                        kFoxgloveRise};
    for (const auto& yard : yards)
        for (const Seen& seen : yard) addRound(story, seen);
    addTwoBoxHives(story);
    addSingleFindings(story);
    addStoryRecords(story);
    return story;
}

} // namespace demo
