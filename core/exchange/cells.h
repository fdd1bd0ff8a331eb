#pragma once

#include "core/base/day.h"
#include "core/base/quantity.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/drafts.h"
#include "core/exchange/fault.h"
#include "core/exchange/file_kind.h"
#include "core/model/words.h"

#include <QString>

#include <optional>
#include <string_view>
#include <vector>

namespace core::exchange {

/// The cells of one row by column name, each read into its type. What is wrong becomes a fault of this row; the value
/// is then nothing. A column that the file lacks, or a blank cell, is nothing too.
class Cells {
public:
    /// `places`: for each of columnsOf(kind) the cell's position in the file, −1 where the file lacks it.
    struct Layout {
        FileKind kind = FileKind::Yards;
        std::vector<int> places;
        bool decimalComma = false;
        qint32 file = 0;
        QString path;
    };
    Cells(const Layout& layout, const CsvRecord& record, NamePool& names, Faults& faults);

    Origin origin() const { return {m_layout.file, static_cast<qint32>(m_record.line())}; }
    /// No fault so far in this row.
    bool good() const { return m_good; }
    void fault(const char* column, QString what);
    /// As written in the file, without the blanks around.
    std::string_view raw(const char* column) const;
    bool has(const char* column) const { return !raw(column).empty(); }

    QString name(const char* column);        ///< a label: of a yard, stand or box kind
    QString colonyLabel(const char* column); ///< a label without @
    ColonyRef colony(const char* column);
    QString text(const char* column) const; ///< without the blanks around
    QString note(const char* column) const; ///< as it is; nothing where all is blank
    std::optional<Day> day(const char* column);
    std::optional<int> whole(const char* column, int low, int high);
    std::optional<int> rounded(const char* column, int low, int high); ///< to the nearest whole
    std::optional<Quarters> quarters(const char* column);
    std::optional<Decagrams> kilograms(const char* column, int low, int high);
    std::optional<Millimetres> metres(const char* column);
    std::optional<double> real(const char* column, double low, double high);
    std::optional<double> amount(const char* column); ///< 0 or more
    std::optional<bool> yesNo(const char* column);
    Signs signs(const char* column);
    QString settingValue(const char* column) const; ///< with a decimal point

    template <class E> std::optional<E> word(const char* column) {
        const std::string_view cell = raw(column);
        if (cell.empty()) return std::nullopt;
        const auto words = wordsOf<E>();
        for (size_t i = 0; i < words.size(); ++i)
            if (cell == words[i]) return static_cast<E>(i);
        wrong(column, Say::tr("one of %1").arg(listed(words)));
        return std::nullopt;
    }

private:
    static QString listed(std::span<const char* const> words);
    QString shown(const char* column) const;
    void wrong(const char* column, const QString& expected);
    void outside(const char* column, const QString& low, const QString& high);
    QString checkedName(const char* column);

    const Layout& m_layout;
    const CsvRecord& m_record;
    NamePool& m_names;
    Faults& m_faults;
    mutable size_t m_last = 0; ///< columns are asked for in their order, mostly
    bool m_good = true;
};

} // namespace core::exchange
