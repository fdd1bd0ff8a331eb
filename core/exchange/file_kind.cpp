#include "core/exchange/file_kind.h"

namespace core::exchange {

namespace {

constexpr bool kMust = true;
constexpr bool kMay = false;

constexpr Column kYards[] = {{"yard", kMust},    {"latitude_deg", kMay}, {"longitude_deg", kMay},
                             {"gate_x_m", kMay}, {"gate_y_m", kMay},     {"note", kMay}};

constexpr Column kColonies[] = {{"colony", kMust}, {"yard", kMust},       {"stand", kMust}, {"x_m", kMust},
                                {"y_m", kMust},    {"heading_deg", kMay}, {"since", kMust}, {"brood_boxes", kMay},
                                {"box", kMay},     {"queen_born", kMay},  {"ended", kMay},  {"end", kMay}};

constexpr Column kVisits[] = {{"colony", kMust},
                              {"date", kMust},
                              {"boxes", kMay},
                              {"bees_top", kMay},
                              {"bees_bottom", kMay},
                              {"upper_bees_top", kMay},
                              {"upper_bees_bottom", kMay},
                              {"stores_frames", kMay},
                              {"upper_stores_frames", kMay},
                              {"queen", kMay},
                              {"brood_frames", kMay},
                              {"brood_checked", kMay},
                              {"signs", kMay},
                              {"supers", kMay},
                              {"gross_kg", kMay},
                              {"mites", kMay},
                              {"mite_sample", kMay},
                              {"by", kMay},
                              {"note", kMay}};

constexpr Column kTransfers[] = {{"date", kMust}, {"from", kMust}, {"to", kMust},
                                 {"what", kMust}, {"count", kMay}, {"note", kMay}};

constexpr Column kResults[] = {{"colony", kMay},   {"yard", kMay},    {"date", kMust},
                               {"disease", kMust}, {"result", kMust}, {"method", kMust},
                               {"by", kMust},      {"paper", kMay},   {"note", kMay}};

constexpr Column kTreatments[] = {{"colony", kMay},
                                  {"yard", kMay},
                                  {"date", kMust},
                                  {"product", kMust},
                                  {"substance", kMust},
                                  {"antibiotic", kMay},
                                  {"batch", kMay},
                                  {"quantity", kMay},
                                  {"unit", kMay},
                                  {"method", kMay},
                                  {"supplier", kMay},
                                  {"supplier_address", kMay},
                                  {"bought", kMay},
                                  {"quantity_bought", kMay},
                                  {"proof", kMay},
                                  {"prescriber", kMay},
                                  {"prescriber_contact", kMay},
                                  {"days", kMay},
                                  {"withdrawal_days", kMay},
                                  {"disposed", kMay},
                                  {"disposed_quantity", kMay},
                                  {"disposed_how", kMay},
                                  {"by", kMay},
                                  {"reason", kMay}};

constexpr Column kLineage[] = {{"date", kMust}, {"how", kMust}, {"colony", kMust},
                               {"into", kMust}, {"by", kMay},   {"note", kMay}};

constexpr Column kPlacements[] = {{"colony", kMust}, {"date", kMust}, {"yard", kMust},      {"stand", kMust},
                                  {"x_m", kMust},    {"y_m", kMust},  {"heading_deg", kMay}};

constexpr Column kBoxKinds[] = {{"box", kMust},      {"frames", kMust},   {"width_mm", kMay},
                                {"length_mm", kMay}, {"height_mm", kMay}, {"tare_kg", kMay}};

constexpr Column kSettings[] = {{"name", kMust}, {"value", kMust}};

constexpr Column kClosings[] = {{"yard", kMust}, {"date", kMust},    {"moved", kMust},
                                {"host", kMust}, {"outcome", kMust}, {"note", kMay}};

constexpr Column kFeedings[] = {{"colony", kMust},  {"date", kMust},     {"what", kMust}, {"mix", kMay},
                                {"amount_l", kMay}, {"amount_kg", kMay}, {"by", kMay},    {"note", kMay}};

constexpr Column kQueens[] = {{"colony", kMust}, {"since", kMust}, {"until", kMay}, {"fate", kMay},
                              {"born", kMay},    {"mark", kMay},   {"tag", kMay},   {"origin", kMay},
                              {"source", kMay},  {"mother", kMay}, {"note", kMay}};

constexpr Column kKeeper[] = {
    {"name", kMust}, {"address", kMay}, {"contact", kMay}, {"registration", kMay}, {"place", kMay}};

constexpr Column kNotifiables[] = {
    {"place", kMust}, {"disease", kMust}, {"must", kMust}, {"tell", kMay}, {"source", kMay}};

constexpr Column kSamples[] = {{"colony", kMust},     {"date", kMust},    {"disease", kMust}, {"material", kMust},
                               {"laboratory", kMust}, {"number", kMay},   {"sent", kMay},     {"answer", kMay},
                               {"paper", kMay},       {"given_up", kMay}, {"by", kMay},       {"note", kMay}};

constexpr Column kKitEnds[] = {{"date", kMust}, {"yard", kMay}, {"part", kMust}, {"colony", kMay}, {"count", kMust},
                               {"how", kMust},  {"by", kMust},  {"paper", kMay}, {"note", kMay}};

constexpr Column kMiteFalls[] = {{"colony", kMust}, {"date", kMust}, {"days", kMust},
                                 {"mites", kMust},  {"by", kMay},    {"note", kMay}};

/// `yard` where the treatment was the yard's; `treated` and `product` say which.
constexpr Column kStripsOut[] = {{"colony", kMust},  {"date", kMust}, {"yard", kMay}, {"treated", kMust},
                                 {"product", kMust}, {"by", kMay},    {"note", kMay}};

struct KindInfo {
    const char* file;
    const char* option;
    const char* words;
    std::span<const Column> columns;
};

const KindInfo kInfo[kFileKindCount] = {
    {"yards.csv", "yards", "yards", kYards},
    {"colonies.csv", "colonies", "colonies", kColonies},
    {"visits.csv", "visits", "visits", kVisits},
    {"transfers.csv", "transfers", "transfers", kTransfers},
    {"results.csv", "results", "results", kResults},
    {"treatments.csv", "treatments", "treatments", kTreatments},
    {"lineage.csv", "lineage", "lineage", kLineage},
    {"placements.csv", "placements", "placements", kPlacements},
    {"box_kinds.csv", "box-kinds", "box kinds", kBoxKinds},
    {"settings.csv", "settings", "settings", kSettings},
    {"closings.csv", "day", "merge days", kClosings},
    {"feedings.csv", "feedings", "feedings", kFeedings},
    {"queens.csv", "queens", "queens", kQueens},
    {"keeper.csv", "keeper", "keepers", kKeeper},
    {"notifiable.csv", "notifiable", "what must be reported", kNotifiables},
    {"samples.csv", "samples", "samples", kSamples},
    {"kit_ends.csv", "kit-ends", "ends of kit", kKitEnds},
    {"mite_falls.csv", "mite-falls", "counts of fallen mites", kMiteFalls},
    {"strips_out.csv", "strips-out", "strips out", kStripsOut},
};

const KindInfo& info(FileKind kind) { return kInfo[static_cast<size_t>(kind)]; }

} // namespace

std::span<const Column> columnsOf(FileKind kind) { return info(kind).columns; }

QString fileName(FileKind kind) { return QString::fromLatin1(info(kind).file); }

QString optionName(FileKind kind) { return QString::fromLatin1(info(kind).option); }

QString kindWords(FileKind kind) { return QString::fromLatin1(info(kind).words); }

} // namespace core::exchange
