#pragma once

#include "core/edit/divide_day.h"
#include "ui/records/record_form.h"
#include "ui/spring/divide_lines.h"

namespace ui::spring {

inline const QString kOutcome = QStringLiteral("outcome");
inline const QString kQueens = QStringLiteral("queens");
inline const QString kAsFact = QStringLiteral("as_fact");
inline QString labelKey(int i) { return QStringLiteral("label_%1").arg(i); }
inline QString standKey(int i) { return QStringLiteral("stand_%1").arg(i); }

/// What came of one divide of a merge day: done with its new colonies (label, stand), not done, or changed. One that a
/// hold bars can be written as a fact, with a reason and a name.
class DivideCloseForm : public records::RecordForm {
public:
    struct Of {
        core::YardId yard;
        core::Day day;
        std::optional<core::DivideQueens> queens;
        DivideLine line;
        bool held = false;
        QString author;
    };
    DivideCloseForm(const core::edit::Session& book, Of of);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override { return false; } // holds are of the whole book

private:
    int rows() const;
    QStringList freeLabels() const;
    core::edit::NewColony made(const form::Values& values, int i) const;

    Of m_of;
    core::Colony m_mother;
    int m_heading = 180;
};

} // namespace ui::spring
