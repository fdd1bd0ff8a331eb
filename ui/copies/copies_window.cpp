#include "ui/copies/copies_window.h"

#include "ui/copies/copies_text.h"
#include "ui/copies/known.h"
#include "ui/copies/lines_list.h"
#include "ui/history/change_view.h"
#include "ui/history/roomy_cells.h"
#include "ui/look/sheet.h"
#include "ui/look/wrapped_label.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ui::copies {

namespace {

using core::edit::BookCopyFound;
using core::edit::BooksCompared;

QTreeWidget* listOf(QWidget* parent) {
    auto* list = new QTreeWidget(parent);
    list->setObjectName(QStringLiteral("copies"));
    list->setAccessibleName(CopiesWindow::tr("Copies of this book beside it"));
    list->setRootIsDecorated(false);
    list->setUniformRowHeights(true);
    list->setItemDelegate(new history::RoomyCells(list));
    list->setHeaderLabels({CopiesWindow::tr("File"), CopiesWindow::tr("How it stands to this book"),
                           CopiesWindow::tr("Last change"), CopiesWindow::tr("By")});
    const int letter = list->fontMetrics().averageCharWidth();
    list->header()->setStretchLastSection(false);
    list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    list->header()->resizeSection(1, letter * 42);
    list->header()->resizeSection(2, letter * 20);
    list->header()->resizeSection(3, letter * 12);
    return list;
}

QPushButton* button(const QString& text, const QString& tip, QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setToolTip(tip);
    return made;
}

QWidget* titled(const QString& title, QWidget* list, QWidget* parent) {
    auto* part = new QWidget(parent);
    auto* down = new QVBoxLayout(part);
    down->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(title, part);
    label->setBuddy(list);
    down->addWidget(label);
    down->addWidget(list, 1);
    return part;
}

} // namespace

CopiesWindow::CopiesWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_desk(desk),
      m_dialogs(dialogs),
      m_list(listOf(this)),
      m_how(new look::WrappedLabel(QStringLiteral("copiesCompared"), this)),
      m_onlyHere(new LinesList(tr("Changes only in this book, newest first"), this)),
      m_onlyThere(new LinesList(tr("Changes only in the copy, newest first"), this)),
      m_whose(new QLabel(this)),
      m_change(new history::ChangeView(this)),
      m_open(button(tr("Go on in the c&opy"), tr("Opens the copy here instead; this book stays where it is"), this)),
      m_aside(button(tr("Put the copy a&side"),
                     tr("Moves it into the folder “put aside” beside the book, where nothing is deleted"), this)),
      m_text(button(tr("All as te&xt"), tr("Copies what either has to the clipboard, to paste or print"), this)),
      m_said(new look::WrappedLabel(QStringLiteral("copiesSaid"), this)),
      m_beside(this) {
    setObjectName(QStringLiteral("copiesWindow"));
    setWindowTitle(tr("Copies – %1").arg(desk.session().bookTitle()));
    resize(1060, 760);
    look::keepDressed(*this);
    build();
    connect(m_list, &QTreeWidget::currentItemChanged, this, [this] { guarded(m_dialogs, [this] { compare(); }); });
    for (LinesList* list : {m_onlyHere, m_onlyThere})
        connect(list, &QTreeWidget::currentItemChanged, this,
                [this, list] { guarded(m_dialogs, [&] { showChange(*list, list == m_onlyHere); }); });
    connect(m_open, &QPushButton::clicked, this, [this] {
        if (const BookCopyFound* copy = chosen()) emit openAsked(copy->path);
    });
    connect(m_aside, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { putAside(); }); });
    connect(m_text, &QPushButton::clicked, this, &CopiesWindow::copyText);
    read();
}

void CopiesWindow::build() {
    auto* down = new QVBoxLayout(this);
    auto* what = new look::WrappedLabel(QStringLiteral("copiesWhat"), this);
    what->tell(tr("A sync program, a stick or a backup leaves copies of a book beside it. Nothing is merged by itself, "
                  "and neither is the right one by itself: see below what each has since they parted, go on in one of "
                  "them, write into it by hand what only the other has, and put the other aside."));
    down->addWidget(what);
    down->addWidget(m_list, 2);
    down->addWidget(m_how);
    down->addWidget(comparedPart(), 6);
    down->addWidget(buttonPart());
    down->addWidget(m_said);
}

QWidget* CopiesWindow::comparedPart() {
    auto* sides = new QSplitter(Qt::Horizontal, this);
    sides->addWidget(titled(tr("Only in this &book"), m_onlyHere, sides));
    sides->addWidget(titled(tr("Only in the &copy"), m_onlyThere, sides));
    m_whose->setTextFormat(Qt::PlainText);
    m_whose->setWordWrap(true);
    auto* below = new QWidget(this);
    auto* down = new QVBoxLayout(below);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(m_whose);
    down->addWidget(m_change, 1);
    auto* all = new QSplitter(Qt::Vertical, this);
    all->addWidget(sides);
    all->addWidget(below);
    all->setStretchFactor(0, 3);
    all->setStretchFactor(1, 2);
    for (QSplitter* s : {sides, all}) s->setChildrenCollapsible(false);
    return all;
}

QWidget* CopiesWindow::buttonPart() {
    auto* part = new QWidget(this);
    auto* across = new QHBoxLayout(part);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(m_text);
    across->addStretch(1);
    across->addWidget(m_aside);
    across->addWidget(m_open);
    return part;
}

QString CopiesWindow::compared() const { return m_how->text(); }

QString CopiesWindow::said() const { return m_said->text(); }

const BookCopyFound* CopiesWindow::chosen() const {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    return row < 0 ? nullptr : &m_copies[static_cast<size_t>(row)];
}

void CopiesWindow::read() {
    m_busy = true;
    m_how->tell(tr("Looking through the book's folder…"));
    settle();
    m_beside.start([this, book = m_desk.session().path()](const std::function<bool()>& stopped) -> desk::Beside::Found {
        try {
            return [this, copies = core::edit::copiesBeside(book, stopped)] { take(copies); };
        } catch (const core::Error& e) {
            return [this, e] {
                m_busy = false;
                m_how->tell(e.userMessage());
                settle();
            };
        }
    });
}

void CopiesWindow::take(std::vector<BookCopyFound> copies) {
    m_busy = false;
    m_copies = std::move(copies);
    know(m_desk.session().bookId(), m_copies);
    m_list->clear();
    for (const BookCopyFound& copy : m_copies) {
        auto* item = new QTreeWidgetItem(QStringList{QFileInfo(copy.path).fileName(), standText(copy),
                                                     copy.last ? stampText(copy.last->at) : QString(),
                                                     copy.last ? copy.last->by : QString()});
        item->setToolTip(0, copy.path);
        m_list->addTopLevelItem(item);
    }
    const auto more = std::ranges::find_if(m_copies, &BookCopyFound::hasMore);
    const auto first = more == m_copies.end() ? 0 : more - m_copies.begin();
    if (m_copies.empty())
        compare();
    else
        m_list->setCurrentItem(m_list->topLevelItem(static_cast<int>(first)));
    emit looked();
}

void CopiesWindow::compare() {
    m_there.reset();
    m_compared.reset();
    m_onlyHere->clear();
    m_onlyThere->clear();
    m_change->clear();
    m_whose->clear();
    const BookCopyFound* copy = chosen();
    m_how->tell(!copy                      ? tr("No copy of this book lies beside it.")
                : !copy->problem.isEmpty() ? copy->problem
                                           : tr("Comparing…"));
    m_beside.stop();
    m_busy = copy && copy->problem.isEmpty();
    settle();
    if (!m_busy) return;
    m_beside.start([this, book = m_desk.session().path(),
                    path = copy->path](const std::function<bool()>& stopped) -> desk::Beside::Found {
        try {
            return [this, c = core::edit::compareBooks(book, path, stopped)] {
                guarded(m_dialogs, [&] { showCompared(c); });
            };
        } catch (const core::Error& e) {
            return [this, e] {
                m_busy = false;
                m_how->tell(e.userMessage());
                settle();
            };
        }
    });
}

void CopiesWindow::showCompared(const BooksCompared& compared) {
    m_busy = false;
    m_compared = compared;
    m_how->tell(comparedText(compared));
    m_onlyHere->fill(compared.here);
    m_onlyThere->fill(compared.there);
    settle();
}

/// What a line did, in the words of the book that it is of.
void CopiesWindow::showChange(const LinesList& list, bool here) {
    const auto seq = list.chosen();
    m_change->clear();
    if (!seq || !m_compared) return m_whose->clear();
    if (!here && m_compared->there.version != m_compared->here.version)
        return m_whose->setText(tr("The copy is of an older version: what a change did in it is shown once it was "
                                   "opened for writing."));
    if (!here && !m_there)
        m_there =
            core::edit::Session::open(chosen()->path, m_desk.session().clock(), core::edit::Session::Access::ReadOnly);
    const core::edit::Session& of = here ? m_desk.session() : *m_there;
    const auto detail = of.historyDetail(*seq);
    if (!detail) return m_whose->clear();
    m_whose->setText((here ? tr("In this book: %1") : tr("In the copy: %1")).arg(detail->line.text));
    m_change->show(*detail);
}

void CopiesWindow::putAside() {
    const BookCopyFound* copy = chosen();
    if (!copy) return;
    m_beside.stop();
    m_there.reset();
    const QString to = core::edit::putAside(copy->path);
    read();
    m_said->tell(tr("Put aside: %1. Nothing of it was deleted.").arg(to));
}

void CopiesWindow::copyText() {
    const BookCopyFound* copy = chosen();
    if (!copy || !m_compared) return;
    QGuiApplication::clipboard()->setText(wholeText(QFileInfo(copy->path).fileName(), *m_compared));
    m_said->tell(tr("Copied: paste it into a letter or an editor."));
}

void CopiesWindow::settle() {
    const bool any = chosen() != nullptr;
    m_open->setEnabled(any && chosen()->problem.isEmpty());
    m_aside->setEnabled(any && !m_busy);
    m_text->setEnabled(any && m_compared);
}

} // namespace ui::copies
