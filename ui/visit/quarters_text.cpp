#include "ui/visit/quarters_text.h"

#include <QString>

namespace ui::visit {

namespace {

constexpr int kMostQuarters = 96;

/// "1/4", "2/4", "3/4", "1/2" in quarters.
std::optional<int> fractionOf(QStringView text) {
    if (text == u"1/4") return 1;
    if (text == u"1/2" || text == u"2/4") return 2;
    if (text == u"3/4") return 3;
    return std::nullopt;
}

QString spelled(QStringView typed) {
    QString text = typed.trimmed().toString();
    text.replace(QChar(0x2044), u'/'); // the fraction slash
    text.replace(QStringLiteral("¼"), QStringLiteral(" 1/4"));
    text.replace(QStringLiteral("½"), QStringLiteral(" 1/2"));
    text.replace(QStringLiteral("¾"), QStringLiteral(" 3/4"));
    return text.simplified();
}

std::optional<int> quartersOf(const QString& text) {
    const qsizetype space = text.indexOf(u' ');
    if (space < 0) {
        if (const auto alone = fractionOf(text)) return alone;
        QString decimal = text;
        decimal.replace(u',', u'.');
        const auto hundredths = core::parseDecimal(decimal, 2);
        if (!hundredths || *hundredths < 0 || *hundredths > 2400 || *hundredths % 25 != 0) return std::nullopt;
        return static_cast<int>(*hundredths / 25);
    }
    const auto whole = core::parseDecimal(text.left(space), 0);
    const auto part = fractionOf(QStringView(text).mid(space + 1));
    if (!whole || *whole < 0 || *whole > 24 || !part) return std::nullopt;
    return static_cast<int>(*whole) * 4 + *part;
}

} // namespace

std::optional<core::Quarters> parseFrames(QStringView typed) {
    const auto q = quartersOf(spelled(typed));
    if (!q || *q > kMostQuarters) return std::nullopt;
    return core::Quarters{*q};
}

} // namespace ui::visit
