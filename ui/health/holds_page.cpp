#include "ui/health/holds_page.h"

#include "ui/board/row_list.h"
#include "ui/health/broken_plans.h"
#include "ui/health/held_rows.h"
#include "ui/health/what_now.h"
#include "ui/look/type.h"
#include "ui/look/words.h"
#include "ui/look/wrapped_label.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ui::health {

namespace {

constexpr int kBeside = 20;

} // namespace

HoldsPage::HoldsPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_list(new board::RowList(desk, this)),
      m_alarm(new look::WrappedLabel(QStringLiteral("healthAlarm"), this)),
      m_broken(new look::WrappedLabel(QStringLiteral("healthBroken"), this)),
      m_summary(new look::WrappedLabel(QStringLiteral("healthSummary"), this)),
      m_everywhere(new QCheckBox(tr("&All yards"), this)),
      m_follow(new desk::WhileShown(*this, desk, dialogs, [this] { read(); })) {
    build();
    connect(m_everywhere, &QCheckBox::toggled, m_follow, &desk::WhileShown::again);
    connect(m_list, &board::RowList::opened, this, &HoldsPage::contactsAsked);
    m_list->setKeys([this](int key) {
        if (key != Qt::Key_A) return false;
        m_everywhere->toggle();
        return true;
    });
}

void HoldsPage::build() {
    auto* title = new QLabel(tr("Held"), this);
    title->setFont(look::headingFont(font()));
    m_summary->setProperty("quiet", true);
    m_alarm->setProperty("warns", true);
    m_everywhere->setToolTip(tr("Held hives of all yards, not only of the one shown (A)"));
    m_list->setAccessibleName(tr("Held hives"));
    m_list->setObjectName(QStringLiteral("healthHeld"));
    auto* head = new QHBoxLayout;
    head->setContentsMargins(kBeside, 0, kBeside, 0);
    head->addWidget(title);
    head->addStretch(1);
    head->addWidget(m_everywhere);
    auto* keys = new look::WrappedLabel(QStringLiteral("healthKeys"), this);
    keys->setProperty("quiet", true);
    keys->tell(tr("Enter traces the contacts of the chosen hive · A all yards · only a record lifts a hold"));
    for (QWidget* label : std::initializer_list<QWidget*>{m_summary, m_alarm, m_broken, keys})
        label->setContentsMargins(kBeside, 0, kBeside, 0);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(8);
    all->addLayout(head);
    all->addWidget(m_summary);
    all->addWidget(m_alarm);
    all->addWidget(m_broken);
    all->addWidget(m_list, 1);
    all->addWidget(keys);
}

void HoldsPage::read() {
    const desk::Reading& reading = m_desk.reading();
    std::vector<core::YardIx> yards;
    const auto shown = m_desk.yard() ? reading.find(*m_desk.yard()) : std::nullopt;
    if (shown) yards.push_back(*shown);
    if (m_everywhere->isChecked())
        for (size_t i = 0; i < reading.snapshot.yards.size(); ++i)
            if (const core::YardIx yard{static_cast<qint32>(i)}; yard != shown) yards.push_back(yard);
    HeldRows held = heldRows(reading, yards);
    const QString day = look::dayText(m_desk.day());
    m_summary->tell(held.held == 0 ? tr("None of %1 hives is held on %2.").arg(held.hives).arg(day)
                                   : tr("%1 of %2 hives are held on %3.").arg(held.held).arg(held.hives).arg(day));
    const QString alarm = alarmText(reading, yards);
    m_alarm->tell(alarm.isEmpty() ? alarm : (alarm + u' ' + whomToTell(m_desk.session(), core::Sign::Afb)).trimmed());
    m_broken->tell(brokenPlans(m_desk).join(u'\n'));
    m_list->setRows(std::move(held.rows));
}

QString HoldsPage::alarm() const { return m_alarm->text(); }
QString HoldsPage::broken() const { return m_broken->text(); }
QString HoldsPage::summary() const { return m_summary->text(); }

} // namespace ui::health
