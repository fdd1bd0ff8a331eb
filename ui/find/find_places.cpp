#include "ui/find/find_places.h"

#include "ui/bulk/bulk.h"
#include "ui/card/colony_card.h"
#include "ui/find/colonies_page.h"
#include "ui/find/colony_table.h"
#include "ui/find/filter_row.h"
#include "ui/find/note_model.h"
#include "ui/find/notes_page.h"
#include "ui/find/visits_page.h"
#include "ui/form/form.h"
#include "ui/look/paged.h"
#include "ui/records/record_list.h"
#include "ui/window/work_page.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QToolButton>

namespace ui::find {

namespace {

struct Pages {
    Q_DECLARE_TR_FUNCTIONS(FindPages)
};

std::optional<records::RecordKind> kindOf(core::NoteOf of) {
    switch (of) {
    case core::NoteOf::Visit:
        return records::RecordKind::Visit;
    case core::NoteOf::Colony:
        return records::RecordKind::Began;
    case core::NoteOf::Transfer:
        return records::RecordKind::Transfer;
    case core::NoteOf::Result:
        return records::RecordKind::Result;
    case core::NoteOf::Treatment:
        return records::RecordKind::Treatment;
    case core::NoteOf::Lineage:
        return records::RecordKind::Lineage;
    case core::NoteOf::Feeding:
        return records::RecordKind::Feeding;
    case core::NoteOf::Queen:
        return records::RecordKind::Queen;
    case core::NoteOf::Sample:
        return records::RecordKind::Sample;
    case core::NoteOf::MiteFall:
        return records::RecordKind::MiteFall;
    case core::NoteOf::KitEnd:
        return records::RecordKind::KitEnd;
    case core::NoteOf::Yard:
        break;
    }
    return std::nullopt;
}

/// The card of the colony at that record; of a yard's record its form; of a yard the yard.
void openNote(window::WorkPage& page, desk::Desk& desk, const core::NoteFound& note) {
    const auto kind = kindOf(note.of);
    if (note.colony) {
        page.showColony(*note.colony);
        if (kind) page.card()->records()->choose(*kind, note.id);
        return;
    }
    if (!note.yard) return;
    desk.setYard(*note.yard);
    if (!kind || !note.day) return emit desk.said(Pages::tr("This is a note of the yard, which is shown now."));
    records::RecordRow row;
    row.kind = *kind;
    row.id = note.id;
    row.day = *note.day;
    row.ofYard = true;
    page.openRecord(row);
}

/// What is done with several visits of the list at once.
QToolButton* severalButton(VisitsPage& list, window::WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    QToolButton* button = menuButton(&list, Pages::tr("&Selected"), Pages::tr("Change or take back those selected"));
    auto* menu = new QMenu(button);
    button->setMenu(menu);
    QObject::connect(menu, &QMenu::aboutToShow, &list, [&list, &page, &desk, &dialogs, menu] {
        menu->clear();
        const auto visits = list.selectedVisits();
        const auto add = [&](const QString& text, const std::function<void()>& work) {
            QAction* action = menu->addAction(text);
            action->setEnabled(!visits.empty() && desk.writeBarred().isEmpty());
            QObject::connect(action, &QAction::triggered, &list, [work, &dialogs] { guarded(dialogs, work); });
        };
        const auto count = static_cast<int>(visits.size());
        add(count == 1 ? Pages::tr("&Change 1 visit…") : Pages::tr("&Change %1 visits…").arg(count),
            [visits, &page, &desk] {
                bulk::changeVisits(desk, visits, [&page](std::unique_ptr<form::Form> form) {
                    return page.openForm(std::move(form)) != nullptr;
                });
            });
        add(count == 1 ? Pages::tr("&Take back 1 visit") : Pages::tr("&Take back %1 visits").arg(count),
            [visits, &desk] { bulk::takeBackVisits(desk, visits); });
    });
    return button;
}

} // namespace

void addColonyPages(look::Paged& pages, window::WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* all = new ColoniesPage(desk, dialogs, &pages);
    QObject::connect(all, &ColoniesPage::cardAsked, &page, &window::WorkPage::showColony);
    QObject::connect(all, &ColoniesPage::formAsked, &page,
                     [&page, &dialogs](const auto& make) { guarded(dialogs, [&] { page.openForm(make()); }); });
    pages.addPage(Pages::tr("All colonies"), Pages::tr("Every colony, filtered, sorted and asked questions"), all,
                  all->table());
    auto* notes = new NotesPage(desk, dialogs, &pages);
    QObject::connect(notes, &NotesPage::opened, &page, [&page, &desk, &dialogs](const core::NoteFound& note) {
        guarded(dialogs, [&] { openNote(page, desk, note); });
    });
    pages.addPage(Pages::tr("Search notes"), Pages::tr("Words in the notes of all records"), notes, notes->line());
}

void addVisitPage(look::Paged& pages, window::WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* all = new VisitsPage(desk, dialogs, &pages);
    QObject::connect(all, &VisitsPage::opened, &page, [&page](core::VisitId visit, core::Day day) {
        records::RecordRow row;
        row.kind = records::RecordKind::Visit;
        row.id = visit.value;
        row.day = day;
        page.openRecord(row);
    });
    all->addTool(severalButton(*all, page, desk, dialogs));
    pages.addPage(Pages::tr("All visits"), Pages::tr("Visits of all yards, filtered, sorted and searched"), all,
                  all->table());
}

} // namespace ui::find
