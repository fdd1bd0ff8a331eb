#include "ui/close/close_page.h"

#include "ui/close/close_delegate.h"
#include "ui/close/close_forms.h"
#include "ui/look/type.h"
#include "ui/look/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::close {

using core::StripOutcome;

ClosePage::ClosePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_work(desk),
      m_model(new CloseModel(this)),
      m_delegate(new CloseDelegate(*m_model, this)),
      m_list(new QListView(this)),
      m_panel(new form::FormPanel(this)),
      m_foot(new CloseFoot(this)) {
    build();
    connect(m_foot, &CloseFoot::asked, this, &ClosePage::pressed);
    connect(&m_work, &CloseWork::changed, this, &ClosePage::showLines);
    connect(&m_desk, &desk::Desk::read, this, &ClosePage::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, &ClosePage::follow);
    connect(&m_desk, &desk::Desk::chosenChanged, this, &ClosePage::showChosen);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &ClosePage::moved);
    connect(m_list, &QListView::doubleClicked, this, &ClosePage::done);
    connect(m_panel, &form::FormPanel::said, &m_desk, &desk::Desk::said);
    connect(m_panel, &form::FormPanel::valuesChanged, m_panel, [this] { m_panel->updateGeometry(); });
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        m_panel->hide();
        m_foot->QWidget::show();
        m_list->setFocus(Qt::OtherFocusReason);
    });
    setFocusProxy(m_list);
}

QLabel* ClosePage::label(const char* property, const QString& name) {
    auto* made = new QLabel(this);
    made->setProperty(property, true);
    made->setObjectName(name);
    made->setWordWrap(true);
    made->setContentsMargins(20, 0, 20, 0);
    layout()->addWidget(made);
    return made;
}

void ClosePage::build() {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    auto* title = label("heading", {});
    title->setText(tr("Write back"));
    title->setFont(look::headingFont(font()));
    m_where = label("quiet", QStringLiteral("closeWhere"));
    m_barred = label("warns", QStringLiteral("closeBarred"));
    buildList();
    all->addWidget(m_list, 1);
    all->addWidget(m_panel);
    m_panel->hide();
    all->addWidget(m_foot);
    m_foot->writeButton()->installEventFilter(this); // the keys of the list go on there
    addActions(m_foot->actions());
}

void ClosePage::buildList() {
    m_list->setModel(m_model);
    m_list->setItemDelegate(m_delegate);
    m_list->setAccessibleName(tr("Strips of the merge day"));
    m_list->setObjectName(QStringLiteral("closeLines"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setResizeMode(QListView::Adjust);
    m_list->viewport()->setAutoFillBackground(false);
    m_list->viewport()->installEventFilter(this);
    m_list->installEventFilter(this);
}

void ClosePage::follow() {
    m_stale = true;
    if (isVisible()) settle();
}

void ClosePage::settle() {
    if (!m_stale) return;
    m_stale = false;
    guarded(m_dialogs, [this] { m_work.read(); });
}

void ClosePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    settle();
}

void ClosePage::showLines() {
    const Lines& lines = m_work.lines();
    int before = -1; // where the same strip is now
    if (row() >= 0) {
        const Line& was = m_model->at(row());
        const auto now = std::ranges::find_if(
            lines.lines, [&](const Line& l) { return l.how == was.how && l.moved == was.moved && l.host == was.host; });
        if (now != lines.lines.end()) before = static_cast<int>(now - lines.lines.begin());
    }
    m_telling = true;
    m_model->setLines(lines.lines);
    const int count = m_model->rowCount();
    const int first = lines.firstOpen();
    goTo(before >= 0 ? before : first >= 0 ? first : count - 1);
    m_telling = false;
    const auto yard = m_desk.yard() ? m_desk.session().yard(*m_desk.yard()) : std::nullopt;
    const int written = lines.count(Stage::Written) + lines.count(Stage::Elsewhere);
    QStringList parts{tr("%1 · %2").arg(yard ? yard->name : QString(), look::dayText(m_desk.day()))};
    if (count > 0) {
        parts << tr("%1 of %2 written").arg(written).arg(count);
        if (const int n = lines.count(Stage::Drafted)) parts << tr("%1 noted").arg(n);
    }
    m_where->setText(parts.join(QStringLiteral(" · ")));
    QString barred = m_work.barred();
    if (barred.isEmpty() && count == 0)
        barred = tr("Nothing was planned here for this day. What was done all the same: A.");
    m_barred->setText(barred);
    m_barred->setVisible(!barred.isEmpty());
    showCurrent();
}

/// The chosen hive of the plan is looked for among the strips.
void ClosePage::showChosen() {
    if (!isVisible() || m_telling || !m_desk.chosen()) return;
    if (row() >= 0 && m_model->at(row()).about(*m_desk.chosen())) return;
    if (const int found = m_model->rowAbout(*m_desk.chosen()); found >= 0) goTo(found);
}

int ClosePage::row() const {
    const QModelIndex now = m_list->currentIndex();
    return now.isValid() ? now.row() : -1;
}

void ClosePage::goTo(int row) {
    if (row < 0 || row >= m_model->rowCount()) return;
    m_list->setCurrentIndex(m_model->index(row));
    m_list->scrollTo(m_model->index(row));
}

void ClosePage::showCurrent() {
    m_delegate->setOpen(row());
    m_list->doItemsLayout();
    m_foot->show(row() < 0 ? nullptr : &m_model->at(row()), m_work.barred().isEmpty(),
                 m_work.lines().count(Stage::Drafted) > 0);
}

void ClosePage::moved() {
    if (m_telling) return;
    showCurrent();
    choose();
}

/// The plan shows the strip's hive while the keys are here.
void ClosePage::choose() {
    if (row() < 0 || !m_list->hasFocus()) return;
    const Line& line = m_model->at(row());
    m_telling = true;
    for (const core::ColonyId colony : {line.moved, line.host})
        if (m_desk.reading().find(colony)) {
            m_desk.choose(colony);
            break;
        }
    m_telling = false;
}

/// To the next strip of which nothing is noted; behind the last one to the button that writes.
void ClosePage::goOn() {
    for (int i = row() + 1; i < m_model->rowCount(); ++i)
        if (m_model->at(i).stage == Stage::Open) return goTo(i);
    const int first = m_work.lines().firstOpen();
    if (first >= 0) return goTo(first);
    if (writeButton()->isEnabled()) writeButton()->setFocus(Qt::OtherFocusReason);
}

bool ClosePage::mayNote(bool needsRow) {
    if (const QString why = m_work.barred(); !why.isEmpty()) {
        emit m_desk.said(why);
        return false;
    }
    if (!needsRow) return true;
    if (row() < 0) return false;
    const Stage stage = m_model->at(row()).stage;
    if (stage == Stage::Open || stage == Stage::Drafted) return true;
    emit m_desk.said(stage == Stage::Written ? tr("That is written already: T takes it back.")
                                             : tr("The book says already that this was done."));
    return false;
}

void ClosePage::noted(const Drafted& drafted) {
    guarded(m_dialogs, [&] {
        const int at = m_work.note(drafted);
        if (at < 0) return;
        goTo(at);
        const QString problem = m_model->at(at).problem;
        if (!problem.isEmpty()) return emit m_desk.said(problem);
        emit m_desk.said(QString());
        goOn();
    });
}

void ClosePage::open(std::unique_ptr<StripForm> form) {
    m_panel->open(std::move(form), m_desk.today(), [this](const form::Form& typed, const form::Values& values) {
        const Drafted drafted = static_cast<const StripForm&>(typed).drafted(values);
        QMetaObject::invokeMethod(
            this, [this, drafted] { noted(drafted); }, Qt::QueuedConnection);
        return true;
    });
    m_foot->QWidget::hide();
    m_panel->show();
    m_list->scrollTo(m_list->currentIndex()); // it has less room now
}

void ClosePage::done() {
    if (!mayNote()) return;
    Drafted d{m_work.stripOf(row())};
    d.strip.outcome = StripOutcome::Done;
    d.strip.note.clear();
    d.strip.instead.reset();
    noted(d);
}

void ClosePage::notDone() {
    if (mayNote()) open(notDoneForm(m_desk.session(), m_model->at(row()), m_work.stripOf(row())));
}

void ClosePage::changedInstead() {
    if (mayNote()) open(changedForm(m_desk.session(), m_model->at(row()), m_work.stripOf(row())));
}

void ClosePage::addOffSheet() {
    if (mayNote(false)) open(offSheetForm(m_desk.session(), m_work.fresh()));
}

void ClosePage::asFact() {
    if (!mayNote() || m_model->at(row()).stage != Stage::Drafted) return;
    guarded(m_dialogs, [this] {
        const int at = row();
        m_work.turnFact(at);
        if (!m_model->at(at).asFact) return;
        emit m_desk.said(tr("Written as a fact: a reason and a name are asked for, and what rests on it is held."));
        goOn();
    });
}

void ClosePage::clear() {
    if (mayNote()) guarded(m_dialogs, [this] { m_work.clear(row()); });
}

void ClosePage::takeBack() {
    if (row() < 0) return;
    if (m_model->at(row()).stage != Stage::Written) {
        emit m_desk.said(tr("Nothing is written of this strip yet. Del clears what is noted."));
        return;
    }
    guarded(m_dialogs, [this] { m_work.takeBack(row()); });
}

void ClosePage::write() {
    if (!mayNote(false)) return;
    guarded(m_dialogs, [this] {
        if (m_work.write()) return m_list->setFocus(Qt::OtherFocusReason);
        if (m_work.badRow() < 0) return;
        goTo(m_work.badRow());
        m_list->setFocus(Qt::OtherFocusReason);
        emit m_desk.said(tr("Nothing is written yet. %1").arg(m_model->at(m_work.badRow()).problem));
    });
}

bool ClosePage::pressed(int key) {
    switch (key) {
    case Qt::Key_D:
        return done(), true;
    case Qt::Key_N:
        return notDone(), true;
    case Qt::Key_C:
        return changedInstead(), true;
    case Qt::Key_A:
        return addOffSheet(), true;
    case Qt::Key_F:
        return asFact(), true;
    case Qt::Key_T:
        return takeBack(), true;
    case Qt::Key_W:
        return write(), true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return clear(), true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return goOn(), true;
    default:
        return false;
    }
}

void ClosePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_delegate->setWidth(m_list->viewport()->width());
    m_list->doItemsLayout();
}

bool ClosePage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list->viewport() && event->type() == QEvent::Resize)
        m_delegate->setWidth(m_list->viewport()->width()); // before the list lays its rows out again
    if (watched == m_list && event->type() == QEvent::FocusIn) {
        const auto why = static_cast<QFocusEvent*>(event)->reason();
        if (why != Qt::ActiveWindowFocusReason && why != Qt::PopupFocusReason)
            QMetaObject::invokeMethod(
                this, [this] { choose(); }, Qt::QueuedConnection);
    }
    if ((watched == m_list || watched == writeButton()) && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const auto with = key->modifiers() & ~Qt::KeypadModifier;
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (watched == writeButton() && enter) return write(), true;
        if ((with == Qt::NoModifier || with == Qt::ShiftModifier) && pressed(key->key())) return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ui::close
