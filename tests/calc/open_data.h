#pragma once

#include <QHash>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// The open data of tests/data/open: rows of cells by column name. No cell is quoted.

class OpenTable {
public:
    explicit OpenTable(const QString& file);
    size_t rows() const { return m_rows.size(); }
    QString text(size_t row, const char* column) const;
    /// nullopt for NA (not available), X (not applicable) and Z (less than half a unit, more than none); "-" is 0.
    std::optional<double> number(size_t row, const char* column) const;

private:
    QHash<QString, int> m_columns;
    std::vector<QStringList> m_rows;
};
