#include "ui/close/close_page.h"

#include "ui/close/close_delegate.h"
#include "ui/close/close_forms.h"
#include "ui/look/words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace ui::close {

using core::StripOutcome;

ClosePage::ClosePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : ClosePage(desk, dialogs, new CloseFoot, parent) {}

ClosePage::ClosePage(desk::Desk& desk, Dialogs& dialogs, CloseFoot* foot, QWidget* parent)
    : StepPage(desk, dialogs, foot, tr("Write back"), tr("Strips of the merge day"), parent),
      m_work(desk, this),
      m_model(new CloseModel(this)),
      m_delegate(new CloseDelegate(*m_model, this)),
      m_foot(foot),
      m_where(label("quiet", QStringLiteral("closeWhere"))),
      m_barred(label("warns", QStringLiteral("closeBarred"))) {
    list()->setObjectName(QStringLiteral("closeLines"));
    list()->setModel(m_model);
    list()->setItemDelegate(m_delegate);
    list()->setWidthListener([this](int width) { m_delegate->setWidth(width); });
    connect(list(), &QListView::doubleClicked, this, &ClosePage::done);
    connect(&m_work, &CloseWork::changed, this, &ClosePage::showLines);
    writeButton()->installEventFilter(this); // the keys of the list go on there
}

void ClosePage::readAgain() { m_work.read(); }

/// Where the strip of the row is now; −1: nowhere.
int ClosePage::sameAs(int row) const {
    if (row < 0) return -1;
    const Line& was = m_model->at(row);
    const auto& lines = m_work.lines().lines;
    const auto now = std::ranges::find_if(
        lines, [&](const Line& l) { return l.how == was.how && l.moved == was.moved && l.host == was.host; });
    return now == lines.end() ? -1 : static_cast<int>(now - lines.begin());
}

void ClosePage::showLines() {
    quietly([this] {
        const Lines& lines = m_work.lines();
        const int same = sameAs(row());
        const int first = lines.firstOpen();
        m_model->setLines(lines.lines);
        list()->goTo(same >= 0 ? same : first >= 0 ? first : m_model->rowCount() - 1);
    });
    tellWhere();
    showCurrent();
}

void ClosePage::tellWhere() {
    const Lines& lines = m_work.lines();
    const int count = m_model->rowCount();
    const auto yard = m_desk.yard() ? m_desk.session().yard(*m_desk.yard()) : std::nullopt;
    QStringList parts{tr("%1 · %2").arg(yard ? yard->name : QString(), look::dayText(m_desk.day()))};
    if (count > 0) {
        parts << tr("%1 of %2 written").arg(lines.count(Stage::Written) + lines.count(Stage::Elsewhere)).arg(count);
        if (const int n = lines.count(Stage::Drafted)) parts << tr("%1 noted").arg(n);
    }
    m_where->setText(parts.join(QStringLiteral(" · ")));
    QString barred = m_work.barred();
    if (barred.isEmpty() && count == 0)
        barred = tr("Nothing was planned here for this day. What was done all the same: A.");
    m_barred->setText(barred);
    m_barred->setVisible(!barred.isEmpty());
}

int ClosePage::rowAbout(core::ColonyId colony) const {
    return row() >= 0 && m_model->at(row()).about(colony) ? row() : m_model->rowAbout(colony);
}

void ClosePage::showCurrent() {
    m_delegate->setOpen(row());
    list()->doItemsLayout();
    m_foot->show(row() < 0 ? nullptr : &m_model->at(row()), m_work.barred().isEmpty(),
                 m_work.lines().count(Stage::Drafted) > 0);
}

void ClosePage::chooseCurrent() {
    if (row() < 0) return;
    const Line line = m_model->at(row());
    for (const core::ColonyId colony : {line.moved, line.host})
        if (m_desk.reading().find(colony)) return m_desk.choose(colony);
}

/// To the next strip of which nothing is noted; behind the last one to the button that writes.
void ClosePage::goOn() {
    for (int i = row() + 1; i < m_model->rowCount(); ++i)
        if (m_model->at(i).stage == Stage::Open) return list()->goTo(i);
    const int first = m_work.lines().firstOpen();
    if (first >= 0) return list()->goTo(first);
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
        list()->goTo(at);
        const QString problem = m_model->at(at).problem;
        if (!problem.isEmpty()) return emit m_desk.said(problem);
        emit m_desk.said(QString());
        goOn();
    });
}

void ClosePage::open(std::unique_ptr<StripForm> form) {
    openForm(std::move(form), [this](const form::Form& typed, const form::Values& values) {
        const Drafted drafted = static_cast<const StripForm&>(typed).drafted(values);
        QMetaObject::invokeMethod(
            this, [this, drafted] { noted(drafted); }, Qt::QueuedConnection); // once the form has closed
        return true;
    });
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
    if (!mayNote()) return;
    if (m_model->at(row()).stage != Stage::Drafted)
        return emit m_desk.said(tr("First what came of it: D done, N not done, C changed."));
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
        if (m_work.write()) return list()->setFocus(Qt::OtherFocusReason);
        if (m_work.badRow() < 0) return;
        list()->goTo(m_work.badRow());
        list()->setFocus(Qt::OtherFocusReason);
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

bool ClosePage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == writeButton() && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) return write(), true;
        if (!(key->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) && pressed(key->key())) return true;
    }
    return StepPage::eventFilter(watched, event);
}

} // namespace ui::close
