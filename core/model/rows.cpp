#include "core/model/row.h"

#include <QLatin1StringView>

#include <array>

namespace core {

namespace {

constexpr const char* kYard[] = {"name",      "key",       "latitude_deg", "longitude_deg",
                                 "gate_x_mm", "gate_y_mm", "note",         "closed"};
constexpr const char* kStand[] = {"yard", "name", "key", "x_mm", "y_mm", "removed"};
constexpr const char* kBoxKind[] = {"name", "key", "frames", "width_mm", "length_mm", "height_mm", "tare_dag"};
constexpr const char* kColony[] = {"label", "key",         "since",      "ended", "end_kind",
                                   "box",   "brood_boxes", "queen_born", "note"};
constexpr const char* kPlacement[] = {"colony", "stand", "heading_deg", "since", "until", "first"};
constexpr const char* kVisit[] = {"colony",
                                  "day",
                                  "boxes",
                                  "bees_top_q",
                                  "bees_bottom_q",
                                  "upper_bees_top_q",
                                  "upper_bees_bottom_q",
                                  "stores_q",
                                  "upper_stores_q",
                                  "queen",
                                  "brood_frames",
                                  "brood_checked",
                                  "supers",
                                  "gross_dag",
                                  "mites",
                                  "mite_sample",
                                  "by_whom",
                                  "note"};
constexpr const char* kVisitSign[] = {"visit", "sign"};
constexpr const char* kTransfer[] = {"day", "giver", "receiver", "what", "count", "note"};
constexpr const char* kResult[] = {"colony", "yard", "day", "disease", "verdict", "method", "by_whom", "paper", "note"};
constexpr const char* kTreatment[] = {"colony",
                                      "yard",
                                      "day",
                                      "product",
                                      "substance",
                                      "antibiotic",
                                      "batch",
                                      "quantity",
                                      "unit",
                                      "method",
                                      "supplier",
                                      "supplier_address",
                                      "bought",
                                      "quantity_bought",
                                      "proof",
                                      "prescriber",
                                      "prescriber_contact",
                                      "days",
                                      "withdrawal_days",
                                      "disposed",
                                      "disposed_quantity",
                                      "disposed_how",
                                      "by_whom",
                                      "reason"};
constexpr const char* kLineage[] = {"day", "how", "colony", "into_colony", "by_whom", "note"};
constexpr const char* kKit[] = {"yard", "part", "state", "colony", "count"};
constexpr const char* kSetting[] = {"name", "value"};
constexpr const char* kPerson[] = {"name", "key", "active"};
constexpr const char* kFixedThing[] = {"yard", "kind", "name", "points", "radius_mm"};
constexpr const char* kMergeDay[] = {"yard", "day", "variant", "most", "minutes", "revision", "note", "queens"};
constexpr const char* kMergeChoice[] = {"merge_day", "what", "colony", "other", "note"};
constexpr const char* kMergeStrip[] = {"merge_day", "position", "how", "moved", "host", "upper", "outcome", "note"};
constexpr const char* kDivideChoice[] = {"merge_day", "colony", "parts", "note"};
constexpr const char* kDivideStrip[] = {"merge_day", "position", "colony", "parts", "queens", "outcome", "note"};
constexpr const char* kFeeding[] = {"colony", "day", "what", "mix", "amount_ml", "amount_dag", "by_whom", "note"};
constexpr const char* kQueen[] = {"colony", "since",  "until",  "fate",   "born", "mark",
                                  "tag",    "origin", "source", "mother", "note"};
constexpr const char* kFileMapping[] = {"name", "key", "kind", "header", "form"};
constexpr const char* kPhrase[] = {"short", "key", "sentence"};
constexpr const char* kQuestion[] = {"name", "key", "about", "ask", "on_plan"};
constexpr const char* kSample[] = {"colony", "day",    "disease", "material", "laboratory", "number",
                                   "sent",   "result", "lost",    "by_whom",  "note"};
constexpr const char* kMiteFall[] = {"colony", "day", "days", "mites", "by_whom", "note"};
constexpr const char* kStripsOut[] = {"treatment", "colony", "day", "by_whom", "note"};
constexpr const char* kKitEnd[] = {"day", "yard", "part", "colony", "count", "how", "by_whom", "paper", "note"};
constexpr const char* kNotifiable[] = {"place", "key", "disease", "must", "tell", "source"};
constexpr const char* kKeeper[] = {"name", "address", "contact", "registration", "place"};

struct TableInfo {
    const char* name;
    std::span<const char* const> columns;
};

/// In the order of enum Table.
constexpr std::array<TableInfo, kTableCount> kTables{{{"yard", kYard},
                                                      {"stand", kStand},
                                                      {"box_kind", kBoxKind},
                                                      {"colony", kColony},
                                                      {"placement", kPlacement},
                                                      {"visit", kVisit},
                                                      {"visit_sign", kVisitSign},
                                                      {"transfer", kTransfer},
                                                      {"result", kResult},
                                                      {"treatment", kTreatment},
                                                      {"lineage", kLineage},
                                                      {"kit", kKit},
                                                      {"setting", kSetting},
                                                      {"person", kPerson},
                                                      {"fixed_thing", kFixedThing},
                                                      {"merge_day", kMergeDay},
                                                      {"merge_choice", kMergeChoice},
                                                      {"merge_strip", kMergeStrip},
                                                      {"divide_choice", kDivideChoice},
                                                      {"divide_strip", kDivideStrip},
                                                      {"feeding", kFeeding},
                                                      {"queen", kQueen},
                                                      {"file_mapping", kFileMapping},
                                                      {"phrase", kPhrase},
                                                      {"question", kQuestion},
                                                      {"sample", kSample},
                                                      {"mite_fall", kMiteFall},
                                                      {"strips_out", kStripsOut},
                                                      {"kit_end", kKitEnd},
                                                      {"notifiable", kNotifiable},
                                                      {"keeper", kKeeper}}};

} // namespace

const char* tableName(Table table) { return kTables[static_cast<size_t>(table)].name; }

std::span<const char* const> columnsOf(Table table) { return kTables[static_cast<size_t>(table)].columns; }

std::optional<Table> tableNamed(QStringView name) {
    for (size_t i = 0; i < kTables.size(); ++i)
        if (name == QLatin1StringView(kTables[i].name)) return static_cast<Table>(i);
    return std::nullopt;
}

} // namespace core
