#include "core/exchange/parse_rows.h"

namespace core::exchange {

namespace {

/// Of results and treatments: the colony or the yard, one of the two.
SubjectDraft parseSubject(Cells& cells) {
    SubjectDraft subject;
    const bool colony = cells.has("colony");
    const bool yard = cells.has("yard");
    if (colony && yard) cells.fault("yard", Say::tr("is given where “colony” is, expected one of the two"));
    if (!colony && !yard) cells.fault("colony", Say::tr("is blank and so is “yard”, expected one of the two"));
    if (colony) subject.colony = cells.colony("colony");
    if (yard) subject.yard = cells.name("yard");
    return subject;
}

void checkResult(Cells& cells, const ResultDraft& draft) {
    if (!cells.good()) return;
    const Result& row = draft.row;
    const bool official = row.verdict == Verdict::Release || row.verdict == Verdict::Order;
    if (official && row.method != Method::Inspector)
        cells.fault("method", Say::tr("%1 of a %2, expected inspector").arg(word(row.method), word(row.verdict)));
    if (official && row.paper.isEmpty())
        cells.fault("paper", Say::tr("is blank, expected the number of the %1").arg(word(row.verdict)));
    if (!draft.subject.colony && !official)
        cells.fault("result", Say::tr("%1 for a yard, expected release or order").arg(word(row.verdict)));
}

void parsePurchase(Cells& cells, Treatment& row) {
    row.supplier = cells.text("supplier");
    row.supplierAddress = cells.text("supplier_address");
    row.bought = cells.day("bought");
    row.quantityBought = cells.amount("quantity_bought");
    row.proof = cells.text("proof");
    row.prescriber = cells.text("prescriber");
    row.prescriberContact = cells.text("prescriber_contact");
}

} // namespace

void parseTransfer(Cells& cells, Drafts& drafts) {
    TransferDraft draft;
    draft.at = cells.origin();
    draft.row.day = cells.day("date").value_or(Day{});
    draft.from = cells.colony("from");
    draft.to = cells.colony("to");
    draft.row.what = cells.word<TransferKind>("what").value_or(TransferKind::Frames);
    draft.row.count = cells.whole("count", 1, 1000);
    draft.row.note = cells.note("note");
    if (cells.good()) drafts.transfers.push_back(std::move(draft));
}

void parseClosing(Cells& cells, Drafts& drafts) {
    ClosingDraft draft;
    draft.at = cells.origin();
    draft.yard = cells.name("yard");
    draft.day = cells.day("date").value_or(Day{});
    draft.moved = cells.colony("moved");
    draft.host = cells.colony("host");
    draft.outcome = cells.word<StripOutcome>("outcome").value_or(StripOutcome::Done);
    draft.note = cells.note("note");
    if (draft.outcome == StripOutcome::Changed && draft.note.isEmpty())
        cells.fault("note", Say::tr("is blank, expected what was done instead"));
    if (cells.good()) drafts.closings.push_back(std::move(draft));
}

void parseLineage(Cells& cells, Drafts& drafts) {
    LineageDraft draft;
    draft.at = cells.origin();
    draft.row.day = cells.day("date").value_or(Day{});
    draft.row.how = cells.word<LineageHow>("how").value_or(LineageHow::United);
    draft.colony = cells.colony("colony");
    draft.into = cells.colony("into");
    draft.row.by = cells.text("by");
    draft.row.note = cells.note("note");
    if (cells.good()) drafts.lineage.push_back(std::move(draft));
}

void parseResult(Cells& cells, Drafts& drafts) {
    ResultDraft draft;
    draft.at = cells.origin();
    draft.subject = parseSubject(cells);
    draft.row.day = cells.day("date").value_or(Day{});
    draft.row.disease = cells.word<Disease>("disease").value_or(Disease::Afb);
    draft.row.verdict = cells.word<Verdict>("result").value_or(Verdict::Negative);
    draft.row.method = cells.word<Method>("method").value_or(Method::Laboratory);
    draft.row.by = cells.text("by");
    draft.row.paper = cells.text("paper");
    draft.row.note = cells.note("note");
    checkResult(cells, draft);
    if (cells.good()) drafts.results.push_back(std::move(draft));
}

void parseTreatment(Cells& cells, Drafts& drafts) {
    TreatmentDraft draft;
    draft.at = cells.origin();
    draft.subject = parseSubject(cells);
    Treatment& row = draft.row;
    row.day = cells.day("date").value_or(Day{});
    row.product = cells.text("product");
    row.substance = cells.text("substance");
    row.antibiotic = cells.yesNo("antibiotic").value_or(false);
    row.batch = cells.text("batch");
    row.quantity = cells.amount("quantity");
    row.unit = cells.text("unit");
    row.method = cells.text("method");
    parsePurchase(cells, row);
    row.days = cells.whole("days", 0, 1000);
    row.withdrawalDays = cells.whole("withdrawal_days", 0, 1000);
    row.disposed = cells.day("disposed");
    row.disposedQuantity = cells.amount("disposed_quantity");
    row.disposedHow = cells.text("disposed_how");
    row.by = cells.text("by");
    row.reason = cells.text("reason");
    if (cells.good()) drafts.treatments.push_back(std::move(draft));
}

} // namespace core::exchange
