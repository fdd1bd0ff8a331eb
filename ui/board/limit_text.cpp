#include "ui/board/limit_text.h"

#include "ui/board/boards.h"
#include <QRegularExpression>

#include <cmath>

namespace ui::board {

namespace {

constexpr int kHour = 60;

} // namespace

std::optional<Limit> limitTyped(const QString& typed) {
    QString text = typed.trimmed().toLower();
    if (text.isEmpty()) return Limit{};
    text.replace(u',', u'.');
    static const QRegularExpression kUnions(QStringLiteral(R"(^(\d{1,5})(?:\s*unions?)?$)"));
    static const QRegularExpression kMinutes(QStringLiteral(R"(^(\d{1,4})\s*(?:m|min|minutes?)$)"));
    static const QRegularExpression kHours(
        QStringLiteral(R"(^(\d{1,2}(?:\.\d{1,2})?)\s*(?:h|hours?)(?:\s*(\d{1,2})\s*(?:m|min|minutes?)?)?$)"));
    if (const auto m = kUnions.match(text); m.hasMatch()) return Limit{m.captured(1).toInt(), std::nullopt};
    int minutes = 0;
    if (const auto m = kMinutes.match(text); m.hasMatch())
        minutes = m.captured(1).toInt();
    else if (const auto h = kHours.match(text); h.hasMatch())
        minutes = static_cast<int>(std::lround(h.captured(1).toDouble() * kHour)) + h.captured(2).toInt();
    if (minutes == 0) return std::nullopt;
    return Limit{std::nullopt, minutes};
}

QString hoursText(int minutes) {
    const int hours = minutes / kHour;
    if (hours == 0) return Boards::tr("%1 min").arg(minutes);
    if (minutes % kHour == 0) return Boards::tr("%1 h").arg(hours);
    return Boards::tr("%1 h %2 min").arg(hours).arg(minutes % kHour);
}

QString limitAsTyped(const Limit& limit) {
    if (limit.most) return QString::number(*limit.most);
    return limit.minutes ? hoursText(*limit.minutes) : QString();
}

QString limitText(const Limit& limit) {
    if (limit.most)
        return *limit.most == 1 ? Boards::tr("at most 1 union") : Boards::tr("at most %1 unions").arg(*limit.most);
    return limit.minutes ? Boards::tr("%1 for the crew").arg(hoursText(*limit.minutes)) : QString();
}

} // namespace ui::board
