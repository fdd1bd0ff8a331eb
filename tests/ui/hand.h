#pragma once

#include "core/base/quantity.h"
#include "ui/window/main_window.h"

#include <QObject>
#include <QString>

class QComboBox;

namespace tests {

/// The user's hand on the real window: mouse and keys alone, counted as they arrive. A chord (Ctrl+N) is two presses.
class Hand : public QObject {
public:
    explicit Hand(ui::window::MainWindow& window);
    ~Hand() override;

    int clicks() const { return m_clicks; }
    int presses() const { return m_presses; }

    /// On its middle.
    void click(QWidget* on);
    void clickGround(core::MmPoint at);
    void pointAt(core::MmPoint at);
    void drag(core::MmPoint from, core::MmPoint to);
    /// To whatever has the keys.
    void key(Qt::Key key, Qt::KeyboardModifiers with = {});
    void type(const QString& text);
    /// By Tab alone; fails where it is not reached.
    void tabTo(QWidget* widget);

    /// The editor of a field of the open form; fails where it is not shown.
    QWidget* field(const QString& key) const;
    QString problemOf(const QString& key) const; ///< what is said beneath it; empty: nothing
    QString noteOf(const QString& key) const;
    /// Clicks the field and types (or chooses) instead of what it held.
    void fill(const QString& key, const QString& text);
    /// Any line, choice or text.
    void fillWidget(QWidget* editor, const QString& text);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* receiver() const; ///< of keys
    void choose(QComboBox* box, const QString& text);

    ui::window::MainWindow& m_window;
    int m_clicks = 0;
    int m_presses = 0;
    quint64 m_lastClick = 0;
};

} // namespace tests
