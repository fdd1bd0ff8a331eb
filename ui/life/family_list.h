#pragma once

#include "ui/life/family.h"
#include "ui/time/time_scale.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>

namespace ui::life {

/// A row a colony of the family, from the top.
class FamilyModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;
    void setFamily(Family family);
    const Family& family() const { return m_family; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    Family m_family;
};

/// Draws of the whole picture the slice that lies in one row: its colony's line, and the strokes that begin, end or
/// pass here.
class FamilyDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    /// Both outlive it.
    FamilyDelegate(const FamilyModel& model, const time::TimeScale& scale, QObject* parent)
        : QStyledItemDelegate(parent), m_model(model), m_scale(scale) {}

    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const FamilyModel& m_model;
    const time::TimeScale& m_scale;
};

} // namespace ui::life
