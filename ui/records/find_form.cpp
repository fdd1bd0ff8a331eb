#include "ui/records/find_form.h"

namespace ui::records {

QString FindForm::title() const { return Records::tr("Find a colony"); }

QString FindForm::saveText() const { return Records::tr("&Show its card"); }

std::vector<form::Field> FindForm::fields() const {
    return {colonyField(kColony, Records::tr("&Colony"), Records::tr("Label of a colony, living or ended"))};
}

void FindForm::judge(form::Judge& judge, const form::Values& values) const {
    judgeColony(judge, values, kColony, today());
}

} // namespace ui::records
