#pragma once

#include "core/report/page.h"

#include <QFont>
#include <QHash>
#include <QString>

namespace ui::print {

/// The one type of paper: Noto Sans, with DejaVu Sans behind it for what it lacks ("→"); unhinted, so that widths are
/// the same at every size and on every device.
QFont paperFont(int pixelSize, bool bold);

/// Throws Error(Internal) where no fonts are installed at all: nothing could be set.
void requireFonts();

/// Widths in the type that paintPage paints with.
class FontMeasure : public core::report::TextMeasure {
public:
    double widthMm(const QString& text, double pointSize, bool bold) const override;

private:
    mutable QHash<QString, double> m_widths[2]; ///< by text, in hundredths of the type's size
};

} // namespace ui::print
