#include "core/exchange/mapping.h"

#include "core/exchange/foreign_cells.h"

#include <QSet>

#include <algorithm>

namespace core::exchange {

namespace {

/// A header's name without what people write in their own way.
QString plain(const QString& name) {
    QString out;
    for (const QChar c : name.toCaseFolded())
        if (c.isLetterOrNumber()) out += c;
    return out;
}

} // namespace

std::vector<CellUnit> unitsOf(FileKind kind, const QString& column) {
    if (column.endsWith(QLatin1StringView("_kg"))) return {CellUnit::Ours, CellUnit::Pounds};
    if (column.endsWith(QLatin1StringView("_m"))) return {CellUnit::Ours, CellUnit::Feet};
    if (kind == FileKind::BoxKinds && column.endsWith(QLatin1StringView("_mm")))
        return {CellUnit::Ours, CellUnit::Centimetres, CellUnit::Inches};
    return {CellUnit::Ours};
}

QString unitWord(FileKind kind, const QString& column, CellUnit unit) {
    switch (unit) {
    case CellUnit::Pounds:
        return QStringLiteral("lb");
    case CellUnit::Feet:
        return QStringLiteral("ft");
    case CellUnit::Inches:
        return QStringLiteral("in");
    case CellUnit::Centimetres:
        return QStringLiteral("cm");
    case CellUnit::Ours:
        break;
    }
    return unitsOf(kind, column).size() > 1 ? column.section(u'_', -1) : QString();
}

QStringList headerOf(const QByteArray& text, char separator) {
    QStringList out;
    const auto rows = firstRows(text, separator, 1);
    if (rows.empty()) return out;
    for (const QByteArray& cell : rows.front()) out << QString::fromUtf8(cell).trimmed();
    return out;
}

Mapping proposedMapping(FileKind kind, const QByteArray& text, const CellForms& forms) {
    Mapping mapping;
    mapping.kind = kind;
    mapping.forms = forms;
    const QStringList header = headerOf(text, forms.separator);
    for (const Column& ours : columnsOf(kind)) {
        const auto name = QString::fromLatin1(ours.name);
        const auto same = std::ranges::find_if(header, [&](const QString& h) { return plain(h) == plain(name); });
        if (same != header.end()) mapping.columns.push_back({*same, name, CellUnit::Ours, {}, {}});
    }
    return mapping;
}

std::vector<MappingTrouble> mappingTroubles(const Mapping& mapping, const QStringList& header) {
    std::vector<MappingTrouble> out;
    QSet<QString> given;
    const auto columns = columnsOf(mapping.kind);
    const auto isOurs = [&](const QString& name) {
        return std::ranges::any_of(columns, [&](const Column& c) { return name == QLatin1StringView(c.name); });
    };
    for (const ColumnMapping& c : mapping.columns) {
        if (!isOurs(c.to))
            out.push_back({c.to, Say::tr("is no column of %1, expected one of them").arg(kindWords(mapping.kind))});
        if (given.contains(c.to)) out.push_back({c.to, Say::tr("is given twice, expected once")});
        given.insert(c.to);
        if (!c.from.isEmpty() && header.count(c.from) != 1)
            out.push_back({c.from, header.contains(c.from)
                                       ? Say::tr("stands twice in the file's first row, expected it once")
                                       : Say::tr("is not in the file's first row, expected it there")});
    }
    for (const Column& c : columns)
        if (c.required && !given.contains(QString::fromLatin1(c.name)))
            out.push_back({QString::fromLatin1(c.name),
                           Say::tr("is given by nothing, expected a column of the file or one value for all rows")});
    return out;
}

} // namespace core::exchange
