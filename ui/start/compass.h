#pragma once

#include <QString>
#include <QStringView>

#include <optional>

namespace ui::start {

/// A direction as people type it: degrees clockwise from north ("135", "135°", "360" is 0), or a compass word of up
/// to sixteen ("SE", "south-east", "south east", "NNW"), without regard to case. 0..359; nullopt for all else.
std::optional<int> parseDirection(QStringView typed);
/// "SE", "S": the sixteen winds alone; other degrees as "137".
QString directionText(int degrees);
/// "south-east (135°)", for what is said and shown beside a field; the nearest of sixteen winds.
QString directionWords(int degrees);

} // namespace ui::start
