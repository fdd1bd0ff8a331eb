#pragma once

#include "core/base/progress.h"
#include "core/edit/salvage.h"
#include "core/edit/told_rows.h"
#include "core/store/row_store.h"

#include <optional>
#include <set>

namespace core::edit {

/// What one row becomes. Against: it was there once and speaks against a hive; whether it still stood is lost.
enum class Fate { Read, FromHistory, FromBackup, Against, Gone, Lost };

/// Which rows are taken, by what the file, the history and the backup say of each.
class Choosing {
public:
    Choosing(const store::Remains& remains, const ToldRows& told);
    /// `row`: as it is taken; nullopt where it is not.
    Fate of(Table table, qint64 id, std::optional<Row>& row) const;

private:
    bool speaksAgainst(Table table, qint64 id, const Row& row) const;

    std::set<qint64> m_troubled; ///< visits with a sign of foulbrood, or a doubt of it
    const store::Remains& m_remains;
    const ToldRows& m_told;
};

/// The tables' rows, each as it is chosen, into a book of their own.
class Keeping {
public:
    Keeping(const store::Remains& remains, const ToldRows& told, const store::Database& to, const Progress& progress);

    QStringList leftOut; ///< what was read and is not of the book

    /// `lost`: ids of those that were there and are not taken. Throws Stopped.
    SalvagedTable keep(Table table, std::set<qint64>& lost);

private:
    bool inserted(Table table, qint64 id, const Row& row);

    const store::Remains& m_remains;
    const ToldRows& m_told;
    Choosing m_choosing;
    const store::Database& m_to;
    std::optional<store::BulkInserter> m_inserter;
    Progress m_progress;
};

} // namespace core::edit
