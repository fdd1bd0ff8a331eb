#pragma once

#include "core/model/settings.h"

#include <QString>
#include <QStringView>

#include <functional>
#include <optional>
#include <vector>

namespace core {

/// One setting as users see it: `yardwright settings`, the dialog and `set` read this table.
struct SettingInfo {
    QString name;         ///< "afb.recheck_days": stable, never translated
    QString defaultValue; ///< canonical text
    QString unit;         ///< "days", "frames", "" where there is none
    QString range;        ///< "60 to 3650 (only stricter)", "mean, top or bottom"
    QString source;       ///< publication, or "assumption", or "common practice, no source"
    QString meaning;      ///< one sentence
};

const std::vector<SettingInfo>& settingTable();
const SettingInfo* settingNamed(QStringView name);

/// Puts `text` into `settings`. Returns the canonical text, or nullopt when it is not in the range of that name.
std::optional<QString> applySetting(Settings& settings, QStringView name, QStringView text);
/// Canonical text of the value in force.
QString settingText(const Settings& settings, QStringView name);

} // namespace core
