#include "core/base/error.h"
#include "core/edit/keeper.h"
#include "core/edit/notifiables.h"
#include "core/exchange/parse_rows.h"

// What stands on papers: who the keeper is, what must be reported where.

namespace core::exchange {

namespace {

/// The row as it would be typed; a fault of its first column where it cannot be.
template <class T> void settle(Cells& cells, const char* column, T& row, T (*checked)(const T&)) {
    if (!cells.good()) return;
    try {
        row = checked(row);
    } catch (const core::Error& e) {
        cells.fault(column, e.userMessage());
    }
}

} // namespace

void parseKeeper(Cells& cells, Drafts& drafts) {
    KeeperDraft draft;
    draft.at = cells.origin();
    draft.row.name = cells.name("name");
    draft.row.address = cells.note("address");
    draft.row.contact = cells.text("contact");
    draft.row.registration = cells.text("registration");
    draft.row.place = cells.text("place");
    settle(cells, "name", draft.row, edit::checkedKeeper);
    if (cells.good()) drafts.keepers.push_back(std::move(draft));
}

void parseNotifiable(Cells& cells, Drafts& drafts) {
    NotifiableDraft draft;
    draft.at = cells.origin();
    draft.row.place = cells.name("place");
    draft.row.disease = cells.word<Reportable>("disease").value_or(Reportable::Afb);
    draft.row.must = cells.yesNo("must").value_or(true);
    draft.row.tell = cells.text("tell");
    draft.row.source = cells.text("source");
    settle(cells, "place", draft.row, edit::checkedNotifiable);
    if (cells.good()) drafts.notifiables.push_back(std::move(draft));
}

void parseStripsOut(Cells& cells, Drafts& drafts) {
    StripsOutDraft draft;
    draft.at = cells.origin();
    draft.colony = cells.colony("colony");
    draft.row.day = cells.day("date").value_or(Day{});
    if (cells.has("yard")) draft.yard = cells.name("yard");
    draft.treated = cells.day("treated").value_or(Day{});
    draft.product = cells.text("product");
    draft.row.by = cells.text("by");
    draft.row.note = cells.note("note");
    if (cells.good() && draft.row.day < draft.treated)
        cells.fault("date", Say::tr("is before the treatment, expected %1 or later").arg(isoText(draft.treated)));
    if (cells.good()) drafts.stripsOut.push_back(std::move(draft));
}

} // namespace core::exchange
