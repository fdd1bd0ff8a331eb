#pragma once

#include <QList>

#include <utility>

class QAction;
class QPushButton;
class QWidget;

namespace ui::copies {

/// What can be done about what a banner says: a button each, before the banner's own.
class Offers {
public:
    explicit Offers(QWidget& banner) : m_banner(banner) {}

    void offer(const QList<QAction*>& actions);
    QPushButton* buttonOf(const QAction* action) const; ///< nullptr: not offered

private:
    QWidget& m_banner;
    QList<std::pair<QAction*, QPushButton*>> m_buttons;
};

} // namespace ui::copies
