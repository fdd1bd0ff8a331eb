#pragma once

#include "core/report/page.h"

class QPainter;

namespace ui::print {

class YardPicture;

/// The one painter of pages: preview, PDF and paper. The painter's origin is the page's left top corner; `yard` is
/// drawn where the page leaves room for it (null: the room stays empty).
void paintPage(QPainter& p, const core::report::Page& page, double dotsPerMm, const YardPicture* yard);

} // namespace ui::print
