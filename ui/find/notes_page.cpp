#include "ui/find/notes_page.h"

#include "ui/find/filter_row.h"
#include "ui/find/note_delegate.h"
#include "ui/find/note_model.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>

namespace ui::find {

namespace {

constexpr int kNotesTypingMs = 150;

} // namespace

NotesPage::NotesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_line(filterLine(this, tr("Search notes"), tr("Words of a note: all of them must be in it"))),
      m_list(new QListView(this)),
      m_model(new NoteModel(this)),
      m_foot(new QLabel(this)) {
    m_line->setObjectName(QStringLiteral("searchNotes"));
    m_list->setObjectName(QStringLiteral("notesFound"));
    m_list->setAccessibleName(tr("Notes found"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new NoteDelegate(m_list));
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    m_foot->setWordWrap(true);
    m_foot->setTextFormat(Qt::PlainText);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(14, 10, 14, 10);
    down->setSpacing(8);
    down->addWidget(m_line);
    down->addWidget(m_list, 1);
    down->addWidget(m_foot);
    setTabOrder(m_line, m_list);
    setFocusProxy(m_line);
    m_line->installEventFilter(this);
    m_typing.setSingleShot(true);
    m_typing.setInterval(kNotesTypingMs);
    connect(m_line, &QLineEdit::textChanged, &m_typing, qOverload<>(&QTimer::start));
    connect(&m_typing, &QTimer::timeout, this, &NotesPage::look);
    connect(m_line, &QLineEdit::returnPressed, this, &NotesPage::toList);
    connect(m_list, &QListView::activated, this, [this](const QModelIndex& at) {
        if (at.isValid()) emit opened(core::NoteFound(m_model->at(at.row())));
    });
    connect(&m_desk, &desk::Desk::read, this, [this] {
        if (isVisible()) look();
    });
    look();
}

/// Once for what is typed now; what was chosen stays chosen where it is still found.
void NotesPage::look() {
    m_typing.stop();
    guarded(m_dialogs, [this] {
        const QModelIndex now = m_list->currentIndex();
        const auto was = now.isValid() ? std::optional(m_model->at(now.row())) : std::nullopt;
        m_model->show(m_desk.session(), m_line->text());
        for (int row = 0; was && row < m_model->rowCount(); ++row)
            if (m_model->at(row).of == was->of && m_model->at(row).id == was->id)
                m_list->setCurrentIndex(m_model->index(row));
        const core::NotesFound& found = m_model->found();
        if (m_line->text().trimmed().isEmpty())
            m_foot->setText(tr("Notes of visits, colonies, yards, transfers, results, unions, feed and queens, and "
                               "reasons of treatments. In quotes: those words in that order."));
        else if (found.count == 0)
            m_foot->setText(tr("No note has these words."));
        else if (found.more)
            m_foot->setText(tr("More than %1 notes have these words; of those written last, the newest %2.")
                                .arg(found.count)
                                .arg(m_model->rowCount()));
        else if (found.count > m_model->rowCount())
            m_foot->setText(tr("%1 notes have these words; the newest %2.").arg(found.count).arg(m_model->rowCount()));
        else
            m_foot->setText(
                found.count == 1
                    ? tr("1 note, Enter opens where it was written.")
                    : tr("%1 notes, the newest first. Enter opens where one was written.").arg(found.count));
    });
}

void NotesPage::toList() {
    if (m_typing.isActive()) look();
    if (m_model->rowCount() == 0) return;
    if (!m_list->currentIndex().isValid()) m_list->setCurrentIndex(m_model->index(0));
    m_list->setFocus(Qt::OtherFocusReason);
}

bool NotesPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_line && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
        toList();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void NotesPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    look();
}

} // namespace ui::find
