#pragma once

#include "ui/records/union_form.h"

namespace ui::hand {

/// A union that the hand proposed by setting one hive down on another: the record of it, filled in, with what the rules
/// say.
class UnionProposal : public records::UnionForm {
public:
    /// `moved` is carried into `host`; `why`: the rules' sentence.
    UnionProposal(const core::edit::Session& book, core::ColonyId moved, core::ColonyId host, core::Day day,
                  QString why);

    QString title() const override;
    QString saveText() const override;
    QString hint() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;

private:
    core::ColonyId m_moved, m_host;
    core::Day m_on;
    QString m_why;
};

} // namespace ui::hand
