#pragma once

#include <QList>
#include <QWidget>

#include <array>

class QAction;
class QMenu;
class QStackedWidget;
class QTabBar;

namespace ui::merge {

/// What a merge day goes through.
enum class Step { GetReady, Plan, WriteBack, Afterwards };

/// The right side of Merge day: its steps in a row of tabs, one shown. A step is a widget that follows the desk by
/// itself; what it can do besides stands in the menu as its QWidget::actions().
class MergePlace : public QWidget {
    Q_OBJECT
public:
    explicit MergePlace(QWidget* parent = nullptr);

    /// In the order of Step, whatever comes first. The widget becomes this one's.
    /// `keys`: where its keys begin, when it is opened by one; not given: the page itself.
    void addStep(Step step, QWidget* page, QWidget* keys = nullptr);
    void setStep(Step step);
    Step step() const;
    QWidget* page(Step step) const { return m_pages[static_cast<size_t>(step)]; }

    /// "Merge day" of the menu bar: the steps, then what the one shown can do. Filled whenever it opens.
    void fill(QMenu* menu) const;
    /// Only the steps again, once it closed: the keys of a step work where it is shown, not wherever the menu is.
    void empty(QMenu* menu) const;
    /// Alt+1 to Alt+4, each of the step of that number.
    const QList<QAction*>& stepActions() const { return m_actions; }

signals:
    void stepChanged(ui::merge::Step step);
    void stepAsked(); ///< by a key or the menu: the place is to be shown

private:
    int tabOf(Step step) const;
    void showTab(int tab);

    static constexpr size_t kSteps = 4;
    QTabBar* m_tabs;
    QStackedWidget* m_stack;
    std::array<QWidget*, kSteps> m_pages{};
    std::array<QWidget*, kSteps> m_keys{}; ///< where they begin
    QList<QAction*> m_actions; ///< by step
};

} // namespace ui::merge
