#pragma once

#include "core/rules/hold.h"
#include "tests/support/csv_tables.h"

#include <set>
#include <string>

namespace tests::rules {

using Kinds = std::set<std::string>;

/// A small book written row by row. Yards Home and Hill are northern, South is southern. Colonies begin on 2024-05-01.
class HoldBook {
public:
    HoldBook();
    HoldBook& colony(const char* label, const char* yard = "Home", const char* since = "2024-05-01");
    HoldBook& ended(const char* label, const char* yard, const QString& ended, const char* end = "destroyed");
    HoldBook& carried(const char* label, const QString& date, const char* yard);
    /// `frames` < 0: not recorded.
    HoldBook& check(const char* colony, const QString& date, int checked = 6, int frames = 6, const char* signs = "");
    HoldBook& sign(const char* colony, const QString& date, const char* sign = "afb");
    HoldBook& gift(const char* from, const char* to, const QString& date, const char* what = "frames");
    HoldBook& lineage(const char* colony, const char* into, const QString& date, const char* how);
    HoldBook& result(const char* colony, const QString& date, const char* result, const char* method = "laboratory",
                     const char* disease = "afb");
    HoldBook& ofYard(const char* yard, const QString& date, const char* result, const char* disease = "afb");
    HoldBook& antibiotic(const char* colony, const QString& date);
    HoldBook& antibioticInYard(const char* yard, const QString& date);
    HoldBook& set(const char* name, const char* value);
    HoldBook& add(const char* kind, support::CsvRow row);

    core::Snapshot on(const QString& date) const;
    Kinds kinds(const char* colony, const QString& date) const;
    bool held(const char* colony, const char* kind, const QString& date) const;
    /// The hold itself; a test failure and an empty one where there is none.
    core::rules::Hold hold(const char* colony, const char* kind, const QString& date) const;

private:
    support::CsvTables m_tables;
};

/// `date` moved by days: moved("2026-09-01", -42).
QString moved(const char* date, int days);

} // namespace tests::rules
