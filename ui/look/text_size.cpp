#include "ui/look/text_size.h"

#include <QApplication>
#include <QFont>
#include <QVariant>

#include <algorithm>

namespace ui::look {

namespace {

constexpr int kSteps[] = {80, 90, 100, 110, 125, 150, 175, 200};
constexpr const char* kPercent = "textPercent";
constexpr double kPointsWhereTheSystemNamesNone = 10;

} // namespace

int textPercent() {
    const QVariant percent = qApp->property(kPercent);
    return percent.isValid() ? percent.toInt() : kUsualText;
}

void setTextPercent(int percent) {
    const int now = std::clamp(percent, kSmallestText, kLargestText);
    if (now == textPercent()) return;
    QFont font = QApplication::font();
    const double points = font.pointSizeF() > 0 ? font.pointSizeF() : kPointsWhereTheSystemNamesNone;
    font.setPointSizeF(points * now / textPercent());
    qApp->setProperty(kPercent, now);
    QApplication::setFont(font);
}

int textPercentAfter(int percent, bool larger) {
    if (larger) {
        const auto* up = std::upper_bound(std::begin(kSteps), std::end(kSteps), percent);
        return up == std::end(kSteps) ? kLargestText : *up;
    }
    const auto* here = std::lower_bound(std::begin(kSteps), std::end(kSteps), percent);
    return here == std::begin(kSteps) ? kSmallestText : *(here - 1);
}

} // namespace ui::look
