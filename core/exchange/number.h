#pragma once

#include <QtGlobal>

#include <optional>
#include <string_view>

namespace core::exchange {

/// A decimal number as a file has it, in counts of 10^-decimals.
struct FileNumber {
    qint64 cut = 0;     ///< towards zero
    qint64 rounded = 0; ///< half away from zero
    bool exact = true;  ///< nothing was cut
    bool negative = false;
    /// Judged before any rounding.
    bool within(qint64 low, qint64 high) const;
};

/// Sign, digits and one point (a comma too where `decimalComma`); no exponent, no blanks, no thousands marks. Numbers
/// beyond 10^17 counts come out as that.
std::optional<FileNumber> parseNumber(std::string_view text, int decimals, bool decimalComma);

/// The same as a double; nullopt also where it is not finite.
std::optional<double> parseReal(std::string_view text, bool decimalComma);

} // namespace core::exchange
