#include "core/rules/medicine_missing.h"

#include <algorithm>
#include <iterator>

namespace core::rules {

namespace {

using F = MedicineField;
using R = MedicineRule;

constexpr MedicineNeed kNeeds[] = {
    // nine items: first day, product, quantity, supplier with address, proof of purchase, animals, prescribing vet
    // where
    // there is one, withdrawal even if zero, duration
    {R::Eu, F::FirstDay},
    {R::Eu, F::Product},
    {R::Eu, F::Quantity},
    {R::Eu, F::Unit},
    {R::Eu, F::Supplier},
    {R::Eu, F::SupplierAddress},
    {R::Eu, F::Proof},
    {R::Eu, F::Colonies},
    {R::Eu, F::Prescriber},
    {R::Eu, F::PrescriberContact},
    {R::Eu, F::WithdrawalDays},
    {R::Eu, F::Days},
    {R::UkVet, F::Prescriber},
    {R::UkVet, F::Product},
    {R::UkVet, F::Batch},
    {R::UkVet, F::FirstDay},
    {R::UkVet, F::Quantity},
    {R::UkVet, F::Colonies},
    {R::UkVet, F::WithdrawalDays},
    {R::UkBought, F::Product},
    {R::UkBought, F::Batch},
    {R::UkBought, F::Bought},
    {R::UkBought, F::QuantityBought},
    {R::UkBought, F::Supplier},
    {R::UkBought, F::SupplierAddress},
    {R::UkGiven, F::Product},
    {R::UkGiven, F::FirstDay},
    {R::UkGiven, F::Quantity},
    {R::UkGiven, F::WithdrawalDays},
    {R::UkGiven, F::Colonies},
    {R::UkDisposed, F::Disposed},
    {R::UkDisposed, F::DisposedQuantity},
    {R::UkDisposed, F::DisposedHow},
    {R::Germany, F::KeeperName},
    {R::Germany, F::KeeperAddress},
    {R::Germany, F::Colonies},
    {R::Germany, F::Places},
    {R::Germany, F::Product},
    {R::Germany, F::Proof},
    {R::Germany, F::FirstDay},
    {R::Germany, F::Method},
    {R::Germany, F::Quantity},
    {R::Germany, F::WithdrawalDays},
    {R::Germany, F::By},
};

bool vetKnown(const Treatment& t) { return !t.prescriber.isEmpty() || !t.prescriberContact.isEmpty(); }

bool ofDisposal(const Treatment& t) { return t.disposed || t.disposedQuantity || !t.disposedHow.isEmpty(); }

bool recorded(const MedicineBook& book, const MedicineEntry& e, F field) {
    const Treatment& t = e.row;
    switch (field) {
    case F::FirstDay:
    case F::Product:
        return true;
    case F::Days:
        return t.days.has_value();
    case F::Batch:
        return !t.batch.isEmpty();
    case F::Bought:
        return t.bought.has_value();
    case F::QuantityBought:
        return t.quantityBought.has_value();
    case F::Supplier:
        return !t.supplier.isEmpty();
    case F::SupplierAddress:
        return !t.supplierAddress.isEmpty();
    case F::Proof:
        return !t.proof.isEmpty();
    case F::Colonies:
        return !e.colonies.empty();
    case F::Places:
        return !e.places.empty();
    case F::Quantity:
        return t.quantity.has_value();
    case F::Unit:
        return !t.unit.isEmpty() || !t.quantity;
    case F::Method:
        return !t.method.isEmpty();
    case F::By:
        return !t.by.isEmpty();
    case F::Prescriber:
        return !t.prescriber.isEmpty();
    case F::PrescriberContact:
        return !t.prescriberContact.isEmpty();
    case F::WithdrawalDays:
        return t.withdrawalDays.has_value();
    case F::Disposed:
        return t.disposed.has_value();
    case F::DisposedQuantity:
        return t.disposedQuantity.has_value();
    case F::DisposedHow:
        return !t.disposedHow.isEmpty();
    case F::KeeperName:
        return book.rows().keeper.has_value();
    case F::KeeperAddress:
        return book.rows().keeper && !book.rows().keeper->address.isEmpty();
    }
    return true;
}

/// Whether the rule speaks of this entry, and of this field of it.
bool applies(const MedicineNeed& need, const Treatment& t) {
    if (need.rule == R::UkVet ||
        (need.rule == R::Eu && (need.field == F::Prescriber || need.field == F::PrescriberContact)))
        return vetKnown(t);
    if (need.rule == R::UkDisposed) return ofDisposal(t);
    if (need.rule == R::Germany && need.field == F::Proof) return !t.bought;
    return true;
}

} // namespace

const char* placeOf(MedicineRule rule) { return rule == R::Eu ? "EU" : rule == R::Germany ? "Germany" : "UK"; }

const char* sourceOf(MedicineRule rule) {
    switch (rule) {
    case R::Eu:
        return "Regulation (EU) 2019/6 article 108(2), list at bijenhouders-eindhoven.nl";
    case R::UkVet:
        return "Veterinary Medicines Regulations 2013, reg. 18, legislation.gov.uk/uksi/2013/2033/part/3";
    case R::UkBought:
        return "Veterinary Medicines Regulations 2013, reg. 19(1), legislation.gov.uk/uksi/2013/2033/part/3";
    case R::UkGiven:
        return "Veterinary Medicines Regulations 2013, reg. 19(2), legislation.gov.uk/uksi/2013/2033/part/3";
    case R::UkDisposed:
        return "Veterinary Medicines Regulations 2013, reg. 19(3), as told at "
               "cheshire-bka.co.uk/pests-and-disease/medicine-record";
    case R::Germany:
        break;
    }
    return "Bestandsbuch, as told at "
           "grenzlandbienen.de/was-bedeutet-die-neue-tierarzneimittelverordnung-fuer-uns-imker";
}

std::span<const MedicineNeed> medicineNeeds() { return kNeeds; }

std::vector<MedicineMissing> medicineMissing(const MedicineBook& book, const MedicineEntry& entry) {
    std::vector<MedicineMissing> missing;
    for (const MedicineNeed& need : kNeeds) {
        if (!applies(need, entry.row) || recorded(book, entry, need.field)) continue;
        const auto at = std::find_if(missing.begin(), missing.end(),
                                     [&](const MedicineMissing& m) { return m.field == need.field; });
        if (at == missing.end())
            missing.push_back({need.field, {need.rule}});
        else
            at->rules.push_back(need.rule);
    }
    std::sort(missing.begin(), missing.end(), [](const auto& a, const auto& b) { return a.field < b.field; });
    return missing;
}

} // namespace core::rules
