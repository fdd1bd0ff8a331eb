#pragma once

#include <QString>

// The fields of the forms of this folder by their keys.

namespace ui::start {

inline const QString kBearing = QStringLiteral("bearing");
inline const QString kBox = QStringLiteral("box");
inline const QString kBrood = QStringLiteral("brood");
inline const QString kCount = QStringLiteral("count");
inline const QString kDay = QStringLiteral("day");
inline const QString kHeading = QStringLiteral("heading");
inline const QString kLabel = QStringLiteral("label");
inline const QString kLatitude = QStringLiteral("latitude");
inline const QString kLongitude = QStringLiteral("longitude");
inline const QString kName = QStringLiteral("name");
inline const QString kNote = QStringLiteral("note");
inline const QString kQueen = QStringLiteral("queen");
inline const QString kSince = QStringLiteral("since");
inline const QString kSpacing = QStringLiteral("spacing");
inline const QString kStand = QStringLiteral("stand");
inline const QString kStep = QStringLiteral("step");
inline const QString kX = QStringLiteral("x");
inline const QString kY = QStringLiteral("y");
inline const QString kYard = QStringLiteral("yard");

} // namespace ui::start
