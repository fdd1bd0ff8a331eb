#include "ui/visit/drafts.h"

#include <algorithm>

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

void Drafts::read() {
    std::vector<HalfTyped> now = m_journal.all();
    std::swap(m_all, now);
    for (const HalfTyped& h : now) emit changed(h.colony, h.was);
    for (const HalfTyped& h : m_all) emit changed(h.colony, h.was);
    m_lines = 0;
    m_journal.keepOnly(m_all); // a line that was cut short ends with it
}

void Drafts::type(core::ColonyId colony, core::VisitId was, const VisitDraft& draft, const VisitDraft& bare) {
    if (draft == bare) return drop(colony, was);
    auto it = at(colony, was);
    if (it != m_all.end() && it->draft == draft) return;
    if (it == m_all.end()) it = m_all.insert(m_all.end(), {colony, was, draft});
    it->draft = draft;
    const HalfTyped now = *it;
    emit changed(colony, was);
    if (++m_lines > kLinesMost) {
        m_lines = 0;
        m_journal.keepOnly(m_all);
    } else {
        m_journal.add(now);
    }
}

void Drafts::drop(core::ColonyId colony, core::VisitId was) {
    const auto it = at(colony, was);
    if (it == m_all.end()) return;
    m_all.erase(it);
    emit changed(colony, was);
    if (m_all.empty()) {
        m_lines = 0;
        return m_journal.keepOnly({});
    }
    ++m_lines;
    m_journal.addGone(colony, was);
}

} // namespace ui::visit
