#pragma once

#include "ui/bulk/common.h"
#include "ui/records/record_form.h"

#include <vector>

namespace ui::bulk {

/// The data of several colonies, changed together: only what is typed anew is written, all in one undo.
class ColoniesForm : public records::RecordForm {
public:
    /// Throws Error(BadData) where one of them is no longer in the book.
    ColoniesForm(const core::edit::Session& book, std::vector<core::ColonyId> colonies);

    QString title() const override;
    QString saveText() const override;
    QString hint() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    std::vector<core::ColonyId> m_colonies;
    std::vector<core::Colony> m_was;
    std::vector<form::Field> m_fields; ///< box kind, brood boxes, year of the queen
    std::map<QString, Common> m_common;
    Common m_note;
};

} // namespace ui::bulk
