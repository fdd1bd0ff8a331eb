#include "ui/health/round_page.h"

#include "ui/board/row_list.h"
#include "ui/health/held_rows.h"
#include "ui/health/round_rows.h"
#include "ui/look/type.h"
#include "ui/look/wrapped_label.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::health {

RoundPage::RoundPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_list(new board::RowList(desk, this)),
      m_alarm(new look::WrappedLabel(QStringLiteral("roundAlarm"), this)),
      m_summary(new look::WrappedLabel(QStringLiteral("roundSummary"), this)),
      m_from(new look::WrappedLabel(QStringLiteral("roundFrom"), this)),
      m_others(new look::WrappedLabel(QStringLiteral("roundOthers"), this)),
      m_walk(new QPushButton(tr("&Go through them"), this)),
      m_print(new QPushButton(tr("P&review the tally sheet"), this)),
      m_pdf(new QPushButton(tr("As &PDF…"), this)) {
    build();
    new desk::WhileShown(*this, desk, dialogs, [this] { read(); });
    connect(m_list, &board::RowList::opened, this, &RoundPage::walkFrom);
    connect(m_walk, &QPushButton::clicked, this, [this] { walkFrom({}); });
    connect(m_print, &QPushButton::clicked, this, [this] { emit printAsked(m_round); });
    connect(m_pdf, &QPushButton::clicked, this, [this] { emit pdfAsked(m_round); });
}

void RoundPage::build() {
    auto* title = new QLabel(tr("Brood checks"), this);
    title->setFont(look::headingFont(font()));
    m_walk->setToolTip(tr("The visit forms of all to check, one after the other; Enter on a hive begins there"));
    m_print->setToolTip(tr("A row for each of these hives alone, in this order"));
    m_pdf->setToolTip(m_print->toolTip());
    m_list->setAccessibleName(tr("Brood checks, a hive a row"));
    m_list->setObjectName(QStringLiteral("healthRound"));
    m_alarm->setProperty("warns", true);
    m_from->setProperty("quiet", true);
    m_others->setProperty("quiet", true);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(20, 0, 20, 0);
    head->addWidget(title);
    head->addStretch(1);
    for (QPushButton* button : {m_walk, m_print, m_pdf}) head->addWidget(button);
    auto* keys = new look::WrappedLabel(QStringLiteral("roundKeys"), this);
    keys->setProperty("quiet", true);
    keys->tell(tr("Enter opens the visit form of the chosen hive, and then the next · hives that may carry something "
                  "come last, with clean hands and tools before each (common practice) · local law decides"));
    for (QWidget* label : std::initializer_list<QWidget*>{m_alarm, m_summary, m_from, m_others, keys})
        label->setContentsMargins(20, 0, 20, 0);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(8);
    all->addLayout(head);
    all->addWidget(m_alarm);
    all->addWidget(m_summary);
    all->addWidget(m_from);
    all->addWidget(m_others);
    all->addWidget(m_list, 1);
    all->addWidget(keys);
}

void RoundPage::read() {
    const desk::Reading& reading = m_desk.reading();
    const auto shown = m_desk.yard() ? reading.find(*m_desk.yard()) : std::nullopt;
    m_round.clear();
    std::vector<board::BoardRow> rows;
    QString summary = tr("No hive stands in this yard."), from;
    QStringList others;
    for (const core::rules::RoundYard& yard : core::rules::broodRound(reading.snapshot, reading.plan.holds)) {
        if (yard.yard == shown) {
            summary = roundSummary(reading, yard);
            from = roundFrom(reading, yard);
            rows = roundRows(reading, yard);
            for (const core::rules::RoundStop& stop : yard.walk)
                m_round.push_back(reading.snapshot.colony(stop.colony).id);
        } else if (const size_t open = yard.walk.size() + yard.closed.size(); open > 0) {
            others << tr("%1 %2 of %3").arg(reading.snapshot.yard(yard.yard).name).arg(open).arg(yard.hives());
        }
    }
    m_alarm->tell(shown ? alarmText(reading, {*shown}) : QString());
    m_summary->tell(summary);
    m_from->tell(from);
    m_others->tell(others.isEmpty() ? QString() : tr("To check in other yards: %1.").arg(others.join(tr(", "))));
    for (QPushButton* button : {m_walk, m_print, m_pdf}) button->setEnabled(!m_round.empty());
    m_list->setRows(std::move(rows));
}

/// From that one on, or from the first; of one that is not to be checked the form alone.
void RoundPage::walkFrom(std::optional<core::ColonyId> first) {
    if (!first) return emit visitsAsked(m_round);
    const auto at = std::ranges::find(m_round, *first);
    emit visitsAsked(at == m_round.end() ? std::vector{*first} : std::vector(at, m_round.end()));
}

QString RoundPage::alarm() const { return m_alarm->text(); }
QString RoundPage::summary() const { return m_summary->text(); }

} // namespace ui::health
