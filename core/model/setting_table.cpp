#include "core/model/setting_table.h"

#include "core/model/setting_fields.h"

#include <algorithm>

namespace core {

namespace {

constexpr qint64 kQuarter = 4;
constexpr qint64 kMillion = 1'000'000;
constexpr qint64 kMostDays = 3650;
constexpr bool kFree = false;
constexpr bool kStricter = true;

constexpr char kAssumed[] = "assumption";
constexpr char kPractice[] = "assumption (common practice, no source)";
constexpr char kMasking[] = "assumption (from memory: antibiotics may hide foulbrood for up to 18 months)";
constexpr char kAdvice[] = "assumption; local inspectors and law decide";
constexpr char kMites[] = "assumption (from memory: Ontario treatment recommendations)";
constexpr char kWeights[] = "OMAFRA, Best Management Practices for Ontario Beekeepers in Advance of Winter";
constexpr char kEfbWeeks[] = "Scottish Government, European foulbrood control plan 2020: 6 weeks (two brood cycles)";
constexpr char kNear[] = "Lindström, Korpela, Fries 2008, Apidologie 39:515-522: spread within 1 km likely; "
                         "Bienenseuchen-Verordnung § 10(1): at least 1 km";
constexpr char kRobbing[] = "Lindström, Korpela, Fries 2008, Apidologie 39:515-522: clearly less at 2 km or more";
constexpr char kDrop[] =
    "assumption (a club in North Germany, buckfastimker-weser-ems.de: July over 10 treat, November over 1 "
    "treat; natural fall over 5 days; the months between are filled in here)";
constexpr char kRecords[] = "Regulation (EU) 2019/6 article 108 and UK Veterinary Medicines Regulations 2013: at least "
                            "5 years; local law decides";
constexpr char kCustom[] = "assumption (custom, 3 feet or 3 miles: a rule of thumb of trade guides, no law of nature)";
constexpr char kSyrup[] = "own calculation from the CRC Handbook sucrose table at 20 °C: 0.8844 kg sugar a litre, "
                          "stores of 18 % water";
constexpr char kFiveDays[] = "Bees and how to keep Bees, p. 47: examine 5 days after uniting";
constexpr char kShown[] = "choice of how quantities are shown; the book keeps SI";
constexpr char kMean[] = "assumption (from memory: Nasr, Thorp, Tyler, Briggs, J. Econ. Entomol. 1990)";

const SettingField kFields[] = {
    // Strength, queens, weights and seasons
    {"strength.judge", &Settings::strengthJudge, 0, 0, kFree, "", kMean,
     "How the frames of bees of a box seen from above and from below make one count."},
    {"strength.max_age_days", &Settings::strengthMaxAgeDays, 0, kMostDays, kFree, "days", kAssumed,
     "A count of bees older than this is not used."},
    {"class.shake_out_max", &Settings::shakeOutMax, 0, 48 * kQuarter, kFree, "frames", kPractice,
     "Up to so many frames of bees a colony is in the shake-out class."},
    {"class.medium_min", &Settings::mediumMin, 0, 48 * kQuarter, kFree, "frames", kPractice,
     "From so many frames of bees on a colony is medium; below, and above the shake-out class, it is weak."},
    {"class.strong_min", &Settings::strongMin, 0, 48 * kQuarter, kFree, "frames", kPractice,
     "From so many frames of bees on a colony is strong."},
    {"queen.max_age_days", &Settings::queenMaxAgeDays, 0, kMostDays, kFree, "days", kAssumed,
     "A queen, eggs or a virgin seen longer ago than this count as unknown."},
    {"weigh.max_age_days", &Settings::weighMaxAgeDays, 0, kMostDays, kFree, "days", kAssumed,
     "Weights and stores noted longer ago than this are not used."},
    {"season.fall_start", &Settings::fallStart, 0, 0, kFree, "", kAssumed,
     "First day of the season for strength: fall unions, shake-outs, feed, box order. South: six months later."},
    {"season.fall_end", &Settings::fallEnd, 0, 0, kFree, "", kAssumed,
     "Last day of the season for strength and of the season for queen trouble. South: six months later."},
    {"season.start", &Settings::seasonStart, 0, 0, kFree, "", kAssumed,
     "First day of the season, and of the season for queen trouble. South: six months later."},
    // Holds: each bound on the lax side is the default
    {"check.min_frames", &Settings::checkMinFrames, 3, 24, kStricter, "brood frames", kAdvice,
     "A clean brood check examined so many brood frames, or all where there are fewer."},
    {"check.full_frames", &Settings::checkFullFrames, 3, 24, kStricter, "brood frames", kAdvice,
     "A full brood check examined all brood frames, and so many at least."},
    {"check.max_age_days", &Settings::checkMaxAgeDays, 1, 150, kStricter, "days", kAdvice,
     "A brood check older than this no longer counts."},
    {"check.grace_days", &Settings::checkGraceDays, 0, 30, kStricter, "days", kAdvice,
     "A brood check from before this season counts for so many days."},
    {"trace.days", &Settings::traceDays, 365, kMostDays, kStricter, "days", kAdvice,
     "How far back from a foulbrood source gifts of bees, comb and feed are traced."},
    {"trace.masked_days", &Settings::traceMaskedDays, 548, kMostDays, kStricter, "days", kMasking,
     "So long an antibiotic may hide foulbrood: checks lift nothing, and tracing goes back so far."},
    {"afb.own_result_days", &Settings::afbOwnResultDays, 42, kMostDays, kStricter, "days", kAdvice,
     "A negative answers a contact when its sample was taken so long after the last contact."},
    {"afb.recheck_days", &Settings::afbRecheckDays, 60, kMostDays, kStricter, "days", kAdvice,
     "A lifting check answers a contact when it was made so long after the last contact."},
    {"afb.yard_back_days", &Settings::afbYardBackDays, 60, kMostDays, kStricter, "days", kAdvice,
     "A yard where a source stood so long before its date is held with it."},
    {"afb.yard_after_days", &Settings::afbYardAfterDays, 365, kMostDays, kStricter, "days", kAdvice,
     "A hive that comes to a source's yard so long after the source's last day there is held too."},
    {"efb.clear_days", &Settings::efbClearDays, 42, kMostDays, kStricter, "days", kEfbWeeks,
     "European foulbrood is answered by a full clean check or a negative so long after the last sign or gift."},
    {"efb.back_days", &Settings::efbBackDays, 42, kMostDays, kStricter, "days", kAdvice,
     "Gifts made so long before a sign of European foulbrood are suspect too."},
    {"doubt.recheck_days", &Settings::doubtRecheckDays, 21, kMostDays, kStricter, "days", kAdvice,
     "Doubtful brood is answered by a lifting check so long afterwards (one brood cycle)."},
    {"doubt.back_days", &Settings::doubtBackDays, 42, kMostDays, kStricter, "days", kAdvice,
     "Gifts made so long before doubtful brood was seen are in doubt too."},
    // Cautions
    {"mites.spring", &Settings::mitesSpring, 0, 100 * kMillion, kFree, "mites per 100 bees", kMites,
     "More mites than this give a caution from January to July. South: six months later."},
    {"mites.fall", &Settings::mitesFall, 0, 100 * kMillion, kFree, "mites per 100 bees", kMites,
     "More mites than this give a caution from August to December. South: six months later."},
    {"drop.summer", &Settings::dropSummer, 0, 10'000 * kMillion, kFree, "mites a day", kDrop,
     "More mites than this fall naturally onto the board a day: treat, from July to October. South: six months later."},
    {"drop.late", &Settings::dropLate, 0, 10'000 * kMillion, kFree, "mites a day", kDrop,
     "The same in November and December. South: six months later."},
    {"afb.near_m", &Settings::afbNearM, 0, 100'000 * kMillion, kFree, "m", kNear,
     "A yard within this distance of the yard of a foulbrood source gives a caution."},
    {"afb.rob_m", &Settings::afbRobM, 0, 100'000 * kMillion, kFree, "m", kRobbing,
     "Yards within this distance of a foulbrood source are listed: their bees may rob it. Beyond it, clearly less."},
    {"move.drift_m", &Settings::moveDriftM, 0, 1000 * kMillion, kFree, "m", kAssumed,
     "A held colony within this distance of a stand that is emptied gives a caution: foragers drift."},
    {"move.step_m", &Settings::moveStepM, 0, 1000 * kMillion, kFree, "m", kCustom,
     "A hive carried no farther than this in the flying season is found again by its foragers."},
    {"move.far_m", &Settings::moveFarM, 0, 100'000 * kMillion, kFree, "m", kCustom,
     "A hive carried at least so far in the flying season does not lose its foragers to the old place."},
    // Value of a union
    {"value.winter", &Settings::winter, 0, 0, kFree, "thousandths", kAssumed,
     "Chance to be alive in spring, at 0 to 12 frames of bees."},
    {"value.divide", &Settings::divide, 0, 0, kFree, "thousandths", kAssumed,
     "Chance that a colony alive in spring is then divided in two, at 0 to 12 frames of bees."},
    {"gain.min", &Settings::gainMin, 0, 10'000, kFree, "thousandths", kAssumed,
     "A union made for strength gains at least this many thousandths of a spring colony."},
    {"gain.min_queen", &Settings::gainMinQueen, 0, 10'000, kFree, "thousandths", kAssumed,
     "A union that gives a colony without a queen one gains at least this many thousandths."},
    {"carry.per_m", &Settings::carryPerM, 0, 100 * kMillion, kFree, "thousandths per m", kAssumed,
     "What each metre that a hive is carried takes from a gain."},
    {"order", &Settings::order, 0, 0, kFree, "", kPractice, "Which colony of a union comes into the upper box."},
    {"queen.weaker", &Settings::weakerQueen, 0, 0, kFree, "", kPractice,
     "Where both have a queen: leave the choice to the bees, or remove the queen of the colony that is moved."},
    {"shake.per_host", &Settings::shakePerHost, 0, 24, kFree, "colonies", kAssumed,
     "At most so many colonies are shaken out into one host."},
    // Feed
    {"stores.single_kg", &Settings::singleKg, 0, 300 * kMillion, kFree, "kg", kWeights,
     "What a hive with one brood box weighs in all when it is ready for winter."},
    {"stores.double_kg", &Settings::doubleKg, 0, 300 * kMillion, kFree, "kg", kWeights,
     "What a hive with two brood boxes weighs in all when it is ready for winter."},
    {"syrup.stores_kg_per_l", &Settings::storesKgPerL, kMillion / 10, 10 * kMillion, kFree, "kg per litre", kSyrup,
     "Stores that one litre of syrup, two parts of sugar to one of water by mass, makes."},
    {"tare.floor_lid_kg", &Settings::floorLidKg, 0, 100 * kMillion, kFree, "kg", kAssumed,
     "Floor and lid that a union does without."},
    {"tare.box_kg", &Settings::boxKg, 0, 100 * kMillion, kFree, "kg", kAssumed,
     "An empty brood box with its frames, taken away when a colony is brought down to one box."},
    // Divides, follow-up
    {"divide.brood_per_part", &Settings::broodPerPart, 1, 24, kFree, "brood frames", kAssumed,
     "Each part of a divide needs so many frames of brood."},
    {"divide.bees_per_part", &Settings::beesPerPart, 1, 24, kFree, "frames", kAssumed,
     "Each part of a divide needs so many frames of bees."},
    {"follow.union_days", &Settings::followUnionDays, 0, 60, kFree, "days", kFiveDays,
     "A union is looked at so long after it was made."},
    // Papers
    {"records.years", &Settings::recordsYears, 1, 100, kFree, "years", kRecords,
     "So long after its last day a treatment is kept in the medicine book: corrected, never erased."},
    {"sample.late_days", &Settings::sampleLateDays, 1, kMostDays, kFree, "days", kAssumed,
     "A sample without an answer so long after it was sent is asked after."},
    // The crew of a merge day
    {"crew.minutes_per_union", &Settings::crewMinutesPerUnion, 1, 240, kFree, "minutes", kAssumed,
     "What a union takes two people, from setting the host aside to the mark on the lid."},
    {"crew.people", &Settings::crewPeople, 1, 100, kFree, "people", kAssumed,
     "Who works on a merge day; each two of them make one union at a time, since nobody lifts a full box alone."},
    // Units shown
    {"show.weight", &Settings::showWeight, 0, 0, kFree, "", kShown,
     "Weights on screen, in the plan and on the worksheet: kilograms or pounds."},
    {"show.volume", &Settings::showVolume, 0, 0, kFree, "", kShown,
     "Feed on screen, in the plan and on the worksheet: litres or US liquid quarts."},
    {"show.length", &Settings::showLength, 0, 0, kFree, "", kShown,
     "Distances on screen, in the plan and on the worksheet: metres or feet."},
};

const SettingField* fieldNamed(QStringView name) {
    const auto fields = settingFields();
    const auto found = std::find_if(fields.begin(), fields.end(),
                                    [&](const SettingField& f) { return name == QLatin1StringView(f.name); });
    return found == fields.end() ? nullptr : &*found;
}

std::vector<SettingInfo> makeTable() {
    const Settings defaults;
    std::vector<SettingInfo> table;
    for (const SettingField& f : kFields)
        table.push_back({QString::fromUtf8(f.name), slotText(defaults, f), QString::fromUtf8(f.unit), rangeText(f),
                         QString::fromUtf8(f.source), QString::fromUtf8(f.meaning)});
    return table;
}

} // namespace

std::span<const SettingField> settingFields() { return kFields; }

const std::vector<SettingInfo>& settingTable() {
    static const std::vector<SettingInfo> table = makeTable();
    return table;
}

const SettingInfo* settingNamed(QStringView name) {
    const SettingField* field = fieldNamed(name);
    return field ? &settingTable()[static_cast<size_t>(field - kFields)] : nullptr;
}

std::optional<QString> applySetting(Settings& settings, QStringView name, QStringView text) {
    const SettingField* field = fieldNamed(name);
    if (!field || !readSlot(settings, *field, text)) return std::nullopt;
    return slotText(settings, *field);
}

QString settingText(const Settings& settings, QStringView name) {
    const SettingField* field = fieldNamed(name);
    return field ? slotText(settings, *field) : QString();
}

} // namespace core
