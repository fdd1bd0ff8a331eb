#pragma once

#include "core/model/settings.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>
#include <variant>

namespace core {

/// Where in Settings a setting is kept; its type says how it is read and written.
using SettingSlot =
    std::variant<int Settings::*, Quarters Settings::*, Millionths Settings::*, MonthDay Settings::*,
                 ValueTable Settings::*, StrengthJudge Settings::*, BoxOrder Settings::*, WeakerQueen Settings::*,
                 WeightUnit Settings::*, VolumeUnit Settings::*, LengthUnit Settings::*>;

/// One setting: its place, its bounds and what users are told. Bounds are in the slot's own unit (quarter frames,
/// millionths); days of the year, words and value tables have bounds of their own.
struct SettingField {
    const char* name;
    SettingSlot slot;
    qint64 least;
    qint64 most;
    bool onlyStricter; ///< one bound is the default: a hold never becomes laxer
    const char* unit;
    const char* source;
    const char* meaning;
};

std::span<const SettingField> settingFields();

/// "60 to 3650 days (only stricter)" without the unit: "60 to 3650 (only stricter)".
QString rangeText(const SettingField& field);
/// The words of a choice ("mean", "top", "bottom"); empty of other types.
QStringList choiceWords(const SettingField& field);
QString slotText(const Settings& settings, const SettingField& field);
/// False, and nothing changed, when `text` is not in the field's range.
bool readSlot(Settings& settings, const SettingField& field, QStringView text);

} // namespace core
