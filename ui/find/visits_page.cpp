#include "ui/find/visits_page.h"

#include "ui/find/filter_row.h"
#include "ui/find/visit_model.h"
#include "ui/look/words.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QSettings>
#include <QSignalBlocker>
#include <QToolButton>

#include <algorithm>

namespace ui::find {

namespace {

const QString kVisitColumnsKey = QStringLiteral("find/visits");
constexpr int kTypingMs = 150;
enum class Period { ThisYear, LastYear, Days14, Days30, Days90, All };

QString grouped(qint64 n) { return QLocale(QLocale::English).toString(n); }

} // namespace

VisitTable::VisitTable(VisitModel* model, QWidget* parent) : ColumnTable(parent) {
    takeModel(model);
    sortByColumn(static_cast<int>(VisitColumn::Day), Qt::DescendingOrder);
    setObjectName(QStringLiteral("visitTable"));
    setAccessibleName(tr("Table of visits"));
}

VisitsPage::VisitsPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_words(filterLine(this, tr("Words of the note"), tr("Words that the note must have"))),
      m_label(filterLine(this, tr("Colony"), tr("Part of the colony's label"))),
      m_by(filterLine(this, tr("By"), tr("Part of the name of who made the visit"))),
      m_yard(filterList(this, tr("Yards whose visits are shown"))),
      m_period(filterList(this, tr("Period"))),
      m_withNote(new QCheckBox(tr("With a &note"), this)),
      m_withSigns(new QCheckBox(tr("With si&gns"), this)),
      m_columns(menuButton(this, tr("Col&umns"), tr("Which columns are shown, and sorting"))),
      m_model(new VisitModel(desk.session(), dialogs, this)),
      m_foot(new QLabel(this)) {
    m_table = new VisitTable(m_model, this);
    m_table->putBackColumns(QSettings().value(kVisitColumnsKey).toByteArray());
    build();
    m_typing.setSingleShot(true);
    m_typing.setInterval(kTypingMs);
    connect(&m_typing, &QTimer::timeout, this, &VisitsPage::ask);
    for (QLineEdit* line : {m_words, m_label, m_by}) {
        connect(line, &QLineEdit::textChanged, &m_typing, qOverload<>(&QTimer::start));
        connect(line, &QLineEdit::returnPressed, this, &VisitsPage::ask);
    }
    for (QComboBox* list : {m_yard, m_period}) connect(list, &QComboBox::currentIndexChanged, this, &VisitsPage::ask);
    for (QCheckBox* tick : {m_withNote, m_withSigns}) connect(tick, &QCheckBox::toggled, this, &VisitsPage::ask);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &VisitsPage::chosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &VisitsPage::selectedChanged);
    connect(m_table, &QTableView::activated, this, [this](const QModelIndex& at) {
        if (at.isValid()) emit opened(m_model->visitAt(at.row()), m_model->lineAt(at.row()).visit.day);
    });
    connect(&m_desk, &desk::Desk::read, this, &VisitsPage::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, [this] {
        offer();
        if (m_yard->currentIndex() == 1) follow();
    });
}

VisitsPage::~VisitsPage() { keepColumns(); }

void VisitsPage::build() {
    const std::pair<Period, QString> periods[] = {
        {Period::ThisYear, tr("This year")},      {Period::LastYear, tr("Last year")},
        {Period::Days14, tr("The last 14 days")}, {Period::Days30, tr("The last 30 days")},
        {Period::Days90, tr("The last 90 days")}, {Period::All, tr("All days")}};
    for (const auto& [period, text] : periods) m_period->addItem(text, static_cast<int>(period));
    offer();
    m_foot->setObjectName(QStringLiteral("visitTotals"));
    m_foot->setWordWrap(true);
    m_foot->setTextFormat(Qt::PlainText);
    auto* columns = new QMenu(m_columns);
    m_columns->setMenu(columns);
    connect(columns, &QMenu::aboutToShow, this, [this, columns] { m_table->fill(*columns); });
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(14, 10, 14, 10);
    down->setSpacing(8);
    down->addLayout(rowOf({m_yard, m_period, m_label, m_by}, m_label));
    auto* second = rowOf({m_words, m_withNote, m_withSigns, m_columns}, m_words);
    second->setObjectName(QStringLiteral("second"));
    down->addLayout(second);
    down->addWidget(m_table, 1);
    down->addWidget(m_foot);
    setFocusProxy(m_table);
}

void VisitsPage::addTool(QWidget* button) {
    auto* row = findChild<QHBoxLayout*>(QStringLiteral("second"));
    button->setParent(this);
    row->addWidget(button);
    setTabOrder(m_columns, button);
}

void VisitsPage::offer() {
    const QSignalBlocker quiet(m_yard);
    const int was = m_yard->currentIndex();
    const desk::Reading& r = m_desk.reading();
    const auto shown = m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    m_yard->clear();
    m_yard->addItem(tr("All yards"));
    m_yard->addItem(shown ? tr("The yard shown: %1").arg(r.snapshot.yard(*shown).name) : tr("The yard shown"));
    m_yard->setCurrentIndex(std::max(0, was));
}

/// Days of the calendar up to the one shown.
core::VisitFilter VisitsPage::filter() const {
    core::VisitFilter f;
    const core::Day on = m_desk.day();
    const int year = core::toDate(on).year();
    f.until = on;
    switch (static_cast<Period>(m_period->currentData().toInt())) {
    case Period::ThisYear:
        f.from = core::dayOf(year, 1, 1);
        break;
    case Period::LastYear:
        f.from = core::dayOf(year - 1, 1, 1);
        f.until = core::dayOf(year - 1, 12, 31);
        break;
    case Period::Days14:
        f.from = on - 13;
        break;
    case Period::Days30:
        f.from = on - 29;
        break;
    case Period::Days90:
        f.from = on - 89;
        break;
    case Period::All:
        f.until.reset();
        break;
    }
    if (m_yard->currentIndex() == 1) f.yard = m_desk.yard();
    f.label = m_label->text();
    f.by = m_by->text();
    f.words = m_words->text();
    f.withNote = m_withNote->isChecked();
    f.withSigns = m_withSigns->isChecked();
    return f;
}

void VisitsPage::ask() {
    if (m_stale) return;
    m_typing.stop();
    guarded(m_dialogs, [this] {
        m_model->show(filter());
        tellFoot();
        m_table->fitColumnsOnce();
    });
}

void VisitsPage::follow() {
    m_stale = !isVisible();
    if (m_stale) return;
    offer();
    const auto row = m_table->currentIndex().isValid() ? std::optional(m_model->visitAt(m_table->currentIndex().row()))
                                                       : std::nullopt;
    ask();
    const auto at = row ? m_model->rowOf(*row) : std::nullopt;
    if (at) m_table->setCurrentIndex(m_model->index(*at, 0));
}

void VisitsPage::tellFoot() {
    const core::VisitTotals& t = m_model->totals();
    QStringList parts{t.visits == 1 ? tr("1 visit") : tr("%1 visits").arg(grouped(t.visits)),
                      t.colonies == 1 ? tr("of 1 colony") : tr("of %1 colonies").arg(grouped(t.colonies))};
    QString text = parts.join(u' ');
    if (t.withNote > 0) text += tr(" · %1 with a note").arg(grouped(t.withNote));
    if (t.weighed > 0)
        text += tr(" · mean weight %1 of %2 weighings")
                    .arg(look::weightOf(core::Decagrams{static_cast<qint32>((t.grossSum + t.weighed / 2) / t.weighed)},
                                        m_desk.reading().snapshot.settings.showWeight),
                         grouped(t.weighed));
    if (t.bees > 0)
        text +=
            tr(" · %1 mites in %2 bees of %3 samples").arg(grouped(t.mites), grouped(t.bees), grouped(t.miteSamples));
    m_foot->setText(text + u'.');
}

void VisitsPage::chosen() {
    if (m_stale || !m_table->currentIndex().isValid() || !m_table->hasFocus()) return;
    guarded(m_dialogs, [this] {
        const core::ColonyId colony = m_model->lineAt(m_table->currentIndex().row()).visit.colony;
        if (m_desk.reading().find(colony)) m_desk.choose(colony);
    });
}

std::vector<core::VisitId> VisitsPage::selectedVisits() const {
    std::vector<int> rows;
    for (const QModelIndex& row : m_table->selectionModel()->selectedRows()) rows.push_back(row.row());
    std::ranges::sort(rows);
    std::vector<core::VisitId> visits;
    for (const int row : rows) visits.push_back(m_model->visitAt(row));
    return visits;
}

void VisitsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) follow();
}

void VisitsPage::hideEvent(QHideEvent* event) {
    keepColumns();
    QWidget::hideEvent(event);
}

void VisitsPage::keepColumns() const {
    if (const QByteArray columns = m_table->columns(); !columns.isEmpty())
        QSettings().setValue(kVisitColumnsKey, columns);
}

} // namespace ui::find
