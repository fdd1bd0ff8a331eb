#include "core/exchange/mapping.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <array>

namespace core::exchange {

namespace {

constexpr std::array kUnits = {"", "lb", "ft", "in", "cm"}; // by CellUnit
constexpr std::array kDayOrders = {"ymd", "dmy", "mdy"};    // by DayOrder
constexpr QLatin1StringView kPartedBy(",;\t|");

// More than any file needs: a book of someone else must not make gigabytes of a small file.
constexpr qsizetype kMostColumns = 100;
constexpr qsizetype kMostWords = 1000;
constexpr qsizetype kMostLetters = 1000;

template <size_t N> std::optional<int> indexOf(const std::array<const char*, N>& words, const QString& word) {
    for (size_t i = 0; i < N; ++i)
        if (word == QLatin1StringView(words[i])) return static_cast<int>(i);
    return std::nullopt;
}

QJsonObject columnJson(const ColumnMapping& c) {
    QJsonObject object{{"from", c.from}, {"to", c.to}};
    if (c.unit != CellUnit::Ours) object["unit"] = QLatin1StringView(kUnits[static_cast<size_t>(c.unit)]);
    if (!c.value.isEmpty()) object["value"] = c.value;
    QJsonArray words;
    for (const auto& [theirs, ours] : c.words) words.append(QJsonArray{theirs, ours});
    if (!words.isEmpty()) object["words"] = words;
    return object;
}

std::optional<ColumnMapping> columnOf(const QJsonObject& object) {
    const auto unit = indexOf(kUnits, object["unit"].toString());
    const QJsonArray words = object["words"].toArray();
    if (!unit || object["to"].toString().isEmpty() || words.size() > kMostWords) return std::nullopt;
    ColumnMapping c{object["from"].toString(),
                    object["to"].toString(),
                    static_cast<CellUnit>(*unit),
                    object["value"].toString(),
                    {}};
    if (c.value.size() > kMostLetters) return std::nullopt;
    for (const QJsonValue& pair : words)
        c.words.emplace_back(pair.toArray().at(0).toString(), pair.toArray().at(1).toString());
    return c;
}

std::optional<Encoding> encodingNamed(const QString& name) {
    for (const Encoding e : {Encoding::Utf8, Encoding::Utf16Little, Encoding::Utf16Big, Encoding::Windows1252})
        if (word(e) == name) return e;
    return std::nullopt;
}

std::optional<FileKind> kindNamed(const QString& name) {
    for (const FileKind kind : kReadKinds)
        if (optionName(kind) == name) return kind;
    return std::nullopt;
}

/// It becomes a name of a header: nothing in it may part or end a line.
bool isPlain(const QString& name) {
    return std::ranges::none_of(name, [](QChar c) { return c.category() == QChar::Other_Control; });
}

} // namespace

QByteArray toJson(const Mapping& mapping) {
    QJsonArray columns;
    for (const ColumnMapping& c : mapping.columns) columns.append(columnJson(c));
    QJsonObject object{{"kind", optionName(mapping.kind)},
                       {"separator", QString(QLatin1Char(mapping.forms.separator))},
                       {"decimal", mapping.forms.decimal == DecimalMark::Comma ? "," : "."},
                       {"days", QLatin1StringView(kDayOrders[static_cast<size_t>(mapping.forms.days)])},
                       {"columns", columns}};
    if (mapping.encoding) object["encoding"] = word(*mapping.encoding);
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

std::optional<Mapping> mappingFromJson(const QByteArray& json) {
    const QJsonObject object = QJsonDocument::fromJson(json).object();
    const auto kind = kindNamed(object["kind"].toString());
    const auto days = indexOf(kDayOrders, object["days"].toString());
    const QString separator = object["separator"].toString();
    const QString decimal = object["decimal"].toString();
    if (!kind || !days || separator.size() != 1 || !kPartedBy.contains(separator[0])) return std::nullopt;
    if (decimal != QLatin1StringView(".") && decimal != QLatin1StringView(",")) return std::nullopt;
    Mapping mapping;
    mapping.kind = *kind;
    mapping.forms = {separator[0].toLatin1(), decimal[0] == u',' ? DecimalMark::Comma : DecimalMark::Point,
                     static_cast<DayOrder>(*days)};
    if (object.contains("encoding") && !(mapping.encoding = encodingNamed(object["encoding"].toString())))
        return std::nullopt;
    const QJsonArray columns = object["columns"].toArray();
    if (columns.size() > kMostColumns) return std::nullopt;
    for (const QJsonValue& value : columns) {
        auto column = columnOf(value.toObject());
        if (!column || !isPlain(column->to)) return std::nullopt;
        mapping.columns.push_back(*std::move(column));
    }
    return mapping;
}

} // namespace core::exchange
