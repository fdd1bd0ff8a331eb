#include "tests/calc/open_data.h"

#include <gtest/gtest.h>

#include <QFile>

OpenTable::OpenTable(const QString& file) {
    QFile data(QStringLiteral(YW_TEST_DATA "/open/") + file);
    EXPECT_TRUE(data.open(QIODevice::ReadOnly)) << file.toStdString();
    const QStringList lines = QString::fromUtf8(data.readAll()).split(u'\n', Qt::SkipEmptyParts);
    if (lines.isEmpty()) return;
    const QStringList header = lines.first().trimmed().split(u',');
    for (int i = 0; i < header.size(); ++i) m_columns.insert(header[i], i);
    for (const QString& line : lines.mid(1)) {
        m_rows.push_back(line.trimmed().split(u','));
        EXPECT_EQ(m_rows.back().size(), header.size()) << line.toStdString();
    }
}

QString OpenTable::text(size_t row, const char* column) const {
    const auto at = m_columns.constFind(QLatin1StringView(column));
    if (at == m_columns.constEnd()) {
        ADD_FAILURE() << "no column " << column;
        return {};
    }
    return m_rows[row].value(*at);
}

std::optional<double> OpenTable::number(size_t row, const char* column) const {
    const QString cell = text(row, column);
    if (cell == QLatin1StringView("-")) return 0;
    bool ok = false;
    const double value = cell.toDouble(&ok);
    if (ok) return value;
    EXPECT_TRUE(cell == QLatin1StringView("NA") || cell == QLatin1StringView("X") || cell == QLatin1StringView("Z"))
        << column << ": " << cell.toStdString();
    return std::nullopt;
}
