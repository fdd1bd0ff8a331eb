#pragma once

#include "core/base/damaged.h"
#include "core/base/error.h"
#include "core/model/snapshot.h"
#include "core/store/snapshot_reader.h"

#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

// The parts of readSnapshot(), in the order in which they run.

namespace core::store {

/// Where the row of an id went; ids are nearly dense.
class IdIndex {
public:
    void set(qint64 id, qint32 position) {
        if (id < 0 || id >= kDense) {
            m_sparse[id] = position;
            return;
        }
        if (static_cast<size_t>(id) >= m_dense.size()) m_dense.resize(static_cast<size_t>(id) + 1, -1);
        m_dense[static_cast<size_t>(id)] = position;
    }
    /// -1: no row of this id is in force.
    qint32 at(qint64 id) const {
        if (id >= 0 && static_cast<size_t>(id) < m_dense.size()) return m_dense[static_cast<size_t>(id)];
        const auto found = m_sparse.find(id);
        return found == m_sparse.end() ? -1 : found->second;
    }

private:
    static constexpr qint64 kDense = 4'000'000;
    std::vector<qint32> m_dense;
    std::unordered_map<qint64, qint32> m_sparse;
};

/// A record in force is about what is not there: what a hold rests on must not be passed over in silence.
inline Damaged brokenLink() {
    return Damaged(
        QStringLiteral("The book is damaged: a record in it is about a hive, stand or yard that is not there."));
}

/// Position of what such a record names; else throws that.
inline qint32 neededAt(const IdIndex& index, qint64 id) {
    if (const qint32 at = index.at(id); at >= 0) return at;
    throw brokenLink();
}

/// All visits with signs, by visit id.
class VisitSigns {
public:
    void add(qint64 visit, Sign sign); ///< visits in rising order
    Signs of(qint64 visit) const;

private:
    std::vector<std::pair<qint64, Signs>> m_signs;
};

struct SnapshotBuild {
    const Database& db;
    Snapshot s;
    IdIndex colonyAt;
    IdIndex yardAt;
    VisitSigns signs;
    std::optional<YardId> only = {}; ///< colonies of that yard on the day, and who is kin to them
};

/// The enum whose word the cell holds; Error(Book) for any other.
template <class E> E enumAt(const Statement& row, int column) {
    const std::string_view text = row.bytes(column);
    const auto words = wordsOf<E>();
    for (size_t i = 0; i < words.size(); ++i)
        if (text == words[i]) return static_cast<E>(i);
    throw Damaged(QStringLiteral("The book is damaged: a word in it is not known."), row.text(column));
}

template <class Unit> std::optional<Unit> optionalUnit(const Statement& row, int column) {
    const auto value = row.optionalInt(column);
    return value ? std::optional<Unit>(Unit{*value}) : std::nullopt;
}

/// Position of the colony that a record in force names; -1: the snapshot is without it, since it begins later (a row of
/// an edit that is not judged yet) or is not asked for. Throws brokenLink() where the book has none of this id.
qint32 colonyNamed(const SnapshotBuild& b, qint64 id);

void readYards(SnapshotBuild& b);
void readColonies(SnapshotBuild& b);
void readStays(SnapshotBuild& b);
void readTransfers(SnapshotBuild& b);
void readLineage(SnapshotBuild& b);
void readResults(SnapshotBuild& b);
void readTreatments(SnapshotBuild& b);
void readSigns(SnapshotBuild& b);
void readLatest(SnapshotBuild& b);
void readChecks(SnapshotBuild& b, Checks checks);

} // namespace core::store
