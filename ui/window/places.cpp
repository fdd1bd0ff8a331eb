#include "ui/window/places.h"

#include "ui/board/row_list.h"
#include "ui/entry/entry_page.h"
#include "ui/find/find_places.h"
#include "ui/form/day_edit.h"
#include "ui/health/contacts_page.h"
#include "ui/health/guidance_page.h"
#include "ui/health/holds_page.h"
#include "ui/health/medicine_page.h"
#include "ui/health/mites_page.h"
#include "ui/health/report_page.h"
#include "ui/health/round_page.h"
#include "ui/health/samples_page.h"
#include "ui/kit/kit_window.h"
#include "ui/look/paged.h"
#include "ui/records/record_rows.h"
#include "ui/records/treatment_form.h"
#include "ui/season/season_place.h"
#include "ui/visit/visit_form.h"
#include "ui/window/work_page.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QTableView>

namespace ui::window {

namespace {

struct Places {
    Q_DECLARE_TR_FUNCTIONS(ui::window::Places)
};

/// Shown once it has a page.
void add(WorkPage& page, Place place, look::Paged* pages) {
    if (pages->shown())
        page.addPlace(place, pages);
    else
        delete pages;
}

look::Paged* coloniesPlace(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* pages = new look::Paged(Places::tr("Pages of the colonies"), &page);
    find::addColonyPages(*pages, page, desk, dialogs);
    return pages;
}

look::Paged* visitsPlace(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* pages = new look::Paged(Places::tr("Pages of the visits"), &page);
    const auto formOpen = [&page] { return page.form()->isVisible() && !page.form()->place().was; };
    auto* entry = new entry::EntryPage(
        desk, *page.entry(), dialogs, [&page] { page.logVisit(); }, formOpen, pages);
    pages->addPage(Places::tr("Write down"), Places::tr("Visits of a day, typed from the tally sheet"), entry,
                   entry->grid());
    find::addVisitPage(*pages, page, desk, dialogs);
    return pages;
}

void addMedicinePage(look::Paged& pages, WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* medicine = new health::MedicinePage(desk, dialogs, &pages);
    pages.addPage(Places::tr("Medicine"), Places::tr("The medicine register, withdrawals and strips to take out"),
                  medicine, medicine->table());
    QObject::connect(medicine, &health::MedicinePage::newAsked, &page, [&page, &desk, &dialogs] {
        guarded(dialogs, [&] {
            const records::Subject about{desk.chosen(), desk.yard()};
            if (about.colony || about.yard)
                page.openForm(std::make_unique<records::TreatmentForm>(desk.session(), about, desk.today()));
        });
    });
    QObject::connect(medicine, &health::MedicinePage::putRightAsked, &page, [&page, &dialogs](qint64 treatment) {
        guarded(dialogs, [&] { page.openRecord({records::RecordKind::Treatment, treatment, {}, {}, {}, false}); });
    });
}

void addSamples(look::Paged& pages, WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    using health::SamplesPage;
    auto* samples = new SamplesPage(desk, dialogs, &pages);
    pages.addPage(Places::tr("Samples"), Places::tr("Samples, results and papers, and what was lifted"), samples,
                  samples->list());
    QObject::connect(samples, &SamplesPage::formAsked, &page, [&page, &dialogs](const SamplesPage::Make& make) {
        guarded(dialogs, [&] { page.openForm(make()); });
    });
    QObject::connect(samples, &SamplesPage::recordAsked, &page, &WorkPage::openRecord);
    QObject::connect(samples, &SamplesPage::cardAsked, &page, &WorkPage::showColony);
    QObject::connect(samples, &SamplesPage::kitAsked, &page,
                     [&] { guarded(dialogs, [&] { kit::showKit(desk, dialogs, &page); }); });
}

/// The report for an inspector, and guidance.
void addPapers(look::Paged& pages, WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    const auto open = [&page](std::unique_ptr<form::Form> form) { page.openForm(std::move(form)); };
    auto* report = new health::ReportPage(desk, dialogs, open, &pages);
    pages.addPage(Places::tr("Report"), Places::tr("What an inspector asks of a period and yards, as pages and files"),
                  report, report->from());
    auto* guidance = new health::GuidancePage(desk, dialogs, open, &pages);
    pages.addPage(Places::tr("Guidance"), Places::tr("Signs, tests, kit, quarantine; what must be reported where"),
                  guidance, guidance->topics());
}

look::Paged* healthPlace(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* pages = new look::Paged(Places::tr("Pages of health"), &page);
    auto* holds = new health::HoldsPage(desk, dialogs, pages);
    auto* contacts = new health::ContactsPage(desk, dialogs, pages);
    pages->addPage(Places::tr("Held"), Places::tr("Who is held, why, and which record would lift it"), holds,
                   holds->list());
    pages->addPage(Places::tr("Contacts"), Places::tr("What a colony passed on, and what came to it"), contacts,
                   contacts->colonyField());
    addSamples(*pages, page, desk, dialogs);
    auto* round = new health::RoundPage(desk, dialogs, pages);
    pages->addPage(Places::tr("Brood checks"), Places::tr("Whose brood is to be looked at before the fall unions"),
                   round, round->list());
    QObject::connect(round, &health::RoundPage::visitsAsked, &page,
                     [&page](const std::vector<core::ColonyId>& order) { page.walkThrough(order); });
    pages->addPage(Places::tr("Mites"), Places::tr("Washes, fallen mites, and both before and after treatments"),
                   health::mitesPage(desk, dialogs, pages));
    QObject::connect(holds, &health::HoldsPage::contactsAsked, contacts, [pages, contacts](core::ColonyId colony) {
        contacts->trace(colony);
        pages->show(contacts);
        contacts->table()->setFocus(Qt::OtherFocusReason);
    });
    QObject::connect(contacts, &health::ContactsPage::cardAsked, &page, &WorkPage::showColony);
    addMedicinePage(*pages, page, desk, dialogs);
    addPapers(*pages, page, desk, dialogs);
    return pages;
}

look::Paged* seasonPlace(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* pages = new look::Paged(Places::tr("Pages of the season"), &page);
    season::addSeasonPages(*pages, desk, dialogs);
    return pages;
}

} // namespace

void addPlaces(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    add(page, Place::Colonies, coloniesPlace(page, desk, dialogs));
    add(page, Place::Visits, visitsPlace(page, desk, dialogs));
    add(page, Place::Health, healthPlace(page, desk, dialogs));
    add(page, Place::Season, seasonPlace(page, desk, dialogs));
}

} // namespace ui::window
