#include "ui/kit/kit_window.h"

#include "core/edit/kit.h"
#include "core/model/kit_words.h"
#include "ui/form/form_panel.h"
#include "ui/history/roomy_cells.h"
#include "ui/kit/kit_book.h"
#include "ui/kit/kit_forms.h"
#include "ui/kit/kit_model.h"
#include "ui/look/sheet.h"
#include "ui/look/type.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QStyle>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::kit {

namespace {

constexpr int kLettersAcross = 62; // of the table: a kind with its colony, and five states

QLabel* wrapped(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

KitWindow::KitWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_desk(desk),
      m_dialogs(dialogs),
      m_model(new KitModel(this)),
      m_places(new QListWidget(this)),
      m_table(new QTableView(this)),
      m_panel(new form::FormPanel(this)),
      m_apart(wrapped(this)),
      m_saying(wrapped(this)),
      m_ended(wrapped(this)) {
    setWindowTitle(tr("Kit – %1").arg(desk.session().bookTitle()));
    build();
    look::keepDressed(*this, [this] { dress(); });
    dress();
    connect(m_places, &QListWidget::currentRowChanged, this, &KitWindow::showTable);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &KitWindow::settle);
    connect(m_table, &QTableView::doubleClicked, this, &KitWindow::count);
    connect(&m_desk, &desk::Desk::read, this, &KitWindow::follow);
    connect(&m_desk, &desk::Desk::did, this, [this](const QString& what) { say(tr("%1 · saved").arg(what)); });
    connect(&m_desk, &desk::Desk::notSaved, this, [this](const QString& why) { say(why, true); });
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        m_panel->hide();
        m_table->setFocus(Qt::OtherFocusReason);
        settle();
    });
    const auto key = [this](QKeySequence::StandardKey keys, auto work) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this,
                [this, work] { guarded(m_dialogs, [this, work] { work(m_desk); }); });
    };
    key(QKeySequence::Undo, [](desk::Desk& d) { d.undo(); });
    key(QKeySequence::Redo, [](desk::Desk& d) { d.redo(); });
    read();
    showPlace(m_desk.yard());
}

QPushButton* KitWindow::button(const QString& text, const QString& tip, void (KitWindow::*act)()) {
    auto* made = new QPushButton(text, m_buttons);
    made->setToolTip(tip);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, act);
    m_buttons->layout()->addWidget(made);
    return made;
}

QWidget* KitWindow::tablePart() {
    auto* part = new QWidget(this);
    auto* down = new QVBoxLayout(part);
    down->setContentsMargins(16, 12, 16, 12);
    auto* about = wrapped(part);
    about->setText(
        tr("Spare kit, not what stands under a colony. Only usable kit is offered for a merge day; what comes "
           "off a hive comes in as to be cleaned, what comes off a held colony is kept apart."));
    about->setProperty("quiet", true);
    m_table->setModel(m_model);
    m_table->setObjectName(QStringLiteral("kitTable"));
    m_table->setAccessibleName(tr("Kit by kind and state"));
    m_table->setItemDelegate(new history::RoomyCells(m_table));
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->installEventFilter(this);
    m_apart->setProperty("warns", true);
    m_apart->setObjectName(QStringLiteral("kitApart"));
    m_buttons = new QWidget(part);
    auto* across = new QHBoxLayout(m_buttons);
    across->setContentsMargins(0, 0, 0, 0);
    m_count = button(tr("&Count…"), tr("How many of the chosen are there (C)"), &KitWindow::count);
    m_count->setProperty("primary", true);
    m_move = button(tr("Clean, &move, burn…"), tr("Some of the chosen come to another state or place (M)"),
                    &KitWindow::move);
    m_other = button(tr("&Another kind…"), tr("Count a kind that is not in the table (A)"), &KitWindow::countOther);
    m_takeBack = button(tr("&Take back"), tr("The chosen was never counted (Del)"), &KitWindow::takeBack);
    across->addStretch(1);
    m_saying->setObjectName(QStringLiteral("kitSaying"));
    m_saying->setProperty("quiet", true);
    down->addWidget(about);
    down->addWidget(m_table, 1);
    m_ended->setObjectName(QStringLiteral("kitEnds"));
    m_ended->setProperty("quiet", true);
    for (QWidget* w : std::initializer_list<QWidget*>{m_apart, m_ended, m_buttons, m_saying}) down->addWidget(w);
    return part;
}

QWidget* KitWindow::placesPart() {
    auto* part = new QWidget(this);
    auto* down = new QVBoxLayout(part);
    down->setContentsMargins(12, 14, 0, 12);
    auto* title = new QLabel(tr("&Places"), part);
    title->setProperty("quiet", true);
    title->setBuddy(m_places);
    m_places->setObjectName(QStringLiteral("kitPlaces"));
    m_places->setAccessibleName(tr("Store room and yards"));
    m_places->setFrameShape(QFrame::NoFrame);
    m_places->setSpacing(2);
    down->addWidget(title);
    down->addWidget(m_places, 1);
    return part;
}

void KitWindow::build() {
    m_panel->hide();
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(placesPart());
    across->addWidget(tablePart(), 1);
    across->addWidget(m_panel);
    setTabOrder(m_places, m_table);
    const QFontMetrics metrics(font());
    resize(metrics.averageCharWidth() * 150, metrics.height() * 34);
}

void KitWindow::dress() {
    m_model->setColours(look::coloursOf(*this));
    const QFontMetrics metrics(font());
    const int letter = metrics.averageCharWidth();
    m_places->setFixedWidth(letter * 24);
    m_panel->setFixedWidth(letter * 46);
    m_table->verticalHeader()->setDefaultSectionSize(metrics.height() + 10);
    QHeaderView* header = m_table->horizontalHeader();
    for (int column = 1; column < m_model->columnCount(); ++column)
        header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    header->setSectionResizeMode(KitModel::kKind, QHeaderView::Stretch);
    m_table->setMinimumWidth(letter * kLettersAcross);
}

QString KitWindow::said() const { return m_saying->text(); }

void KitWindow::say(const QString& sentence, bool warns) {
    m_saying->setProperty("warns", warns);
    m_saying->setProperty("quiet", !warns);
    m_saying->style()->polish(m_saying);
    m_saying->setText(sentence);
}

void KitWindow::follow() {
    m_stale = !isVisible();
    if (!m_stale) read();
}

void KitWindow::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) follow();
}

std::optional<core::YardId> KitWindow::place() const {
    const int row = m_places->currentRow();
    return row < 0 ? std::nullopt : m_yards[static_cast<size_t>(row)];
}

void KitWindow::showPlace(std::optional<core::YardId> yard) {
    const auto at = std::find(m_yards.begin(), m_yards.end(), yard);
    m_places->setCurrentRow(at == m_yards.end() ? 0 : static_cast<int>(at - m_yards.begin()));
}

void KitWindow::addYard(const core::Yard& yard) {
    m_yards.emplace_back(yard.id);
    m_places->addItem(yard.closed ? tr("%1 (closed)").arg(yard.name) : yard.name);
}

/// Holds are those of today, whatever day the window shows.
void KitWindow::read() {
    guarded(m_dialogs, [this] {
        const auto before = place();
        m_piles = pilesOf(m_desk.session(), m_desk.session().snapshot(m_desk.today()));
        const QSignalBlocker quiet(m_places);
        m_places->clear();
        m_yards = {std::nullopt};
        m_places->addItem(tr("Store room"));
        for (const core::Yard& yard : m_desk.session().yards()) addYard(yard);
        for (const core::rules::KitPile& pile : m_piles) { // of a yard that is closed
            const bool listed = std::find(m_yards.begin(), m_yards.end(), pile.place.yard) != m_yards.end();
            const auto yard = listed ? std::nullopt : m_desk.session().yard(*pile.place.yard);
            if (yard) addYard(*yard);
        }
        showPlace(before);
        showTable();
        m_panel->judgeAgain();
    });
}

/// Kinds that have a row though none of them was counted: parts of every hive, and the boxes that are in use.
QStringList KitWindow::usualParts() const {
    QStringList parts{core::kit::kFloor, core::kit::kLid, core::kit::kInnerCover};
    for (const core::rules::ColonyFacts& f : m_desk.reading().facts) {
        const QString kind = m_desk.reading().snapshot.boxKindOf(f.colony).name;
        if (!parts.contains(kind)) parts << kind;
    }
    return parts;
}

void KitWindow::showTable() {
    guarded(m_dialogs, [this] {
        const auto now = m_table->currentIndex();
        const core::rules::KitPlace chosen = m_model->placeAt(now);
        const int column = now.isValid() ? std::max(now.column(), 1) : 1;
        const core::Snapshot today = m_desk.session().snapshot(m_desk.today());
        m_model->show(place(), m_piles, usualParts(), today);
        m_ended->setText(endsText(m_desk.session(), today, place()));
        m_ended->setVisible(!m_ended->text().isEmpty());
        core::rules::KitPlace again = chosen;
        again.yard = place();
        QModelIndex at = m_model->indexOf(again);
        if (!at.isValid()) at = m_model->index(std::clamp(now.row(), 0, m_model->rowCount() - 1), column);
        m_table->setCurrentIndex(at);
        settle();
    });
}

void KitWindow::settle() {
    const bool may = !m_desk.session().readOnly() && m_panel->form() == nullptr;
    const QModelIndex now = m_table->currentIndex();
    const auto count = m_model->countAt(now);
    m_count->setEnabled(may && now.isValid());
    m_other->setEnabled(may);
    m_move->setEnabled(may && count.value_or(0) > 0 && m_model->placeAt(now).state != core::kit::kBurned);
    m_takeBack->setEnabled(may && count);
    const QString apart = m_model->apartAt(now);
    m_apart->setText(apart.isEmpty() ? QString()
                                     : tr("%1 is %2. It is never offered, and leaves quarantine burned or sterilised; "
                                          "anything else needs an answered hold, a reason and a name.")
                                           .arg(m_model->placeAt(now).part, apart));
    m_apart->setVisible(!apart.isEmpty());
}

void KitWindow::open(std::unique_ptr<form::Form> form) {
    if (m_panel->dirty()) return say(tr("What is typed at the right is not saved yet."), true);
    m_panel->close();
    m_panel->open(std::move(form), m_desk.today(), [this](const form::Form& typed, const form::Values& values) {
        return m_desk.save(typed.what(), typed.edit(values));
    });
    m_panel->show();
    settle();
}

void KitWindow::count() {
    if (!m_count->isEnabled()) return;
    const QModelIndex now = m_table->currentIndex();
    open(countForm(m_desk.session(), m_model->placeAt(now), m_model->countAt(now)));
}

void KitWindow::countOther() {
    if (m_other->isEnabled()) open(countForm(m_desk.session(), {place(), {}, core::kit::kUsable}, std::nullopt));
}

void KitWindow::move() {
    if (!m_move->isEnabled()) return;
    const QModelIndex now = m_table->currentIndex();
    open(moveForm(m_desk.session(), m_model->placeAt(now), m_model->countAt(now).value_or(0)));
}

void KitWindow::takeBack() {
    if (!m_takeBack->isEnabled()) return;
    const core::rules::KitPlace pile = m_model->placeAt(m_table->currentIndex());
    guarded(m_dialogs, [&] {
        try {
            m_desk.save(tr("Take back a count of kit"),
                        [&](const core::edit::EditContext& c) { return core::edit::takeBackKit(c, pile); });
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData && e.kind() != core::Error::Kind::Hold) throw;
            say(e.userMessage(), true);
        }
    });
}

bool KitWindow::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_table || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->modifiers() != Qt::NoModifier) return QWidget::eventFilter(watched, event);
    switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_C:
        return count(), true;
    case Qt::Key_M:
        return move(), true;
    case Qt::Key_A:
        return countOther(), true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return takeBack(), true;
    default:
        return QWidget::eventFilter(watched, event);
    }
}

void KitWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

KitWindow* showKit(desk::Desk& desk, Dialogs& dialogs, QWidget* page) {
    auto* window = page->findChild<KitWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) window = new KitWindow(desk, dialogs, page);
    window->show();
    window->raise();
    window->activateWindow();
    window->table()->setFocus();
    return window;
}

} // namespace ui::kit
