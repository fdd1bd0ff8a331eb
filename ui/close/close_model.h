#pragma once

#include "ui/close/close_lines.h"

#include <QAbstractListModel>

namespace ui::close {

/// The strips of a merge day as a list; the delegate reads Line by row number, screen readers the spoken text.
class CloseModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setLines(std::vector<Line> lines);
    /// Why the line cannot be written; empty: it can.
    void setProblem(int row, const QString& problem);
    const Line& at(int row) const { return m_lines[static_cast<size_t>(row)]; }
    int rowAbout(core::ColonyId colony) const; ///< −1: none
    int rowOf(const Drafted& drafted) const;   ///< −1: none

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<Line> m_lines;
};

} // namespace ui::close
