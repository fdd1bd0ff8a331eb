#pragma once

#include "core/edit/history_codec.h"
#include "core/store/remains.h"

#include <QStringList>

#include <array>
#include <map>
#include <set>
#include <vector>

namespace core::edit {

/// What the history of a damaged book, and a sound backup of it, say that its tables hold: line by line from the
/// backup's last on, or from the first. Packed lines carry a sum of their own, so one that can be unpacked is as it was
/// written.
class ToldRows {
public:
    /// `backup`: of the same book, or nullptr. Both must outlive this.
    ToldRows(const store::Remains& remains, const store::Database* backup);

    /// Whether the backup is the book as it was then: every line that both have is the same, and one is, or the id.
    bool backupAgrees() const { return m_backupAgrees; }

    struct Told {
        bool exists = false;
        std::optional<Row> row; ///< nullopt: written as one of a range, of which no rows are kept
        qint64 seq = 0;         ///< the line that says so
        bool byBackup = false;
        bool firm = false; ///< no line is missing that may say otherwise
    };
    Told of(Table table, qint64 id) const;
    /// Ids of rows that are told of, there or not.
    void addIds(Table table, std::set<qint64>& ids) const;

    bool whole() const { return m_missingFrom == 0; } ///< no line is missing
    const std::vector<qint64>& missing() const { return m_missing; }
    bool endMissing() const { return m_endMissing; } ///< how many lines there were cannot be known
    qint64 lastLine() const { return m_lastLine; }
    qint64 backupLast() const { return m_backupLast; } ///< the last line of the backup; 0: there is none
    /// The line, from the backup or the file; nullopt: it is missing, or its page is not whole.
    std::optional<store::HistoryRow> line(qint64 seq) const;

private:
    struct Range {
        RowRange rows;
        qint64 seq = 0;
        bool there = true;
        qint64 keptBy = 0; ///< brought back: the line that deleted them and keeps them, 0: none
        int keptAs = 0;    ///< their number among the ranges of that line
    };
    struct Undone {
        qint64 seq = 0;
        std::vector<RowRange> deleted;
    };
    struct Touched {
        std::optional<Row> row;
        qint64 seq = 0;
    };
    void compareLines();
    void findMissing();
    void take(const HistoryRecord& record, const store::HistoryRow& line);
    void takeRange(const Range& range);
    Range broughtBack(const RowRange& rows, const store::HistoryRow& line) const;
    std::optional<Row> keptRow(const Range& range, qint64 id) const;

    const store::Remains& m_remains;
    const store::Database* m_backup;
    bool m_backupAgrees = false;
    qint64 m_backupLast = 0;
    qint64 m_lastLine = 0;
    qint64 m_missingFrom = 0; ///< the greatest line that is missing; 0: none
    bool m_endMissing = false;
    std::vector<qint64> m_missing;
    std::array<std::map<qint64, Touched>, kTableCount> m_touched;
    std::array<std::vector<Range>, kTableCount> m_ranges;
    std::map<qint64, Undone> m_undone; ///< by what it was: the last line of each step, where that deletes ranges
    std::map<std::array<qint64, 3>, const store::Remains::Part*> m_parts; ///< line, range, number
    struct Unpacked {
        std::array<qint64, 3> part{};
        std::vector<Row> rows;
    };
    mutable Unpacked m_unpacked; ///< the part that was read last: rows are asked for one after the other
};

} // namespace core::edit
