#include "tests/support/csv_tables.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonObject>
#include <QStringList>

#include <array>
#include <stdexcept>

namespace tests::support {

namespace {

constexpr std::array kKinds{"yards",      "colonies", "visits",     "transfers", "results",
                            "treatments", "lineage",  "placements", "box_kinds", "settings"};

// Splits CSV text into lines of cells.
std::vector<QStringList> cellsOf(const QString& text) {
    std::vector<QStringList> lines;
    QStringList line;
    QString cell;
    bool quoted = false;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        if (quoted && c == u'"' && i + 1 < text.size() && text[i + 1] == u'"') {
            cell += text[++i];
        } else if (c == u'"') {
            quoted = !quoted;
        } else if (quoted || (c != u',' && c != u'\n' && c != u'\r')) {
            cell += c;
        } else if (c != u'\r') {
            line << std::exchange(cell, {});
            if (c == u'\n') lines.push_back(std::exchange(line, {}));
        }
    }
    if (!cell.isEmpty() || !line.isEmpty()) lines.push_back(line << cell);
    return lines;
}

} // namespace

std::vector<CsvRow> rowsOfCsv(const QString& text) {
    const auto lines = cellsOf(text);
    std::vector<CsvRow> rows;
    for (size_t i = 1; i < lines.size(); ++i) {
        if (lines[i].size() == 1 && lines[i][0].isEmpty()) continue;
        CsvRow& row = rows.emplace_back();
        for (qsizetype c = 0; c < lines[i].size() && c < lines[0].size(); ++c)
            row[lines[0][c].trimmed()] = lines[i][c].trimmed();
    }
    return rows;
}

CsvTables tablesOfFolder(const QString& folder) {
    CsvTables tables;
    for (const char* kind : kKinds) {
        const QString name = QString::fromLatin1(kind);
        QFile file(folder + u'/' + name + QStringLiteral(".csv"));
        if (!file.exists()) continue;
        if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("cannot read " + file.fileName().toStdString());
        QString text = QString::fromUtf8(file.readAll());
        if (text.startsWith(QChar(0xFEFF))) text.remove(0, 1);
        tables[name] = rowsOfCsv(text);
    }
    return tables;
}

CsvTables tablesOfJson(const QJsonObject& tables) {
    CsvTables result;
    for (auto kind = tables.begin(); kind != tables.end(); ++kind) {
        for (const QJsonValue& value : kind.value().toArray()) {
            const QJsonObject object = value.toObject();
            CsvRow& row = result[kind.key()].emplace_back();
            for (auto cell = object.begin(); cell != object.end(); ++cell) row[cell.key()] = cell.value().toString();
        }
    }
    return result;
}

} // namespace tests::support
