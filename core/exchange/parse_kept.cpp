#include "core/exchange/parse_rows.h"

#include "core/rules/calc/syrup.h"
#include "core/rules/feed_given.h"

namespace core::exchange {

namespace {

/// The mix as the book keeps it.
QString parseMix(Cells& cells, const Feeding& row) {
    const QString typed = cells.text("mix");
    if (typed.isEmpty()) return {};
    const auto mix = rules::calc::mixOf(typed);
    if (row.what != FeedKind::Syrup) cells.fault("mix", Say::tr("“%1” of what is no syrup, expected blank").arg(typed));
    if (!mix) cells.fault("mix", Say::tr("“%1” is no mix, expected sugar to water by weight, such as 3:2").arg(typed));
    return mix ? rules::mixText(*mix) : QString();
}

void parseAmount(Cells& cells, Feeding& row) {
    constexpr double kLeastLitres = 0.001;
    constexpr double kMostAmount = 100;
    const bool litres = cells.has("amount_l");
    const bool weighed = cells.has("amount_kg");
    if (litres && weighed) cells.fault("amount_kg", Say::tr("is given where “amount_l” is, expected one of the two"));
    if (!litres && !weighed)
        cells.fault("amount_l", Say::tr("is blank and so is “amount_kg”, expected one of the two"));
    if (const auto volume = cells.real("amount_l", kLeastLitres, kMostAmount))
        row.volume = Millilitres{qRound(*volume * 1000)};
    row.weight = cells.kilograms("amount_kg", 0, static_cast<int>(kMostAmount));
    if (row.weight && row.weight->value == 0) cells.fault("amount_kg", Say::tr("is 0, expected more"));
}

int yearOf(Day day) { return toDate(day).year(); }

void checkQueen(Cells& cells, const Queen& row) {
    if (!cells.good()) return;
    if (row.until && !row.fate)
        cells.fault("fate", Say::tr("is blank where “until” is not, expected what became of her"));
    if (row.fate && !row.until) cells.fault("until", Say::tr("is blank where “fate” is not, expected a day"));
    if (row.until && *row.until < row.since)
        cells.fault("until", Say::tr("%1 lies before “since” (%2), expected that day or later")
                                 .arg(isoText(*row.until), isoText(row.since)));
    if (row.born && *row.born > yearOf(row.since))
        cells.fault("born", Say::tr("%1 lies after “since” (%2), expected that year or an earlier one")
                                .arg(*row.born)
                                .arg(isoText(row.since)));
    constexpr qsizetype kLongestTag = 12;
    if (row.tag.size() > kLongestTag)
        cells.fault("tag", Say::tr("“%1” is too long, expected at most 12 characters").arg(row.tag));
}

} // namespace

void parseFeeding(Cells& cells, Drafts& drafts) {
    FeedingDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    draft.row.day = cells.day("date").value_or(Day{});
    draft.row.what = cells.word<FeedKind>("what").value_or(FeedKind::Syrup);
    draft.row.mix = parseMix(cells, draft.row);
    parseAmount(cells, draft.row);
    draft.row.by = cells.text("by");
    draft.row.note = cells.note("note");
    if (cells.good()) drafts.feedings.push_back(std::move(draft));
}

void parseMiteFall(Cells& cells, Drafts& drafts) {
    constexpr int kMostBoardDays = 60;
    constexpr int kMostFallen = 100'000;
    MiteFallDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    draft.row.day = cells.day("date").value_or(Day{});
    draft.row.days = cells.whole("days", 1, kMostBoardDays).value_or(1);
    draft.row.mites = cells.whole("mites", 0, kMostFallen).value_or(0);
    draft.row.by = cells.text("by");
    draft.row.note = cells.note("note");
    if (cells.good()) drafts.miteFalls.push_back(std::move(draft));
}

void parseQueen(Cells& cells, Drafts& drafts) {
    QueenDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    Queen& row = draft.row;
    row.since = cells.day("since").value_or(Day{});
    row.until = cells.day("until");
    row.fate = cells.word<QueenFate>("fate");
    row.born = cells.whole("born", 1990, 2100);
    row.mark = cells.word<QueenMark>("mark");
    row.tag = cells.text("tag");
    row.origin = cells.word<QueenOrigin>("origin");
    row.source = cells.text("source");
    if (cells.has("mother")) draft.mother = cells.colony("mother");
    row.note = cells.note("note");
    checkQueen(cells, row);
    if (cells.good()) drafts.queens.push_back(std::move(draft));
}

} // namespace core::exchange
