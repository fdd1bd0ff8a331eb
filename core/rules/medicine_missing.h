#pragma once

#include "core/rules/medicine_book.h"

#include <span>
#include <vector>

// What the records rules of some places ask of an entry of the medicine book, as examples. Local law decides.

namespace core::rules {

enum class MedicineField {
    FirstDay,
    Days,
    Product,
    Batch,
    Bought,
    QuantityBought,
    Supplier,
    SupplierAddress,
    Proof,
    Colonies,
    Places,
    Quantity,
    Unit,
    Method,
    By,
    Prescriber,
    PrescriberContact,
    WithdrawalDays,
    Disposed,
    DisposedQuantity,
    DisposedHow,
    KeeperName,
    KeeperAddress
};

enum class MedicineRule {
    Eu,         ///< Regulation (EU) 2019/6 article 108(2)
    UkVet,      ///< Veterinary Medicines Regulations 2013, regulation 18: given by a vet
    UkBought,   ///< the same, regulation 19(1)
    UkGiven,    ///< regulation 19(2)
    UkDisposed, ///< regulation 19(3)
    Germany     ///< the German Bestandsbuch
};

/// "EU", "UK", "Germany".
const char* placeOf(MedicineRule rule);
/// The law itself, and where its list was read.
const char* sourceOf(MedicineRule rule);

/// A rule asks for a field.
struct MedicineNeed {
    MedicineRule rule;
    MedicineField field;
};
/// In the order of the rules; all of them, also those that an entry meets by being there (its day, its product).
std::span<const MedicineNeed> medicineNeeds();

struct MedicineMissing {
    MedicineField field;
    std::vector<MedicineRule> rules; ///< that ask for it
};

/// What is not recorded of the entry and asked for; by field. A vet's particulars are asked for where there is one, a
/// disposal's where there was one; in Germany the document's number or the day of purchase will do.
std::vector<MedicineMissing> medicineMissing(const MedicineBook& book, const MedicineEntry& entry);

} // namespace core::rules
