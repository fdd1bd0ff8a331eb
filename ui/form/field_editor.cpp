#include "ui/form/field_editor.h"

#include "ui/form/day_edit.h"
#include "ui/form/suggestions.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace ui::form {

namespace {

constexpr int kShort = 14; // characters of a number or day
constexpr int kLines = 4;

class NoWheel : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() != QEvent::Wheel) return QObject::eventFilter(watched, event);
        event->ignore();
        return true;
    }
};

QString shownText(const Option& option) { return option.text.isEmpty() ? option.value : option.text; }

QWidget* makeChoice(const Field& field, QWidget* parent, const std::function<void()>& changed) {
    auto* box = new QComboBox(parent);
    for (const Option& option : field.options) box->addItem(shownText(option), option.value);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(kShort);
    QObject::connect(box, &QComboBox::currentIndexChanged, box, [changed] { changed(); });
    return box;
}

QWidget* makeLong(const Field& field, QWidget* parent, const std::function<void()>& changed) {
    auto* edit = new QPlainTextEdit(parent);
    edit->setTabChangesFocus(true);
    edit->setPlaceholderText(field.hint);
    edit->setFixedHeight(edit->fontMetrics().lineSpacing() * kLines + 10);
    QObject::connect(edit, &QPlainTextEdit::textChanged, edit, [changed] { changed(); });
    return edit;
}

QWidget* makeTick(const Field& field, QWidget* parent, const std::function<void()>& changed) {
    auto* box = new QCheckBox(field.label, parent);
    QObject::connect(box, &QCheckBox::toggled, box, [changed] { changed(); });
    return box;
}

QWidget* makeLine(const Field& field, core::Day today, QWidget* parent, const std::function<void()>& changed) {
    QLineEdit* edit = field.kind == Kind::Day ? new DayEdit(today, parent) : new QLineEdit(parent);
    edit->setPlaceholderText(field.hint);
    if (field.kind == Kind::Whole || field.kind == Kind::Decimal || field.kind == Kind::Day)
        edit->setMaximumWidth(edit->fontMetrics().averageCharWidth() * kShort + 24);
    if (!field.options.empty()) suggest(*edit, field.options);
    QObject::connect(edit, &QLineEdit::textChanged, edit, [changed] { changed(); });
    return edit;
}

QWidget* madeFor(const Field& field, core::Day today, QWidget* parent, const std::function<void()>& changed) {
    switch (field.kind) {
    case Kind::Choice:
    case Kind::Yard:
        return makeChoice(field, parent, changed);
    case Kind::LongText:
        return makeLong(field, parent, changed);
    case Kind::Tick:
        return makeTick(field, parent, changed);
    default:
        return makeLine(field, today, parent, changed);
    }
}

} // namespace

QWidget* makeEditor(const Field& field, core::Day today, QWidget* parent, const std::function<void()>& changed) {
    QWidget* editor = madeFor(field, today, parent, changed);
    editor->setObjectName(QStringLiteral("field.") + field.key);
    editor->setAccessibleName(field.spoken);
    if (qobject_cast<QComboBox*>(editor)) setUpInForm(*editor);
    return editor;
}

void setUpInForm(QWidget& editor) {
    if (editor.focusPolicy() == Qt::WheelFocus) editor.setFocusPolicy(Qt::StrongFocus);
    editor.installEventFilter(new NoWheel(&editor));
    if (auto* box = qobject_cast<QComboBox*>(&editor)) box->view()->setAccessibleName(editor.accessibleName());
}

QString typedIn(const QWidget& editor) {
    if (const auto* line = qobject_cast<const QLineEdit*>(&editor)) return line->text();
    if (const auto* box = qobject_cast<const QComboBox*>(&editor)) return box->currentData().toString();
    if (const auto* tick = qobject_cast<const QCheckBox*>(&editor)) return tick->isChecked() ? kTicked : QString();
    if (const auto* text = qobject_cast<const QPlainTextEdit*>(&editor)) return text->toPlainText();
    return {};
}

void setTyped(QWidget& editor, const QString& text) {
    if (auto* line = qobject_cast<QLineEdit*>(&editor)) line->setText(text);
    if (auto* box = qobject_cast<QComboBox*>(&editor)) box->setCurrentIndex(std::max(0, box->findData(text)));
    if (auto* tick = qobject_cast<QCheckBox*>(&editor)) tick->setChecked(text == kTicked);
    if (auto* plain = qobject_cast<QPlainTextEdit*>(&editor)) plain->setPlainText(text);
}

} // namespace ui::form
