#include "ui/people/people_page.h"

#include "core/edit/people.h"
#include "ui/look/type.h"
#include "ui/people/author.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::people {

namespace edit = core::edit;

PeoplePage::PeoplePage(desk::Desk& desk, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_list(new QListWidget(this)),
      m_name(new QLineEdit(this)),
      m_problem(new QLabel(this)) {
    build();
    connect(&m_desk, &desk::Desk::read, this, &PeoplePage::refresh);
    connect(&m_desk, &desk::Desk::authorChanged, this, &PeoplePage::refresh);
    connect(m_list, &QListWidget::currentRowChanged, this, &PeoplePage::settle);
    connect(m_name, &QLineEdit::textEdited, m_problem, &QLabel::clear);
    connect(m_name, &QLineEdit::returnPressed, this, &PeoplePage::add);
    connect(m_add, &QPushButton::clicked, this, &PeoplePage::add);
    connect(m_rename, &QPushButton::clicked, this, &PeoplePage::rename);
    connect(m_writes, &QPushButton::clicked, this, &PeoplePage::write);
    connect(m_offered, &QPushButton::clicked, this, &PeoplePage::offer);
    connect(m_takeBack, &QPushButton::clicked, this, &PeoplePage::takeBack);
    refresh();
}

QPushButton* PeoplePage::addButtonTo(QWidget* row, const QString& text) {
    auto* button = new QPushButton(text, row);
    button->setAutoDefault(false);
    row->layout()->addWidget(button);
    return button;
}

void PeoplePage::build() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(4, 0, 16, 8);
    auto* heading = new QLabel(tr("People"), this);
    heading->setFont(look::headingFont(heading->font()));
    auto* about =
        new QLabel(tr("Who keeps this book. Names are offered where a record asks by whom, and written beside "
                      "each change in the history. A record keeps the name that it was written with."),
                   this);
    about->setWordWrap(true);
    m_list->setAccessibleName(tr("People who keep this book"));
    m_name->setAccessibleName(tr("A name to add, or to give to the one chosen"));
    m_name->setPlaceholderText(tr("A name"));
    m_problem->setProperty("warns", true);
    m_problem->setWordWrap(true);
    const auto row = [this] {
        auto* w = new QWidget(this);
        auto* across = new QHBoxLayout(w);
        across->setContentsMargins(0, 0, 0, 0);
        return w;
    };
    QWidget* typing = row();
    typing->layout()->addWidget(m_name);
    m_add = addButtonTo(typing, tr("&Add"));
    m_rename = addButtonTo(typing, tr("Change the &name"));
    QWidget* chosen = row();
    m_writes = addButtonTo(chosen, tr("&Writes now"));
    m_offered = addButtonTo(chosen, tr("No longer &offered"));
    m_takeBack = addButtonTo(chosen, tr("&Take back"));
    static_cast<QHBoxLayout*>(chosen->layout())->addStretch(1);
    for (QWidget* w : std::initializer_list<QWidget*>{heading, about, m_list, chosen, typing, m_problem})
        down->addWidget(w, w == m_list ? 1 : 0);
}

QString PeoplePage::problem() const { return m_problem->text(); }

void PeoplePage::refresh() {
    const auto before = chosen();
    m_people = m_desk.session().people();
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const core::Person& p : m_people) {
        QString text = p.name;
        if (p.name == m_desk.author()) text = tr("%1 · writes now").arg(text);
        if (!p.active) text = tr("%1 · no longer offered").arg(text);
        m_list->addItem(text);
        if (before && before->id == p.id) m_list->setCurrentRow(m_list->count() - 1);
    }
    settle();
}

std::optional<core::Person> PeoplePage::chosen() const {
    const int row = m_list->currentRow();
    if (row < 0 || row >= static_cast<int>(m_people.size())) return std::nullopt;
    return m_people[static_cast<size_t>(row)];
}

void PeoplePage::settle() {
    const bool writable = !m_desk.session().readOnly();
    const auto person = chosen();
    m_name->setEnabled(writable);
    m_add->setEnabled(writable);
    for (QPushButton* b : {m_rename, m_offered, m_takeBack}) b->setEnabled(writable && person);
    m_writes->setEnabled(writable && person && person->active);
    m_offered->setText(person && !person->active ? tr("&Offered again") : tr("No longer &offered"));
}

void PeoplePage::save(const QString& what, const edit::Edit& change) {
    m_problem->clear();
    try {
        m_desk.save(what, change);
    } catch (const core::Error& e) {
        m_problem->setText(e.userMessage());
        m_name->setFocus(Qt::OtherFocusReason);
    }
}

void PeoplePage::add() {
    const QString name = m_name->text().simplified();
    const bool first = m_people.empty() && m_desk.author().isEmpty();
    if (first && !name.isEmpty()) m_desk.setAuthor(name);
    save(tr("Add a person"), [&](const edit::EditContext& c) { return edit::addPerson(c, name); });
    if (!m_problem->text().isEmpty()) {
        if (first) m_desk.setAuthor({});
        return;
    }
    if (first) rememberAuthor(name);
    m_name->clear();
    refresh();
}

void PeoplePage::rename() {
    auto person = chosen();
    if (!person) return;
    const bool writes = person->name == m_desk.author();
    person->name = m_name->text().simplified();
    save(tr("Change a name"), [&](const edit::EditContext& c) { return edit::changePerson(c, *person); });
    if (!m_problem->text().isEmpty()) return;
    m_name->clear();
    if (!writes) return;
    m_desk.setAuthor(person->name);
    rememberAuthor(person->name);
}

void PeoplePage::write() {
    const auto person = chosen();
    if (!person) return;
    m_desk.setAuthor(person->name);
    rememberAuthor(person->name);
}

void PeoplePage::offer() {
    auto person = chosen();
    if (!person) return;
    person->active = !person->active;
    save(tr("Change who is offered"), [&](const edit::EditContext& c) { return edit::changePerson(c, *person); });
}

void PeoplePage::takeBack() {
    const auto person = chosen();
    if (!person) return;
    save(tr("Take a person back"), [&](const edit::EditContext& c) { return edit::takeBackPerson(c, person->id); });
}

} // namespace ui::people
