#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/card/colony_card.h"
#include "ui/entry/entry_desk.h"
#include "ui/form/form_panel.h"
#include "ui/life/card_pages.h"
#include "ui/pick/visit_walk.h"
#include "ui/records/find_form.h"
#include "ui/records/odd.h"
#include "ui/records/put_right.h"
#include "ui/visit/visit_form.h"
#include "ui/visit/visit_place.h"
#include "ui/window/work_page.h"

#include <QStackedWidget>

#include <algorithm>

// The page's part in records: their forms at the right, opened from commands, the card and its list.

namespace ui::window {

namespace edit = core::edit;

std::optional<core::Colony> WorkPage::subject() const {
    const auto id = m_desk.chosen() ? m_desk.chosen() : m_ended;
    return id ? m_desk.session().colony(*id) : std::nullopt;
}

void WorkPage::logVisit() {
    guarded(m_dialogs, [this] {
        const auto colony = subject();
        if (!colony) return emit m_desk.said(tr("Choose a hive first: its visit is logged here."));
        startVisit(colony->id, {});
    });
}

void WorkPage::startVisit(core::ColonyId colony, const std::optional<core::Visit>& was) {
    if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) return emit m_desk.said(barred);
    const bool kept = m_right->currentWidget() == m_form && m_entry->typingIsShown();
    if (!kept && !mayLeaveForm()) return;
    m_panel->close();
    const edit::Session& book = m_desk.session();
    const visit::VisitDraft draft = m_entry->fresh();
    const core::Day day = was ? was->day : draft.day;
    const auto odd = [&book, was](const core::Visit& visit) { return records::oddVisit(book, visit, was); };
    m_right->setCurrentWidget(m_form);
    const visit::VisitPlace place = visit::visitPlaceOf(book, colony, day, was);
    m_form->start(place, was ? visit::draftOf(*was, place.weightUnit) : draft, odd);
    m_entry->begun();
}

void WorkPage::walk() {
    guarded(m_dialogs, [this] { m_walk->goOn(); });
}

void WorkPage::walkThrough(const std::vector<core::ColonyId>& order) {
    guarded(m_dialogs, [&] {
        if (!m_form->isVisible() || !m_form->dirty()) return m_walk->walk(order);
        emit m_desk.said(tr("The visit that is open is not saved: Enter saves it."));
    });
}

/// The walk's next hive: false where its form did not open. Or the form is done with.
bool WorkPage::turnTo(std::optional<core::ColonyId> colony) {
    if (!colony) return settleRight(), false;
    startVisit(*colony, {});
    return m_right->currentWidget() == m_form && m_form->place().colony == *colony;
}

/// A refusal, a full disk or a stale record keeps the form with all that was typed.
void WorkPage::saveVisit(const core::Visit& visit) {
    const bool anew = !m_form->place().was;
    const core::VisitId was = anew ? core::VisitId{} : m_form->place().was->id;
    try {
        const bool saved =
            m_desk.save(anew ? tr("Log a visit") : tr("Change a visit"), [&](const edit::EditContext& c) {
                return anew ? edit::logVisit(c, visit) : edit::changeVisit(c, visit);
            });
        if (saved) {
            settleRight();
            m_entry->saved(visit, was);
            if (anew) m_walk->saved(visit.colony);
            return;
        }
        m_form->refuse(tr("Nothing is saved yet: the question was not answered."));
    } catch (const std::exception& e) {
        const auto* known = dynamic_cast<const core::Error*>(&e);
        m_form->refuse(known ? known->userMessage() : QString::fromUtf8(e.what()));
    }
}

void WorkPage::note(records::NewRecord what) {
    guarded(m_dialogs, [&] {
        const auto colony = subject();
        if (!colony) return emit m_desk.said(tr("Choose a hive first: what happened to it is noted here."));
        if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) return emit m_desk.said(barred);
        const core::Day day = std::min(m_desk.day(), m_desk.today());
        try {
            openForm(records::newForm(m_desk.session(), what, *colony, day, m_desk.selected()));
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData) throw;
            emit m_desk.said(e.userMessage());
        }
    });
}

void WorkPage::openRecord(const records::RecordRow& record) {
    guarded(m_dialogs, [&] {
        if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) return emit m_desk.said(barred);
        try {
            if (record.kind == records::RecordKind::Visit) {
                std::optional<core::Visit> visit;
                m_desk.session().read([&](const edit::EditContext& c) { visit = c.visit({record.id}); });
                if (visit) startVisit(visit->colony, visit);
            } else {
                openForm(records::formOf(m_desk.session(), record));
            }
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData) throw;
            emit m_desk.said(e.userMessage());
        }
    });
}

void WorkPage::takeBack(const records::RecordRow& record) {
    guarded(m_dialogs, [&] {
        if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) return emit m_desk.said(barred);
        records::takeBack(m_desk, record);
    });
}

void WorkPage::findColony() {
    guarded(m_dialogs, [this] {
        if (!mayLeaveForm()) return;
        m_panel->close();
        m_panel->open(std::make_unique<records::FindForm>(m_desk.session()), m_desk.today(),
                      [this](const form::Form& asked, const form::Values& values) {
                          m_found = static_cast<const records::FindForm&>(asked).found(values);
                          return true;
                      });
        m_right->setCurrentWidget(m_panel);
    });
}

void WorkPage::showColony(core::ColonyId colony) {
    guarded(m_dialogs, [&] {
        if (!mayLeaveForm()) return;
        m_panel->close();
        m_desk.choose(std::nullopt);
        m_ended.reset();
        if (m_desk.reading().find(colony))
            m_desk.choose(colony);
        else
            m_ended = colony;
        showCard();
        m_right->setCurrentWidget(m_cards);
        m_cards->setFocus(Qt::OtherFocusReason);
    });
}

/// The book holds something new: an open form is judged by it, and keeps what was typed.
void WorkPage::judgeForms() {
    m_panel->judgeAgain();
    if (m_right->currentWidget() != m_form) return;
    const visit::VisitPlace& place = m_form->place();
    const auto moved = visit::movedSince(m_desk.session(), place);
    if (!m_desk.session().colony(place.colony))
        return m_form->judgeAgain(visit::VisitPlace(place), tr("This colony was taken back meanwhile."));
    m_form->judgeAgain(visit::visitPlaceOf(m_desk.session(), place.colony, m_form->draft().day, place.was),
                       moved.value_or(QString()));
}

} // namespace ui::window
