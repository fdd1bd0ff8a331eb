#include "ui/spring/divide_looks.h"

#include "ui/look/words.h"
#include "ui/spring/spring_words.h"

#include <QBoxLayout>
#include <QLabel>
#include <QListWidget>

#include <algorithm>

namespace ui::spring {

namespace {

constexpr int kLooksShown = 4;
constexpr int kColonyRole = Qt::UserRole;

} // namespace

DivideLooks::DivideLooks(desk::Desk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_list(new QListWidget(this)) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(20, 6, 20, 8);
    down->setSpacing(4);
    auto* title = new QLabel(tr("Looks after divides: log what is seen as a visit (Ctrl+L)"), this);
    title->setWordWrap(true);
    down->addWidget(title);
    m_list->setObjectName(QStringLiteral("divideLooksDue"));
    m_list->setAccessibleName(tr("Looks at new colonies that are due"));
    m_list->setWordWrap(true);
    down->addWidget(m_list);
    connect(m_list, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item && !m_telling) m_desk.choose(core::ColonyId{item->data(kColonyRole).toLongLong()});
    });
    connect(&m_desk, &desk::Desk::read, this, &DivideLooks::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, &DivideLooks::follow);
    follow();
}

void DivideLooks::follow() {
    m_telling = true;
    m_list->clear();
    const desk::Reading& r = m_desk.reading();
    const auto yard = m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    for (const core::rules::DivideDue& due : r.divideDue) {
        if (!yard || r.factsOf(due.colony).yard != *yard) continue;
        const core::SnapColony& colony = r.snapshot.colony(due.colony);
        const QString text =
            tr("%1  %2: %3").arg(look::shortDayText(due.date.look), colony.shown, checkText(due.date.what));
        auto* item = new QListWidgetItem(due.date.look < r.snapshot.on ? tr("%1 (overdue)").arg(text) : text, m_list);
        item->setData(kColonyRole, static_cast<qlonglong>(colony.id.value));
        item->setToolTip(tr("Divided from %1 on %2. %3")
                             .arg(r.snapshot.colony(due.mother).shown, look::dayText(due.divided),
                                  core::rules::textOf({sentenceOf(due.date)})));
    }
    const int rows = std::clamp(m_list->count(), 1, kLooksShown);
    m_list->setFixedHeight((rows + 1) * fontMetrics().lineSpacing() + 2 * m_list->frameWidth() + 6);
    setVisible(m_list->count() > 0);
    m_telling = false;
}

DivideLooks* addDivideLooks(QWidget* page, desk::Desk& desk) {
    auto* looks = new DivideLooks(desk, page);
    if (auto* down = qobject_cast<QBoxLayout*>(page->layout())) down->addWidget(looks);
    return looks;
}

} // namespace ui::spring
