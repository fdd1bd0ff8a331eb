#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace ui::settings {

/// Settings under one heading, in the order of the rules.
struct SettingGroup {
    QString title;
    QString about;     ///< one sentence under the heading; may be empty
    QStringList names; ///< of core::settingTable()
};

/// Every setting of the book is in exactly one.
std::vector<SettingGroup> settingGroups();

/// The setting in plain words: "A count of bees counts for". The name itself where there are none.
QString settingTitle(const QString& name);
/// A unit in words ("days"); empty where there is none.
QString unitWords(const QString& unit);
/// One of the words of a choice, as people say it.
QString choiceText(const QString& name, const QString& word);

} // namespace ui::settings
