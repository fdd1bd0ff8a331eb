#include "ui/form/form_panel.h"

#include "core/base/error.h"
#include "ui/form/field_editor.h"
#include "ui/look/type.h"

#include <QFocusEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::form {

namespace {

QLabel* wrapped(const QString& text, QWidget* parent, const char* property = nullptr) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    if (property) label->setProperty(property, true);
    return label;
}

} // namespace

FormPanel::FormPanel(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("Form"));
}

FormPanel::~FormPanel() = default;

void FormPanel::open(std::unique_ptr<Form> form, core::Day today, Save save) {
    m_form = std::move(form);
    m_today = today;
    m_save = std::move(save);
    m_tried = m_leaving = false;
    m_asked.clear();
    m_building = true;
    build();
    const Values start = m_form->start();
    for (FieldRow& row : m_rows)
        if (const auto it = start.find(row.field.key); it != start.end()) setTyped(*row.editor, it->second);
    m_building = false;
    m_started = values();
    judgeAgain();
    focusFirst();
    emit valuesChanged(m_started);
}

void FormPanel::close() {
    if (!m_form) return;
    m_form.reset();
    m_rows.clear();
    m_save = {};
    if (QWidget* page = takeWidget()) page->deleteLater(); // one of its own keys may have closed it
    emit closed();
}

void FormPanel::build() {
    m_rows.clear();
    if (QWidget* before = takeWidget()) before->deleteLater();
    auto* page = new QWidget;
    auto* all = new QVBoxLayout(page);
    all->setContentsMargins(20, 14, 20, 16);
    all->setSpacing(6);
    QLabel* title = wrapped(m_form->title(), page);
    title->setFont(look::headingFont(font()));
    title->setObjectName(QStringLiteral("formTitle"));
    all->addWidget(title);
    m_meanwhile = wrapped({}, page, "warns");
    m_meanwhile->setObjectName(QStringLiteral("meanwhile"));
    all->addWidget(m_meanwhile);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(5);
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 3);
    all->addLayout(grid);
    for (const Field& field : m_form->fields()) addRow(grid, field);
    addFoot(all);
    all->addStretch(1);
    setWidget(page);
}

void FormPanel::addRow(QGridLayout* grid, const Field& field) {
    QWidget* page = grid->parentWidget();
    FieldRow row;
    row.field = field;
    int at = grid->rowCount();
    if (!field.heading.isEmpty()) {
        row.heading = wrapped(field.heading, page);
        QFont bold = font();
        bold.setBold(true);
        row.heading->setFont(bold);
        row.heading->setContentsMargins(0, 8, 0, 0);
        grid->addWidget(row.heading, at++, 0, 1, 2);
    }
    row.editor = makeEditor(field, m_today, page, [this] { typedSomething(); });
    row.editor->installEventFilter(this);
    row.problem = wrapped({}, page, "warns");
    row.problem->setObjectName(QStringLiteral("problem.") + field.key);
    row.problem->hide();
    if (field.kind != Kind::Tick) {
        row.label = wrapped(field.label, page);
        row.label->setBuddy(row.editor);
        if (field.kind != Kind::LongText) row.label->setMinimumHeight(row.editor->sizeHint().height());
        grid->addWidget(row.label, at, 0, Qt::AlignTop);
    }
    const bool narrow = row.editor->maximumWidth() < QWIDGETSIZE_MAX;
    grid->addWidget(row.editor, at++, 1, narrow ? Qt::AlignLeft : Qt::Alignment());
    if (field.note) {
        row.note = wrapped({}, page, "quiet");
        row.note->setObjectName(QStringLiteral("note.") + field.key);
        row.note->hide();
        grid->addWidget(row.note, at++, 1);
    }
    grid->addWidget(row.problem, at, 1);
    m_rows.push_back(row);
}

void FormPanel::addFoot(QVBoxLayout* all) {
    QWidget* page = all->parentWidget();
    m_refused = wrapped({}, page, "warns");
    m_refused->setObjectName(QStringLiteral("problem"));
    m_question = wrapped({}, page, "warns");
    m_question->setObjectName(QStringLiteral("question"));
    all->addSpacing(4);
    all->addWidget(m_refused);
    all->addWidget(m_question);
    for (QLabel* label : {m_meanwhile, m_refused, m_question}) label->hide();
    m_button = new QPushButton(m_form->saveText(), page);
    m_button->setObjectName(QStringLiteral("saveRecord"));
    m_button->setProperty("primary", true);
    connect(m_button, &QPushButton::clicked, this, &FormPanel::save);
    auto* leaving = new QPushButton(tr("Leave"), page);
    leaving->setObjectName(QStringLiteral("leaveForm"));
    leaving->setProperty("plain", true);
    connect(leaving, &QPushButton::clicked, this, &FormPanel::leave);
    auto* line = new QHBoxLayout;
    line->addWidget(m_button);
    line->addWidget(leaving);
    line->addStretch(1);
    all->addLayout(line);
    all->addWidget(wrapped(m_form->hint(), page, "quiet"));
}

Values FormPanel::values() const {
    Values out;
    for (const FieldRow& row : m_rows) out[row.field.key] = typedIn(*row.editor);
    return out;
}

FormPanel::FieldRow* FormPanel::rowOf(const QString& key) {
    const auto it = std::ranges::find_if(m_rows, [&](const FieldRow& row) { return row.field.key == key; });
    return it == m_rows.end() ? nullptr : &*it;
}

void FormPanel::setValue(const QString& key, const QString& text) {
    if (FieldRow* row = rowOf(key)) setTyped(*row->editor, text);
}

void FormPanel::putValues(const Values& put) {
    m_building = true;
    for (const auto& [key, value] : put) {
        m_started[key] = value;
        setValue(key, value);
    }
    m_building = false;
    typedSomething();
}

bool FormPanel::dirty() const { return m_form && values() != m_started; }

void FormPanel::typedSomething() {
    if (m_building || !m_form) return;
    m_leaving = false;
    say(m_refused, {});
    say(m_question, {});
    judgeAgain();
    emit valuesChanged(values());
}

void FormPanel::judgeAgain() {
    if (!m_form) return;
    const Values now = values();
    showRows(now);
    showProblems(judged(now));
    showNotes(now);
    try {
        say(m_meanwhile, m_form->meanwhile().value_or(QString()));
    } catch (const core::Error& e) {
        say(m_meanwhile, e.userMessage());
    }
}

std::vector<Problem> FormPanel::judged(const Values& values) const {
    try {
        return m_form->problems(values);
    } catch (const core::Error& e) {
        return {{QString(), e.userMessage(), false}};
    }
}

void FormPanel::showRows(const Values& values) {
    for (FieldRow& row : m_rows) {
        row.shown = !row.field.shown || row.field.shown(values);
        if (row.label) row.label->setVisible(row.shown);
        row.editor->setVisible(row.shown);
        if (!row.shown) row.problem->hide();
    }
    QLabel* heading = nullptr;
    bool any = false;
    const auto settle = [&] {
        if (heading) heading->setVisible(any);
    };
    for (const FieldRow& row : m_rows) {
        if (row.heading) {
            settle();
            heading = row.heading;
            any = false;
        }
        any |= row.shown;
    }
    settle();
}

/// What is missing is passed over in silence while nobody has been there; so is the whole while nothing is typed.
void FormPanel::showProblems(const std::vector<Problem>& problems) {
    QStringList whole;
    for (FieldRow& row : m_rows) {
        QStringList here;
        for (const Problem& p : problems)
            if (p.field == row.field.key && (!p.missing || row.left || m_tried)) here << p.text;
        say(row.problem, row.shown ? here.join(u' ') : QString());
        row.editor->setAccessibleDescription(here.join(u' '));
    }
    for (const Problem& p : problems)
        if (p.field.isEmpty() && (m_tried || (!p.missing && dirty()))) whole << p.text;
    if (!whole.isEmpty() || m_refused->property("judged").toBool()) say(m_refused, whole.join(u' '));
    m_refused->setProperty("judged", !whole.isEmpty());
}

void FormPanel::say(QLabel* label, const QString& text) {
    label->setText(text);
    label->setVisible(!text.isEmpty());
}

/// Where nothing is wrong in the field.
void FormPanel::showNotes(const Values& values) {
    for (FieldRow& row : m_rows)
        if (row.note) say(row.note, row.shown && row.problem->isHidden() ? row.field.note(values) : QString());
}

bool FormPanel::askedAbout(const QStringList& odd) {
    const bool all = std::ranges::all_of(odd, [this](const QString& o) { return m_asked.contains(o); });
    if (all) return true;
    m_asked.insert(odd.begin(), odd.end());
    say(m_question, tr("%1 Save all the same? Enter again saves.").arg(odd.join(u' ')));
    emit said(m_question->text());
    ensureWidgetVisible(m_question);
    return false;
}

void FormPanel::save() {
    if (!m_form) return;
    m_tried = true;
    m_leaving = false;
    const Values now = values();
    const auto found = judged(now);
    showProblems(found);
    if (!found.empty()) {
        emit said(found.front().text);
        FieldRow* row = rowOf(found.front().field);
        if (!row) return ensureWidgetVisible(m_refused);
        row->editor->setFocus(Qt::OtherFocusReason);
        return ensureWidgetVisible(row->editor);
    }
    QString why;
    try {
        if (!askedAbout(m_form->odd(now))) return;
        if (m_save(*m_form, now)) return close();
        why = tr("Nothing is saved yet: the question was not answered.");
    } catch (const core::Error& e) {
        why = e.userMessage();
    } catch (const std::exception& e) {
        why = QString::fromUtf8(e.what());
    }
    say(m_refused, why);
    ensureWidgetVisible(m_refused);
    emit said(why);
}

void FormPanel::leave() {
    if (dirty() && !m_leaving) {
        m_leaving = true;
        return emit said(tr("This is not saved: Enter saves it, Escape again throws the typing away."));
    }
    emit said(QString()); // what was said of this form is over
    close();
}

void FormPanel::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return save();
    case Qt::Key_Escape:
        return leave();
    default:
        QScrollArea::keyPressEvent(event);
    }
}

void FormPanel::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    focusFirst();
}

void FormPanel::focusFirst() {
    for (const FieldRow& row : m_rows)
        if (row.shown) {
            row.editor->setFocus(Qt::OtherFocusReason);
            if (auto* line = qobject_cast<QLineEdit*>(row.editor)) line->selectAll(); // typing says it anew
            return;
        }
}

/// A field that was left says what is missing; another window in front leaves nothing.
bool FormPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && qobject_cast<QWidget*>(watched)) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && key->modifiers().testFlag(Qt::ControlModifier)) { // in a long text Enter is a new line
            save();
            return true;
        }
    }
    if (event->type() == QEvent::FocusOut && !m_building && m_form) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        const bool away = reason == Qt::ActiveWindowFocusReason || reason == Qt::PopupFocusReason;
        for (FieldRow& row : m_rows)
            if (row.editor == watched && !away && !row.left) {
                row.left = true;
                showProblems(judged(values()));
                break;
            }
    }
    return QScrollArea::eventFilter(watched, event);
}

} // namespace ui::form
