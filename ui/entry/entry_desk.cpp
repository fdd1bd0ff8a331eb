#include "ui/entry/entry_desk.h"

#include "core/edit/edit_context.h"
#include "ui/entry/phrase_key.h"
#include "ui/visit/visit_form.h"
#include "ui/visit/visit_place.h"

#include <algorithm>

namespace ui::entry {

using visit::Field;
using visit::VisitDraft;

EntryDesk::EntryDesk(desk::Desk& desk, visit::VisitForm& form, QObject* parent)
    : QObject(parent), m_desk(desk), m_form(form), m_drafts(desk.session().path(), desk.session().bookId()) {
    connect(&m_drafts, &visit::Drafts::changed, this, &EntryDesk::changed);
    connect(&m_drafts, &visit::Drafts::changed, this, &EntryDesk::follow);
    connect(&m_form, &visit::VisitForm::typed, this, &EntryDesk::typed);
    connect(&m_form, &visit::VisitForm::leaveAsked, this, &EntryDesk::left);
    connect(&m_desk, &desk::Desk::read, this, &EntryDesk::readOnce);
    connect(&m_desk, &desk::Desk::read, this, &EntryDesk::freeTyping);
    addPhraseKey(*m_form.note(), m_desk);
    readOnce();
    freeTyping();
}

/// Once this window writes: what another types is its own.
void EntryDesk::readOnce() {
    if (m_read || m_desk.session().readOnly()) return;
    m_read = true;
    QString unread;
    try {
        unread = m_drafts.read();
        const std::vector<visit::HalfTyped> all = m_drafts.all();
        for (const visit::HalfTyped& half : all)
            if (inBook(half)) m_drafts.drop(half.colony, half.was);
    } catch (const core::Error& e) {
        unread = e.userMessage();
    }
    if (m_drafts.all().empty() && unread.isEmpty()) return;
    QMetaObject::invokeMethod(
        this, [this, unread] { tell(unread); }, Qt::QueuedConnection);
}

/// It was saved, and the program ended before it was dropped. Of a colony that is gone nothing can be saved either.
bool EntryDesk::inBook(const visit::HalfTyped& half) const {
    const auto& book = m_desk.session();
    if (!book.colony(half.colony)) return true;
    const auto visits = book.visitsOf(half.colony, 1000);
    const auto it = std::ranges::find_if(
        visits, [&](const core::Visit& v) { return half.was.value > 0 ? v.id == half.was : v.day == half.draft.day; });
    if (it == visits.end()) return false;
    const visit::VisitPlace place = visit::visitPlaceOf(book, half.colony, it->day, *it);
    return visit::problems(half.draft, place).empty() && visit::visitOf(half.draft, place) == *it;
}

/// A visit was taken back while a change of it was half typed: that is a new visit's from now on.
void EntryDesk::freeTyping() {
    if (!m_read) return;
    const std::vector<visit::HalfTyped> all = m_drafts.all();
    for (const visit::HalfTyped& half : all) {
        const bool inForm = m_form.isVisible() && m_form.place().colony == half.colony && formsVisit() == half.was;
        if (half.was.value == 0 || inForm || m_drafts.of(half.colony)) continue;
        bool there = false;
        m_desk.session().read([&](const core::edit::EditContext& c) { there = c.visit(half.was).has_value(); });
        if (there) continue;
        type(half.colony, {}, half.draft, {});
        drop(half.colony, half.was);
    }
}

void EntryDesk::tell(const QString& unread) const {
    const auto n = m_drafts.all().size();
    if (!unread.isEmpty()) return emit m_desk.said(unread);
    if (n == 0) return;
    emit m_desk.said(n == 1 ? tr("A visit that was half typed is there again: Visits, Write down.")
                            : tr("%1 visits that were half typed are there again: Visits, Write down.").arg(n));
}

void EntryDesk::type(core::ColonyId colony, core::VisitId was, const VisitDraft& draft, const VisitDraft& bare) {
    const bool behind = m_drafts.behind();
    try {
        m_drafts.type(colony, was, draft, bare);
        if (behind) emit m_desk.said(tr("What is typed is kept beside the book again."));
    } catch (const core::Error& e) {
        emit m_desk.notSaved(e.userMessage());
    }
}

void EntryDesk::drop(core::ColonyId colony, core::VisitId was) { m_drafts.drop(colony, was); }

VisitDraft EntryDesk::fresh() const {
    VisitDraft draft;
    draft.day = std::min(m_desk.day(), m_desk.today());
    draft[Field::By] = m_desk.author();
    if (!m_carried) return draft;
    draft.day = m_carried->day;
    draft[Field::By] = m_carried->by;
    if (const QString& weather = m_carried->weather; !weather.isEmpty())
        draft[Field::Note] =
            weather + (QStringLiteral(".!?;:,").contains(weather.back()) ? QString() : QStringLiteral(".")) + u' ';
    return draft;
}

core::VisitId EntryDesk::formsVisit() const { return m_form.place().was ? m_form.place().was->id : core::VisitId{}; }

void EntryDesk::begun() {
    if (const auto half = m_drafts.of(m_form.place().colony, formsVisit())) m_form.follow(*half);
}

void EntryDesk::typed(const VisitDraft& draft) { type(m_form.place().colony, formsVisit(), draft, m_form.began()); }

void EntryDesk::follow(core::ColonyId colony, core::VisitId was) {
    if (!m_form.isVisible() || m_form.place().colony != colony || formsVisit() != was) return;
    m_form.follow(m_drafts.of(colony, was).value_or(m_form.began()));
}

/// Escape twice threw it away.
void EntryDesk::left() { drop(m_form.place().colony, formsVisit()); }

void EntryDesk::saved(const core::Visit& visit, core::VisitId was) {
    drop(visit.colony, was);
    if (was.value == 0) emit visitSaved(visit.colony);
}

} // namespace ui::entry
