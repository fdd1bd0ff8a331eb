#pragma once

#include <QString>
#include <QStringList>

#include <optional>

// What kit is called in the book (Kit::part, Kit::state): stable words, shown as they stand.

namespace core::kit {

// States.
inline const QString kUsable = QStringLiteral("usable");
inline const QString kToClean = QStringLiteral("to-clean");
inline const QString kQuarantined = QStringLiteral("quarantined");
inline const QString kBurned = QStringLiteral("burned");
inline const QString kSterilised = QStringLiteral("sterilised");

// Parts that the program itself counts; a box is called by its kind. Others may be named freely.
inline const QString kFloor = QStringLiteral("floor");
inline const QString kLid = QStringLiteral("lid");
inline const QString kInnerCover = QStringLiteral("inner cover");
inline const QString kStrap = QStringLiteral("strap");
inline const QString kQueenCage = QStringLiteral("queen cage");

QStringList states(); ///< in the order in which they are shown
/// Quarantined, burned, sterilised: such kit keeps the colony that it came off.
bool keepsColony(const QString& state);
/// Parts offered to be counted, besides box kinds.
QStringList commonParts();

} // namespace core::kit
