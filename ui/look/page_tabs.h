#pragma once

#include <QTabBar>

namespace ui::look {

/// Words in a row, that of the page shown underlined, as the places above the window.
class PageTabs : public QTabBar {
public:
    explicit PageTabs(QWidget* parent = nullptr);

    QSize tabSizeHint(int index) const override;
    QSize minimumTabSizeHint(int index) const override { return tabSizeHint(index); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QFont bold() const;
};

} // namespace ui::look
