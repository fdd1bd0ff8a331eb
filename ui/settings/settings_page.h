#pragma once

#include "ui/desk/desk.h"
#include "ui/settings/setting_groups.h"

#include <QScrollArea>

#include <vector>

class QLabel;

namespace ui::settings {

class SettingLine;

/// The settings of the open book, a group at a time or those that a search finds. Each change is one edit, saved at
/// once; follows every change of the book.
class SettingsPage : public QScrollArea {
    Q_OBJECT
public:
    explicit SettingsPage(desk::Desk& desk, QWidget* parent = nullptr);

    const std::vector<SettingGroup>& groups() const { return m_groups; }
    int changedIn(size_t group) const; ///< settings of it that are not at their default
    void showGroup(size_t group);
    /// Those that have every word, of all groups; empty: the group shown before.
    void find(const QString& words);
    SettingLine* line(const QString& name) const; ///< nullptr: no such setting
    void refresh();

private:
    struct Section {
        QWidget* whole;
        QLabel* about;
        std::vector<SettingLine*> lines;
    };

    void addSection(const SettingGroup& group);
    void settle();
    QString save(const QString& name, const QString& text);

    desk::Desk& m_desk;
    std::vector<SettingGroup> m_groups;
    std::vector<Section> m_sections;
    QLabel* m_none;
    size_t m_group = 0;
    QString m_words;
};

} // namespace ui::settings
