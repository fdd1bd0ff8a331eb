#include "core/exchange/parse_rows.h"

namespace core::exchange {

namespace {

constexpr int kDefaultBroodBoxes = 1;
constexpr char kDefaultBox[] = "langstroth-10";

PlaceDraft parsePlace(Cells& cells) {
    PlaceDraft place;
    place.yard = cells.name("yard");
    place.stand = cells.name("stand");
    place.point.x = cells.metres("x_m").value_or(Millimetres{}).value;
    place.point.y = cells.metres("y_m").value_or(Millimetres{}).value;
    place.headingDeg = cells.rounded("heading_deg", 0, 359);
    return place;
}

void checkEnd(Cells& cells, const Colony& row) {
    if (!cells.good()) return;
    if (row.ended && !row.end) cells.fault("end", Say::tr("is blank where “ended” is given, expected both or neither"));
    if (row.end && !row.ended) cells.fault("ended", Say::tr("is blank where “end” is given, expected both or neither"));
    if (row.ended && *row.ended < row.since)
        cells.fault("ended", Say::tr("%1 lies before “since” (%2), expected that day or later")
                                 .arg(isoText(*row.ended), isoText(row.since)));
}

} // namespace

void parseYard(Cells& cells, Drafts& drafts) {
    Yard row;
    row.name = cells.name("yard");
    row.latitudeDeg = cells.real("latitude_deg", -90, 90);
    row.longitudeDeg = cells.real("longitude_deg", -180, 180);
    row.gateX = cells.metres("gate_x_m");
    row.gateY = cells.metres("gate_y_m");
    row.note = cells.note("note");
    if (cells.good()) drafts.yards.push_back({cells.origin(), row});
}

void parseColony(Cells& cells, Drafts& drafts) {
    ColonyDraft draft;
    draft.at = cells.origin();
    draft.row.label = cells.colonyLabel("colony");
    draft.place = parsePlace(cells);
    draft.row.since = cells.day("since").value_or(Day{});
    draft.row.broodBoxes = cells.whole("brood_boxes", 1, 2).value_or(kDefaultBroodBoxes);
    draft.box = cells.has("box") ? cells.name("box") : QString::fromLatin1(kDefaultBox);
    draft.row.queenBorn = cells.whole("queen_born", 1990, 2100);
    draft.row.ended = cells.day("ended");
    draft.row.end = cells.word<EndKind>("end");
    checkEnd(cells, draft.row);
    if (!cells.good()) return;
    draft.label = drafts.names.intern(draft.row.label);
    drafts.colonies.push_back(std::move(draft));
}

void parsePlacement(Cells& cells, Drafts& drafts) {
    PlacementDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    draft.day = cells.day("date").value_or(Day{});
    draft.place = parsePlace(cells);
    if (cells.good()) drafts.placements.push_back(std::move(draft));
}

void parseBoxKind(Cells& cells, Drafts& drafts) {
    BoxKind row;
    row.name = cells.name("box");
    row.frames = cells.whole("frames", 1, 24).value_or(0);
    row.widthMm = cells.rounded("width_mm", 1, 2000);
    row.lengthMm = cells.rounded("length_mm", 1, 2000);
    row.heightMm = cells.rounded("height_mm", 1, 2000);
    row.tare = cells.kilograms("tare_kg", 0, 100);
    if (cells.good()) drafts.boxKinds.push_back({cells.origin(), row});
}

void parseSetting(Cells& cells, Drafts& drafts) {
    SettingDraft draft{cells.origin(), cells.text("name"), cells.settingValue("value")};
    if (cells.good()) drafts.settings.push_back(std::move(draft));
}

} // namespace core::exchange
