#pragma once

#include "ui/board/board_rows.h"
#include "ui/look/colours.h"

#include <QFont>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace ui::board {

/// Where an offer of a row is drawn, and pressed.
struct Chip {
    QRectF at;
    size_t offer = 0; ///< position in BoardRow::offers
};

/// Writes the parts of a row downwards, or only measures them (without a painter) and notes where its offers are.
class Column {
public:
    Column(QPainter* p, double left, double top, double width, const QFont& font, const look::Colours& c,
           std::vector<Chip>* chips = nullptr);

    void text(const QString& text, const QFont& font, const QColor& colour, double indent = 0);
    /// A bold title at the left and figures at the right, on one line where they fit; then the offers `[0, always)`,
    /// beside them where there is room.
    void heading(const QString& title, const QString& right, const BoardRow& row);
    void cautions(const QStringList& texts);
    /// What was asked, as its sign and words.
    void asked(const BoardRow& row);
    /// Offers from `from` up to `to`, side by side, on as many lines as they need.
    void offers(const BoardRow& row, size_t from, size_t to);
    /// Rule and limits of an open row.
    void smallPrint(const BoardRow& row);
    void gap(double by) { m_y += by; }

    double y() const { return m_y; }
    const QFont& lesser() const { return m_lesser; }
    const look::Colours& colours() const { return m_c; }

private:
    double chipWidth(const Offer& offer) const;
    double chipHigh() const;
    double chipsWidth(const BoardRow& row, size_t to) const;
    void chip(const BoardRow& row, size_t offer, double x, double y);

    QPainter* m_p;
    double m_left, m_y, m_width;
    QFont m_font, m_lesser;
    const look::Colours& m_c;
    std::vector<Chip>* m_chips;
};

} // namespace ui::board
