#pragma once

#include "ui/after/due_rows.h"

#include <QAbstractListModel>

namespace ui::after {

/// What is due as a list; the delegate reads DueRow by row number, screen readers the spoken text. Headings are no
/// choice.
class DueModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<DueRow> rows, core::Day today);
    void setAnswers(int row, const Answers& answers);
    const DueRow& at(int row) const { return m_rows[static_cast<size_t>(row)]; }
    core::Day today() const { return m_today; }
    int rowAbout(core::ColonyId colony) const; ///< −1: none
    /// In that yard, where anything is due there, else anywhere; −1: nothing is.
    int firstCheck(const QString& yard) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<DueRow> m_rows;
    core::Day m_today;
};

} // namespace ui::after
