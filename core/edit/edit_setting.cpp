#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/model/setting_table.h"

namespace core::edit {

ChangeSet setSetting(const EditContext& c, const QString& name, const QString& value) {
    const SettingInfo* info = settingNamed(name);
    if (!info) refuse(Edits::tr("%1 is no setting; expected a name listed by `yardwright settings`.").arg(name));
    Settings settings = c.settings();
    const QString old = settingText(settings, name);
    const auto now = applySetting(settings, name, value);
    if (!now) refuse(Edits::tr("%1: “%2” is out of range, expected %3.").arg(name, value, info->range));
    if (*now == old) return {};

    const auto stored = c.settingRow(name);
    RowChange row{Table::Setting, stored ? stored->first : c.nextId(Table::Setting), std::nullopt, std::nullopt};
    if (stored) row.before = stored->second;
    if (*now != info->defaultValue) row.after = Row{info->name, *now};
    return {Edits::tr("Set %1 to %2 (was %3)").arg(name, *now, old), {row}, {}, {}, {}};
}

} // namespace core::edit
