#pragma once

#include <QColor>
#include <QPalette>

class QWidget;

namespace ui::look {

/// Ink on paper, and three colours that mean something (Okabe and Ito's set): blue is planned, orange is forbidden or
/// warns, green grows. The text shades have a contrast of at least 4.5 to 1 on every ground here.
struct Colours {
    bool dark = false;
    QColor desk;      ///< around the drawing: lists, card, board
    QColor paper;     ///< the drawing and cards
    QColor ink;       ///< lines and text
    QColor quiet;     ///< lesser text
    QColor pale;      ///< combs without bees
    QColor gridFine;  ///< a line a metre
    QColor gridBold;  ///< a line each five metres
    QColor rule;      ///< thin lines between parts
    QColor chosen;    ///< ground of the chosen row
    QColor planned;   ///< blue, lines and text
    QColor onPlanned; ///< text on blue
    QColor warn;      ///< orange, lines and hatching
    QColor warnText;  ///< orange for text
    QColor onWarn;    ///< a letter on an orange badge
    QColor grows;     ///< green
};

/// Light or dark by the lightness of the palette's window.
Colours coloursFor(const QPalette& palette);
Colours colours(bool dark);
/// Black ink on white paper: what is blue or orange on the screen differs by shape and text alone.
Colours printColours();
/// Of the window that a widget is in: style sheets change palettes further in.
Colours coloursOf(const QWidget& widget);
/// The palette of the whole window from these colours.
QPalette paletteOf(const Colours& c);
/// Contrast of two opaque colours after WCAG 2.1 (1 to 21).
double contrast(const QColor& a, const QColor& b);

} // namespace ui::look
