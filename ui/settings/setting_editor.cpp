#include "ui/settings/setting_editor.h"

#include "ui/settings/setting_groups.h"

#include <QComboBox>
#include <QDateEdit>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QStringList>
#include <QWheelEvent>

#include <vector>

namespace ui::settings {

namespace {

constexpr int kLeapYear = 2024; // it has every day that a day of the year can be

/// Leaves the wheel to the list it scrolls in, and Ctrl+Z to the window once there is no typing to take back.
class Calm : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Wheel) {
            event->ignore();
            return true;
        }
        if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress)
            return QObject::eventFilter(watched, event);
        auto* key = static_cast<QKeyEvent*>(event);
        const auto* edit = qobject_cast<QLineEdit*>(watched); // none: a day, which has no typing to take back
        const bool ours = (key->matches(QKeySequence::Undo) && (!edit || !edit->isUndoAvailable())) ||
                          (key->matches(QKeySequence::Redo) && (!edit || !edit->isRedoAvailable()));
        if (ours) event->ignore();
        return ours;
    }
};

/// As wide as so many figures, whatever the size of text.
class FiguresEdit : public QLineEdit {
public:
    FiguresEdit(int figures, QWidget* parent) : QLineEdit(parent), m_figures(figures) {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override {
        return {fontMetrics().horizontalAdvance(QString(m_figures, u'0')) + 22, QLineEdit::sizeHint().height()};
    }
    QSize minimumSizeHint() const override { return sizeHint(); }

private:
    int m_figures;
};

QLineEdit* lineFor(QWidget* parent, int figures, const QString& spoken) {
    auto* edit = new FiguresEdit(figures, parent);
    edit->setAccessibleName(spoken);
    edit->installEventFilter(new Calm(edit));
    return edit;
}

QHBoxLayout* flat(QWidget* widget) {
    auto* row = new QHBoxLayout(widget);
    row->setContentsMargins(0, 0, 0, 0);
    return row;
}

class NumberEditor : public SettingEditor {
public:
    NumberEditor(const QString& spoken, QWidget* parent) : SettingEditor(parent), m_edit(lineFor(this, 8, spoken)) {
        flat(this)->addWidget(m_edit);
        setFocusProxy(m_edit);
        connect(m_edit, &QLineEdit::textEdited, this, &SettingEditor::typedAnew);
        connect(m_edit, &QLineEdit::editingFinished, this, &SettingEditor::done);
    }
    QString typed() const override { return m_edit->text().trimmed().replace(u',', u'.'); }
    void show(const QString& canonical) override { m_edit->setText(canonical); }

private:
    QLineEdit* m_edit;
};

class DayEditor : public SettingEditor {
public:
    DayEditor(const QString& spoken, QWidget* parent) : SettingEditor(parent), m_edit(new QDateEdit(this)) {
        m_edit->setDisplayFormat(QStringLiteral("d MMMM"));
        m_edit->setDateRange(QDate(kLeapYear, 1, 1), QDate(kLeapYear, 12, 31));
        m_edit->setWrapping(true);
        m_edit->setAccessibleName(spoken);
        m_edit->setFocusPolicy(Qt::StrongFocus);
        m_edit->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        m_edit->installEventFilter(new Calm(m_edit));
        flat(this)->addWidget(m_edit);
        setFocusProxy(m_edit);
        connect(m_edit, &QDateEdit::dateChanged, this, &SettingEditor::typedAnew);
        connect(m_edit, &QDateEdit::editingFinished, this, &SettingEditor::done);
    }
    QString typed() const override { return m_edit->date().toString(QStringLiteral("MM-dd")); }
    void show(const QString& canonical) override {
        const QSignalBlocker quiet(m_edit);
        m_edit->setDate(QDate(kLeapYear, canonical.left(2).toInt(), canonical.mid(3).toInt()));
    }

private:
    QDateEdit* m_edit;
};

class ChoiceEditor : public SettingEditor {
public:
    ChoiceEditor(const core::SettingField& field, const QString& spoken, QWidget* parent)
        : SettingEditor(parent), m_box(new QComboBox(this)) {
        const QString name = QString::fromUtf8(field.name);
        for (const QString& word : core::choiceWords(field)) m_box->addItem(choiceText(name, word), word);
        m_box->setAccessibleName(spoken);
        m_box->setFocusPolicy(Qt::StrongFocus);
        m_box->installEventFilter(new Calm(m_box));
        flat(this)->addWidget(m_box);
        setFocusProxy(m_box);
        connect(m_box, &QComboBox::activated, this, &SettingEditor::done);
    }
    QString typed() const override { return m_box->currentData().toString(); }
    void show(const QString& canonical) override { m_box->setCurrentIndex(m_box->findData(canonical)); }

private:
    QComboBox* m_box;
};

/// 13 numbers, each under its frames of bees; done when the focus has left them all, or by Enter.
class TableEditor : public SettingEditor {
public:
    TableEditor(const QString& spoken, QWidget* parent) : SettingEditor(parent) {
        auto* grid = new QGridLayout(this);
        grid->setContentsMargins(0, 0, 0, 0);
        grid->setHorizontalSpacing(4);
        grid->setVerticalSpacing(1);
        for (int frames = 0; frames < static_cast<int>(core::ValueTable{}.size()); ++frames) {
            auto* head = new QLabel(QString::number(frames), this);
            head->setProperty("quiet", true);
            grid->addWidget(head, 0, frames, Qt::AlignHCenter);
            QLineEdit* edit = lineFor(this, 4, tr("%1, at %2 frames").arg(spoken).arg(frames));
            edit->setAlignment(Qt::AlignRight);
            grid->addWidget(edit, 1, frames);
            connect(edit, &QLineEdit::textEdited, this, &SettingEditor::typedAnew);
            connect(edit, &QLineEdit::returnPressed, this, &SettingEditor::done);
            edit->installEventFilter(this);
            m_edits.push_back(edit);
        }
        setFocusProxy(m_edits.front());
    }
    QString typed() const override {
        QStringList all;
        for (const QLineEdit* edit : m_edits) {
            const QString number = edit->text().simplified();
            all << (number.isEmpty() ? QStringLiteral("?") : number);
        }
        return all.join(u' ');
    }
    void show(const QString& canonical) override {
        const QStringList all = canonical.split(u' ');
        for (size_t i = 0; i < m_edits.size(); ++i) m_edits[i]->setText(all.value(static_cast<qsizetype>(i)));
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::FocusOut)
            QMetaObject::invokeMethod(
                this, [this] { left(); }, Qt::QueuedConnection);
        return SettingEditor::eventFilter(watched, event);
    }

private:
    void left() {
        for (const QLineEdit* edit : m_edits)
            if (edit->hasFocus()) return;
        emit done();
    }

    std::vector<QLineEdit*> m_edits;
};

} // namespace

SettingEditor* makeSettingEditor(const core::SettingField& field, const QString& spoken, QWidget* parent) {
    if (std::holds_alternative<core::MonthDay core::Settings::*>(field.slot)) return new DayEditor(spoken, parent);
    if (std::holds_alternative<core::ValueTable core::Settings::*>(field.slot)) return new TableEditor(spoken, parent);
    if (!core::choiceWords(field).isEmpty()) return new ChoiceEditor(field, spoken, parent);
    return new NumberEditor(spoken, parent);
}

} // namespace ui::settings
