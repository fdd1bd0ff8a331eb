#include "ui/history/filter_bar.h"

#include "ui/form/book_options.h"
#include "ui/form/suggestions.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

namespace ui::history {

namespace {

constexpr int kTypingMs = 250;

template <class W> W* labelled(QHBoxLayout* across, const QString& text, W* field, int stretch) {
    auto* label = new QLabel(text, field->parentWidget());
    label->setBuddy(field);
    across->addWidget(label);
    across->addWidget(field, stretch);
    return field;
}

} // namespace

FilterBar::FilterBar(const core::edit::Session& session, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_dialogs(dialogs),
      m_colony(new QLineEdit(this)),
      m_yard(new QComboBox(this)),
      m_words(new QLineEdit(this)),
      m_all(new QPushButton(tr("Show &all"), this)),
      m_problem(new QLabel(this)) {
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(14, 10, 14, 8);
    across->setSpacing(8);
    labelled(across, tr("&Colony"), m_colony, 2)->setObjectName(QStringLiteral("historyColony"));
    m_colony->setAccessibleName(tr("Only changes of this colony"));
    m_colony->setPlaceholderText(tr("any"));
    labelled(across, tr("&Yard"), m_yard, 2)->setObjectName(QStringLiteral("historyYard"));
    m_yard->setAccessibleName(tr("Only changes in this yard"));
    m_yard->addItem(tr("any yard"));
    labelled(across, tr("&Words"), m_words, 3)->setObjectName(QStringLiteral("historyWords"));
    m_words->setAccessibleName(tr("Only changes with these words"));
    m_words->setPlaceholderText(tr("in what was done, by whom, or why"));
    m_all->setAccessibleName(tr("Show all changes"));
    m_all->setEnabled(false);
    across->addWidget(m_all);
    m_problem->setProperty("warns", true);
    m_problem->hide();
    across->addWidget(m_problem);
    auto* typing = new QTimer(this);
    typing->setSingleShot(true);
    typing->setInterval(kTypingMs);
    connect(typing, &QTimer::timeout, this, &FilterBar::changed);
    for (QLineEdit* edit : {m_colony, m_words}) {
        connect(edit, &QLineEdit::textChanged, typing, qOverload<>(&QTimer::start));
        connect(edit, &QLineEdit::returnPressed, this, [this, typing] {
            typing->stop();
            emit changed();
        });
    }
    connect(m_yard, &QComboBox::currentIndexChanged, this, &FilterBar::changed);
    m_colony->installEventFilter(this);
    connect(this, &FilterBar::changed, this, [this] { m_all->setEnabled(!empty()); });
    connect(m_all, &QPushButton::clicked, this, [this, typing] {
        clear();
        typing->stop();
        m_colony->setFocus();
        emit changed();
    });
}

bool FilterBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn && !m_listed) {
        m_listed = true;
        guarded(m_dialogs, [this] { form::suggest(*m_colony, form::colonyOptions(m_session)); });
    }
    return QWidget::eventFilter(watched, event);
}

void FilterBar::offer() {
    m_listed = m_listed && m_colony->hasFocus();
    const QVariant chosen = m_yard->currentData();
    const QSignalBlocker quiet(m_yard);
    m_yard->clear();
    m_yard->addItem(tr("any yard"));
    for (const core::Yard& yard : m_session.yards()) m_yard->addItem(yard.name, yard.id.value);
    m_yard->setCurrentIndex(qMax(0, m_yard->findData(chosen)));
}

core::edit::HistoryFilter FilterBar::filter() const {
    core::edit::HistoryFilter filter;
    const QString name = m_colony->text().trimmed();
    if (!name.isEmpty()) {
        const auto colony = form::colonyNamed(m_session, name, m_session.clock().today());
        if (colony) filter.colony = colony->id;
        look(colony ? QString() : tr("No colony is called %1.").arg(name));
    } else {
        look({});
    }
    if (m_yard->currentIndex() > 0) filter.yard = core::YardId{m_yard->currentData().toLongLong()};
    filter.text = m_words->text().trimmed();
    return filter;
}

void FilterBar::look(const QString& problem) const {
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    m_colony->setAccessibleDescription(problem);
}

QWidget* FilterBar::lastPart() const { return m_all; }

bool FilterBar::empty() const {
    return m_colony->text().trimmed().isEmpty() && m_yard->currentIndex() <= 0 && m_words->text().trimmed().isEmpty();
}

void FilterBar::clear() {
    const QSignalBlocker quiet[] = {QSignalBlocker(m_colony), QSignalBlocker(m_yard), QSignalBlocker(m_words)};
    m_colony->clear();
    m_yard->setCurrentIndex(0);
    m_words->clear();
}

} // namespace ui::history
