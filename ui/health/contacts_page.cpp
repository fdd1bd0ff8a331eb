#include "ui/health/contacts_page.h"

#include "core/rules/holds_then.h"
#include "ui/form/book_options.h"
#include "ui/form/day_edit.h"
#include "ui/form/suggestions.h"
#include "ui/form/typed.h"
#include "ui/health/contact_model.h"
#include "ui/health/contact_view.h"
#include "ui/health/supposed_text.h"
#include "ui/look/type.h"
#include "ui/look/wrapped_label.h"
#include "ui/print/book_origin.h"
#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace ui::health {

namespace rules = core::rules;
namespace report = core::report;
using rules::ContactWay;

namespace {

constexpr size_t kMostDrawn = 60;

} // namespace

ContactsPage::ContactsPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_colony(new QLineEdit(this)),
      m_from(new form::DayEdit(desk.today(), this)),
      m_until(new form::DayEdit(desk.today(), this)),
      m_way(new QComboBox(this)),
      m_whatIf(new QPushButton(tr("&Were it positive…"), this)),
      m_pdf(new QPushButton(tr("As &PDF…"), this)),
      m_summary(new look::WrappedLabel(QStringLiteral("contactSummary"), this)),
      m_chain(new look::WrappedLabel(QStringLiteral("contactChain"), this)),
      m_supposed(new look::WrappedLabel(QStringLiteral("contactSupposed"), this)),
      m_view(new ContactView(this)),
      m_scroll(new QScrollArea(this)),
      m_model(new ContactModel(this)),
      m_table(new QTableView(this)),
      m_follow(new desk::WhileShown(*this, desk, dialogs, [this] { read(); })) {
    const core::Day today = desk.today();
    m_from->setText(form::typedDay(today - desk.reading().snapshot.settings.traceDays));
    m_until->setText(form::typedDay(today));
    build();
    const auto again = [this] { guarded(m_dialogs, [this] { ask(); }); };
    for (QLineEdit* edit : {m_colony, static_cast<QLineEdit*>(m_from), static_cast<QLineEdit*>(m_until)})
        connect(edit, &QLineEdit::editingFinished, this, again);
    connect(m_way, &QComboBox::currentIndexChanged, this, again);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &ContactsPage::showCurrent);
    connect(m_table, &QTableView::activated, this, &ContactsPage::openCurrent);
    connect(m_view, &ContactView::pressed, this, [this](core::ColonyIx colony) {
        if (const int row = m_model->rowAbout(colony); row >= 0) m_table->setCurrentIndex(m_model->index(row, 0));
    });
    connect(m_whatIf, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { suppose(); }); });
    connect(m_pdf, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writePdf(); }); });
}

QWidget* ContactsPage::head() {
    auto* head = new QWidget(this);
    auto* grid = new QGridLayout(head);
    grid->setContentsMargins(20, 0, 20, 0);
    int column = 0;
    const auto put = [&](const QString& text, QWidget* field, const QString& name) {
        auto* label = new QLabel(text, head);
        label->setBuddy(field);
        field->setObjectName(name);
        field->setAccessibleName(QString(text).remove(u'&'));
        grid->addWidget(label, 0, column);
        grid->addWidget(field, 1, column++);
    };
    put(tr("&Colony"), m_colony, QStringLiteral("contactColony"));
    m_way->addItem(tr("What it passed on"), static_cast<int>(ContactWay::Onwards));
    m_way->addItem(tr("What came to it"), static_cast<int>(ContactWay::Back));
    put(tr("&Way"), m_way, QStringLiteral("contactWay"));
    put(tr("&From"), m_from, QStringLiteral("contactFrom"));
    put(tr("&Until"), m_until, QStringLiteral("contactUntil"));
    m_whatIf->setToolTip(
        tr("Who would be held besides, had a laboratory found foulbrood in it today; nothing is written"));
    grid->addWidget(m_whatIf, 1, column++);
    grid->addWidget(m_pdf, 1, column);
    grid->setColumnStretch(0, 1);
    return head;
}

void ContactsPage::build() {
    m_scroll->setWidget(m_view);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_view->setToolTip(report::contactKey());
    m_table->setModel(m_model);
    m_table->setObjectName(QStringLiteral("contactList"));
    m_table->setAccessibleName(tr("Contacts, a row each"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(static_cast<int>(ContactModel::Column::What),
                                                      QHeaderView::Stretch);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    auto* title = new QLabel(tr("Contacts"), this);
    title->setFont(look::headingFont(font()));
    auto* split = new QSplitter(Qt::Vertical, this);
    split->addWidget(m_scroll);
    split->addWidget(m_table);
    split->setChildrenCollapsible(false);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    m_supposed->setProperty("quiet", true);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(8);
    for (QWidget* label : std::initializer_list<QWidget*>{title, m_summary, m_chain, m_supposed})
        label->setContentsMargins(20, 0, 20, 0);
    all->addWidget(title);
    all->addWidget(head());
    all->addWidget(m_summary);
    auto* middle = new QHBoxLayout;
    middle->setContentsMargins(20, 0, 20, 0);
    middle->addWidget(split);
    all->addLayout(middle, 1);
    all->addWidget(m_chain);
    all->addWidget(m_supposed);
}

void ContactsPage::trace(core::ColonyId colony) {
    guarded(m_dialogs, [&] {
        if (const auto known = m_desk.session().colony(colony)) {
            m_colony->setText(form::nameOn(m_desk.session(), *known, m_desk.today()));
            m_follow->again();
        }
    });
}

/// What is known today, whatever day is shown: a trace looks back on its own.
void ContactsPage::read() {
    if (m_desk.present()) {
        m_snapshot = m_desk.reading().snapshot;
        m_holds = m_desk.reading().plan.holds;
    } else {
        m_snapshot = m_desk.session().snapshot(m_desk.today());
        m_holds = rules::holds(m_snapshot);
    }
    form::suggest(*m_colony, form::colonyOptions(m_desk.session()));
    if (m_colony->text().isEmpty() && m_desk.chosen())
        if (const auto known = m_desk.session().colony(*m_desk.chosen()))
            m_colony->setText(form::nameOn(m_desk.session(), *known, m_desk.today()));
    ask();
}

void ContactsPage::ask() {
    const auto from = form::parseDay(m_from->text(), m_desk.today());
    const auto until = form::parseDay(m_until->text(), m_desk.today());
    if (m_colony->text().trimmed().isEmpty()) return refuse(tr("Type the colony whose contacts are traced."));
    const auto colony = m_snapshot.colonyNamed(m_colony->text().trimmed());
    if (!colony) return refuse(tr("No colony is called %1 up to today.").arg(m_colony->text().trimmed()));
    if (!from || !until)
        return refuse(tr("From and until: expected a day, such as %1.").arg(form::typedDay(m_desk.today())));
    if (*from > *until) return refuse(tr("From is after until: expected the earlier day first."));
    tell(*colony, *from, *until);
}

void ContactsPage::refuse(const QString& why) {
    m_told.reset();
    m_model->show({});
    m_view->show({});
    m_summary->tell(why);
    m_chain->tell({});
    m_supposed->tell({});
    m_whatIf->setEnabled(false);
    m_pdf->setEnabled(false);
}

void ContactsPage::tell(core::ColonyIx colony, core::Day from, core::Day until) {
    const rules::Gifts gifts(m_snapshot);
    const rules::Standing standing(m_snapshot, gifts);
    const auto way = static_cast<ContactWay>(m_way->currentData().toInt());
    const bool other = !m_told || m_told->contacts.of != colony;
    m_told =
        report::ContactTold{from, until, rules::contactsOf(gifts, m_snapshot.colonies.size(), colony, from, until, way),
                            rules::yardContactsOf(standing, colony, from, until)};
    m_model->show(report::contactLines(m_snapshot, *m_told));
    m_table->resizeColumnsToContents();
    const auto drawing = report::contactDrawing(m_snapshot, m_told->contacts, m_holds, from, until, kMostDrawn);
    m_view->show(drawing);
    m_scroll->setVisible(drawing.rows.size() > 1);
    QString summary = report::contactSummary(*m_told);
    if (drawing.left > 0) summary += tr(" Not drawn, but listed: %1 farther ones.").arg(drawing.left);
    m_summary->tell(summary);
    if (other) m_supposed->tell({});
    m_whatIf->setEnabled(true);
    m_pdf->setEnabled(true);
    if (m_model->rowCount() > 0) m_table->setCurrentIndex(m_model->index(0, 0));
    showCurrent();
}

void ContactsPage::showCurrent() {
    const QModelIndex now = m_table->currentIndex();
    const bool any = now.isValid() && m_told;
    m_view->setMarked(any ? std::optional(m_model->at(now.row()).far) : std::nullopt);
    m_chain->tell(any ? report::chainSentence(m_snapshot, m_told->contacts, m_model->at(now.row()).far) : QString());
}

void ContactsPage::openCurrent() {
    const QModelIndex now = m_table->currentIndex();
    if (now.isValid()) emit cardAsked(m_snapshot.colony(m_model->at(now.row()).far).id);
}

void ContactsPage::suppose() {
    if (!m_told) return;
    const core::ColonyId colony = m_snapshot.colony(m_told->contacts.of).id;
    const auto more = rules::heldWerePositive(m_desk.session().snapshotForHolds(), colony, m_desk.today());
    m_supposed->tell(supposedText(m_snapshot, m_told->contacts.of, more));
}

void ContactsPage::writePdf() {
    if (!m_told) return;
    const QString& name = m_snapshot.colony(m_told->contacts.of).shown;
    const auto path = m_dialogs.fileToWrite(tr("Contacts as PDF"), tr("Contacts of %1.pdf").arg(name));
    if (!path) return;
    print::requireFonts();
    print::writePages(
        report::contactPages(m_snapshot, *m_told, m_holds, print::originOf(m_desk.session()), print::FontMeasure()),
        nullptr, tr("Contacts of %1").arg(name), *path);
    emit m_desk.said(tr("The contacts of %1 are in %2.").arg(name, *path));
}

QString ContactsPage::summary() const { return m_summary->text(); }
QString ContactsPage::chain() const { return m_chain->text(); }
QString ContactsPage::supposed() const { return m_supposed->text(); }

} // namespace ui::health
