#include "ui/ready/ready_page.h"

#include "ui/board/row_list.h"
#include "ui/kit/kit_book.h"
#include "ui/look/type.h"
#include "ui/look/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::ready {

ReadyPage::ReadyPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_list(new board::RowList(desk, this)) {
    build();
    new desk::WhileShown(*this, desk, dialogs, [this] { read(); }); // this one's
    connect(m_list, &board::RowList::opened, this, &ReadyPage::visitAsked);
    m_list->setKeys([this](int key) { return pressed(key); });
    for (const auto& [text, act] :
         {std::pair(tr("&Walk through what is missing"), &ReadyPage::walk),
          std::pair(tr("&Sheet of what is missing…"), &ReadyPage::sheet), std::pair(tr("&Kit…"), &ReadyPage::kit)}) {
        auto* action = new QAction(text, this); // in the menu of the merge day
        connect(action, &QAction::triggered, this, act);
        addAction(action);
    }
    setFocusProxy(m_list);
}

QPushButton* ReadyPage::button(const QString& text, const QString& tip, void (ReadyPage::*act)()) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, act);
    return made;
}

void ReadyPage::build() {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    auto* title = new QLabel(tr("Get ready"), this);
    title->setFont(look::headingFont(font()));
    title->setContentsMargins(20, 0, 20, 0);
    m_where = new QLabel(this);
    m_where->setProperty("quiet", true);
    m_where->setWordWrap(true);
    m_where->setContentsMargins(20, 0, 20, 0);
    m_where->setObjectName(QStringLiteral("readyWhere"));
    m_list->setAccessibleName(tr("What to do before the merge day"));
    m_list->setObjectName(QStringLiteral("readyList"));
    all->addWidget(title);
    all->addWidget(m_where);
    all->addWidget(m_list, 1);
    all->addWidget(foot());
}

QWidget* ReadyPage::foot() {
    auto* foot = new QWidget(this);
    auto* down = new QVBoxLayout(foot);
    down->setContentsMargins(20, 6, 20, 0);
    m_walk = button(tr("&Walk through"), tr("The visits of these hives, one after the other (W)"), &ReadyPage::walk);
    m_walk->setProperty("primary", true);
    m_walk->setObjectName(QStringLiteral("readyWalk"));
    m_sheet = button(tr("&Sheet…"), tr("What is missing, with room to write it (S)"), &ReadyPage::sheet);
    m_sheet->setObjectName(QStringLiteral("readySheet"));
    m_kit = button(tr("&Kit…"), tr("Count kit, clean it, carry it (K)"), &ReadyPage::kit);
    m_kit->setObjectName(QStringLiteral("readyKit"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_sheet);
    buttons->addWidget(m_kit);
    buttons->addStretch(1);
    buttons->addWidget(m_walk);
    auto* keys = new QLabel(tr("Enter visits the chosen hive · W walks through all · S sheet · K kit"), foot);
    keys->setProperty("quiet", true);
    keys->setWordWrap(true);
    down->addLayout(buttons);
    down->addWidget(keys);
    return foot;
}

QString ReadyPage::summary() const { return m_where->text(); }

const board::BoardModel& ReadyPage::model() const { return m_list->rows(); }

void ReadyPage::read() {
    const desk::Reading& reading = m_desk.reading();
    const auto yard = m_desk.yard() ? reading.find(*m_desk.yard()) : std::nullopt;
    m_rows = yard ? readyRows(reading, *yard, kit::pilesOf(m_desk.session(), reading.snapshot)) : ReadyRows{};
    m_list->setRows(m_rows.rows);
    QStringList parts;
    if (yard) parts << reading.snapshot.yard(*yard).name << look::dayText(m_desk.day());
    if (!m_rows.summary.isEmpty()) parts << m_rows.summary;
    m_where->setText(parts.join(QStringLiteral(" · ")));
    m_walk->setEnabled(!m_rows.missing.empty());
    m_sheet->setEnabled(!m_rows.missing.empty());
}

void ReadyPage::walk() {
    std::vector<core::ColonyId> hives;
    for (const core::rules::ColonyMissing& m : m_rows.missing)
        hives.push_back(m_desk.reading().snapshot.colony(m.colony).id);
    if (hives.empty()) return emit m_desk.said(tr("Nothing is missing here."));
    m_desk.select(hives, hives.front());
    emit walkAsked();
}

bool ReadyPage::pressed(int key) {
    switch (key) {
    case Qt::Key_W:
        return walk(), true;
    case Qt::Key_S:
        if (m_sheet->isEnabled()) sheet();
        return true;
    case Qt::Key_K:
        return kit(), true;
    default:
        return false;
    }
}

} // namespace ui::ready
