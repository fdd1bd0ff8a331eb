#pragma once

#include "core/report/contact_drawing.h"

#include <QWidget>

#include <optional>

namespace ui::health {

/// Contacts drawn in time, as wide as its room and as high as its rows, in the size of the window's text. What it shows
/// stands in the list beside it too.
class ContactView : public QWidget {
    Q_OBJECT
public:
    explicit ContactView(QWidget* parent = nullptr);

    void show(const core::report::ContactDrawing& drawing);
    /// Its row is marked; in the drawing it need not be.
    void setMarked(std::optional<core::ColonyIx> colony);
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

signals:
    void pressed(core::ColonyIx colony);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    double dotsPerMm() const;
    std::optional<size_t> markedRow() const;

    core::report::ContactDrawing m_drawing;
    std::optional<core::ColonyIx> m_marked;
};

} // namespace ui::health
