#include "ui/records/find_form.h"

namespace ui::records {

QString FindForm::title() const { return Records::tr("Find a colony"); }

QString FindForm::saveText() const { return Records::tr("&Show its card"); }

QString FindForm::hint() const {
    return Records::tr("Enter shows its card, Escape leaves. Where several had a label, A7@2025-05-01 is the one that "
                       "began that day.");
}

std::vector<form::Field> FindForm::fields() const {
    return {colonyField(kColony, Records::tr("&Colony"), Records::tr("Label of a colony, living or ended"))};
}

void FindForm::judge(form::Judge& judge, const form::Values& values) const {
    judgeColony(judge, values, kColony, today());
}

} // namespace ui::records
