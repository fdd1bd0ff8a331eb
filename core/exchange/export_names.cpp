#include "core/exchange/export_names.h"

#include "core/base/damaged.h"
#include "core/base/error.h"
#include "core/base/natural_order.h"

#include <algorithm>

namespace core::exchange {

namespace {

/// Error(Book) where a row names what is not there.
template <class T> const T& rowAt(const std::vector<T>& rows, int rank) {
    if (rank >= 0) return rows[static_cast<size_t>(rank)];
    throw Damaged(
        QStringLiteral("The book is damaged: a record in it is about a hive, stand or yard that is not there."));
}

template <class T> QHash<qint64, int> ranksOf(const std::vector<T>& rows) {
    QHash<qint64, int> ranks;
    for (size_t i = 0; i < rows.size(); ++i) ranks.insert(rows[i].id.value, static_cast<int>(i));
    return ranks;
}

} // namespace

QStringList header(FileKind kind) {
    QStringList names;
    for (const Column& column : columnsOf(kind)) names << QString::fromLatin1(column.name);
    return names;
}

ExportNames::ExportNames(const edit::EditContext& c, const Progress& progress)
    : m_yards(c.yards()), m_boxes(c.boxKinds()) {
    c.each<Colony>([&](const Colony& row) { m_colonies.push_back(row); });
    c.each<Stand>([&](const Stand& row) { m_stands.push_back(row); });
    m_yardRank = ranksOf(m_yards);
    std::ranges::sort(m_colonies, [&progress](const Colony& a, const Colony& b) {
        if (!progress.goesOn()) throw Stopped(); // of many, names take their time
        const int order = naturalCompare(a.label, b.label);
        return order != 0 ? order < 0 : a.since < b.since;
    });
    std::ranges::sort(m_stands, [&](const Stand& a, const Stand& b) {
        if (a.yard != b.yard) return m_yardRank.value(a.yard.value) < m_yardRank.value(b.yard.value);
        return naturalCompare(a.name, b.name) < 0;
    });
    m_colonyRank = ranksOf(m_colonies);
    m_standRank = ranksOf(m_stands);
    for (const BoxKind& box : m_boxes) m_boxNames.insert(box.id.value, box.name);
    for (size_t i = 0; i < m_colonies.size(); ++i)
        m_byLabel[folded(m_colonies[i].label)].push_back(static_cast<int>(i));
    for (std::vector<int>& bearers : m_byLabel)
        std::ranges::sort(bearers, {}, [&](int i) { return m_colonies[static_cast<size_t>(i)].since; });
}

QString ExportNames::colony(ColonyId id, Day day) const {
    const Colony& row = rowAt(m_colonies, rank(id));
    ColonyId named{};
    for (const int i : m_byLabel.value(folded(row.label))) {
        const Colony& bearer = m_colonies[static_cast<size_t>(i)];
        if (bearer.since <= day) named = bearer.id;
    }
    return named == id ? row.label : row.label + u'@' + isoText(row.since);
}

QString ExportNames::yard(const std::optional<YardId>& id) const {
    return id ? rowAt(m_yards, rank(id)).name : QString();
}

QString ExportNames::box(BoxKindId id) const { return m_boxNames.value(id.value); }

const Stand& ExportNames::stand(StandId id) const { return rowAt(m_stands, m_standRank.value(id.value, -1)); }

int ExportNames::rank(const std::optional<ColonyId>& id) const { return id ? m_colonyRank.value(id->value, -1) : -1; }

int ExportNames::rank(const std::optional<YardId>& id) const { return id ? m_yardRank.value(id->value, -1) : -1; }

} // namespace core::exchange
