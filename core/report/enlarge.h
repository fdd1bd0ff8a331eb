#pragma once

#include "core/report/worksheet_flow.h"

#include <vector>

namespace core::report {

/// Paper that is smaller by the factor; margins somewhat more so, as they need not grow with the type.
PageSize reduced(PageSize size, double by);

/// All marks and zones larger by the factor, type and pens too.
std::vector<Page> enlarged(std::vector<Page> pages, double by);

} // namespace core::report
