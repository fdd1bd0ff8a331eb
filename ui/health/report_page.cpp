#include "ui/health/report_page.h"

#include "core/edit/inspection_rows.h"
#include "core/report/inspector_pages.h"
#include "ui/busy/run.h"
#include "ui/form/day_edit.h"
#include "ui/form/typed.h"
#include "ui/look/type.h"
#include "ui/look/wrapped_label.h"
#include "ui/people/keeper_form.h"
#include "ui/print/book_origin.h"
#include "ui/print/inspector_paper.h"
#include "ui/print/pages_file.h"
#include "ui/print/pages_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::health {

namespace {

constexpr int kLeftCharacters = 30;

/// Twelve months up to that day.
core::Day yearTo(core::Day last) { return core::dayOf(core::toDate(last).addYears(-1)) + 1; }

} // namespace

struct ReportPage::Made {
    core::rules::InspectionBook book;
    core::rules::Inspection found;
    core::report::PageOrigin origin;
    std::shared_ptr<const std::vector<core::report::Page>> pages;
};

ReportPage::ReportPage(desk::Desk& desk, Dialogs& dialogs, OpenForm open, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_from(new form::DayEdit(desk.today(), this)),
      m_until(new form::DayEdit(desk.today(), this)),
      m_yards(new QListWidget(this)),
      m_pdf(new QPushButton(tr("As &PDF…"), this)),
      m_csv(new QPushButton(tr("As &CSV…"), this)),
      m_keeper(new QPushButton(tr("&Keeper…"), this)),
      m_said(new look::WrappedLabel(QStringLiteral("reportSaid"), this)),
      m_preview(new print::PagesView(tr("Pages of the report"), this)),
      m_follow(new desk::WhileShown(*this, desk, dialogs, [this] { read(); })),
      m_beside(new desk::Beside(this)) {
    constexpr int kLooksApartMs = 100;
    m_look.setInterval(kLooksApartMs);
    connect(&m_look, &QTimer::timeout, this, &ReportPage::showHow);
    m_from->setText(form::typedDay(yearTo(desk.today())));
    m_until->setText(form::typedDay(desk.today()));
    build();
    const auto again = [this] { guarded(m_dialogs, [this] { make(); }); };
    for (form::DayEdit* edit : {m_from, m_until}) connect(edit, &QLineEdit::editingFinished, this, again);
    connect(m_yards, &QListWidget::itemChanged, this, again);
    connect(m_pdf, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writePdf(); }); });
    connect(m_csv, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writeFolder(); }); });
    connect(m_keeper, &QPushButton::clicked, this, [this, open = std::move(open)] {
        guarded(m_dialogs, [&] { open(std::make_unique<people::KeeperForm>(m_desk.session())); });
    });
}

void ReportPage::build() {
    auto* title = new QLabel(tr("Report for the inspector"), this);
    title->setFont(look::headingFont(font()));
    auto* left = new QWidget(this);
    left->setFixedWidth(fontMetrics().averageCharWidth() * kLeftCharacters);
    auto* down = new QVBoxLayout(left);
    down->setContentsMargins(0, 0, 0, 0);
    const auto put = [&](const QString& text, QWidget* field, const QString& name, const QString& spoken) {
        auto* label = new QLabel(text, left);
        label->setBuddy(field);
        field->setObjectName(name);
        field->setAccessibleName(spoken);
        down->addWidget(label);
        down->addWidget(field);
    };
    put(tr("&From"), m_from, QStringLiteral("reportFrom"), tr("First day of the report"));
    put(tr("&Until"), m_until, QStringLiteral("reportUntil"), tr("Last day of the report"));
    put(tr("&Yards (space ticks one)"), m_yards, QStringLiteral("reportYards"), tr("Yards of the report"));
    for (QPushButton* b : {m_pdf, m_csv, m_keeper}) {
        b->setAutoDefault(false);
        down->addWidget(b);
    }
    m_pdf->setToolTip(tr("The pages shown, as a file to print or to send"));
    m_csv->setToolTip(tr("The same tables as a folder of files for a spreadsheet"));
    m_keeper->setToolTip(tr("Name, address, contact and registration at the head of the report"));
    m_said->setProperty("quiet", true);
    auto* across = new QHBoxLayout;
    across->setSpacing(18);
    across->addWidget(left);
    across->addWidget(m_preview, 1);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 14, 20, 14);
    all->setSpacing(8);
    all->addWidget(title);
    all->addWidget(m_said);
    all->addLayout(across, 1);
}

void ReportPage::read() {
    m_from->setToday(m_desk.today());
    m_until->setToday(m_desk.today());
    const QStringList before = yardsAsked();
    const bool all = before.isEmpty();
    const QSignalBlocker quiet(m_yards);
    const int row = m_yards->currentRow();
    m_yards->clear();
    for (const core::SnapYard& yard : m_desk.reading().snapshot.yards) {
        auto* item = new QListWidgetItem(yard.name, m_yards);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(all || before.contains(yard.name) ? Qt::Checked : Qt::Unchecked);
    }
    m_yards->setCurrentRow(std::clamp(row, 0, std::max(0, m_yards->count() - 1)));
    m_keeper->setEnabled(!m_desk.session().readOnly());
    make();
}

/// All where each is ticked: yards whose hives are gone are among them then.
QStringList ReportPage::yardsAsked() const {
    QStringList names;
    for (int i = 0; i < m_yards->count(); ++i)
        if (m_yards->item(i)->checkState() == Qt::Checked) names << m_yards->item(i)->text();
    return names.size() == m_yards->count() ? QStringList() : names;
}

void ReportPage::make() {
    const auto from = form::parseDay(m_from->text(), m_desk.today());
    const auto until = form::parseDay(m_until->text(), m_desk.today());
    if (!from || !until)
        return refuse(tr("From and until: expected a day, such as %1.").arg(form::typedDay(m_desk.today())));
    if (*from > *until) return refuse(tr("From is after until: expected the earlier day first."));
    bool ticked = m_yards->count() == 0;
    for (int i = 0; i < m_yards->count(); ++i) ticked |= m_yards->item(i)->checkState() == Qt::Checked;
    if (!ticked) return refuse(tr("No yard is ticked: expected one at least."));
    const auto maker = [from = *from, until = *until, yards = yardsAsked(), origin = print::originOf(m_desk.session())](
                           const core::edit::Session& session, const core::Progress& progress) {
        constexpr double kRead = 0.15; // of the way, as measured on a report of 3,000 pages
        auto made = std::make_shared<Made>();
        made->origin = origin;
        made->book = core::edit::inspectionRows(session, from, until, yards);
        progress.at(kRead / 2);
        made->found = core::rules::inspect(made->book);
        made->pages = std::make_shared<const std::vector<core::report::Page>>(
            print::inspectorPages(made->book, made->found, origin, progress.part(kRead, 1)));
        return made;
    };
    m_beside->stop();
    if (static_cast<int>(m_desk.reading().snapshot.colonies.size()) <= m_atOnce)
        take(maker(m_desk.session(), {}));
    else
        makeBeside(maker);
}

/// An edit meanwhile has the page made again.
void ReportPage::makeBeside(const Maker& maker) {
    refuse({});
    m_share = std::make_shared<std::atomic<double>>(0);
    m_look.start();
    showHow();
    m_beside->start([this, maker, share = m_share, path = m_desk.session().path(),
                     &clock = m_desk.session().clock()](const std::function<bool()>& stopped) -> desk::Beside::Found {
        const core::Progress progress([share, stopped](const QString&, double done) {
            *share = done;
            return !stopped();
        });
        try {
            const auto own = core::edit::Session::open(path, clock, core::edit::Session::Access::ReadOnly);
            return [this, made = maker(*own, progress)] { take(made); };
        } catch (const core::Stopped&) {
            return {};
        } catch (const core::Error& e) {
            return [this, why = e.userMessage()] { refuse(why); };
        }
    });
}

void ReportPage::showHow() { m_said->tell(tr("The report is being made: %1 %").arg(static_cast<int>(*m_share * 100))); }

void ReportPage::take(std::shared_ptr<const Made> made) {
    m_look.stop();
    m_made = std::move(made);
    m_preview->show(m_made->pages);
    QString said = core::report::inspectorSummary(m_made->book, m_made->found);
    if (!m_made->book.keeper) said += u' ' + tr("No keeper is recorded yet: the head of the report says so.");
    m_said->tell(said);
    m_pdf->setEnabled(true);
    m_csv->setEnabled(true);
}

void ReportPage::refuse(const QString& why) {
    m_beside->stop();
    m_look.stop();
    m_made.reset();
    m_preview->show(std::vector<core::report::Page>());
    m_said->tell(why);
    m_pdf->setEnabled(false);
    m_csv->setEnabled(false);
}

void ReportPage::writePdf() {
    if (!m_made) return;
    const auto path = m_dialogs.fileToWrite(tr("Report for the inspector as PDF"),
                                            tr("%1, report.pdf").arg(m_desk.session().bookTitle()));
    if (!path) return;
    const auto work = [made = m_made, path = *path](const core::Progress& progress) {
        print::writePages(*made->pages, nullptr, core::report::inspectorTitle(), path, progress);
    };
    const bool done = busy::run(*window(), tr("The report is written as PDF…"), work);
    m_said->tell(done ? tr("The report is in %1.").arg(*path) : tr("Stopped: no file was written."));
}

/// A folder that is named as the file asked for.
void ReportPage::writeFolder() {
    if (!m_made) return;
    auto path = m_dialogs.fileToWrite(tr("Report as CSV files: name of their folder"),
                                      tr("%1, report.csv").arg(m_desk.session().bookTitle()));
    if (!path) return;
    if (path->endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) path->chop(4);
    const auto work = [made = m_made, path = *path](const core::Progress& progress) {
        print::writeInspectorFolder(made->book, made->found, made->origin, path, progress);
    };
    const bool done = busy::run(*window(), tr("The report is written as CSV files…"), work);
    m_said->tell(done ? tr("The report's tables are in the folder %1.").arg(*path)
                      : tr("Stopped: no file was written."));
}

QString ReportPage::said() const { return m_said->text(); }

} // namespace ui::health
