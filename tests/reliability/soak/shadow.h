#pragma once

#include "core/edit/session.h"
#include "core/model/row.h"

#include <array>
#include <map>
#include <set>

namespace tests::soak {

using namespace core;
using namespace core::edit;

/// The rows of a book as they are by what changed() told of it, kept apart from the book.
class Shadow {
public:
    using Rows = std::map<qint64, Row>;

    /// Of all that the book holds now.
    void read(const Session& session);
    void take(const Session& session, const ChangeSet& what);

    const Rows& rows(Table table) const { return m_rows[static_cast<size_t>(table)]; }
    qint64 rowCount() const;
    const std::set<qint64>& living() const { return m_living; }
    const std::set<qint64>& ended() const { return m_ended; }
    /// Equal where all rows are, and as good as never otherwise.
    quint64 hash() const { return m_hash; }
    /// The first table that the book holds otherwise; empty: none.
    std::string differing(const Session& session) const;

private:
    void put(Table table, qint64 id, const Row& row);
    void drop(Table table, qint64 id);

    std::array<Rows, kTableCount> m_rows;
    std::set<qint64> m_living, m_ended;
    quint64 m_hash = 0;
};

/// Adds the colonies that a row names in any of its columns.
void addColonies(Table table, const Row& row, std::set<qint64>& colonies);
/// Whether it names one of these.
bool namesColony(Table table, const Row& row, const std::set<qint64>& colonies);

} // namespace tests::soak
