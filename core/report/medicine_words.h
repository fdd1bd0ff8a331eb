#pragma once

#include "core/rules/medicine_missing.h"

#include <QString>
#include <QStringList>

#include <span>
#include <vector>

// The entries of the medicine book in words: the same on the page, on paper and in the file.

namespace core::report {

/// A column of a treatment: its name in files and on paper, and what stands in it. Empty: not recorded.
struct MedicineColumn {
    const char* file;
    const char* shown;
    QString (*text)(const Treatment& t);
};
std::span<const MedicineColumn> medicineColumns();

/// "date of purchase"
QString fieldName(rules::MedicineField field);

/// "not recorded" for nothing.
QString recordedText(const QString& text);

/// "2026-08-01 to 2026-09-12 (42 days)"
QString durationText(const rules::MedicineEntry& entry);
/// "0 days: no honey before 2026-09-12"; "withdrawal not recorded: ask the label"
QString withdrawalText(const rules::MedicineEntry& entry);
/// "batch (UK), proof of purchase (EU, Germany)"; empty: nothing is missing by these rules.
QString missingText(const std::vector<rules::MedicineMissing>& missing);
/// "North: 1 to 12 (12 colonies)" for each yard in which the colonies stood, with the days where they differ.
QStringList placesText(const rules::MedicineBook& book, const rules::MedicineEntry& entry);
/// "5 on 2026-09-14, 6 on 2026-09-15"
QString outText(const rules::MedicineBook& book, const rules::MedicineEntry& entry);

/// One field of one correction. Empty: there was nothing, or is nothing any more.
struct MedicineStrike {
    QString field;
    QString from;
    QString to;
};
/// Of a line that took the entry back or put it back: none.
std::vector<MedicineStrike> strikesOf(const rules::MedicineBook& book, const MedicineChange& change);
/// "2026-09-20, Ana: wrong product noted"; "2026-09-20, name not recorded, reason not recorded"
QString signedText(const MedicineChange& change);
/// "taken back 2026-09-20, Ana: given in the other yard"; of a field "quantity 2 → 3 (2026-09-20, Ana: typed wrong)"
QString changeText(const rules::MedicineBook& book, const MedicineChange& change);

} // namespace core::report
