#include "ui/settings/setting_line.h"

#include "ui/look/type.h"
#include "ui/settings/setting_editor.h"
#include "ui/settings/setting_groups.h"
#include "ui/settings/setting_judge.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace ui::settings {

namespace {

QLabel* wrapped(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    return label;
}

} // namespace

SettingLine::SettingLine(const core::SettingField& field, Save save, QWidget* parent)
    : QFrame(parent),
      m_field(field),
      m_save(std::move(save)),
      m_name(QString::fromUtf8(field.name)),
      m_default(core::slotText(core::Settings{}, field)),
      m_mark(new QLabel(tr("changed"), this)),
      m_editor(makeSettingEditor(field, settingTitle(m_name), this)),
      m_beside(new QLabel(this)),
      m_back(new QPushButton(tr("Back to default"), this)),
      m_problem(wrapped({}, this)) {
    setObjectName(QStringLiteral("setting.") + m_name);
    build();
    m_back->setProperty("plain", true);
    m_back->setAutoDefault(false);
    m_back->setAccessibleName(tr("Back to default: %1").arg(settingTitle(m_name)));
    m_problem->setProperty("warns", true);
    m_problem->hide();
    m_beside->setProperty("quiet", true);
    m_mark->setProperty("changed", true);
    m_editor->focusProxy()->setAccessibleDescription(QString::fromUtf8(field.meaning) + u' ' + facts());
    connect(m_editor, &SettingEditor::typedAnew, this, &SettingLine::typedAnew);
    connect(m_editor, &SettingEditor::done, this, &SettingLine::done);
    connect(m_back, &QPushButton::clicked, this, &SettingLine::back);
}

void SettingLine::build() {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 8, 0, 10);
    grid->setVerticalSpacing(3);
    grid->setColumnStretch(0, 1);
    auto* title = wrapped(settingTitle(m_name), this);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    title->setBuddy(m_editor->focusProxy());
    auto* editing = new QHBoxLayout;
    editing->setSpacing(8);
    editing->addWidget(m_editor);
    const QString unit = unitWords(QString::fromUtf8(m_field.unit));
    const bool table = std::holds_alternative<core::ValueTable core::Settings::*>(m_field.slot);
    if (!unit.isEmpty() && !table) editing->addWidget(new QLabel(unit, this));
    editing->addWidget(m_beside);
    editing->addStretch(1);
    auto* side = new QHBoxLayout;
    side->addWidget(m_mark);
    side->addWidget(m_back);
    grid->addWidget(title, 0, 0);
    grid->addLayout(side, 0, 1, Qt::AlignRight);
    grid->addLayout(editing, 1, 0, 1, 2);
    grid->addWidget(m_problem, 2, 0, 1, 2);
    grid->addWidget(wrapped(QString::fromUtf8(m_field.meaning), this), 3, 0, 1, 2);
    auto* lesser = wrapped(facts(), this);
    lesser->setTextFormat(Qt::RichText);
    lesser->setProperty("quiet", true);
    grid->addWidget(lesser, 4, 0, 1, 2);
}

/// "Default 30 days · 0 to 3650 · assumption"; an assumption leans.
QString SettingLine::facts() const {
    const bool table = std::holds_alternative<core::ValueTable core::Settings::*>(m_field.slot);
    const QString unit = table ? QString() : unitWords(QString::fromUtf8(m_field.unit));
    const QString start = valueWords(m_field, m_default);
    const QString source = QString::fromUtf8(m_field.source).toHtmlEscaped();
    QStringList parts{tr("Default %1").arg(unit.isEmpty() ? start : start + u' ' + unit)};
    if (core::choiceWords(m_field).isEmpty()) // a choice's editor lists them
        parts << (m_field.onlyStricter ? tr("%1, only stricter").arg(rangeWords(m_field)) : rangeWords(m_field));
    parts << (isAssumption(m_field) ? QStringLiteral("<i>%1</i>").arg(source) : tr("Source: %1").arg(source));
    return parts.join(QStringLiteral(" · "));
}

void SettingLine::show(const core::Settings& settings) {
    m_now = core::slotText(settings, m_field);
    if (!m_typing) {
        m_editor->show(m_now);
        setProblem({});
    }
    const QString beside = besideWords(m_field, settings);
    m_beside->setText(beside);
    m_beside->setVisible(!beside.isEmpty());
    m_mark->setVisible(m_now != m_default);
    m_back->setVisible(m_now != m_default);
}

void SettingLine::setWritable(bool writable) {
    m_editor->setEnabled(writable);
    m_back->setEnabled(writable);
}

bool SettingLine::matches(const QString& words) const {
    const QString all = QStringList{m_name, settingTitle(m_name), QString::fromUtf8(m_field.meaning),
                                    QString::fromUtf8(m_field.source), QString::fromUtf8(m_field.unit)}
                            .join(u' ');
    const QStringList wanted = words.simplified().split(u' ');
    return std::ranges::all_of(wanted, [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
}

QString SettingLine::problem() const { return m_problem->isHidden() ? QString() : m_problem->text(); }

/// A mistake is said once the typing is done: half a number is none.
void SettingLine::typedAnew() {
    m_typing = m_editor->typed() != m_now;
    setProblem({});
}

void SettingLine::done() {
    if (!m_editor->isEnabled()) return;
    const QString typed = m_editor->typed();
    if (typed == m_now) {
        m_typing = false;
        return setProblem({});
    }
    m_typing = true;
    if (const auto why = refusal(m_field, typed)) return setProblem(*why);
    take(typed);
}

void SettingLine::back() {
    m_editor->focusProxy()->setFocus(Qt::OtherFocusReason); // the button goes
    take(m_default);
}

void SettingLine::take(const QString& text) {
    const bool typing = m_typing;
    m_typing = false; // the book's answer is shown
    const QString why = m_save(m_name, text);
    if (why.isEmpty()) return m_editor->show(m_now);
    m_typing = typing;
    if (typing) setProblem(why);
}

void SettingLine::setProblem(const QString& sentence) {
    m_problem->setText(sentence);
    m_problem->setVisible(!sentence.isEmpty());
    m_editor->focusProxy()->setToolTip(sentence);
}

/// Escape takes typing back before it closes anything.
void SettingLine::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || !m_typing) return QFrame::keyPressEvent(event);
    m_typing = false;
    m_editor->show(m_now);
    setProblem({});
}

} // namespace ui::settings
