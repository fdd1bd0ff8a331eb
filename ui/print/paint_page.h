#pragma once

#include "core/report/page.h"

#include <QColor>

class QPainter;

namespace ui::print {

class YardPicture;

/// Of paper; a window that shows a page's marks may have its own.
struct Inks {
    QColor black = Qt::black;
    QColor grey{0x70, 0x70, 0x70};
    QColor pale{0xd0, 0xd0, 0xd0};
    QColor white = Qt::white;
};

/// The one painter of pages: preview, PDF and paper. The painter's origin is the page's left top corner; `yard` is
/// drawn where the page leaves room for it (null: the room stays empty).
void paintPage(QPainter& p, const core::report::Page& page, double dotsPerMm, const YardPicture* yard,
               const Inks& inks = {});

} // namespace ui::print
