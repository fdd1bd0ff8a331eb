#include "ui/look/sheet.h"

#include "ui/look/paper_style.h"
#include "ui/look/type.h"

#include <QApplication>
#include <QEvent>
#include <QWidget>

#include <cmath>
#include <utility>

namespace ui::look {

QString styleSheet(const Colours& c) {
    QString sheet = QStringLiteral(
        "QLabel[quiet=\"true\"] { color: @quiet; }"
        "QLabel[warns=\"true\"] { color: @warnText; }"
        "QLabel[changed=\"true\"] { color: @planned; font-weight: bold; }"
        "QLabel[aside=\"true\"] { border: none; border-left: 3px solid @planned; padding-left: 8px; }"
        "QPushButton { background: @paper; color: @ink; border: 1px solid @edge; border-radius: 4px; padding: 5px "
        "12px; }"
        "QPushButton:hover { border-color: @planned; }"
        "QPushButton:focus { border: 2px solid @planned; padding: 4px 11px; }"
        "QPushButton:disabled { color: @quiet; border-color: @rule; }"
        "QPushButton[primary=\"true\"] { background: @planned; color: @onPlanned; border-color: @planned; font-weight: "
        "bold; }"
        "QPushButton[primary=\"true\"]:focus { border: 2px solid @ink; }"
        "QPushButton[primary=\"true\"]:disabled { background: @rule; color: @quiet; border-color: @rule; }"
        "QPushButton[plain=\"true\"] { background: transparent; color: @planned; border: 1px solid transparent; "
        "padding: 4px 6px; }"
        "QPushButton[plain=\"true\"]:hover { color: @ink; }"
        "QPushButton[plain=\"true\"]:focus { border: 2px solid @planned; padding: 3px 5px; }"
        "QPushButton[plain=\"true\"]:disabled { color: @quiet; }"
        "QPushButton[plain=\"true\"]:checked { color: @ink; border-bottom: 2px solid @planned; }"
        "QPushButton[place=\"true\"] { background: transparent; border: none; border-radius: 0; color: @quiet;"
        " border-bottom: 3px solid transparent; padding: 9px 4px 6px 4px; margin: 0 10px; }"
        "QPushButton[place=\"true\"]:checked { color: @ink; font-weight: bold; border-bottom-color: @planned; }"
        "QPushButton[place=\"true\"]:hover { color: @ink; }"
        "QPushButton[place=\"true\"]:focus { color: @ink; border: 2px solid @ink; border-bottom: 3px solid @ink; "
        "padding: 7px 2px 6px 2px; }"
        "QFrame[banner=\"true\"] { background: @paper; border: none; border-left: 6px solid @warn; border-bottom: 1px "
        "solid @rule; }"
        "QMenuBar { background: transparent; color: @ink; }"
        "QMenuBar::item { background: transparent; padding: 9px 9px; color: @quiet; }"
        "QMenuBar::item:selected { color: @onPlanned; background: @planned; }"
        "QMenu { background: @paper; color: @ink; border: 1px solid @edge; padding: 4px 0; }"
        "QMenu::item { padding: 5px 26px 5px 16px; }"
        "QMenu::item:selected { background: @planned; color: @onPlanned; }"
        "QMenu::item:disabled { color: @quiet; }"
        "QMenu::separator { height: 1px; background: @rule; margin: 4px 0; }"
        "QHeaderView { background: @desk; }"
        "QHeaderView::section { background: @desk; color: @quiet; border: none; border-bottom: 1px solid @rule; "
        "padding: 4px 8px; }"
        "QTableView { background: @paper; border: 2px solid @paper; gridline-color: @gridFine; }"
        "QTableView:focus { border-color: @planned; }"
        "QPlainTextEdit { background: @paper; color: @ink; border: 1px solid @quiet; border-radius: 3px; }"
        "QPlainTextEdit:focus { border: 2px solid @planned; }"
        "QListView { background: transparent; border: none; }"
        "QScrollArea { background: transparent; border: 2px solid transparent; }"
        "QScrollArea:focus { border-color: @planned; }"
        "QTreeView { background: @paper; border: 2px solid @paper; }"
        "QTreeView:focus { border-color: @planned; }"
        "QScrollArea > QWidget > QWidget { background: transparent; }"
        "QSplitter::handle { background: @rule; }"
        "QToolTip { background: @paper; color: @ink; border: 1px solid @edge; padding: 3px 6px; }"
        "QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }"
        "QScrollBar::handle:vertical { background: @pale; border-radius: 4px; min-height: 30px; margin: 1px; }"
        "QScrollBar::add-line, QScrollBar::sub-line { height: 0; width: 0; }"
        "QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }");
    const std::pair<const char*, QColor> colours[] = {
        {"@onPlanned", c.onPlanned}, {"@planned", c.planned}, {"@warnText", c.warnText}, {"@warn", c.warn},
        {"@gridFine", c.gridFine},   {"@quiet", c.quiet},     {"@paper", c.paper},       {"@desk", c.desk},
        {"@rule", c.rule},           {"@edge", c.pale},       {"@pale", c.pale},         {"@ink", c.ink}};
    for (const auto& [name, colour] : colours) sheet.replace(QLatin1StringView(name), colour.name());
    return sheet;
}

namespace {

/// A title that was given a size of its own keeps its share of the text's.
void resizeOwnFonts(const QWidget& window, double before, double now) {
    for (QWidget* w : window.findChildren<QWidget*>()) {
        QFont font = w->font();
        if (!w->testAttribute(Qt::WA_SetFont) || std::abs(font.pointSizeF() - now) < 0.01) continue;
        font.setPointSizeF(font.pointSizeF() * now / before);
        w->setFont(font);
    }
}

void dress(QWidget& window) {
    constexpr const char* kDressed = "dressedPoints";
    const Colours c = coloursFor(QApplication::palette());
    const QFont font = textFont(QApplication::font());
    const double before = window.property(kDressed).toDouble();
    window.setFont(font);
    if (before > 0 && before != font.pointSizeF()) resizeOwnFonts(window, before, font.pointSizeF());
    window.setProperty(kDressed, font.pointSizeF());
    window.setStyleSheet({}); // one that is taken off brings the palette from before it back
    window.setPalette(paletteOf(c));
    window.setStyleSheet(styleSheet(c));
    // Under the sheet of a window further up the palette from before comes back with the sheet.
    if (window.palette().window() != paletteOf(c).window()) window.setPalette(paletteOf(c));
}

/// Hears of the change at the application itself: a window with a palette of its own is not told.
class Dresser : public QObject {
public:
    Dresser(QWidget& window, std::function<void()> after)
        : QObject(&window), m_window(window), m_after(std::move(after)) {
        qApp->installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        const bool changed =
            event->type() == QEvent::ApplicationPaletteChange || event->type() == QEvent::ApplicationFontChange;
        if (!changed || watched != qApp) return false;
        dressAgain();
        // The sheet of the window that this one is a child of reaches into it: once that is changed, again.
        if (m_window.parentWidget()) QMetaObject::invokeMethod(this, &Dresser::dressAgain, Qt::QueuedConnection);
        return false;
    }

private:
    void dressAgain() {
        dress(m_window);
        if (m_after) m_after();
    }

    QWidget& m_window;
    std::function<void()> m_after;
};

} // namespace

void keepDressed(QWidget& window, std::function<void()> after) {
    dress(window);
    new Dresser(window, std::move(after));
}

void setUpStyle() { QApplication::setStyle(new PaperStyle); }

} // namespace ui::look
