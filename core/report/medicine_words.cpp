#include "core/report/medicine_words.h"

#include "core/rules/medicine_days.h"

#include <algorithm>
#include <map>
#include <set>

namespace core::report {

using rules::MedicineBook;
using rules::MedicineEntry;
using rules::MedicineField;
using rules::Withdrawal;

namespace {

QString numberText(const std::optional<double>& value) { return value ? QString::number(*value, 'g', 12) : QString(); }
QString numberText(const std::optional<int>& value) { return value ? QString::number(*value) : QString(); }
QString dayOrNothing(const std::optional<Day>& day) { return day ? isoText(*day) : QString(); }

constexpr MedicineColumn kMedicineColumns[] = {
    {"date", "First day", [](const Treatment& t) { return isoText(t.day); }},
    {"product", "Product", [](const Treatment& t) { return t.product; }},
    {"substance", "Substance", [](const Treatment& t) { return t.substance; }},
    {"antibiotic", "Antibiotic",
     [](const Treatment& t) { return t.antibiotic ? QStringLiteral("yes") : QStringLiteral("no"); }},
    {"batch", "Batch", [](const Treatment& t) { return t.batch; }},
    {"quantity", "Quantity", [](const Treatment& t) { return numberText(t.quantity); }},
    {"unit", "Unit", [](const Treatment& t) { return t.unit; }},
    {"method", "Method", [](const Treatment& t) { return t.method; }},
    {"supplier", "Supplier", [](const Treatment& t) { return t.supplier; }},
    {"supplier_address", "Supplier's address", [](const Treatment& t) { return t.supplierAddress; }},
    {"bought", "Bought", [](const Treatment& t) { return dayOrNothing(t.bought); }},
    {"quantity_bought", "Quantity bought", [](const Treatment& t) { return numberText(t.quantityBought); }},
    {"proof", "Proof of purchase", [](const Treatment& t) { return t.proof; }},
    {"prescriber", "Prescribed by", [](const Treatment& t) { return t.prescriber; }},
    {"prescriber_contact", "Prescriber's contact", [](const Treatment& t) { return t.prescriberContact; }},
    {"days", "Duration, days", [](const Treatment& t) { return numberText(t.days); }},
    {"withdrawal_days", "Withdrawal, days", [](const Treatment& t) { return numberText(t.withdrawalDays); }},
    {"disposed", "Disposed of on", [](const Treatment& t) { return dayOrNothing(t.disposed); }},
    {"disposed_quantity", "Quantity disposed of", [](const Treatment& t) { return numberText(t.disposedQuantity); }},
    {"disposed_how", "How and where disposed of", [](const Treatment& t) { return t.disposedHow; }},
    {"by", "Applied by", [](const Treatment& t) { return t.by; }},
    {"reason", "Reason", [](const Treatment& t) { return t.reason; }},
};

QString daysText(int days) { return days == 1 ? QStringLiteral("1 day") : QStringLiteral("%1 days").arg(days); }

} // namespace

std::span<const MedicineColumn> medicineColumns() { return kMedicineColumns; }

QString fieldName(MedicineField field) {
    switch (field) {
    case MedicineField::FirstDay:
        return QStringLiteral("first day");
    case MedicineField::Days:
        return QStringLiteral("duration");
    case MedicineField::Product:
        return QStringLiteral("product");
    case MedicineField::Batch:
        return QStringLiteral("batch");
    case MedicineField::Bought:
        return QStringLiteral("date of purchase");
    case MedicineField::QuantityBought:
        return QStringLiteral("quantity bought");
    case MedicineField::Supplier:
        return QStringLiteral("supplier");
    case MedicineField::SupplierAddress:
        return QStringLiteral("supplier's address");
    case MedicineField::Proof:
        return QStringLiteral("proof of purchase");
    case MedicineField::Colonies:
        return QStringLiteral("colonies");
    case MedicineField::Places:
        return QStringLiteral("where they stood");
    case MedicineField::Quantity:
        return QStringLiteral("quantity");
    case MedicineField::Unit:
        return QStringLiteral("unit of the quantity");
    case MedicineField::Method:
        return QStringLiteral("method");
    case MedicineField::By:
        return QStringLiteral("who applied it");
    case MedicineField::Prescriber:
        return QStringLiteral("prescribing vet");
    case MedicineField::PrescriberContact:
        return QStringLiteral("vet's contact");
    case MedicineField::WithdrawalDays:
        return QStringLiteral("withdrawal days");
    case MedicineField::Disposed:
        return QStringLiteral("date of disposal");
    case MedicineField::DisposedQuantity:
        return QStringLiteral("quantity disposed of");
    case MedicineField::DisposedHow:
        return QStringLiteral("how and where disposed of");
    case MedicineField::KeeperName:
        return QStringLiteral("keeper's name");
    case MedicineField::KeeperAddress:
        break;
    }
    return QStringLiteral("keeper's address");
}

QString recordedText(const QString& text) { return text.isEmpty() ? QStringLiteral("not recorded") : text; }

QString durationText(const MedicineEntry& entry) {
    const Treatment& t = entry.row;
    if (!t.days) return QStringLiteral("%1, duration not recorded").arg(isoText(t.day));
    return QStringLiteral("%1 to %2 (%3)").arg(isoText(t.day), isoText(rules::treatmentLastDay(t)), daysText(*t.days));
}

QString withdrawalText(const MedicineEntry& entry) {
    if (entry.withdrawal == Withdrawal::NotRecorded) return QStringLiteral("withdrawal not recorded: ask the label");
    const QString days = daysText(*entry.row.withdrawalDays);
    switch (entry.withdrawal) {
    case Withdrawal::LastDayUnknown:
        return QStringLiteral("%1 from the last day, which is not recorded: ask the label").arg(days);
    case Withdrawal::StillIn:
        return QStringLiteral("%1 from the day it comes out, which is not recorded yet").arg(days);
    case Withdrawal::Counted:
    case Withdrawal::NotRecorded:
        break;
    }
    return QStringLiteral("%1: no honey before %2").arg(days, isoText(*entry.honeyFrom));
}

QString missingText(const std::vector<rules::MedicineMissing>& missing) {
    QStringList parts;
    for (const rules::MedicineMissing& m : missing) {
        QStringList places;
        for (const rules::MedicineRule rule : m.rules)
            if (const QString place = QString::fromLatin1(rules::placeOf(rule)); !places.contains(place))
                places << place;
        parts << QStringLiteral("%1 (%2)").arg(fieldName(m.field), places.join(QStringLiteral(", ")));
    }
    return parts.join(QStringLiteral(", "));
}

QStringList placesText(const MedicineBook& book, const MedicineEntry& entry) {
    // Those that stood in one yard over the same days are said together.
    using Key = std::tuple<QString, Day, std::optional<Day>>;
    std::map<Key, QStringList> together;
    std::vector<Key> order;
    const Day last = entry.lastDay + entry.row.withdrawalDays.value_or(0);
    for (const rules::MedicinePlace& place : entry.places) {
        const Stand* stand = book.stand(place.stand);
        const auto until = place.until && *place.until <= last ? place.until : std::nullopt;
        const Key key{stand ? book.yardName(stand->yard) : QString(), place.since, until};
        const auto [at, fresh] = together.try_emplace(key);
        if (fresh) order.push_back(key);
        const QString name = book.name(place.colony, place.since);
        at->second << (stand && stand->name != name ? QStringLiteral("%1 (stand %2)").arg(name, stand->name) : name);
    }
    QStringList lines;
    for (const Key& key : order) {
        const auto& [yard, since, until] = key;
        const QString from = since > entry.row.day ? QStringLiteral(" from %1").arg(isoText(since)) : QString();
        const QString to = until ? QStringLiteral(" until %1").arg(isoText(*until)) : QString();
        lines << QStringLiteral("%1%2%3: %4").arg(yard, from, to, together[key].join(QStringLiteral(", ")));
    }
    return lines;
}

QString outText(const MedicineBook& book, const MedicineEntry& entry) {
    std::map<Day, QStringList> byDay;
    for (const StripsOut& out : entry.out) byDay[out.day] << book.name(out.colony, entry.row.day);
    QStringList parts;
    for (const auto& [day, names] : byDay)
        parts << QStringLiteral("%1 out of %2").arg(isoText(day), names.join(QStringLiteral(", ")));
    return parts.join(QStringLiteral("; "));
}

std::vector<MedicineStrike> strikesOf(const MedicineBook& book, const MedicineChange& change) {
    std::vector<MedicineStrike> strikes;
    if (!change.before || !change.after) return strikes;
    if (change.before->colony != change.after->colony || change.before->yard != change.after->yard)
        strikes.push_back(
            {QStringLiteral("colony or yard"), book.subject(*change.before), book.subject(*change.after)});
    for (const MedicineColumn& column : kMedicineColumns) {
        const QString from = column.text(*change.before);
        const QString to = column.text(*change.after);
        if (from != to) strikes.push_back({QString::fromLatin1(column.shown).toLower(), from, to});
    }
    return strikes;
}

QString signedText(const MedicineChange& change) {
    const QString by = change.by.isEmpty() ? QStringLiteral("name not recorded") : change.by;
    const QString reason = change.reason.isEmpty() ? QStringLiteral("reason not recorded") : change.reason;
    return QStringLiteral("%1, %2: %3").arg(change.at.date().toString(Qt::ISODate), by, reason);
}

QString changeText(const MedicineBook& book, const MedicineChange& change) {
    if (!change.after) return QStringLiteral("taken back %1").arg(signedText(change));
    if (!change.before) return QStringLiteral("put back %1").arg(signedText(change));
    QStringList parts;
    bool filled = true;
    for (const MedicineStrike& s : strikesOf(book, change)) {
        filled = filled && s.from.isEmpty();
        parts << (s.from.isEmpty() ? QStringLiteral("%1: %2 added").arg(s.field, s.to)
                                   : QStringLiteral("%1: %2 → %3").arg(s.field, s.from, recordedText(s.to)));
    }
    const QString by = change.by.isEmpty() ? QStringLiteral("name not recorded") : change.by;
    const QString who = filled && change.reason.isEmpty()
                            ? QStringLiteral("%1, %2").arg(change.at.date().toString(Qt::ISODate), by)
                            : signedText(change);
    return QStringLiteral("%1 (%2)").arg(parts.join(QStringLiteral("; ")), who);
}

} // namespace core::report
