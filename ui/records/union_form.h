#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// A union or shake-out done outside a plan: one colony ends, its bees are another's. Refused with the rule's sentence
/// where a hold stands.
class UnionForm : public RecordForm {
public:
    UnionForm(const core::edit::Session& book, core::ColonyId about, core::Day day);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;

protected:
    inline static const QString kHow = QStringLiteral("how");
    inline static const QString kInto = QStringLiteral("into");

    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override { return false; } // holds are of the whole book

private:
    core::Lineage lineageOf(const form::Values& values) const;

    core::ColonyId m_about;
    core::Day m_day;
};

/// A union, shake-out or divide of the book: its day, by whom and the note can be changed.
class LineageForm : public RecordForm {
public:
    LineageForm(const core::edit::Session& book, const core::Lineage& was);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override { return false; }

private:
    core::Lineage m_was;
};

} // namespace ui::records
