#include "ui/print/font_measure.h"

#include "ui/print/measures.h"

#include "core/base/error.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QStringList>

namespace ui::print {

namespace {
constexpr int kMeasured = 100; // pixels
constexpr qsizetype kMostKept = 20'000;
} // namespace

QFont paperFont(int pixelSize, bool bold) {
    QFont font;
    font.setFamilies(QStringList{QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(pixelSize);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

void requireFonts() {
    if (QFontDatabase::families().isEmpty())
        throw core::Error(core::Error::Kind::Internal,
                          QStringLiteral("No fonts are installed, so no page can be set; install fonts-noto-core or "
                                         "fonts-dejavu-core (demo/setup.sh does)."));
}

double FontMeasure::widthMm(const QString& text, double pointSize, bool bold) const {
    // Pages are set beside the window, too, and a font is of its thread.
    static thread_local const QFontMetricsF kRegular{paperFont(kMeasured, false)};
    static thread_local const QFontMetricsF kBold{paperFont(kMeasured, true)};
    QHash<QString, double>& known = m_widths[bold ? 1 : 0];
    auto at = known.constFind(text);
    if (at == known.constEnd()) {
        if (known.size() > kMostKept) known.clear();
        at = known.insert(text, (bold ? kBold : kRegular).horizontalAdvance(text));
    }
    return *at / kMeasured * pointSize * kMmPerPoint;
}

} // namespace ui::print
