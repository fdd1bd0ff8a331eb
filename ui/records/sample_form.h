#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// A sample taken of one colony or of several alike (one undo). One that is in the book: put right.
class SampleForm : public RecordForm {
public:
    /// `colonies`: one at least. What was taken last is proposed: disease, material, laboratory.
    SampleForm(const core::edit::Session& book, std::vector<core::ColonyId> colonies, core::Day day);
    SampleForm(const core::edit::Session& book, const core::Sample& was);

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
    /// As it is typed, of the first colony.
    core::Sample sampleOf(const form::Values& values) const;
    QString someName() const;
    std::vector<form::Option> laboratories() const;

    std::vector<core::ColonyId> m_colonies;
    core::Day m_day;
    std::optional<core::Sample> m_was;
};

/// What the laboratory wrote of a sample: becomes a result, dated the day that the sample was taken.
class SampleAnswerForm : public RecordForm {
public:
    SampleAnswerForm(const core::edit::Session& book, const core::Sample& sample);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    core::Sample m_sample;
};

/// The day on which a sample was sent, with all others that wait for the same laboratory; or given up.
class SampleDayForm : public RecordForm {
public:
    enum class Step { Sent, GivenUp };
    SampleDayForm(const core::edit::Session& book, const core::Sample& sample, Step step);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    /// Not sent yet, to the same laboratory, taken up to `day`; the sample itself first.
    std::vector<core::SampleId> together(core::Day day) const;

    core::Sample m_sample;
    Step m_step;
};

} // namespace ui::records
