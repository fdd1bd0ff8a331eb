#include "ui/look/colours.h"

#include <QWidget>

#include <algorithm>
#include <cmath>

namespace ui::look {

namespace {

// WCAG 2.1, "relative luminance".
double luminance(const QColor& c) {
    const auto linear = [](double v) { return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

Colours light() {
    Colours c;
    c.desk = QColor(0xf3, 0xf1, 0xe8);
    c.paper = QColor(0xfd, 0xfc, 0xf8);
    c.ink = QColor(0x1f, 0x1d, 0x1a);
    c.quiet = QColor(0x65, 0x61, 0x58);
    c.pale = QColor(0x8f, 0x8b, 0x81);
    c.gridFine = QColor(0xf0, 0xed, 0xe3);
    c.gridBold = QColor(0xe0, 0xdb, 0xcd);
    c.rule = QColor(0xd9, 0xd4, 0xc6);
    c.chosen = QColor(0xfd, 0xfc, 0xf8);
    c.planned = QColor(0x00, 0x6a, 0xa6);
    c.onPlanned = Qt::white;
    c.warn = QColor(0xd5, 0x5e, 0x00);
    c.warnText = QColor(0xb0, 0x4a, 0x00);
    c.onWarn = QColor(0x1f, 0x12, 0x06);
    c.grows = QColor(0x00, 0x9e, 0x73);
    return c;
}

Colours darkened() {
    Colours c;
    c.dark = true;
    c.desk = QColor(0x26, 0x29, 0x2b);
    c.paper = QColor(0x1b, 0x1d, 0x1e);
    c.ink = QColor(0xf0, 0xed, 0xe4);
    c.quiet = QColor(0xaa, 0xa6, 0x9b);
    c.pale = QColor(0x74, 0x77, 0x77);
    c.gridFine = QColor(0x24, 0x26, 0x27);
    c.gridBold = QColor(0x33, 0x36, 0x37);
    c.rule = QColor(0x3c, 0x40, 0x42);
    c.chosen = QColor(0x1b, 0x1d, 0x1e);
    c.planned = QColor(0x56, 0xb4, 0xe9);
    c.onPlanned = QColor(0x0b, 0x16, 0x1d);
    c.warn = QColor(0xe6, 0x8a, 0x2e);
    c.warnText = QColor(0xf0, 0x9a, 0x45);
    c.onWarn = QColor(0x1f, 0x12, 0x06);
    c.grows = QColor(0x2f, 0xb3, 0x8a);
    return c;
}

} // namespace

double contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

Colours colours(bool dark) { return dark ? darkened() : light(); }

Colours printColours() {
    Colours c;
    c.desk = c.paper = c.chosen = Qt::white;
    c.ink = c.quiet = c.planned = c.warn = c.warnText = c.grows = Qt::black;
    c.onPlanned = c.onWarn = Qt::white;
    c.pale = QColor(0xc4, 0xc4, 0xc4);
    c.gridFine = QColor(0xf2, 0xf2, 0xf2);
    c.gridBold = QColor(0xdd, 0xdd, 0xdd);
    c.rule = QColor(0xa0, 0xa0, 0xa0);
    return c;
}

Colours coloursFor(const QPalette& palette) { return colours(palette.color(QPalette::Window).lightnessF() < 0.5); }

Colours coloursOf(const QWidget& widget) { return coloursFor(widget.window()->palette()); }

QPalette paletteOf(const Colours& c) {
    QPalette p;
    p.setColor(QPalette::Window, c.desk);
    p.setColor(QPalette::WindowText, c.ink);
    p.setColor(QPalette::Base, c.paper);
    p.setColor(QPalette::AlternateBase, c.desk);
    p.setColor(QPalette::Text, c.ink);
    p.setColor(QPalette::PlaceholderText, c.quiet);
    p.setColor(QPalette::Button, c.desk);
    p.setColor(QPalette::ButtonText, c.ink);
    p.setColor(QPalette::BrightText, c.warnText);
    p.setColor(QPalette::Highlight, c.planned);
    p.setColor(QPalette::HighlightedText, c.onPlanned);
    p.setColor(QPalette::Link, c.planned);
    p.setColor(QPalette::ToolTipBase, c.paper);
    p.setColor(QPalette::ToolTipText, c.ink);
    p.setColor(QPalette::Light, c.dark ? c.rule : c.paper);
    p.setColor(QPalette::Midlight, c.rule);
    p.setColor(QPalette::Mid, c.rule);
    p.setColor(QPalette::Dark, c.dark ? c.paper : c.pale);
    p.setColor(QPalette::Shadow, c.dark ? QColor(Qt::black) : c.quiet);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, c.quiet);
    return p;
}

} // namespace ui::look
