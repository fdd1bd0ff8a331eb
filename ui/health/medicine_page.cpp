#include "ui/health/medicine_page.h"

#include "core/edit/medicine_rows.h"
#include "core/edit/strips_out.h"
#include "core/exchange/csv_writer.h"
#include "ui/form/day_edit.h"
#include "ui/form/typed.h"
#include "ui/health/medicine_details.h"
#include "ui/health/medicine_model.h"
#include "ui/look/type.h"
#include "ui/look/wrapped_label.h"
#include "ui/print/book_origin.h"
#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace ui::health {

namespace rules = core::rules;
namespace report = core::report;

namespace {

constexpr int kEdge = 20;

QPushButton* medicineButton(QWidget* parent, const QString& text, const QString& name, const QString& tip) {
    auto* button = new QPushButton(text, parent);
    button->setObjectName(name);
    button->setAccessibleName(QString(text).remove(u'&').remove(QStringLiteral("…")));
    button->setToolTip(tip);
    return button;
}

void settleTable(QTableView& table, QAbstractItemModel* model, const QString& name, const QString& spoken) {
    table.setModel(model);
    table.setObjectName(name);
    table.setAccessibleName(spoken);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setStretchLastSection(true);
}

} // namespace

MedicinePage::MedicinePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_from(new form::DayEdit(desk.today(), this)),
      m_until(new form::DayEdit(desk.today(), this)),
      m_yard(new QComboBox(this)),
      m_chosenOnly(new QCheckBox(tr("Only the &chosen hive"), this)),
      m_new(medicineButton(this, tr("&New treatment…"), QStringLiteral("medicineNew"),
                           tr("A treatment of the chosen hive or its yard (N)"))),
      m_right(medicineButton(this, tr("Put &right…"), QStringLiteral("medicineRight"),
                             tr("The chosen entry in its form: what it says is corrected, never erased (Enter)"))),
      m_pdf(medicineButton(this, tr("As &PDF…"), QStringLiteral("medicinePdf"),
                           tr("The register shown, as an inspector takes it (P)"))),
      m_csv(medicineButton(this, tr("As C&SV…"), QStringLiteral("medicineCsv"), tr("The same for a spreadsheet (S)"))),
      m_summary(new look::WrappedLabel(QStringLiteral("medicineSummary"), this)),
      m_model(new MedicineModel(this)),
      m_table(new QTableView(this)),
      m_details(new QTextBrowser(this)),
      m_stripsModel(new StripsModel(this)),
      m_strips(new QTableView(this)),
      m_outOn(new form::DayEdit(desk.today(), this)),
      m_follow(new desk::WhileShown(*this, desk, dialogs, [this] { read(); })) {
    build();
    const auto again = [this] { guarded(m_dialogs, [this] { ask(); }); };
    connect(m_from, &QLineEdit::editingFinished, this, again);
    connect(m_until, &QLineEdit::editingFinished, this, again);
    connect(m_yard, &QComboBox::currentIndexChanged, this, again);
    connect(m_chosenOnly, &QCheckBox::toggled, this, again);
    connect(&desk, &desk::Desk::chosenChanged, m_follow, &desk::WhileShown::again);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &MedicinePage::showCurrent);
    connect(m_table, &QTableView::activated, this, &MedicinePage::putRight);
    connect(m_new, &QPushButton::clicked, this, &MedicinePage::newAsked);
    connect(m_right, &QPushButton::clicked, this, &MedicinePage::putRight);
    connect(m_pdf, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writePdf(); }); });
    connect(m_csv, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writeCsv(); }); });
    for (QTableView* table : {m_table, m_strips}) table->installEventFilter(this);
}

QWidget* MedicinePage::head() {
    auto* head = new QWidget(this);
    auto* grid = new QGridLayout(head);
    grid->setContentsMargins(kEdge, 0, kEdge, 0);
    int column = 0;
    const auto put = [&](const QString& text, QWidget* field, const QString& name) {
        auto* label = new QLabel(text, head);
        label->setBuddy(field);
        field->setObjectName(name);
        field->setAccessibleName(QString(text).remove(u'&'));
        grid->addWidget(label, 0, column);
        grid->addWidget(field, 1, column++);
    };
    put(tr("&From"), m_from, QStringLiteral("medicineFrom"));
    put(tr("&Until"), m_until, QStringLiteral("medicineUntil"));
    put(tr("&Yard"), m_yard, QStringLiteral("medicineYard"));
    m_chosenOnly->setObjectName(QStringLiteral("medicineChosenOnly"));
    grid->addWidget(m_chosenOnly, 1, column++);
    grid->setColumnStretch(column, 1);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_new, m_right, m_pdf, m_csv}) buttons->addWidget(button);
    buttons->addStretch(1);
    grid->addLayout(buttons, 2, 0, 1, column + 1);
    return head;
}

QWidget* MedicinePage::stripsPart() {
    settleTable(*m_strips, m_stripsModel, QStringLiteral("medicineStrips"), tr("Strips to take out"));
    auto* part = new QWidget(this);
    auto* title = new QLabel(tr("Strips to take out"), part);
    title->setFont(look::headingFont(font()));
    auto* label = new QLabel(tr("&Out on"), part);
    label->setBuddy(m_outOn);
    m_outOn->setObjectName(QStringLiteral("medicineOutOn"));
    m_outOn->setAccessibleName(tr("Day on which they came out"));
    m_outOn->setText(form::typedDay(m_desk.today()));
    auto* one =
        medicineButton(part, tr("Out of &this hive"), QStringLiteral("medicineOut"), tr("Of the chosen row (T)"));
    auto* all = medicineButton(part, tr("Out of &all hives of it"), QStringLiteral("medicineOutOfAll"),
                               tr("Of all hives with this treatment in (A)"));
    connect(one, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { takeOut(false); }); });
    connect(all, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { takeOut(true); }); });
    auto* row = new QHBoxLayout;
    row->addWidget(title);
    row->addStretch(1);
    for (QWidget* widget : std::initializer_list<QWidget*>{label, m_outOn, one, all}) row->addWidget(widget);
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(row);
    layout->addWidget(m_strips, 1);
    return part;
}

void MedicinePage::build() {
    auto* title = new QLabel(tr("Medicine"), this);
    title->setFont(look::headingFont(font()));
    title->setContentsMargins(kEdge, 0, kEdge, 0);
    m_summary->setContentsMargins(kEdge, 0, kEdge, 0);
    settleTable(*m_table, m_model, QStringLiteral("medicineRegister"), tr("Medicine register, a treatment a row"));
    m_details->setObjectName(QStringLiteral("medicineDetails"));
    m_details->setAccessibleName(tr("The chosen entry"));
    m_details->setFrameShape(QFrame::NoFrame);
    m_details->setTabChangesFocus(true);
    auto* split = new QSplitter(Qt::Vertical, this);
    split->setChildrenCollapsible(false);
    m_stripsPart = stripsPart();
    for (QWidget* widget : std::initializer_list<QWidget*>{m_table, m_details, m_stripsPart}) split->addWidget(widget);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setStretchFactor(2, 2);
    auto* middle = new QHBoxLayout;
    middle->setContentsMargins(kEdge, 0, kEdge, 0);
    middle->addWidget(split);
    auto* keys = new look::WrappedLabel(QStringLiteral("medicineKeys"), this);
    keys->setProperty("quiet", true);
    keys->tell(tr("N new treatment · Enter puts the entry right, its old words stay to be read · P as PDF · S as CSV · "
                  "T out of this hive · A out of all · local law, vets and labels decide"));
    keys->setContentsMargins(kEdge, 0, kEdge, 0);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(8);
    all->addWidget(title);
    all->addWidget(head());
    all->addWidget(m_summary);
    all->addLayout(middle, 1);
    all->addWidget(keys);
}

void MedicinePage::fillYards() {
    const QSignalBlocker quiet(m_yard);
    const QVariant was = m_yard->currentData();
    m_yard->clear();
    m_yard->addItem(tr("All yards"), qint64(0));
    for (const core::Yard& yard : m_desk.session().yards()) m_yard->addItem(yard.name, yard.id.value);
    m_yard->setCurrentIndex(std::max(0, m_yard->findData(was)));
}

void MedicinePage::read() {
    m_model->show(nullptr, {});
    m_stripsModel->show(nullptr, {});
    m_book.emplace(core::edit::medicineBook(m_desk.session()));
    fillYards();
    ask();
}

void MedicinePage::ask() {
    if (!m_book) return;
    const auto typed = [&](const form::DayEdit* edit) { return form::parseDay(edit->text(), m_desk.today()); };
    const auto wrong = [&](const form::DayEdit* edit) { return !edit->text().trimmed().isEmpty() && !typed(edit); };
    if (wrong(m_from) || wrong(m_until))
        return m_summary->tell(
            tr("From and until: expected a day, such as %1, or nothing.").arg(form::typedDay(m_desk.today())));
    rules::MedicineAsked asked;
    asked.from = typed(m_from);
    asked.until = typed(m_until);
    if (const qint64 yard = m_yard->currentData().toLongLong()) asked.yard = core::YardId{yard};
    if (m_chosenOnly->isChecked()) asked.colony = m_desk.chosen();
    m_about = {m_book->entries(asked), asked.from, asked.until, asked.yard ? m_yard->currentText() : QString()};
    const int row = m_table->currentIndex().row();
    m_model->show(&*m_book, m_about.entries);
    m_table->resizeColumnsToContents();
    if (m_model->rowCount() > 0)
        m_table->setCurrentIndex(m_model->index(std::clamp(row, 0, m_model->rowCount() - 1), 0));
    const auto strips = m_book->stripsIn();
    m_stripsPart->setVisible(!strips.empty());
    m_stripsModel->show(&*m_book, strips);
    m_strips->resizeColumnsToContents();
    if (!strips.empty()) m_strips->setCurrentIndex(m_stripsModel->index(0, 0));
    tellWithdrawals();
    showCurrent();
}

void MedicinePage::tellWithdrawals() {
    const QString now = withdrawalSummary(*m_book);
    m_summary->tell(now.isEmpty() ? tr("No hive is under withdrawal today.") : now);
}

void MedicinePage::showCurrent() {
    const QModelIndex now = m_table->currentIndex();
    const bool any = m_book && now.isValid() && now.row() < m_model->rowCount();
    m_right->setEnabled(any && !m_model->at(now.row()).struck);
    m_details->setHtml(any ? medicineDetails(*m_book, m_model->at(now.row()))
                           : tr("No treatment is recorded for this time and place.").toHtmlEscaped());
}

void MedicinePage::putRight() {
    const QModelIndex now = m_table->currentIndex();
    if (now.isValid() && !m_model->at(now.row()).struck) emit putRightAsked(m_model->at(now.row()).row.id.value);
}

bool MedicinePage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers() == Qt::NoModifier && pressed(watched, key->key())) return true;
    }
    return QWidget::eventFilter(watched, event);
}

bool MedicinePage::pressed(QObject* where, int key) {
    bool done = true;
    guarded(m_dialogs, [&] {
        if (key == Qt::Key_N)
            emit newAsked();
        else if (key == Qt::Key_P)
            writePdf();
        else if (key == Qt::Key_S)
            writeCsv();
        else if (where == m_strips && (key == Qt::Key_T || key == Qt::Key_A))
            takeOut(key == Qt::Key_A);
        else
            done = false;
    });
    return done;
}

void MedicinePage::takeOut(bool all) {
    const QModelIndex now = m_strips->currentIndex();
    if (!now.isValid()) return;
    if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) {
        emit m_desk.said(barred);
        return;
    }
    const auto day = form::parseDay(m_outOn->text(), m_desk.today());
    if (!day) {
        emit m_desk.said(tr("Out on: expected a day, such as %1.").arg(form::typedDay(m_desk.today())));
        return;
    }
    const rules::StripsIn in = m_stripsModel->at(now.row());
    const QString by = m_desk.author();
    m_desk.save(tr("Strips taken out"), [=](const core::edit::EditContext& c) {
        return all ? core::edit::logStripsOutOfAll(c, in.treatment, *day, by, {})
                   : core::edit::logStripsOut(c, {{}, in.treatment, in.colony, *day, by, {}});
    });
}

void MedicinePage::writePdf() {
    if (!m_book) return;
    const auto path = m_dialogs.fileToWrite(tr("Medicine register as PDF"),
                                            tr("%1, medicine register.pdf").arg(m_desk.session().bookTitle()));
    if (!path) return;
    print::requireFonts();
    print::writePages(report::medicinePages(*m_book, m_about, print::originOf(m_desk.session()), print::FontMeasure()),
                      nullptr, tr("Medicine register"), *path);
    emit m_desk.said(tr("The medicine register is in %1.").arg(*path));
}

void MedicinePage::writeCsv() {
    if (!m_book) return;
    const auto path = m_dialogs.fileToWrite(tr("Medicine register as CSV"),
                                            tr("%1, medicine register.csv").arg(m_desk.session().bookTitle()));
    if (!path) return;
    const QFileInfo file(*path);
    core::exchange::CsvWriter writer(file.absolutePath(), file.fileName());
    writer.row(report::medicineFileColumns());
    for (const QStringList& row : report::medicineFileRows(*m_book, m_about)) writer.row(row);
    writer.commit();
    emit m_desk.said(tr("The medicine register is in %1.").arg(*path));
}

QString MedicinePage::details() const { return m_details->toPlainText(); }
QString MedicinePage::summary() const { return m_summary->text(); }

} // namespace ui::health
