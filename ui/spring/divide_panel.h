#pragma once

#include "ui/dialogs.h"
#include "ui/form/form.h"
#include "ui/spring/divide_lines.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <utility>
#include <vector>

class QAction;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

namespace ui::spring {

/// The divides of the merge day shown, below a step of it: how they come to queens, what is asked of each, and the way
/// to write one back. Not shown where nothing can be divided and nothing was.
class DividePanel : public QWidget {
    Q_OBJECT
public:
    enum class Use { Plan, WriteBack };
    /// Opens a form at the right; false where one with typing stays.
    using OpenForm = std::function<bool(std::unique_ptr<form::Form>)>;

    DividePanel(desk::Desk& desk, Dialogs& dialogs, OpenForm openForm, Use use, QWidget* parent = nullptr);

    QListWidget* list() const { return m_list; }
    QComboBox* queens() const { return m_queens; }
    QPushButton* wholeButton() const { return m_whole; }
    QPushButton* fewerButton() const { return m_fewer; }
    QPushButton* moreButton() const { return m_more; }
    QPushButton* writeButton() const { return m_write; }
    QLabel* looks() const { return m_looks; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QPushButton* button(const QString& text, const QString& spoken, const QString& name, const QString& keys,
                        const QString& tip);
    void follow();
    void showLines();
    void showButtons();
    void showChosen();
    void rowChosen(int row);
    void ask(const core::edit::DividesAsked& asked);
    void askParts(int by);
    void leaveWhole();
    void writeBack();
    const DivideLine* line() const;
    QString looksText() const;
    void fitList();
    void fitLooks();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    OpenForm m_openForm;
    Use m_use;
    DivideDay m_day;
    QComboBox* m_queens;
    QListWidget* m_list;
    QLabel* m_looks;
    QPushButton *m_whole = nullptr, *m_fewer = nullptr, *m_more = nullptr, *m_write = nullptr;
    std::vector<std::pair<QPushButton*, QAction*>> m_keys; ///< what each button is by keys
    bool m_telling = false;                                ///< the list is being told; it does not tell back
};

/// The panel at the foot of a step's page, and what it can do among the page's actions.
DividePanel* addDivides(QWidget* page, desk::Desk& desk, Dialogs& dialogs, DividePanel::OpenForm openForm,
                        DividePanel::Use use);

} // namespace ui::spring
