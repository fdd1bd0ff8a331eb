#include "ui/start/coordinates.h"

#include <QRegularExpression>

#include <cmath>

namespace ui::start {

namespace {

constexpr qint64 kFarthestMm = 10'000'000;

QString plain(QStringView typed) {
    QString text = typed.trimmed().toString();
    text.replace(u'−', u'-').replace(u',', u'.').replace(u'º', u'°');
    for (const QChar minute : {QChar(0x2032), QChar(0x2019)}) text.replace(minute, u'\'');
    for (const QChar second : {QChar(0x2033), QChar(0x201D)}) text.replace(second, u'"');
    return text;
}

/// 1 for `plus`, −1 for `minus`, 0 for no letter; takes it off. nullopt: two letters.
std::optional<int> takeLetter(QString& text, QChar plus, QChar minus) {
    int sign = 0;
    for (const bool atEnd : {false, true}) {
        if (text.isEmpty()) return std::nullopt;
        const QChar ch = (atEnd ? text.back() : text.front()).toUpper();
        if (ch != plus && ch != minus) continue;
        if (sign != 0) return std::nullopt;
        sign = ch == plus ? 1 : -1;
        text = (atEnd ? text.chopped(1) : text.mid(1)).trimmed();
    }
    return sign;
}

std::optional<double> parse(QStringView typed, double most, QChar plus, QChar minus) {
    QString text = plain(typed);
    const auto letter = takeLetter(text, plus, minus);
    if (!letter) return std::nullopt;
    static const QRegularExpression form(
        QStringLiteral("^(-?)(\\d{1,3}(?:\\.\\d{1,9})?)\\s*(?:°\\s*(?:(\\d{1,2}(?:\\.\\d{1,6})?)\\s*'\\s*"
                       "(?:(\\d{1,2}(?:\\.\\d{1,4})?)\\s*\"\\s*)?)?)?$"));
    const auto match = form.match(text);
    if (!match.hasMatch()) return std::nullopt;
    const bool negative = !match.captured(1).isEmpty();
    if (negative && *letter != 0) return std::nullopt;
    const double minutes = match.captured(3).toDouble();
    const double seconds = match.captured(4).toDouble();
    if (minutes >= 60 || seconds >= 60) return std::nullopt;
    if (!match.captured(3).isEmpty() && match.captured(2).contains(u'.')) return std::nullopt;
    const double degrees = match.captured(2).toDouble() + minutes / 60 + seconds / 3600;
    if (degrees > most) return std::nullopt;
    return negative || *letter < 0 ? -degrees : degrees;
}

QString text(double degrees, const QString& plus, const QString& minus) {
    const QString number = core::decimalText(std::llround(std::abs(degrees) * 1e6), 6);
    return QStringLiteral("%1° %2").arg(number, degrees < 0 ? minus : plus);
}

} // namespace

std::optional<double> parseLatitude(QStringView typed) { return parse(typed, 90, u'N', u'S'); }

std::optional<double> parseLongitude(QStringView typed) { return parse(typed, 180, u'E', u'W'); }

QString latitudeText(double degrees) { return text(degrees, QStringLiteral("N"), QStringLiteral("S")); }

QString longitudeText(double degrees) { return text(degrees, QStringLiteral("E"), QStringLiteral("W")); }

std::optional<qint32> parseMetresMm(QStringView typed) {
    QString number = plain(typed);
    if (number.endsWith(u'm')) number = number.chopped(1).trimmed();
    const auto mm = core::parseDecimal(number, 3);
    if (!mm || std::abs(*mm) > kFarthestMm) return std::nullopt;
    return static_cast<qint32>(*mm);
}

} // namespace ui::start
