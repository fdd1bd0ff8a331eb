#include "tests/exchange/samples.h"

#include "core/edit/edit_context.h"
#include "tests/support/random_book.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <set>

namespace tests::exchange {

namespace {

QByteArray csvOf(const QJsonArray& rows) {
    std::set<QString> columns;
    for (const QJsonValue& row : rows)
        for (const QString& column : row.toObject().keys()) columns.insert(column);
    QStringList lines{QStringList(columns.begin(), columns.end()).join(u',')};
    for (const QJsonValue& row : rows) {
        QStringList cells;
        for (const QString& column : columns) {
            QString cell = row.toObject()[column].toString();
            if (cell.contains(u',') || cell.contains(u'"'))
                cell = u'"' + cell.replace(u'"', QStringLiteral("\"\"")) + u'"';
            cells << cell;
        }
        lines << cells.join(u',');
    }
    return lines.join(u'\n').toUtf8() + '\n';
}

QList<QList<QByteArray>> cellsOf(const QByteArray& text) {
    QList<QList<QByteArray>> rows;
    for (const QByteArray& line : text.split('\n'))
        if (!line.trimmed().isEmpty()) rows << line.split(',');
    return rows;
}

template <class T> void mix(QList<T>& list, qsizetype from, std::mt19937& random) {
    for (qsizetype i = list.size() - 1; i > from; --i)
        list.swapItemsAt(i, from + static_cast<qsizetype>(below(random, static_cast<size_t>(i - from + 1))));
}

QString textOf(const core::Value& value) {
    if (const auto* whole = std::get_if<qint64>(&value)) return QString::number(*whole);
    if (const auto* real = std::get_if<double>(&value)) return QString::number(*real, 'g', 17);
    if (const auto* text = std::get_if<QString>(&value)) return u'“' + *text + u'”';
    return QStringLiteral("NULL");
}

} // namespace

std::vector<Sample> workedYards() {
    std::vector<Sample> samples;
    const QDir yards(QStringLiteral(YW_TEST_DATA "/yards"));
    for (const QString& name : yards.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        Texts files = textsOf(yards.filePath(name));
        std::erase_if(files, [](const auto& file) { return !file.first.endsWith(QStringLiteral(".csv")); });
        samples.push_back({name.toStdString(), files});
    }
    EXPECT_EQ(samples.size(), 3u);
    return samples;
}

std::vector<Sample> holdStories() {
    QFile file(QStringLiteral(YW_TEST_DATA "/hold-stories.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    std::vector<Sample> samples;
    for (const QJsonValue& story : QJsonDocument::fromJson(file.readAll()).array()) {
        Sample sample{story[QStringLiteral("name")].toString().toStdString(), {}};
        const QJsonObject tables = story[QStringLiteral("tables")].toObject();
        for (const QString& kind : tables.keys())
            sample.files[kind + QStringLiteral(".csv")] = csvOf(tables[kind].toArray());
        samples.push_back(sample);
    }
    EXPECT_GE(samples.size(), 70u);
    return samples;
}

Sample randomSample(unsigned seed) {
    Sample sample{"seed " + std::to_string(seed), {}};
    for (const auto& [name, text] : support::randomBook(seed).files)
        sample.files[QString::fromStdString(name)] = QByteArray::fromStdString(text);
    return sample;
}

size_t below(std::mt19937& random, size_t count) { return static_cast<size_t>(random()) % count; }

Texts shuffled(const Texts& files, std::mt19937& random) {
    Texts mixed;
    for (const auto& [name, text] : files) {
        EXPECT_FALSE(text.contains('"')) << name.toStdString();
        auto rows = cellsOf(text);
        mix(rows, 1, random);
        QList<qsizetype> order(rows.front().size());
        std::iota(order.begin(), order.end(), 0);
        mix(order, 0, random);
        QByteArray out;
        for (const auto& row : rows) {
            QByteArrayList cells;
            for (const qsizetype i : order) cells << row[i].trimmed();
            out += cells.join(',') + '\n';
        }
        mixed[name] = out;
    }
    return mixed;
}

QString firstDifference(const QStringList& a, const QStringList& b) {
    for (qsizetype i = 0; i < qMax(a.size(), b.size()); ++i)
        if (a.value(i) != b.value(i)) return a.value(i) + QStringLiteral(" | ") + b.value(i);
    return {};
}

QStringList rowsOf(const Workbench& bench) {
    QStringList rows;
    bench.open()->read([&](const core::edit::EditContext& c) {
        for (int t = 0; t < core::kTableCount; ++t) {
            const auto table = static_cast<core::Table>(t);
            c.eachRow(table, [&](qint64 id, core::Row&& cells) {
                QStringList texts{QString::fromLatin1(core::tableName(table)), QString::number(id)};
                for (const core::Value& value : cells) texts << textOf(value);
                rows << texts.join(u' ');
            });
        }
    });
    return rows;
}

} // namespace tests::exchange
