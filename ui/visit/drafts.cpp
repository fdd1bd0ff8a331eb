#include "ui/visit/drafts.h"

#include "core/base/error.h"

#include <algorithm>
#include <utility>

namespace ui::visit {

namespace {
constexpr int kLinesMost = 4000; // some hundred visits typed; then the file is written anew
} // namespace

Drafts::Drafts(const QString& book, const QString& bookId, QObject* parent)
    : QObject(parent), m_journal(book, bookId) {}

std::vector<HalfTyped>::iterator Drafts::at(core::ColonyId colony, core::VisitId was) {
    return std::ranges::find_if(m_all, [&](const HalfTyped& h) { return h.about(colony, was); });
}

std::optional<VisitDraft> Drafts::of(core::ColonyId colony, core::VisitId was) const {
    for (const HalfTyped& h : m_all)
        if (h.about(colony, was)) return h.draft;
    return std::nullopt;
}

QString Drafts::read() {
    m_unread = true;
    DraftJournal::Found found = m_journal.read();
    QString lost;
    if (found.unread > 0)
        lost = tr("Of the visits that were half typed something could not be read. What could is there again; the file "
                  "of before is kept as %1.")
                   .arg(m_journal.putAside());
    m_unread = false;
    std::swap(m_all, found.all);
    for (const HalfTyped& h : found.all) emit changed(h.colony, h.was);
    for (const HalfTyped& h : m_all) emit changed(h.colony, h.was);
    try {
        keepAll(); // a line that was cut short ends with it
    } catch (const core::Error&) {
        m_behind = !lost.isEmpty(); // else the file says all of it
    }
    return lost;
}

void Drafts::type(core::ColonyId colony, core::VisitId was, const VisitDraft& draft, const VisitDraft& bare) {
    if (draft == bare) return drop(colony, was);
    auto it = at(colony, was);
    if (it != m_all.end() && it->draft == draft) return;
    if (it == m_all.end()) it = m_all.insert(m_all.end(), {colony, was, draft});
    it->draft = draft;
    const HalfTyped now = *it;
    emit changed(colony, was);
    keep([&] { return m_journal.add(now); });
}

void Drafts::drop(core::ColonyId colony, core::VisitId was) {
    const auto it = at(colony, was);
    if (it == m_all.end()) return;
    m_all.erase(it);
    emit changed(colony, was);
    try {
        if (m_all.empty() && !m_unread)
            keepAll();
        else
            keep([&] { return m_journal.addGone(colony, was); });
    } catch (const core::Error&) {
        // nothing typed is lost by it: what is in the book by then is told apart when it is read
    }
}

void Drafts::catchUp() {
    if (m_behind) keepAll();
}

/// What could not be kept before is written with all the rest.
void Drafts::keep(const std::function<bool()>& line) {
    const bool whole = std::exchange(m_behind, true) || (++m_lines > kLinesMost && !m_unread);
    if (whole || !line()) keepAll();
    m_behind = false;
}

void Drafts::keepAll() {
    m_behind = true;
    if (m_unread)
        for (const HalfTyped& h : m_all) m_journal.addAnyhow(h);
    else
        m_journal.keepOnly(m_all);
    m_lines = 0;
    m_behind = false;
}

} // namespace ui::visit
