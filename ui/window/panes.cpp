#include "ui/window/panes.h"

#include <QApplication>
#include <QScrollArea>
#include <QWidget>

#include <algorithm>

namespace ui::window {

namespace {

bool takesKeys(const QWidget& w) {
    return (w.focusPolicy() & Qt::TabFocus) && w.isVisible() && w.isEnabled() && !w.focusProxy();
}

/// To the widget, or to the first in it that takes keys.
bool giveKeys(QWidget& pane) {
    QWidget* to = takesKeys(pane) && !qobject_cast<QScrollArea*>(&pane) ? &pane : nullptr;
    for (QWidget* w = pane.nextInFocusChain(); !to && w != &pane; w = w->nextInFocusChain())
        if (pane.isAncestorOf(w) && takesKeys(*w)) to = w;
    if (to) to->setFocus(Qt::ShortcutFocusReason);
    return to;
}

} // namespace

void goOn(const std::vector<QWidget*>& panes, int by) {
    const QWidget* now = QApplication::focusWidget();
    const auto here = std::find_if(panes.begin(), panes.end(),
                                   [now](const QWidget* p) { return p == now || (now && p->isAncestorOf(now)); });
    const auto count = static_cast<int>(panes.size());
    int at = here == panes.end() ? (by > 0 ? -1 : count) : static_cast<int>(here - panes.begin());
    for (int tries = 0; tries < count; ++tries) {
        at = (at + by + count) % count;
        if (giveKeys(*panes[static_cast<size_t>(at)])) return;
    }
}

} // namespace ui::window
