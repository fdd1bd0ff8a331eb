#pragma once

#include "core/rules/medicine_book.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace ui::health {

/// The register: an entry a row, struck ones struck through.
class MedicineModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum class Column { Day, Colonies, Product, Given, Missing, State, Withdrawal };

    using QAbstractTableModel::QAbstractTableModel;

    /// `book` is used until the next show().
    void show(const core::rules::MedicineBook* book, std::vector<core::rules::MedicineEntry> entries);
    const core::rules::MedicineEntry& at(int row) const { return m_entries[static_cast<size_t>(row)]; }
    const std::vector<core::rules::MedicineEntry>& entries() const { return m_entries; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(const core::rules::MedicineEntry& entry, Column column) const;

    const core::rules::MedicineBook* m_book = nullptr;
    std::vector<core::rules::MedicineEntry> m_entries;
};

/// Strips that are to come out, a hive and treatment a row.
class StripsModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum class Column { Due, Hive, Treated, Product, Yard };

    using QAbstractTableModel::QAbstractTableModel;

    void show(const core::rules::MedicineBook* book, std::vector<core::rules::StripsIn> strips);
    const core::rules::StripsIn& at(int row) const { return m_strips[static_cast<size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const core::rules::MedicineBook* m_book = nullptr;
    std::vector<core::rules::StripsIn> m_strips;
};

} // namespace ui::health
