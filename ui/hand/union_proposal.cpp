#include "ui/hand/union_proposal.h"

#include <utility>

namespace ui::hand {

using records::Records;

UnionProposal::UnionProposal(const core::edit::Session& book, core::ColonyId moved, core::ColonyId host, core::Day day,
                             QString why)
    : UnionForm(book, moved, day), m_moved(moved), m_host(host), m_on(day), m_why(std::move(why)) {}

QString UnionProposal::title() const {
    return Records::tr("Proposed: %1 united into %2").arg(nameOf(m_moved, m_on), nameOf(m_host, m_on));
}

QString UnionProposal::saveText() const { return Records::tr("&Record the union as done"); }

QString UnionProposal::hint() const {
    return Records::tr("Enter records it, Escape leaves it. Merge day (Ctrl+4) plans it with the others.");
}

/// The rules' sentence stands where the host is named.
std::vector<form::Field> UnionProposal::fields() const {
    std::vector<form::Field> out = UnionForm::fields();
    for (form::Field& field : out)
        if (field.key == kInto) field.note = [why = m_why](const form::Values&) { return why; };
    return out;
}

form::Values UnionProposal::start() const {
    form::Values values = UnionForm::start();
    values[kHow] = core::word(core::LineageHow::United);
    values[kInto] = nameOf(m_host, m_on);
    return values;
}

} // namespace ui::hand
