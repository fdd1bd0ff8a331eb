#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

// Files that other programs wrote: which encoding, which separator, which decimal mark, which order of a day's parts.
// What is found is a proposal: users see it and can change each.

namespace core::exchange {

enum class Encoding { Utf8, Utf16Little, Utf16Big, Windows1252 };

struct Decoded {
    QByteArray text; ///< UTF-8 without a byte order mark; every line ends with LF
    Encoding encoding = Encoding::Utf8;
};

/// A byte order mark decides, then zero bytes as UTF-16 has them, then whether it is well-formed UTF-8; all else is
/// read as Windows-1252. Lines may end with LF, CRLF or CR alone. nullopt where the bytes are not of the encoding asked
/// for.
std::optional<Decoded> decode(const QByteArray& bytes, std::optional<Encoding> asked = {});

enum class DecimalMark { Point, Comma };

enum class DayOrder { YearMonthDay, DayMonthYear, MonthDayYear };

/// How the cells of a file are to be read.
struct CellForms {
    char separator = ','; ///< , ; tab or |
    DecimalMark decimal = DecimalMark::Point;
    DayOrder days = DayOrder::YearMonthDay;
    friend bool operator==(const CellForms&, const CellForms&) = default;
};

struct FoundForms {
    CellForms forms;
    /// Whether a day such as 03/04/2026 can be read in two ways, and no other day of the file tells which.
    bool daysDoubtful = false;
    /// The same of numbers: none with a mark, or marks of both kinds.
    bool decimalDoubtful = false;
};

/// Looks at the first rows of the decoded text.
FoundForms formsOf(const QByteArray& text);

/// "utf-8", "utf-16-le", "utf-16-be", "windows-1252"
QString word(Encoding encoding);

} // namespace core::exchange
