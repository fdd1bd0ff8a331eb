#pragma once

#include <QWidget>

#include <vector>

class QStackedWidget;

namespace ui::look {

class PageTabs;

/// Several pages under a row of tabs, one shown; Ctrl+PageDown and Ctrl+PageUp turn them. With one page the row is
/// hidden.
class Paged : public QWidget {
    Q_OBJECT
public:
    /// `name`: of the row, for screen readers.
    explicit Paged(const QString& name, QWidget* parent = nullptr);

    /// `keys`: where its keys begin; not given: the page itself. The widget becomes this one's.
    void addPage(const QString& title, const QString& tip, QWidget* page, QWidget* keys = nullptr);
    void show(QWidget* page); ///< one that was added; the keys go to it where this had them
    QWidget* shown() const;
    std::vector<QWidget*> pages() const; ///< in their order

signals:
    void pageChanged(QWidget* page);

protected:
    void focusInEvent(QFocusEvent* event) override; ///< the page shown has the keys

private:
    void showTab(int tab);
    void turn(int by);

    PageTabs* m_tabs;
    QStackedWidget* m_stack;
    std::vector<QWidget*> m_keys; ///< by page
};

} // namespace ui::look
