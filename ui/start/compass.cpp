#include "ui/start/compass.h"

#include "core/base/quantity.h"

#include <QCoreApplication>

#include <array>
#include <cmath>

namespace ui::start {

namespace {

struct Compass {
    Q_DECLARE_TR_FUNCTIONS(Compass)
};

struct Wind {
    const char* letters;
    const char* word;
};

constexpr std::array<Wind, 16> kWinds{
    {{QT_TRANSLATE_NOOP("Compass", "N"), QT_TRANSLATE_NOOP("Compass", "north")},
     {QT_TRANSLATE_NOOP("Compass", "NNE"), QT_TRANSLATE_NOOP("Compass", "north-north-east")},
     {QT_TRANSLATE_NOOP("Compass", "NE"), QT_TRANSLATE_NOOP("Compass", "north-east")},
     {QT_TRANSLATE_NOOP("Compass", "ENE"), QT_TRANSLATE_NOOP("Compass", "east-north-east")},
     {QT_TRANSLATE_NOOP("Compass", "E"), QT_TRANSLATE_NOOP("Compass", "east")},
     {QT_TRANSLATE_NOOP("Compass", "ESE"), QT_TRANSLATE_NOOP("Compass", "east-south-east")},
     {QT_TRANSLATE_NOOP("Compass", "SE"), QT_TRANSLATE_NOOP("Compass", "south-east")},
     {QT_TRANSLATE_NOOP("Compass", "SSE"), QT_TRANSLATE_NOOP("Compass", "south-south-east")},
     {QT_TRANSLATE_NOOP("Compass", "S"), QT_TRANSLATE_NOOP("Compass", "south")},
     {QT_TRANSLATE_NOOP("Compass", "SSW"), QT_TRANSLATE_NOOP("Compass", "south-south-west")},
     {QT_TRANSLATE_NOOP("Compass", "SW"), QT_TRANSLATE_NOOP("Compass", "south-west")},
     {QT_TRANSLATE_NOOP("Compass", "WSW"), QT_TRANSLATE_NOOP("Compass", "west-south-west")},
     {QT_TRANSLATE_NOOP("Compass", "W"), QT_TRANSLATE_NOOP("Compass", "west")},
     {QT_TRANSLATE_NOOP("Compass", "WNW"), QT_TRANSLATE_NOOP("Compass", "west-north-west")},
     {QT_TRANSLATE_NOOP("Compass", "NW"), QT_TRANSLATE_NOOP("Compass", "north-west")},
     {QT_TRANSLATE_NOOP("Compass", "NNW"), QT_TRANSLATE_NOOP("Compass", "north-north-west")}}};

/// The wind's direction in whole degrees, 22.5 rounded half up (23).
int degreesOf(size_t wind) { return static_cast<int>((wind * 225 + 5) / 10); }

QString lettersOnly(QStringView text) {
    QString out;
    for (const QChar ch : text)
        if (ch.isLetter()) out += ch.toCaseFolded();
    return out;
}

} // namespace

std::optional<int> parseDirection(QStringView typed) {
    QString text = typed.trimmed().toString();
    if (text.endsWith(u'°')) text = text.chopped(1).trimmed();
    if (const auto number = core::parseDecimal(text, 0))
        return *number >= 0 && *number <= 360 ? std::optional<int>(static_cast<int>(*number % 360)) : std::nullopt;
    for (const QChar ch : text)
        if (!ch.isLetter() && ch != u'-' && ch != u' ') return std::nullopt;
    const QString letters = lettersOnly(text);
    for (size_t i = 0; i < kWinds.size(); ++i)
        if (letters == lettersOnly(Compass::tr(kWinds[i].letters)) ||
            letters == lettersOnly(Compass::tr(kWinds[i].word)))
            return degreesOf(i);
    return std::nullopt;
}

QString directionText(int degrees) {
    for (size_t i = 0; i < kWinds.size(); ++i)
        if (degreesOf(i) == degrees) return Compass::tr(kWinds[i].letters);
    return QString::number(degrees);
}

QString directionWords(int degrees) {
    const auto wind = static_cast<size_t>(std::lround(degrees / 22.5)) % kWinds.size();
    return Compass::tr("%1 (%2°)").arg(Compass::tr(kWinds[wind].word)).arg(degrees);
}

} // namespace ui::start
