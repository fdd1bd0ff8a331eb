#include "ui/look/type.h"

#include <QStringList>

namespace ui::look {

namespace {
QFont scaled(QFont font, double by) {
    font.setPointSizeF((font.pointSizeF() > 0 ? font.pointSizeF() : 10) * by);
    return font;
}
} // namespace

QFont textFont(const QFont& system) {
    QFont font = system;
    font.setFamilies(QStringList{QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans"), system.family()});
    return font;
}

QFont lesserFont(const QFont& text) { return scaled(text, 0.87); }

QFont headingFont(const QFont& text) {
    QFont font = scaled(text, 1.3);
    font.setBold(true);
    return font;
}

} // namespace ui::look
