#pragma once

#include "core/edit/session.h"
#include "core/rules/question.h"
#include "ui/form/form.h"

#include <optional>

namespace ui::find {

/// A question as it is put together: a name and up to four conditions, all of which must hold.
class QuestionForm : public form::Form {
public:
    /// A question of id 0 is a new one that begins as this.
    QuestionForm(const core::edit::Session& book, core::Question was) : m_book(book), m_was(std::move(was)) {}

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

    core::rules::Ask askOf(const form::Values& values) const; ///< of values without problems

private:
    bool isNew() const { return m_was.id.value == 0; }

    const core::edit::Session& m_book;
    core::Question m_was;
};

} // namespace ui::find
