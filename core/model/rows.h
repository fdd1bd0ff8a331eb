#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/quantity.h"
#include "core/model/words.h"

#include <QString>

#include <optional>
#include <vector>

// The rows of the book, one plain struct a table. Not recorded: std::nullopt, or an empty text. Never zero.

namespace core {

struct Yard {
    YardId id;
    QString name;
    std::optional<double> latitudeDeg;  ///< −90..90
    std::optional<double> longitudeDeg; ///< −180..180
    std::optional<Millimetres> gateX;   ///< not recorded: 0
    std::optional<Millimetres> gateY;
    QString note;
    bool closed = false;
    friend bool operator==(const Yard&, const Yard&) = default;

    MmPoint gate() const { return {gateX.value_or(Millimetres{}).value, gateY.value_or(Millimetres{}).value}; }
};

/// A place on the ground of a yard; its position is fixed (correcting it corrects the drawing).
struct Stand {
    StandId id;
    YardId yard;
    QString name;
    MmPoint at;
    bool removed = false;
    friend bool operator==(const Stand&, const Stand&) = default;
};

struct BoxKind {
    BoxKindId id;
    QString name;
    int frames = 10;             ///< 1..24
    std::optional<int> widthMm;  ///< outside, across the combs
    std::optional<int> lengthMm; ///< outside, along the combs
    std::optional<int> heightMm;
    std::optional<Decagrams> tare;
    friend bool operator==(const BoxKind&, const BoxKind&) = default;
};

struct Colony {
    ColonyId id;
    QString label;
    Day since;
    std::optional<Day> ended;
    std::optional<EndKind> end; ///< set exactly when `ended` is
    BoxKindId box;
    int broodBoxes = 1; ///< at first
    std::optional<int> queenBorn;
    QString note;
    friend bool operator==(const Colony&, const Colony&) = default;
};

/// Where a colony's hive stands from `since` on. `first` marks the colony's own row; any other is a carry.
struct Placement {
    PlacementId id;
    ColonyId colony;
    StandId stand;
    std::optional<int> headingDeg; ///< 0..359 clockwise from north; not recorded: as it was before
    Day since;
    std::optional<Day> until; ///< the day it left or the colony ended; not set while it stands
    bool first = false;
    friend bool operator==(const Placement&, const Placement&) = default;
};

struct Visit {
    VisitId id;
    ColonyId colony;
    Day day;
    std::optional<int> boxes; ///< brood boxes from that day on, 1 or 2
    std::optional<Quarters> beesTop;
    std::optional<Quarters> beesBottom;
    std::optional<Quarters> upperBeesTop;
    std::optional<Quarters> upperBeesBottom;
    std::optional<Quarters> stores;
    std::optional<Quarters> upperStores;
    std::optional<QueenSeen> queen;
    std::optional<int> broodFrames;  ///< 0..24
    std::optional<int> broodChecked; ///< examined for disease, 0..24, not above broodFrames
    Signs signs;                     ///< kept in table visit_sign
    std::optional<int> supers;       ///< 0..10
    std::optional<Decagrams> gross;  ///< the whole hive, 0..300 kg
    std::optional<int> mites;        ///< 0..10000
    std::optional<int> miteSample;   ///< bees, 1..10000; both or neither
    QString by;
    QString note;
    friend bool operator==(const Visit&, const Visit&) = default;
};

struct Transfer {
    TransferId id;
    Day day;
    ColonyId from;
    ColonyId to;
    TransferKind what = TransferKind::Frames;
    std::optional<int> count; ///< 1..1000
    QString note;
    friend bool operator==(const Transfer&, const Transfer&) = default;
};

struct Result {
    ResultId id;
    std::optional<ColonyId> colony; ///< one of colony and yard
    std::optional<YardId> yard;
    Day day; ///< the sample was taken; of an order or release: its own
    Disease disease = Disease::Afb;
    Verdict verdict = Verdict::Negative;
    Method method = Method::Laboratory;
    QString by;
    QString paper;
    QString note;
    friend bool operator==(const Result&, const Result&) = default;
};

struct Treatment {
    TreatmentId id;
    std::optional<ColonyId> colony; ///< one of colony and yard
    std::optional<YardId> yard;
    Day day;
    QString product;
    QString substance;
    bool antibiotic = false;
    QString batch;
    std::optional<double> quantity;
    QString unit;
    QString method;
    QString supplier;
    QString supplierAddress;
    std::optional<Day> bought;
    std::optional<double> quantityBought;
    QString proof;
    QString prescriber;
    QString prescriberContact;
    std::optional<int> days;           ///< 0..1000
    std::optional<int> withdrawalDays; ///< 0..1000
    std::optional<Day> disposed;
    std::optional<double> disposedQuantity;
    QString disposedHow;
    QString by;
    QString reason;
    friend bool operator==(const Treatment&, const Treatment&) = default;
};

/// united, shaken-out: `colony` ends that day and its bees are `into`'s. divided: `into` is the new colony.
struct Lineage {
    LineageId id;
    Day day;
    LineageHow how = LineageHow::United;
    ColonyId colony;
    ColonyId into;
    QString by;
    QString note;
    friend bool operator==(const Lineage&, const Lineage&) = default;
};

/// Kit of a yard (or of the store room: no yard), counted by kind and state. One lot of it: what was counted, or came
/// free, at one time; lots together make a pile (rules/kit_piles.h).
struct Kit {
    qint64 id = 0;
    std::optional<YardId> yard;
    QString part;                   ///< a box kind's name, or floor, lid, ... (model/kit_words.h)
    QString state;                  ///< usable, to-clean, quarantined, burned, sterilised
    std::optional<ColonyId> colony; ///< that it came off, where that is known; while it is held the lot is kept apart
    int count = 0;
    friend bool operator==(const Kit&, const Kit&) = default;
};

/// Someone who keeps the book: offered for "by". Records hold the name as text, not this row.
struct Person {
    PersonId id;
    QString name;
    bool active = true; ///< offered
    friend bool operator==(const Person&, const Person&) = default;
};

/// What stands or runs in a yard besides its hives: for the drawing alone, no rule reads it.
struct FixedThing {
    FixedThingId id;
    YardId yard;
    FixedKind kind = FixedKind::Hedge;
    QString name; ///< shown beside it; empty: the word of its kind
    /// Fence, hedge, track: the run, 2 to 200 points. Water: the edge, 3 to 200. Shed: four corners in turn. Tree: one.
    std::vector<MmPoint> points;
    std::optional<Millimetres> radius; ///< of a tree's crown, 100..50000; only a tree's
    friend bool operator==(const FixedThing&, const FixedThing&) = default;
};

/// One way to plan the merge day of a yard; up to three of a day stand side by side.
struct MergeDay {
    MergeDayId id;
    YardId yard;
    Day day;
    int variant = 1;            ///< 1..3
    std::optional<int> most;    ///< at most so many unions
    std::optional<int> minutes; ///< that the crew has
    int revision = 1;           ///< one more with each change of what is asked
    QString note;
    std::optional<DivideQueens> queens = {}; ///< how its divides come to queens
    friend bool operator==(const MergeDay&, const MergeDay&) = default;
};

/// One thing asked of the plan of a merge day. Pin and forbid: the pair, in either order. Host: `colony` is the host of
/// `other`. Top: the box of `colony` comes on top of that of `other`.
struct MergeChoice {
    MergeChoiceId id;
    MergeDayId mergeDay;
    MergeAsk what = MergeAsk::Pin;
    ColonyId colony;
    std::optional<ColonyId> other; ///< not set exactly where one is left out
    QString note;                  ///< why
    friend bool operator==(const MergeChoice&, const MergeChoice&) = default;
};

/// One strip of the worksheet as it was printed, and what came of it.
struct MergeStrip {
    MergeStripId id;
    MergeDayId mergeDay;
    int position = 1; ///< on the worksheet
    LineageHow how = LineageHow::United;
    ColonyId moved, host;
    std::optional<ColonyId> upper; ///< of a union: whose box is on top
    std::optional<StripOutcome> outcome;
    QString note; ///< why not, or what instead
    friend bool operator==(const MergeStrip&, const MergeStrip&) = default;
};

/// What is asked of the divide of one colony on a merge day.
struct DivideChoice {
    DivideChoiceId id;
    MergeDayId mergeDay;
    ColonyId colony;
    int parts = 1; ///< at most so many, its own counted, 1..24; 1: it is left whole
    QString note;  ///< why
    friend bool operator==(const DivideChoice&, const DivideChoice&) = default;
};

/// One divide of the worksheet as it was printed, and what came of it.
struct DivideStrip {
    DivideStripId id;
    MergeDayId mergeDay;
    int position = 1; ///< among the divides of the worksheet
    ColonyId colony;  ///< divided; it keeps its stand
    int parts = 2;    ///< its own counted: parts − 1 new colonies
    DivideQueens queens = DivideQueens::Own;
    std::optional<StripOutcome> outcome;
    QString note; ///< why not, or what instead
    friend bool operator==(const DivideStrip&, const DivideStrip&) = default;
};

/// Feed given to a colony: a volume or a weight.
struct Feeding {
    FeedingId id;
    ColonyId colony;
    Day day;
    FeedKind what = FeedKind::Syrup;
    QString mix;                       ///< of syrup: sugar to water by mass, "3:2"
    std::optional<Millilitres> volume; ///< 1 ml..100 l; one of the two
    std::optional<Decagrams> weight;   ///< 0.01..100 kg
    QString by;
    QString note;
    friend bool operator==(const Feeding&, const Feeding&) = default;
};

/// A queen at the head of a colony from `since` on; one at a time. Carried to another colony she gets a row there. The
/// year that rules read stands in Colony::queenBorn.
struct Queen {
    QueenId id;
    ColonyId colony;
    Day since;
    std::optional<Day> until;      ///< not set while she heads it
    std::optional<QueenFate> fate; ///< set exactly when `until` is
    std::optional<int> born;       ///< year, 1990..2100
    std::optional<QueenMark> mark;
    QString tag; ///< number on her disc
    std::optional<QueenOrigin> origin;
    QString source;                 ///< breeder, line
    std::optional<ColonyId> mother; ///< that she was raised from
    QString note;
    friend bool operator==(const Queen&, const Queen&) = default;
};

/// How a file of another program becomes one of ours, kept under a name.
struct FileMapping {
    FileMappingId id;
    QString name;
    QString kind;   ///< of file: "visits"
    QString header; ///< names of its first row, as they stood
    QString form;   ///< JSON (exchange/mapping.h)
    friend bool operator==(const FileMapping&, const FileMapping&) = default;
};

/// A sentence typed often: `brief` stands for it in notes.
struct Phrase {
    PhraseId id;
    QString brief; ///< 1..12 characters, unique without regard to case
    QString sentence;
    friend bool operator==(const Phrase&, const Phrase&) = default;
};

/// A question asked of the book, kept under a name.
struct Question {
    QuestionId id;
    QString name;
    QString about;       ///< "colonies" or "visits"
    QString ask;         ///< JSON
    bool onPlan = false; ///< the colonies that it finds are marked on the plan
    friend bool operator==(const Question&, const Question&) = default;
};

/// A sample of one colony sent to a laboratory; its answer is a Result. No rule reads it.
struct Sample {
    SampleId id;
    ColonyId colony;
    Day day; ///< taken
    Disease disease = Disease::Afb;
    SampleMaterial material = SampleMaterial::Brood;
    QString laboratory; ///< where it goes; never empty
    QString number;     ///< written on it
    std::optional<Day> sent;
    std::optional<ResultId> result; ///< its answer
    std::optional<Day> lost;        ///< since when no answer is awaited; one of the two at most
    QString by;                     ///< who took it
    QString note;
    friend bool operator==(const Sample&, const Sample&) = default;
};

/// Mites that fell onto a board under the hive: shown in mites a day, never turned into mites per 100 bees.
struct MiteFall {
    MiteFallId id;
    ColonyId colony;
    Day day;      ///< counted
    int days = 1; ///< that the board lay there before, 1..60
    int mites = 0;
    QString by;
    QString note;
    friend bool operator==(const MiteFall&, const MiteFall&) = default;
};

/// What a treatment left in a hive is out again.
struct StripsOut {
    StripsOutId id;
    TreatmentId treatment;
    ColonyId colony; ///< of a yard's treatment: one row a colony
    Day day;
    QString by;
    QString note;
    friend bool operator==(const StripsOut&, const StripsOut&) = default;
};

/// How kit that was kept apart came to its end, or can be used again.
struct KitEnd {
    KitEndId id;
    Day day;
    std::optional<YardId> yard; ///< where it lay; not set: the store room
    QString part;
    std::optional<ColonyId> colony; ///< that it came off
    int count = 1;
    KitEndHow how = KitEndHow::Burned;
    QString by;    ///< never empty
    QString paper; ///< number of the order or certificate
    QString note;  ///< of `other`: how
    friend bool operator==(const KitEnd&, const KitEnd&) = default;
};

/// What must be reported where; stands in place of the shipped line of the same place and disease.
struct Notifiable {
    NotifiableId id;
    QString place;
    Reportable disease = Reportable::Afb;
    bool must = true;
    QString tell; ///< whom: office, telephone
    QString source;
    friend bool operator==(const Notifiable&, const Notifiable&) = default;
};

/// Whose book it is; at most one row.
struct Keeper {
    KeeperId id;
    QString name; ///< never empty
    QString address;
    QString contact;
    QString registration;
    QString place; ///< whose rules hold: a place of what is notifiable
    friend bool operator==(const Keeper&, const Keeper&) = default;
};

} // namespace core
