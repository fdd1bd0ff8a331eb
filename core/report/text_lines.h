#pragma once

#include "core/report/page.h"

#include <QString>
#include <QStringList>

namespace core::report {

constexpr double kMmPerPoint = 25.4 / 72;

/// From one baseline to the next.
constexpr double lineHeight(double pointSize) { return pointSize * kMmPerPoint * 1.26; }
/// From the top of a line to its baseline.
constexpr double baseline(double pointSize) { return pointSize * kMmPerPoint * 0.98; }

/// How text is set.
struct Type {
    double pointSize = 11;
    bool bold = false;
    Ink ink = Ink::Black;
};
constexpr Type kText{11, false, Ink::Black};
constexpr Type kStrong{11, true, Ink::Black};
constexpr Type kLarge{12, false, Ink::Black};
constexpr Type kLabel{14, true, Ink::Black};
constexpr Type kTitle{20, true, Ink::Black};

/// `text` broken into lines at most `width` mm wide, the first at most `firstWidth`; at spaces, and within a word only
/// where it is wider than a whole line. Nothing is lost but the spaces at the breaks.
QStringList wrapped(const TextMeasure& measure, const QString& text, const Type& type, double width, double firstWidth);

/// `text`, or as much of it as fits, with "…".
QString elided(const TextMeasure& measure, const QString& text, const Type& type, double width);

} // namespace core::report
