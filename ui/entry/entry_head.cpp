#include "ui/entry/entry_head.h"

#include "ui/form/day_edit.h"
#include "ui/form/suggestions.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSettings>
#include <QToolButton>

namespace ui::entry {

namespace {
QString byLabelKey() { return QStringLiteral("entry/byLabel"); }
} // namespace

EntryHead::EntryHead(desk::Desk& desk, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_day(new form::DayEdit(desk.today(), this)),
      m_by(new QLineEdit(this)),
      m_weather(new QLineEdit(this)),
      m_goTo(new QLineEdit(this)),
      m_byLabel(new QCheckBox(tr("ask for each label"), this)),
      m_columnsButton(new QToolButton(this)),
      m_columns(new QMenu(this)),
      m_problem(new QLabel(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(12, 8, 12, 6);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    const auto label = [&](int row, int column, const QString& text, QWidget* of) {
        auto* l = new QLabel(text, this);
        l->setBuddy(of);
        grid->addWidget(l, row, column);
        grid->addWidget(of, row, column + 1);
    };
    label(0, 0, tr("Day"), m_day);
    label(0, 2, tr("weather"), m_weather); // as on the tally sheet
    label(0, 4, tr("people"), m_by);
    label(1, 0, tr("Go to"), m_goTo);
    grid->addWidget(m_byLabel, 1, 2, 1, 2);
    grid->addWidget(m_columnsButton, 1, 5, Qt::AlignRight);
    grid->addWidget(m_problem, 2, 0, 1, 6);
    grid->setColumnStretch(1, 2);
    grid->setColumnStretch(3, 3);
    grid->setColumnStretch(5, 2);
    m_problem->setProperty("warns", true);
    m_problem->setWordWrap(true);
    m_problem->hide();
    m_day->setAccessibleName(tr("Day of the visits"));
    m_by->setAccessibleName(tr("Who visited"));
    m_weather->setAccessibleName(tr("Weather; these words begin the note of each visit"));
    m_weather->setToolTip(tr("These words begin the note of each visit from now on"));
    m_goTo->setAccessibleName(tr("Label of the hive to go to"));
    m_goTo->setPlaceholderText(tr("label, F9"));
    m_byLabel->setToolTip(tr("After each visit the next label is typed, instead of the next hive on the walk"));
    m_byLabel->setChecked(QSettings().value(byLabelKey()).toBool());
    m_columnsButton->setText(tr("Columns"));
    m_columnsButton->setAccessibleName(tr("Columns that are shown"));
    m_columnsButton->setToolTip(tr("F4: columns that are shown; Tab and Enter go through these alone"));
    m_columnsButton->setMenu(m_columns);
    m_columnsButton->setPopupMode(QToolButton::InstantPopup);
    m_columnsButton->setFocusPolicy(Qt::StrongFocus);
    for (QLineEdit* line : std::initializer_list<QLineEdit*>{m_day, m_weather, m_by}) {
        line->setMinimumWidth(fontMetrics().averageCharWidth() * 9);
        connect(line, &QLineEdit::textChanged, this, &EntryHead::tell);
        connect(line, &QLineEdit::returnPressed, this, &EntryHead::done);
    }
    m_day->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("28 Sep 2026")) + 24);
    m_goTo->setMinimumWidth(fontMetrics().averageCharWidth() * 9);
    connect(m_goTo, &QLineEdit::returnPressed, this, [this] { emit labelTyped(m_goTo->text()); });
    connect(m_byLabel, &QCheckBox::toggled, this, [](bool on) { QSettings().setValue(byLabelKey(), on); });
    QWidget* before = m_day;
    for (QWidget* next : std::initializer_list<QWidget*>{m_weather, m_by, m_goTo, m_byLabel, m_columnsButton}) {
        setTabOrder(before, next);
        before = next;
    }
    suggestPeople();
}

void EntryHead::suggestPeople() {
    std::vector<form::Option> names;
    for (const core::Person& p : m_desk.session().people())
        if (p.active) names.push_back({p.name});
    form::suggest(*m_by, names);
}

void EntryHead::show(const Carried& carried) {
    const QSignalBlocker day(m_day), by(m_by), weather(m_weather);
    if (m_day->day() != carried.day) m_day->setDay(carried.day);
    if (m_by->text().trimmed() != carried.by) m_by->setText(carried.by);
    if (m_weather->text().trimmed() != carried.weather) m_weather->setText(carried.weather);
}

std::optional<Carried> EntryHead::carried() const {
    const auto day = m_day->day();
    if (!day || *day > m_desk.today()) return std::nullopt;
    return Carried{*day, m_by->text().trimmed(), m_weather->text().trimmed()};
}

void EntryHead::tell() {
    const auto now = carried();
    if (!now)
        m_problem->setText(m_day->day() ? tr("The day has not come yet.")
                                        : tr("A day: 2026-09-15, 15 Sep 2026, 15.9. or yesterday."));
    m_problem->setVisible(!now);
    if (now) emit carriedChanged(*now);
}

bool EntryHead::byLabel() const { return m_byLabel->isChecked(); }

void EntryHead::goToLabel() {
    m_goTo->setFocus(Qt::ShortcutFocusReason);
    m_goTo->selectAll();
}

void EntryHead::openColumns() { m_columns->popup(m_columnsButton->mapToGlobal(QPoint(0, m_columnsButton->height()))); }

} // namespace ui::entry
