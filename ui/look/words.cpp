#include "ui/look/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>
#include <numbers>

namespace ui::look {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};
} // namespace

QString dayText(core::Day day) { return QLocale().toString(core::toDate(day), QStringLiteral("d MMM yyyy")); }

QString shortDayText(core::Day day) { return QLocale().toString(core::toDate(day), QStringLiteral("d MMM")); }

QString framesOf(core::Quarters q) {
    return q.value == 4 ? Words::tr("1 frame") : Words::tr("%1 frames").arg(core::framesText(q));
}

QString metresOf(qint64 tenths) {
    return Words::tr("%1 m").arg(QStringLiteral("%1.%2").arg(tenths / 10).arg(std::abs(tenths % 10)));
}

QString litresOf(int halfLitres) {
    return Words::tr("%1 L").arg(core::decimalText(static_cast<qint64>(halfLitres) * 5, 1));
}

QString wayText(core::MmPoint from, core::MmPoint to) {
    const QString ways[] = {Words::tr("east"), Words::tr("north-east"), Words::tr("north"), Words::tr("north-west"),
                            Words::tr("west"), Words::tr("south-west"), Words::tr("south"), Words::tr("south-east")};
    const double angle = std::atan2(to.y - from.y, to.x - from.x);
    const int eighth = static_cast<int>(std::lround(angle / (std::numbers::pi / 4)));
    //: A distance and a compass direction: "2.0 m east"
    return Words::tr("%1 %2").arg(metresOf(core::distanceTenths(from, to)), ways[(eighth + 8) % 8]);
}

QString dash() { return QStringLiteral("—"); }

} // namespace ui::look
