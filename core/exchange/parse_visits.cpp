#include "core/exchange/parse_rows.h"

namespace core::exchange {

namespace {

void checkVisit(Cells& cells, const Visit& row) {
    if (!cells.good()) return;
    if (row.broodChecked && row.broodFrames && *row.broodChecked > *row.broodFrames)
        cells.fault("brood_checked", Say::tr("%1 is above “brood_frames” (%2), expected that or fewer")
                                         .arg(*row.broodChecked)
                                         .arg(*row.broodFrames));
    if (row.mites && !row.miteSample)
        cells.fault("mite_sample", Say::tr("is blank where “mites” is given, expected both or neither"));
    if (row.miteSample && !row.mites)
        cells.fault("mites", Say::tr("is blank where “mite_sample” is given, expected both or neither"));
}

} // namespace

void parseVisit(Cells& cells, Drafts& drafts) {
    VisitDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    Visit& row = draft.row;
    row.day = cells.day("date").value_or(Day{});
    row.boxes = cells.whole("boxes", 1, 2);
    row.beesTop = cells.quarters("bees_top");
    row.beesBottom = cells.quarters("bees_bottom");
    row.upperBeesTop = cells.quarters("upper_bees_top");
    row.upperBeesBottom = cells.quarters("upper_bees_bottom");
    row.stores = cells.quarters("stores_frames");
    row.upperStores = cells.quarters("upper_stores_frames");
    row.queen = cells.word<QueenSeen>("queen");
    row.broodFrames = cells.whole("brood_frames", 0, 24);
    row.broodChecked = cells.whole("brood_checked", 0, 24);
    row.signs = cells.signs("signs");
    row.supers = cells.whole("supers", 0, 10);
    row.gross = cells.kilograms("gross_kg", 0, 300);
    row.mites = cells.whole("mites", 0, 10'000);
    row.miteSample = cells.whole("mite_sample", 1, 10'000);
    row.by = cells.text("by");
    row.note = cells.note("note");
    checkVisit(cells, row);
    if (cells.good()) drafts.visits.push_back(std::move(draft));
}

} // namespace core::exchange
