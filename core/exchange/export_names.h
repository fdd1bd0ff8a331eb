#pragma once

#include "core/base/progress.h"
#include "core/edit/edit_context.h"
#include "core/exchange/file_kind.h"

#include <QHash>
#include <QString>
#include <QStringList>

#include <vector>

namespace core::exchange {

/// The names of the kind's columns.
QStringList header(FileKind kind);

/// The colonies, yards, stands and box kinds of a book in the order of the files, and how rows name them.
class ExportNames {
public:
    /// Throws Stopped.
    explicit ExportNames(const edit::EditContext& c, const Progress& progress = {});

    const std::vector<Colony>& colonies() const { return m_colonies; } ///< natural order of label, then since
    const std::vector<Yard>& yards() const { return m_yards; }         ///< natural order
    const std::vector<BoxKind>& boxKinds() const { return m_boxes; }   ///< natural order
    const std::vector<Stand>& stands() const { return m_stands; }      ///< natural order of yard, then name

    /// LABEL, or LABEL@SINCE where that names another colony on that day.
    QString colony(ColonyId id, Day day) const;
    QString colony(const std::optional<ColonyId>& id, Day day) const { return id ? colony(*id, day) : QString(); }
    QString yard(const std::optional<YardId>& id) const;
    QString box(BoxKindId id) const;
    const Stand& stand(StandId id) const;
    /// Position in colonies(); −1 for none.
    int rank(const std::optional<ColonyId>& id) const;
    int rank(const std::optional<YardId>& id) const;

private:
    std::vector<Colony> m_colonies;
    std::vector<Yard> m_yards;
    std::vector<BoxKind> m_boxes;
    std::vector<Stand> m_stands;
    QHash<qint64, int> m_colonyRank;
    QHash<qint64, int> m_yardRank;
    QHash<qint64, int> m_standRank;
    QHash<qint64, QString> m_boxNames;
    QHash<QString, std::vector<int>> m_byLabel; ///< folded label: positions, by since
};

} // namespace core::exchange
