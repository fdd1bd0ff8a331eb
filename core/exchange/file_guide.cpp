#include "core/exchange/file_guide.h"

#include "core/base/error.h"
#include "core/exchange/csv_reader.h"
#include "core/model/setting_table.h"

#include <QFile>

// Outside any namespace, as the macro asks. The resources of a static library are registered by hand.
static void registerGuide() { Q_INIT_RESOURCE(exchange_guide); }

namespace core::exchange {

namespace {

std::vector<ColumnGuide> readGuides() {
    registerGuide();
    QFile file(QStringLiteral(":/export/columns.csv"));
    if (!file.open(QIODevice::ReadOnly))
        throw Error(Error::Kind::Internal,
                    QStringLiteral("The program lacks a part of itself: %1.").arg(file.fileName()));
    CsvReader reader(file, ',');
    reader.forget();
    CsvRecord record;
    reader.next(record); // its header
    std::vector<ColumnGuide> guides;
    while (reader.next(record) == CsvReader::Found::Record) {
        const auto cell = [&](size_t i) {
            const std::string_view text = record.cell(i);
            return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
        };
        guides.push_back(
            {cell(0), cell(1), cell(2), cell(3), cell(4), cell(5), cell(6).split(u' ', Qt::SkipEmptyParts)});
    }
    return guides;
}

bool readIn(const ColumnGuide& file) { return file.from.contains(QStringLiteral("import")); }

QString fileMeaning(const ColumnGuide& file) {
    return readIn(file) ? file.meaning : file.meaning + QStringLiteral(" (an import does not read this file)");
}

/// A cell of a table in Markdown.
QString cellOf(QString text) { return text.replace(u'|', QStringLiteral("\\|")); }

} // namespace

const std::vector<ColumnGuide>& columnGuides() {
    static const std::vector<ColumnGuide> guides = readGuides();
    return guides;
}

QStringList guideHeader() { return QStringLiteral("file column unit meaning allowed empty").split(u' '); }

std::vector<QStringList> guideRows() {
    std::vector<QStringList> rows;
    for (const ColumnGuide& g : columnGuides())
        rows.push_back({g.file, g.column, g.unit, g.column.isEmpty() ? fileMeaning(g) : g.meaning, g.allowed, g.empty});
    for (const SettingInfo& s : settingTable())
        rows.push_back({QStringLiteral("settings.csv"), QStringLiteral("value of %1").arg(s.name), s.unit, s.meaning,
                        s.range, QStringLiteral("as shipped: %1").arg(s.defaultValue)});
    return rows;
}

QString guidePage() {
    QString page;
    for (const ColumnGuide& g : columnGuides()) {
        if (g.column.isEmpty())
            page += QStringLiteral("\n## %1\n\n%2%3.\n\n| column | unit | meaning | allowed | an empty cell |\n"
                                   "| --- | --- | --- | --- | --- |\n")
                        .arg(g.file, g.meaning.left(1).toUpper(), fileMeaning(g).mid(1));
        else
            page += QStringLiteral("| `%1` | %2 | %3 | %4 | %5 |\n")
                        .arg(g.column, cellOf(g.unit), cellOf(g.meaning), cellOf(g.allowed), cellOf(g.empty));
    }
    return page;
}

} // namespace core::exchange
