#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"
#include "core/edit/strips_out.h"
#include "core/edit/samples.h"

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
    // Comb or a sample of an earlier colony of the label may still be answered for; nothing is older than the label.
    if (r.day < c.coloniesLabelled(colony.label).front().since) needLife(c, colony, r.day);
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

/// The record of this id; refuses where there is none.
template <class T, class Id> T needRecord(const EditContext& c, Id id) {
    auto record = c.find<T>(id.value);
    if (!record) refuse(Edits::tr("That record is no longer in the book."));
    return *std::move(record);
}

/// The change of one record; empty where nothing differs.
template <class T> ChangeSet changeOf(const T& old, const T& now, const QString& text) {
    return old == now ? ChangeSet{} : ChangeSet{text, {changed(old, now)}, {}, {}, {}};
}

// What is typed of a record, new or not; its id is set.

Transfer checkedTransfer(const EditContext& c, const Transfer& typed) {
    constexpr int kMostCount = 1000;
    Transfer t = typed;
    t.note = typed.note.trimmed();
    if (t.from == t.to) refuse(Edits::tr("A transfer goes from one colony to another."));
    checkGiver(c, needColony(c, t.from), t);
    needLife(c, needColony(c, t.to), t.day);
    checkRange(t.count, 1, kMostCount, Edits::tr("Count"));
    return t;
}

Result checkedResult(const EditContext& c, const Result& typed) {
    Result r = typed;
    r.by = needed(typed.by, Edits::tr("By"));
    r.paper = typed.paper.trimmed();
    r.note = typed.note.trimmed();
    subject(c, r.colony, r.yard, r.day);
    checkResult(c, r);
    return r;
}

Treatment checkedTreatment(const EditContext& c, const Treatment& typed) {
    Treatment t = trimmed(typed);
    t.product = needed(t.product, Edits::tr("Product"));
    t.substance = needed(t.substance, Edits::tr("Substance"));
    subject(c, t.colony, t.yard, t.day);
    if (t.colony) needLife(c, needColony(c, *t.colony), t.day);
    checkQuantity(t.quantity, Edits::tr("Quantity"));
    checkQuantity(t.quantityBought, Edits::tr("Quantity bought"));
    checkQuantity(t.disposedQuantity, Edits::tr("Quantity disposed of"));
    checkRange(t.days, 0, kMostDays, Edits::tr("Days"));
    checkRange(t.withdrawalDays, 0, kMostDays, Edits::tr("Withdrawal days"));
    return t;
}

// The records as the sentences of the history name them.

QString nameOf(const EditContext& c, const Transfer& t) {
    return Edits::tr("%1 from %2 to %3 on %4")
        .arg(word(t.what), shownName(c, needColony(c, t.from), t.day), shownName(c, needColony(c, t.to), t.day),
             isoText(t.day));
}

QString nameOf(const EditContext& c, const Result& r) {
    return Edits::tr("%1 %2 (%3) of %4 on %5")
        .arg(word(r.disease), word(r.verdict), word(r.method), subject(c, r.colony, r.yard, r.day), isoText(r.day));
}

QString nameOf(const EditContext& c, const Treatment& t) {
    return Edits::tr("the treatment of %1 with %2 on %3")
        .arg(subject(c, t.colony, t.yard, t.day), t.product, isoText(t.day));
}

} // namespace

ChangeSet logTransfer(const EditContext& c, const Transfer& typed) {
    Transfer t = checkedTransfer(c, typed);
    t.id = TransferId{c.nextId(Table::Transfer)};
    return {Edits::tr("Noted that %1 went from %2 to %3 on %4")
                .arg(word(t.what), shownName(c, needColony(c, t.from), t.day), shownName(c, needColony(c, t.to), t.day),
                     isoText(t.day)),
            {added(t)},
            {},
            {},
            {}};
}

ChangeSet logResult(const EditContext& c, const Result& typed) {
    Result r = checkedResult(c, typed);
    r.id = ResultId{c.nextId(Table::Result)};
    ChangeSet change{Edits::tr("Noted %1").arg(nameOf(c, r)), {added(r)}, {}, {}, {}};
    answerAwaited(c, r, change);
    return change;
}

ChangeSet logTreatment(const EditContext& c, const Treatment& typed) {
    Treatment t = checkedTreatment(c, typed);
    t.id = TreatmentId{c.nextId(Table::Treatment)};
    return {Edits::tr("Noted %1").arg(nameOf(c, t)), {added(t)}, {}, {}, {}};
}

ChangeSet changeTransfer(const EditContext& c, const Transfer& typed) {
    const auto old = needRecord<Transfer>(c, typed.id);
    return changeOf(old, checkedTransfer(c, typed), Edits::tr("Changed the transfer of %1").arg(nameOf(c, old)));
}

ChangeSet changeResult(const EditContext& c, const Result& typed) {
    const auto old = needRecord<Result>(c, typed.id);
    const Result now = checkedResult(c, typed);
    ChangeSet change = changeOf(old, now, Edits::tr("Changed %1").arg(nameOf(c, old)));
    followAnswer(c, old, now, change);
    return change;
}

ChangeSet changeTreatment(const EditContext& c, const Treatment& typed) {
    const auto old = needRecord<Treatment>(c, typed.id);
    const Treatment now = checkedTreatment(c, typed);
    needStripsFit(c, typed.id, now);
    return changeOf(old, now, Edits::tr("Changed %1").arg(nameOf(c, old)));
}

ChangeSet takeBackTransfer(const EditContext& c, TransferId id) {
    const auto old = needRecord<Transfer>(c, id);
    return {Edits::tr("Took back the transfer of %1").arg(nameOf(c, old)), {deleted(old)}, {}, {}, {}};
}

ChangeSet takeBackResult(const EditContext& c, ResultId id) {
    const auto old = needRecord<Result>(c, id);
    ChangeSet change{Edits::tr("Took back %1").arg(nameOf(c, old)), {deleted(old)}, {}, {}, {}};
    followAnswer(c, old, std::nullopt, change);
    return change;
}

ChangeSet takeBackTreatment(const EditContext& c, TreatmentId id) {
    const auto old = needRecord<Treatment>(c, id);
    needStripsFit(c, id, std::nullopt);
    return {Edits::tr("Took back %1").arg(nameOf(c, old)), {deleted(old)}, {}, {}, {}};
}

} // namespace core::edit
