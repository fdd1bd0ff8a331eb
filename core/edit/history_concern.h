#pragma once

#include "core/edit/history.h"
#include "core/edit/history_codec.h"
#include "core/store/database.h"

#include <map>
#include <set>
#include <vector>

namespace core::edit {

/// Whether a line of the history concerns one colony: a row before or after it is the colony's own or names it, itself
/// or through its visit. Of rows written as a range the tables are asked; a range that is gone counts.
class ColonyConcern {
public:
    ColonyConcern(const store::Database& db, ColonyId colony) : m_db(db), m_colony(colony) {}
    bool of(qint64 seq, const HistoryRecord& record) const;

private:
    bool names(Table table, qint64 id, const Row& row) const;
    bool range(const RowRange& range) const;

    const store::Database& m_db;
    ColonyId m_colony;
};

/// Likewise one yard: a row is the yard's own or names it, itself or through its stand, or it is of a colony whose hive
/// stood there on the row's day.
class YardConcern {
public:
    YardConcern(const store::Database& db, YardId yard);
    bool of(qint64 seq, const HistoryRecord& record) const;

private:
    struct Stay {
        QString since;
        QString until; ///< empty: stands there
    };
    bool names(const RowChange& change, const Row& row, qint64 seq, const HistoryRecord& record) const;
    bool stood(qint64 colony, const QString& day) const;
    bool range(const RowRange& range) const;

    const store::Database& m_db;
    YardId m_yard;
    std::set<qint64> m_stands;
    std::map<qint64, std::vector<Stay>> m_stays; ///< by colony
};

} // namespace core::edit
