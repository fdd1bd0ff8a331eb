#pragma once

#include "core/report/page_origin.h"
#include "core/rules/medicine_book.h"

#include <QString>
#include <QStringList>

#include <vector>

// The register that an inspector takes: as pages, and as rows of a file.

namespace core::report {

/// What of the book is on it.
struct MedicineAbout {
    std::vector<rules::MedicineEntry> entries;
    std::optional<Day> from; ///< not set: from the first entry
    std::optional<Day> until;
    QString yard; ///< empty: all
};

/// "all yards, from the first entry to 2026-09-20"
QString medicinePeriod(const rules::MedicineBook& book, const MedicineAbout& about);

/// The keeper's head on each page; an entry's first lines are never split.
std::vector<Page> medicinePages(const rules::MedicineBook& book, const MedicineAbout& about, const PageOrigin& origin,
                                const TextMeasure& measure);

/// Of the register's file: an entry a row, struck ones too, its corrections in one cell.
QStringList medicineFileColumns();
std::vector<QStringList> medicineFileRows(const rules::MedicineBook& book, const MedicineAbout& about);

} // namespace core::report
