#pragma once

#include "core/edit/history.h"
#include "core/edit/history_concern.h"
#include "core/store/history_rows.h"

#include <optional>

namespace core::edit {

/// Reads the lines that a filter asks for.
class HistoryReader {
public:
    HistoryReader(const store::Database& db, const HistoryFilter& filter);
    /// At most `most` lines older than `before`, after a look at no more than `look`.
    HistoryPage page(std::optional<qint64> before, int most, int look) const;

private:
    bool fits(const store::HistoryRow& line) const;

    const store::Database& m_db;
    QString m_text; ///< folded
    QString m_from; ///< as the store writes moments
    QString m_until;
    std::optional<ColonyConcern> m_colony;
    std::optional<YardConcern> m_yard;
};

/// As shown, with what a later line made of it.
HistoryLine lineNow(const store::Database& db, const store::HistoryRow& row);

} // namespace core::edit
