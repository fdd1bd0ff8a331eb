#include "ui/form/suggestions.h"

#include <QAbstractItemView>
#include <QAbstractListModel>
#include <QCompleter>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace ui::form {

namespace {

class OptionModel : public QAbstractListModel {
public:
    OptionModel(std::vector<Option> options, QObject* parent)
        : QAbstractListModel(parent), m_options(std::move(options)) {}

    int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_options.size());
    }
    QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid() || index.row() >= rowCount()) return {};
        const Option& o = m_options[static_cast<size_t>(index.row())];
        if (role == Qt::EditRole) return o.value;
        if (role == Qt::DisplayRole) return o.text.isEmpty() ? o.value : o.text;
        return {};
    }

private:
    std::vector<Option> m_options;
};

/// Enter over a list with nothing marked is meant for the form.
class EnterPasses : public QObject {
public:
    explicit EnterPasses(QCompleter* completer) : QObject(completer), m_completer(completer) {
        completer->popup()->installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Show) dress();
        if (event->type() != QEvent::KeyPress) return QObject::eventFilter(watched, event);
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (!enter || m_completer->popup()->currentIndex().isValid()) return QObject::eventFilter(watched, event);
        m_completer->popup()->hide();
        QCoreApplication::postEvent(m_completer->widget(), key->clone());
        return true;
    }

private:
    /// The list is a window of its own, which has the program's look from the field.
    void dress() const {
        m_completer->popup()->setFont(m_completer->widget()->font());
        m_completer->popup()->setPalette(m_completer->widget()->window()->palette());
    }

    QCompleter* m_completer;
};

} // namespace

void suggest(QLineEdit& edit, const std::vector<Option>& options) {
    auto* completer = new QCompleter(&edit);
    completer->setModel(new OptionModel(options, completer));
    completer->setCompletionRole(Qt::EditRole);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setCompletionMode(QCompleter::PopupCompletion);
    edit.setCompleter(completer);
    new EnterPasses(completer);
}

} // namespace ui::form
