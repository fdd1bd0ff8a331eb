#include "core/exchange/parse_rows.h"

namespace core::exchange {

namespace {

constexpr int kMostKit = 1'000'000;

/// A text that may not be blank is required by the kind already.
void checkDays(Cells& cells, const Sample& row) {
    if (row.sent && *row.sent < row.day)
        cells.fault("sent", Say::tr("%1 lies before “date” (%2), expected that day or later")
                                .arg(isoText(*row.sent), isoText(row.day)));
    const Day from = row.sent.value_or(row.day);
    if (row.lost && *row.lost < from)
        cells.fault("given_up", Say::tr("%1 lies before the sample was taken or sent (%2), expected that day or later")
                                    .arg(isoText(*row.lost), isoText(from)));
}

void checkAnswer(Cells& cells, const SampleDraft& draft) {
    if (draft.answer && *draft.answer != Verdict::Positive && *draft.answer != Verdict::Negative)
        cells.fault("answer",
                    Say::tr("“%1” is no answer to a sample, expected positive or negative").arg(word(*draft.answer)));
    if (draft.answer && draft.row.lost)
        cells.fault("given_up", Say::tr("is given where “answer” is, expected one of the two"));
    if (!draft.answer && !draft.paper.isEmpty())
        cells.fault("paper", Say::tr("“%1” where “answer” is blank, expected blank").arg(draft.paper));
}

} // namespace

void parseSample(Cells& cells, Drafts& drafts) {
    SampleDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    Sample& row = draft.row;
    row.day = cells.day("date").value_or(Day{});
    row.disease = cells.word<Disease>("disease").value_or(Disease::Afb);
    row.material = cells.word<SampleMaterial>("material").value_or(SampleMaterial::Brood);
    row.laboratory = cells.text("laboratory");
    row.number = cells.text("number");
    row.sent = cells.day("sent");
    draft.answer = cells.word<Verdict>("answer");
    draft.paper = cells.text("paper");
    row.lost = cells.day("given_up");
    row.by = cells.text("by");
    row.note = cells.note("note");
    if (cells.good()) {
        checkDays(cells, row);
        checkAnswer(cells, draft);
    }
    if (cells.good()) drafts.samples.push_back(std::move(draft));
}

void parseKitEnd(Cells& cells, Drafts& drafts) {
    KitEndDraft draft;
    draft.at = cells.origin();
    KitEnd& row = draft.row;
    row.day = cells.day("date").value_or(Day{});
    if (cells.has("yard")) draft.yard = cells.name("yard");
    row.part = cells.name("part");
    if (cells.has("colony")) draft.colony = cells.colony("colony");
    row.count = cells.whole("count", 1, kMostKit).value_or(1);
    row.how = cells.word<KitEndHow>("how").value_or(KitEndHow::Burned);
    row.by = cells.text("by");
    row.paper = cells.text("paper");
    row.note = cells.note("note");
    if (cells.good() && row.how == KitEndHow::Other && row.note.isEmpty())
        cells.fault("note", Say::tr("is blank where “how” is other, expected how it was done"));
    if (cells.good()) drafts.kitEnds.push_back(std::move(draft));
}

} // namespace core::exchange
