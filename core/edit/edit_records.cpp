#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

constexpr int kMostDays = 1000;

QString needed(const QString& typed, const QString& field) {
    const QString text = typed.trimmed();
    if (text.isEmpty()) refuse(Edits::tr("%1: expected a text, found nothing.").arg(field));
    return text;
}

void checkQuantity(std::optional<double> value, const QString& field) {
    if (value && !(*value >= 0)) refuse(Edits::tr("%1: expected 0 or more.").arg(field));
}

/// What a result or treatment is of, named on its day: one of a colony and a yard.
QString subject(const EditContext& c, std::optional<ColonyId> colony, std::optional<YardId> yard, Day day) {
    if (colony.has_value() == yard.has_value()) refuse(Edits::tr("Expected either a colony or a yard."));
    return yard ? needYard(c, *yard).name : shownName(c, needColony(c, *colony), day);
}

/// Comb of a colony that has ended may still be given away.
void checkGiver(const EditContext& c, const Colony& from, const Transfer& t) {
    const bool live = t.what == TransferKind::Brood || t.what == TransferKind::Bees;
    if (live || t.day < from.since) needLife(c, from, t.day);
}

void checkResult(const EditContext& c, const Result& r) {
    const bool paper = r.verdict == Verdict::Release || r.verdict == Verdict::Order;
    if (paper && r.method != Method::Inspector)
        refuse(Edits::tr("Method: an order or a release comes from an inspector."));
    if (paper && r.paper.isEmpty()) refuse(Edits::tr("Paper: an order or a release needs the number of its paper."));
    if (r.yard && !paper) refuse(Edits::tr("Yard: only an order or a release names a whole yard."));
    if (!r.colony) return;
    const Colony colony = needColony(c, *r.colony);
    if (r.day < colony.since) needLife(c, colony, r.day);
}

Treatment trimmed(const Treatment& typed) {
    Treatment t = typed;
    for (QString Treatment::*text :
         {&Treatment::product, &Treatment::substance, &Treatment::batch, &Treatment::unit, &Treatment::method,
          &Treatment::supplier, &Treatment::supplierAddress, &Treatment::proof, &Treatment::prescriber,
          &Treatment::prescriberContact, &Treatment::disposedHow, &Treatment::by, &Treatment::reason})
        t.*text = (typed.*text).trimmed();
    return t;
}

} // namespace

ChangeSet logTransfer(const EditContext& c, const Transfer& typed) {
    constexpr int kMostCount = 1000;
    Transfer t = typed;
    t.id = TransferId{c.nextId(Table::Transfer)};
    t.note = typed.note.trimmed();
    if (t.from == t.to) refuse(Edits::tr("A transfer goes from one colony to another."));
    const Colony from = needColony(c, t.from);
    const Colony to = needColony(c, t.to);
    checkGiver(c, from, t);
    needLife(c, to, t.day);
    checkRange(t.count, 1, kMostCount, Edits::tr("Count"));
    return {Edits::tr("Noted that %1 went from %2 to %3 on %4")
                .arg(word(t.what), shownName(c, from, t.day), shownName(c, to, t.day), isoText(t.day)),
            {added(t)},
            {},
            {},
            {}};
}

ChangeSet logResult(const EditContext& c, const Result& typed) {
    Result r = typed;
    r.id = ResultId{c.nextId(Table::Result)};
    r.by = needed(typed.by, Edits::tr("By"));
    r.paper = typed.paper.trimmed();
    r.note = typed.note.trimmed();
    const QString of = subject(c, r.colony, r.yard, r.day);
    checkResult(c, r);
    return {Edits::tr("Noted %1 %2 (%3) of %4 on %5")
                .arg(word(r.disease), word(r.verdict), word(r.method), of, isoText(r.day)),
            {added(r)},
            {},
            {},
            {}};
}

ChangeSet logTreatment(const EditContext& c, const Treatment& typed) {
    Treatment t = trimmed(typed);
    t.id = TreatmentId{c.nextId(Table::Treatment)};
    t.product = needed(t.product, Edits::tr("Product"));
    t.substance = needed(t.substance, Edits::tr("Substance"));
    const QString of = subject(c, t.colony, t.yard, t.day);
    if (t.colony) needLife(c, needColony(c, *t.colony), t.day);
    checkQuantity(t.quantity, Edits::tr("Quantity"));
    checkQuantity(t.quantityBought, Edits::tr("Quantity bought"));
    checkQuantity(t.disposedQuantity, Edits::tr("Quantity disposed of"));
    checkRange(t.days, 0, kMostDays, Edits::tr("Days"));
    checkRange(t.withdrawalDays, 0, kMostDays, Edits::tr("Withdrawal days"));
    return {Edits::tr("Noted the treatment of %1 with %2 on %3").arg(of, t.product, isoText(t.day)),
            {added(t)},
            {},
            {},
            {}};
}

} // namespace core::edit
