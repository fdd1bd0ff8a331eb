#include "core/exchange/cells.h"

#include "core/exchange/number.h"

#include <cstring>

namespace core::exchange {

namespace {

constexpr int kMostMetres = 10'000;
constexpr qsizetype kMostShown = 40;

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

std::string_view stripped(std::string_view text) {
    while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
    while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
    return text;
}

QString decoded(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

} // namespace

Cells::Cells(const Layout& layout, const CsvRecord& record, NamePool& names, Faults& faults)
    : m_layout(layout), m_record(record), m_names(names), m_faults(faults) {
    for (size_t i = 0; i < layout.places.size(); ++i) {
        const Column& column = columnsOf(layout.kind)[i];
        if (column.required && !has(column.name)) fault(column.name, Say::tr("is blank, expected a value"));
    }
}

void Cells::fault(const char* column, QString what) {
    m_good = false;
    m_faults.add({m_layout.path, m_record.line(), QString::fromLatin1(column), std::move(what)});
}

std::string_view Cells::raw(const char* column) const {
    const auto columns = columnsOf(m_layout.kind);
    for (size_t n = 0; n < columns.size(); ++n) {
        const size_t i = (m_last + n) % columns.size();
        if (std::strcmp(columns[i].name, column) != 0) continue;
        m_last = i;
        const int place = m_layout.places[i];
        return place < 0 ? std::string_view() : stripped(m_record.cell(static_cast<size_t>(place)));
    }
    Q_ASSERT_X(false, "Cells::raw", column);
    return {};
}

QString Cells::shown(const char* column) const {
    QString text = decoded(raw(column)).simplified();
    if (text.size() > kMostShown) text = text.left(kMostShown) + u'…';
    for (QChar& c : text)
        if (!c.isPrint() && !c.isSurrogate()) c = QChar::ReplacementCharacter;
    return text;
}

QString Cells::listed(std::span<const char* const> words) {
    QString text;
    for (const char* w : words) text += (text.isEmpty() ? QString() : QStringLiteral(", ")) + QString::fromLatin1(w);
    return text;
}

void Cells::wrong(const char* column, const QString& expected) {
    fault(column, Say::tr("“%1” cannot be read, expected %2").arg(shown(column), expected));
}

void Cells::outside(const char* column, const QString& low, const QString& high) {
    fault(column, Say::tr("%1 is out of range, expected %2 to %3").arg(shown(column), low, high));
}

QString Cells::checkedName(const char* column) {
    const QString name = decoded(raw(column)).trimmed();
    if (raw(column).empty()) return name;
    const QString trouble = labelTrouble(name);
    if (!trouble.isEmpty()) fault(column, Say::tr("“%1” %2").arg(shown(column), trouble));
    return name;
}

QString Cells::name(const char* column) { return checkedName(column); }

QString Cells::colonyLabel(const char* column) {
    const QString name = checkedName(column);
    if (name.contains(u'@')) fault(column, Say::tr("“%1” holds an @, expected a label without one").arg(shown(column)));
    return name;
}

ColonyRef Cells::colony(const char* column) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return {};
    const NamePool::Read& read = m_names.read(cell);
    if (!read.trouble.isEmpty()) fault(column, Say::tr("“%1” %2").arg(shown(column), read.trouble));
    return read.ref;
}

QString Cells::text(const char* column) const { return decoded(raw(column)).trimmed(); }

QString Cells::note(const char* column) const {
    if (raw(column).empty()) return {};
    const int place = m_layout.places[m_last];
    return decoded(m_record.cell(static_cast<size_t>(place)));
}

std::optional<Day> Cells::day(const char* column) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto day = parseIsoDay(cell.data(), static_cast<qsizetype>(cell.size()));
    if (!day) wrong(column, Say::tr("a day as in 2026-09-20"));
    return day;
}

std::optional<int> Cells::whole(const char* column, int low, int high) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto number = parseNumber(cell, 0, m_layout.decimalComma);
    if (!number || !number->exact) {
        wrong(column, Say::tr("a whole number from %1 to %2").arg(low).arg(high));
        return std::nullopt;
    }
    if (!number->within(low, high)) {
        outside(column, QString::number(low), QString::number(high));
        return std::nullopt;
    }
    return static_cast<int>(number->cut);
}

std::optional<int> Cells::rounded(const char* column, int low, int high) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto number = parseNumber(cell, 0, m_layout.decimalComma);
    if (!number) {
        wrong(column, Say::tr("a number from %1 to %2").arg(low).arg(high));
        return std::nullopt;
    }
    if (!number->within(low, high)) {
        outside(column, QString::number(low), QString::number(high));
        return std::nullopt;
    }
    return static_cast<int>(number->rounded);
}

std::optional<Quarters> Cells::quarters(const char* column) {
    constexpr int kMostFrames = 24;
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto number = parseNumber(cell, 2, m_layout.decimalComma);
    if (!number || !number->exact || number->cut % 25 != 0) {
        wrong(column, Say::tr("frames in multiples of 0.25"));
        return std::nullopt;
    }
    if (!number->within(0, kMostFrames * 100)) {
        outside(column, QStringLiteral("0"), Say::tr("the frames of the box"));
        return std::nullopt;
    }
    return Quarters{static_cast<qint32>(number->cut / 25)};
}

std::optional<Decagrams> Cells::kilograms(const char* column, int low, int high) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto number = parseNumber(cell, 2, m_layout.decimalComma);
    if (!number) {
        wrong(column, Say::tr("kilograms from %1 to %2").arg(low).arg(high));
        return std::nullopt;
    }
    if (!number->within(low * 100, high * 100)) {
        outside(column, QString::number(low), QString::number(high));
        return std::nullopt;
    }
    return Decagrams{static_cast<qint32>(number->rounded)};
}

std::optional<Millimetres> Cells::metres(const char* column) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto number = parseNumber(cell, 3, m_layout.decimalComma);
    if (!number) {
        wrong(column, Say::tr("metres from %1 to %2").arg(-kMostMetres).arg(kMostMetres));
        return std::nullopt;
    }
    if (!number->within(-kMostMetres * 1000, kMostMetres * 1000)) {
        outside(column, QString::number(-kMostMetres), QString::number(kMostMetres));
        return std::nullopt;
    }
    return Millimetres{static_cast<qint32>(number->rounded)};
}

std::optional<double> Cells::real(const char* column, double low, double high) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto value = parseReal(cell, m_layout.decimalComma);
    if (!value) {
        wrong(column, Say::tr("a number from %1 to %2").arg(low).arg(high));
        return std::nullopt;
    }
    if (*value < low || *value > high) {
        outside(column, QString::number(low), QString::number(high));
        return std::nullopt;
    }
    return value;
}

std::optional<double> Cells::amount(const char* column) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    const auto value = parseReal(cell, m_layout.decimalComma);
    if (!value) {
        wrong(column, Say::tr("a number, 0 or more"));
        return std::nullopt;
    }
    if (*value < 0) {
        fault(column, Say::tr("%1 is out of range, expected 0 or more").arg(shown(column)));
        return std::nullopt;
    }
    return value;
}

std::optional<bool> Cells::yesNo(const char* column) {
    const std::string_view cell = raw(column);
    if (cell.empty()) return std::nullopt;
    if (cell == "yes") return true;
    if (cell == "no") return false;
    wrong(column, Say::tr("yes or no"));
    return std::nullopt;
}

Signs Cells::signs(const char* column) {
    constexpr std::string_view kBreaks = " ;\t\r\n";
    Signs signs;
    std::string_view rest = raw(column);
    while (true) {
        const size_t begin = rest.find_first_not_of(kBreaks);
        if (begin == std::string_view::npos) return signs;
        rest.remove_prefix(begin);
        const std::string_view word = rest.substr(0, rest.find_first_of(kBreaks));
        rest.remove_prefix(word.size());
        if (const auto sign = fromWord<Sign>(decoded(word)))
            signs.add(*sign);
        else {
            wrong(column, Say::tr("%1, separated by spaces or semicolons").arg(listed(wordsOf<Sign>())));
            return signs;
        }
    }
}

QString Cells::settingValue(const char* column) const {
    QString value = text(column);
    if (m_layout.decimalComma) value.replace(u',', u'.');
    return value;
}

} // namespace core::exchange
