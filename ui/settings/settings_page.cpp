#include "ui/settings/settings_page.h"

#include "core/edit/edits.h"
#include "core/model/setting_fields.h"
#include "ui/look/type.h"
#include "ui/settings/setting_line.h"

#include <QLabel>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::settings {

namespace {

const core::SettingField* fieldNamed(const QString& name) {
    const auto fields = core::settingFields();
    const auto it =
        std::ranges::find_if(fields, [&](const core::SettingField& f) { return name == QLatin1StringView(f.name); });
    return it == fields.end() ? nullptr : &*it;
}

QLabel* headingFor(const QString& text, QWidget* parent) {
    auto* heading = new QLabel(text, parent);
    heading->setFont(look::headingFont(heading->font()));
    return heading;
}

} // namespace

SettingsPage::SettingsPage(desk::Desk& desk, QWidget* parent)
    : QScrollArea(parent), m_desk(desk), m_groups(settingGroups()), m_none(new QLabel(tr("No setting has that."))) {
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    auto* all = new QWidget(this);
    auto* down = new QVBoxLayout(all);
    down->setContentsMargins(4, 0, 16, 8);
    down->setSpacing(18);
    setWidget(all);
    for (const SettingGroup& group : m_groups) addSection(group);
    m_none->setProperty("quiet", true);
    down->addWidget(m_none);
    down->addStretch(1);
    connect(&m_desk, &desk::Desk::read, this, &SettingsPage::refresh);
    refresh();
    settle();
}

void SettingsPage::addSection(const SettingGroup& group) {
    auto* whole = new QWidget(widget());
    auto* down = new QVBoxLayout(whole);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(headingFor(group.title, whole));
    auto* about = new QLabel(group.about, whole);
    about->setWordWrap(true);
    about->setVisible(!group.about.isEmpty());
    down->addWidget(about);
    Section section{whole, about, {}};
    for (const QString& name : group.names) {
        const core::SettingField* field = fieldNamed(name);
        if (!field) continue;
        auto* line = new SettingLine(
            *field, [this](const QString& of, const QString& text) { return save(of, text); }, whole);
        down->addWidget(line);
        section.lines.push_back(line);
    }
    m_sections.push_back(section);
    static_cast<QVBoxLayout*>(widget()->layout())->addWidget(whole);
}

int SettingsPage::changedIn(size_t group) const {
    const core::Settings& now = m_desk.reading().snapshot.settings;
    const core::Settings defaults;
    const auto& lines = m_sections[group].lines;
    return static_cast<int>(std::ranges::count_if(lines, [&](const SettingLine* line) {
        return core::slotText(now, line->field()) != core::slotText(defaults, line->field());
    }));
}

void SettingsPage::showGroup(size_t group) {
    m_group = std::min(group, m_sections.size() - 1);
    m_words.clear();
    settle();
    verticalScrollBar()->setValue(0);
}

void SettingsPage::find(const QString& words) {
    m_words = words.simplified();
    settle();
    verticalScrollBar()->setValue(0);
}

void SettingsPage::settle() {
    bool any = false;
    for (size_t i = 0; i < m_sections.size(); ++i) {
        bool shown = false;
        for (SettingLine* line : m_sections[i].lines) {
            const bool found = m_words.isEmpty() || line->matches(m_words);
            line->setVisible(found);
            shown |= found;
        }
        if (m_words.isEmpty()) shown = i == m_group;
        m_sections[i].whole->setVisible(shown);
        any |= shown;
    }
    m_none->setVisible(!any);
}

SettingLine* SettingsPage::line(const QString& name) const {
    return widget()->findChild<SettingLine*>(QStringLiteral("setting.") + name);
}

void SettingsPage::refresh() {
    const bool writable = !m_desk.session().readOnly();
    for (const Section& section : m_sections)
        for (SettingLine* line : section.lines) {
            line->setWritable(writable);
            line->show(m_desk.reading().snapshot.settings);
        }
}

QString SettingsPage::save(const QString& name, const QString& text) {
    try {
        const bool saved =
            m_desk.save(tr("Change a setting: %1").arg(settingTitle(name)),
                        [&](const core::edit::EditContext& c) { return core::edit::setSetting(c, name, text); });
        return saved ? QString() : tr("Not changed: the book asks for a reason and a name here.");
    } catch (const core::Error& e) {
        return e.userMessage();
    }
}

} // namespace ui::settings
