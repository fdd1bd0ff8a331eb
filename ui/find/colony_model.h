#pragma once

#include "ui/find/colony_columns.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace ui::find {

/// Which colonies are shown: those that agree with all that is said.
struct ColonyFilter {
    QString text; ///< part of the label or the yard's name, without regard to case
    std::optional<core::YardIx> yard;
    std::optional<core::rules::StrengthClass> strengthClass;
    std::optional<core::QueenSeen> queen;
    std::optional<bool> held;
    std::optional<core::rules::HoldKind> heldAs;
    bool ended = false;                               ///< ended ones as well
    std::optional<std::vector<core::ColonyIx>> among; ///< in the snapshot's order
};

struct ColonyTotals {
    int shown = 0;
    int of = 0; ///< living, and ended where these are shown
    int counted = 0;
    core::Quarters frames; ///< of those counted
    int weighed = 0;
    qint64 gross = 0; ///< decagrams, of those weighed
    int held = 0;
};

/// All colonies of a reading, filtered and sorted without a widget or an index a row.
class ColonyModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { ColonyRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    /// The reading stays where it is until this is told of another, or cleared.
    void show(const desk::Reading& reading);
    void clear();
    void setFilter(ColonyFilter filter);
    const ColonyFilter& filter() const { return m_filter; }
    const std::vector<core::rules::ColonyFigures>& figures() const { return m_figures; }
    ColonyTotals totals() const;
    core::ColonyId colonyAt(int row) const;
    bool livingAt(int row) const { return at(row).living; }
    std::optional<int> rowOf(core::ColonyId colony) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

private:
    const core::rules::ColonyFigures& at(int row) const { return m_figures[m_shown[static_cast<size_t>(row)]]; }
    void sortAll();
    void filterAll();
    bool shows(size_t colony, const QString& text) const;

    const desk::Reading* m_reading = nullptr;
    std::vector<core::rules::ColonyFigures> m_figures;
    std::vector<QString> m_labels; ///< folded, by colony
    std::vector<QString> m_yards;  ///< folded, by yard
    std::vector<size_t> m_sorted;  ///< all, in order
    std::vector<size_t> m_shown;   ///< of these those that the filter lets through
    std::vector<bool> m_among;     ///< by colony, where the filter says so
    ColonyFilter m_filter;
    ColonyColumn m_by = ColonyColumn::Label;
    bool m_descending = false;
};

} // namespace ui::find
