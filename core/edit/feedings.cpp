#include "core/edit/feedings.h"

#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"
#include "core/rules/feed_given.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kMostMillilitres = 100'000;
constexpr int kMostDecagrams = 10'000;

/// "10 l of syrup 3:2".
QString amountOf(const Feeding& f) {
    const QString amount = f.volume ? Edits::tr("%1 l").arg(decimalText(f.volume->value, 3))
                                    : Edits::tr("%1 kg").arg(kilogramsText(f.weight.value_or(Decagrams{})));
    const QString what = f.what == FeedKind::Other ? Edits::tr("other feed") : word(f.what);
    const QString feed = Edits::tr("%1 of %2").arg(amount, what);
    return f.mix.isEmpty() ? feed : feed + u' ' + f.mix;
}

QString fedName(const EditContext& c, const Feeding& f) { return shownName(c, needColony(c, f.colony), f.day); }

void checkAmount(const Feeding& f) {
    if (f.volume.has_value() == f.weight.has_value())
        refuse(f.volume ? Edits::tr("Amount: expected a volume or a weight, found both.")
                        : Edits::tr("Amount: expected a volume or a weight, found nothing."));
    if (f.volume && (f.volume->value < 1 || f.volume->value > kMostMillilitres))
        refuse(Edits::tr("Amount: %1 l is not from 0.001 to 100.").arg(decimalText(f.volume->value, 3)));
    if (f.weight && (f.weight->value < 1 || f.weight->value > kMostDecagrams))
        refuse(Edits::tr("Amount: %1 kg is not from 0.01 to 100.").arg(kilogramsText(*f.weight)));
}

Feeding checkedFeeding(const EditContext& c, const Feeding& typed) {
    Feeding f = typed;
    f.mix = typed.mix.trimmed();
    f.by = typed.by.trimmed();
    f.note = typed.note.trimmed();
    if (!f.mix.isEmpty()) {
        if (f.what != FeedKind::Syrup) refuse(Edits::tr("Mix: only syrup is mixed of sugar and water."));
        const auto mix = rules::calc::mixOf(f.mix);
        if (!mix) refuse(Edits::tr("Mix: “%1” is not sugar to water by weight; expected 3:2, say.").arg(f.mix));
        f.mix = rules::mixText(*mix);
    }
    checkAmount(f);
    needLife(c, needColony(c, f.colony), f.day);
    return f;
}

Feeding needFeeding(const EditContext& c, FeedingId id) {
    auto feeding = c.find<Feeding>(id.value);
    if (!feeding) refuse(Edits::tr("That feeding is no longer in the book."));
    return *std::move(feeding);
}

QString nameOf(const EditContext& c, const Feeding& f) {
    return Edits::tr("the feeding of %1 on %2 (%3)").arg(fedName(c, f), isoText(f.day), amountOf(f));
}

/// All fed alike: said once.
bool alike(const std::vector<Feeding>& all) {
    return std::all_of(all.begin(), all.end(), [&](const Feeding& f) {
        return f.day == all.front().day && amountOf(f) == amountOf(all.front());
    });
}

} // namespace

ChangeSet logFeeding(const EditContext& c, const Feeding& typed) { return logFeedings(c, {typed}); }

ChangeSet logFeedings(const EditContext& c, const std::vector<Feeding>& typed) {
    if (typed.empty()) return {};
    ChangeSet change;
    std::vector<Feeding> fed;
    qint64 id = c.nextId(Table::Feeding);
    for (const Feeding& each : typed) {
        Feeding f = checkedFeeding(c, each);
        f.id = FeedingId{id++};
        change.rows.push_back(added(f));
        fed.push_back(std::move(f));
    }
    const Feeding& first = fed.front();
    if (fed.size() == 1)
        change.text = Edits::tr("Fed %1 %2 on %3").arg(fedName(c, first), amountOf(first), isoText(first.day));
    else if (alike(fed))
        change.text = Edits::tr("Fed %1 colonies %2 each on %3")
                          .arg(QString::number(fed.size()), amountOf(first), isoText(first.day));
    else
        change.text = Edits::tr("Noted %1 feedings").arg(fed.size());
    return change;
}

ChangeSet changeFeeding(const EditContext& c, const Feeding& typed) {
    const Feeding old = needFeeding(c, typed.id);
    const Feeding now = checkedFeeding(c, typed);
    if (old == now) return {};
    return {Edits::tr("Changed %1").arg(nameOf(c, old)), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackFeeding(const EditContext& c, FeedingId id) {
    const Feeding old = needFeeding(c, id);
    return {Edits::tr("Took back %1").arg(nameOf(c, old)), {deleted(old)}, {}, {}, {}};
}

} // namespace core::edit
