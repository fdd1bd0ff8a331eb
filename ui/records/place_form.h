#pragma once

#include "core/edit/put_right.h"
#include "ui/records/record_form.h"

namespace ui::records {

/// Where a colony's hive stood from a day on, and how its fields are told: its stand, an empty one of the yard, or any
/// other place that is typed.
class PlaceFields {
public:
    /// Throws Error(Book).
    PlaceFields(const core::edit::Session& book, const core::Placement& was);

    const core::Placement& was() const { return m_was; }
    /// Stand, yard, metres and heading.
    std::vector<form::Field> fields() const;
    void put(form::Values& values) const;
    void judge(form::Judge& judge, const form::Values& values) const;
    /// Of values without problems; its day is as it was.
    core::edit::PlaceChange placeOf(const form::Values& values) const;

private:
    const core::edit::Session& m_book;
    core::Placement m_was;
    core::Stand m_stand;
};

/// A carry put right: where to, how turned, and when.
class PlaceForm : public RecordForm {
public:
    /// Throws Error(Book).
    PlaceForm(const core::edit::Session& book, const core::Placement& was);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    core::Day dayOf(const form::Values& values) const;

    PlaceFields m_place;
};

} // namespace ui::records
