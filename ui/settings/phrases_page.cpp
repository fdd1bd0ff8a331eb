#include "ui/settings/phrases_page.h"

#include "core/edit/phrases.h"
#include "ui/look/type.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

namespace ui::settings {

namespace edit = core::edit;

PhrasesPage::PhrasesPage(desk::Desk& desk, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_list(new QListWidget(this)),
      m_brief(new QLineEdit(this)),
      m_sentence(new QLineEdit(this)),
      m_problem(new QLabel(this)),
      m_add(new QPushButton(tr("&Add"), this)),
      m_change(new QPushButton(tr("C&hange"), this)),
      m_takeBack(new QPushButton(tr("&Take back"), this)) {
    build();
    connect(&m_desk, &desk::Desk::read, this, &PhrasesPage::refresh);
    connect(m_list, &QListWidget::currentRowChanged, this, &PhrasesPage::showChosen);
    for (QLineEdit* line : {m_brief, m_sentence}) connect(line, &QLineEdit::textEdited, m_problem, &QLabel::clear);
    connect(m_brief, &QLineEdit::returnPressed, m_sentence, [this] { m_sentence->setFocus(Qt::TabFocusReason); });
    connect(m_sentence, &QLineEdit::returnPressed, this, &PhrasesPage::add);
    connect(m_add, &QPushButton::clicked, this, &PhrasesPage::add);
    connect(m_change, &QPushButton::clicked, this, &PhrasesPage::change);
    connect(m_takeBack, &QPushButton::clicked, this, &PhrasesPage::takeBack);
    refresh();
}

void PhrasesPage::build() {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(4, 0, 16, 8);
    auto* heading = new QLabel(tr("Quick sentences"), this);
    heading->setFont(look::headingFont(heading->font()));
    auto* about =
        new QLabel(tr("What you often write in notes. Type the brief word in the note of a visit, then F2: the "
                      "sentence takes its place. F2 by itself lists them all."),
                   this);
    about->setWordWrap(true);
    m_list->setAccessibleName(tr("Quick sentences of this book"));
    m_brief->setAccessibleName(tr("Brief word, to add or for the one chosen"));
    m_brief->setPlaceholderText(tr("Brief word"));
    m_brief->setMaximumWidth(m_brief->fontMetrics().averageCharWidth() * 18);
    m_sentence->setAccessibleName(tr("Sentence that it stands for"));
    m_sentence->setPlaceholderText(tr("Sentence"));
    m_problem->setProperty("warns", true);
    m_problem->setWordWrap(true);
    grid->addWidget(heading, 0, 0, 1, 4);
    grid->addWidget(about, 1, 0, 1, 4);
    grid->addWidget(m_list, 2, 0, 1, 4);
    grid->addWidget(m_brief, 3, 0);
    grid->addWidget(m_sentence, 3, 1, 1, 3);
    grid->addWidget(m_problem, 4, 0, 1, 4);
    int column = 1;
    for (QPushButton* b : {m_add, m_change, m_takeBack}) {
        b->setAutoDefault(false);
        grid->addWidget(b, 5, column++);
    }
    grid->setRowStretch(2, 1);
    grid->setColumnStretch(1, 1);
    setTabOrder(m_sentence, m_add);
}

QString PhrasesPage::problem() const { return m_problem->text(); }

void PhrasesPage::refresh() {
    const auto before = chosen();
    m_phrases = m_desk.session().phrases();
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const core::Phrase& p : m_phrases) {
        m_list->addItem(tr("%1 · %2").arg(p.brief, p.sentence));
        if (before && before->id == p.id) m_list->setCurrentRow(m_list->count() - 1);
    }
    settle();
}

std::optional<core::Phrase> PhrasesPage::chosen() const {
    const int row = m_list->currentRow();
    if (row < 0 || row >= static_cast<int>(m_phrases.size())) return std::nullopt;
    return m_phrases[static_cast<size_t>(row)];
}

void PhrasesPage::showChosen() {
    if (const auto phrase = chosen()) {
        m_brief->setText(phrase->brief);
        m_sentence->setText(phrase->sentence);
    }
    settle();
}

void PhrasesPage::settle() {
    const bool writable = !m_desk.session().readOnly();
    for (QWidget* w : std::initializer_list<QWidget*>{m_brief, m_sentence, m_add}) w->setEnabled(writable);
    for (QPushButton* b : {m_change, m_takeBack}) b->setEnabled(writable && chosen());
}

/// What was typed stays where it cannot be.
bool PhrasesPage::save(const QString& what, const edit::Edit& change) {
    m_problem->clear();
    try {
        m_desk.save(what, change);
        return true;
    } catch (const core::Error& e) {
        m_problem->setText(e.userMessage());
        m_brief->setFocus(Qt::OtherFocusReason);
        return false;
    }
}

void PhrasesPage::add() {
    const QString brief = m_brief->text(), sentence = m_sentence->text();
    if (!save(tr("Add a quick sentence"),
              [&](const edit::EditContext& c) { return edit::addPhrase(c, brief, sentence); }))
        return;
    m_brief->clear();
    m_sentence->clear();
    m_list->setCurrentRow(-1);
    m_brief->setFocus(Qt::OtherFocusReason);
}

void PhrasesPage::change() {
    auto phrase = chosen();
    if (!phrase) return;
    phrase->brief = m_brief->text();
    phrase->sentence = m_sentence->text();
    save(tr("Change a quick sentence"), [&](const edit::EditContext& c) { return edit::changePhrase(c, *phrase); });
}

void PhrasesPage::takeBack() {
    const auto phrase = chosen();
    if (!phrase) return;
    save(tr("Take a quick sentence back"),
         [&](const edit::EditContext& c) { return edit::takeBackPhrase(c, phrase->id); });
}

} // namespace ui::settings
