#include "core/exchange/number.h"

#include <charconv>
#include <cmath>
#include <string>

namespace core::exchange {

namespace {

constexpr qint64 kMost = 100'000'000'000'000'000;

bool isPoint(char c, bool decimalComma) { return c == '.' || (decimalComma && c == ','); }

void append(FileNumber& n, int digit) { n.cut = n.cut >= kMost / 10 ? kMost : n.cut * 10 + digit; }

void settle(FileNumber& n, bool up) {
    n.rounded = n.cut + (up ? 1 : 0);
    if (!n.negative) return;
    n.cut = -n.cut;
    n.rounded = -n.rounded;
}

} // namespace

bool FileNumber::within(qint64 low, qint64 high) const {
    if (cut < low || cut > high) return false;
    return exact || cut != (negative ? low : high);
}

std::optional<FileNumber> parseNumber(std::string_view text, int decimals, bool decimalComma) {
    FileNumber n;
    n.negative = !text.empty() && text.front() == '-';
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
    bool digits = false;
    bool up = false;
    int after = -1;
    for (const char c : text) {
        if (after < 0 && isPoint(c, decimalComma)) {
            after = 0;
            continue;
        }
        if (c < '0' || c > '9') return std::nullopt;
        digits = true;
        if (after < 0 || after < decimals)
            append(n, c - '0');
        else if (c != '0')
            n.exact = false;
        if (after == decimals) up = c >= '5';
        if (after >= 0 && after <= decimals) ++after;
    }
    if (!digits) return std::nullopt;
    for (int i = after < 0 ? 0 : after; i < decimals; ++i) append(n, 0);
    settle(n, up);
    return n;
}

std::optional<double> parseReal(std::string_view text, bool decimalComma) {
    if (!parseNumber(text, 0, decimalComma)) return std::nullopt;
    std::string plain(text.front() == '+' ? text.substr(1) : text);
    for (char& c : plain)
        if (c == ',') c = '.';
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc() || end != plain.data() + plain.size() || !std::isfinite(value)) return std::nullopt;
    return value == 0 ? 0.0 : value;
}

} // namespace core::exchange
