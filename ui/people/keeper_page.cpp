#include "ui/people/keeper_page.h"

#include "core/edit/keeper.h"
#include "ui/form/form_panel.h"
#include "ui/look/type.h"
#include "ui/people/keeper_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::people {

KeeperPage::KeeperPage(desk::Desk& desk, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_shown(new QLabel(this)),
      m_problem(new QLabel(this)),
      m_change(new QPushButton(this)),
      m_takeBack(new QPushButton(tr("&Take back"), this)),
      m_panel(new form::FormPanel(this)) {
    build();
    connect(&m_desk, &desk::Desk::read, this, &KeeperPage::refresh);
    connect(m_change, &QPushButton::clicked, this, &KeeperPage::open);
    connect(m_takeBack, &QPushButton::clicked, this, &KeeperPage::takeBack);
    connect(m_panel, &form::FormPanel::said, &m_desk, &desk::Desk::said);
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        m_panel->hide();
        m_change->setFocus(Qt::OtherFocusReason);
    });
    refresh();
}

void KeeperPage::build() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(4, 0, 16, 8);
    auto* heading = new QLabel(tr("Keeper"), this);
    heading->setFont(look::headingFont(heading->font()));
    auto* about =
        new QLabel(tr("Whose book it is. Name, address, contact and registration head the inspector's report "
                      "and the medicine book; the place says whose rules of what must be reported are shown."),
                   this);
    about->setWordWrap(true);
    m_shown->setObjectName(QStringLiteral("keeperShown"));
    m_shown->setTextFormat(Qt::PlainText);
    m_shown->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_shown->setWordWrap(true);
    m_problem->setProperty("warns", true);
    m_problem->setWordWrap(true);
    auto* keys = new QHBoxLayout;
    for (QPushButton* b : {m_change, m_takeBack}) {
        b->setAutoDefault(false);
        keys->addWidget(b);
    }
    keys->addStretch(1);
    m_panel->hide();
    for (QWidget* w : std::initializer_list<QWidget*>{heading, about, m_shown}) down->addWidget(w);
    down->addLayout(keys);
    down->addWidget(m_problem);
    down->addWidget(m_panel, 1);
    down->addStretch(0);
}

QString KeeperPage::shown() const { return m_shown->text(); }
QString KeeperPage::problem() const { return m_problem->text(); }

void KeeperPage::refresh() {
    const auto keeper = m_desk.session().keeper();
    QStringList lines;
    if (keeper) {
        lines << keeper->name;
        if (!keeper->address.isEmpty()) lines << keeper->address;
        if (!keeper->contact.isEmpty()) lines << keeper->contact;
        lines << tr("Registration: %1").arg(keeper->registration.isEmpty() ? tr("not recorded") : keeper->registration)
              << tr("Whose rules hold: %1").arg(keeper->place.isEmpty() ? tr("not recorded") : keeper->place);
    } else {
        lines << tr("No keeper is recorded yet.");
    }
    m_shown->setText(lines.join(u'\n'));
    m_change->setText(keeper ? tr("C&hange…") : tr("&Write down…"));
    const bool writable = !m_desk.session().readOnly();
    m_change->setEnabled(writable);
    m_takeBack->setEnabled(writable && keeper);
    m_problem->clear();
    m_panel->judgeAgain();
}

void KeeperPage::open() {
    if (m_panel->dirty()) {
        m_problem->setText(tr("What is typed below is not saved: Enter there saves it, Escape twice throws it away."));
        return;
    }
    m_panel->show();
    m_panel->open(std::make_unique<KeeperForm>(m_desk.session()), m_desk.today(),
                  [this](const form::Form& typed, const form::Values& values) {
                      return m_desk.save(typed.what(), typed.edit(values));
                  });
}

void KeeperPage::takeBack() {
    try {
        m_desk.save(tr("Take the keeper back"),
                    [](const core::edit::EditContext& c) { return core::edit::takeBackKeeper(c); });
    } catch (const core::Error& e) {
        m_problem->setText(e.userMessage());
    }
}

} // namespace ui::people
