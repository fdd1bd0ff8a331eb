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

QString dayTextFrom(core::Day day, core::Day on) {
    return core::toDate(day).year() == core::toDate(on).year() ? shortDayText(day) : dayText(day);
}

QString framesOf(core::Quarters q) {
    return q.value == 4 ? Words::tr("1 frame") : Words::tr("%1 frames").arg(core::framesText(q));
}

QString distanceOf(core::MmPoint from, core::MmPoint to, core::LengthUnit unit) {
    const qint64 tenths = core::distanceTenths(from, to, unit);
    //: A number and its unit
    return Words::tr("%1 %2").arg(QStringLiteral("%1.%2").arg(tenths / 10).arg(tenths % 10), core::unitSign(unit));
}

QString feedOf(int halfLitres, core::VolumeUnit unit) {
    //: A number and its unit
    return Words::tr("%1 %2").arg(core::decimalText(core::feedTenths(halfLitres, unit), 1), core::unitSign(unit));
}

QString weightOf(core::Decagrams weight, core::WeightUnit unit) {
    //: A number and its unit
    return Words::tr("%1 %2").arg(core::weightNumber(weight, unit), core::unitSign(unit));
}

QString shortWeightOf(qint64 millionthsKg, core::WeightUnit unit) {
    //: A number and its unit
    return Words::tr("%1 %2").arg(core::decimalText(core::weightTenths(millionthsKg, unit), 1), core::unitSign(unit));
}

QString wayText(core::MmPoint from, core::MmPoint to, core::LengthUnit unit) {
    const QString ways[] = {Words::tr("east"), Words::tr("north-east"), Words::tr("north"), Words::tr("north-west"),
                            Words::tr("west"), Words::tr("south-west"), Words::tr("south"), Words::tr("south-east")};
    const double angle = std::atan2(to.y - from.y, to.x - from.x);
    const int eighth = static_cast<int>(std::lround(angle / (std::numbers::pi / 4)));
    //: A distance and a compass direction: "2.0 m east"
    return Words::tr("%1 %2").arg(distanceOf(from, to, unit), ways[(eighth + 8) % 8]);
}

QString dash() { return QStringLiteral("—"); }

} // namespace ui::look
