#pragma once

#include "core/model/setting_fields.h"

#include <QString>

#include <optional>

// What a setting's line says of it, for people.

namespace ui::settings {

/// Nothing: `typed` can stand. Else one sentence: what was expected, and of a hold why it goes no laxer.
std::optional<QString> refusal(const core::SettingField& field, const QString& typed);
/// What may stand: "60 to 3650", "a day of the year".
QString rangeWords(const core::SettingField& field);
/// A canonical value as people read it: "20 August", "the mean of both".
QString valueWords(const core::SettingField& field, const QString& canonical);
/// The value in the units shown where it is kept in another: "= 70.5 lb"; empty where it is not.
QString besideWords(const core::SettingField& field, const core::Settings& settings);
/// No published figure.
bool isAssumption(const core::SettingField& field);

} // namespace ui::settings
