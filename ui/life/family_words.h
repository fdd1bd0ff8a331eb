#pragma once

#include "ui/life/family.h"

namespace ui::life {

/// "2021 to 2024, united" or "since 2025"
QString yearsText(const Kin& kin);
/// All that ties it, for screen readers: "A7, 12 May 2021 to 3 Sep 2024, united. Divided from A3 on …"
QString kinText(const Family& family, size_t row);
/// "From 3 colonies, into 2." of the one asked for.
QString familyLine(const Family& family);

} // namespace ui::life
