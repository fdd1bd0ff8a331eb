#pragma once

#include "ui/desk/desk.h"
#include "ui/dialogs.h"

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;
class QTableView;

namespace ui::history {

class ChangeView;
class FilterBar;
class HistoryModel;

/// The history of the book in a window beside it: what was done, when and by whom, from what to what, and a way to take
/// a past change back that nothing later rests on. Nothing in it can be edited. It follows every edit.
class HistoryWindow : public QWidget {
    Q_OBJECT
public:
    HistoryWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    QTableView* table() const { return m_table; }
    ChangeView* changes() const { return m_changes; }
    FilterBar* filterBar() const { return m_filter; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    HistoryModel* model() const { return m_model; }
    QString said() const; ///< under the list

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void build();
    QWidget* detailPart();
    void follow();
    void applyFilter();
    void showChosen();
    void takeBack();
    void say(const QString& sentence, bool warns);
    void sayHowMany();
    std::optional<qint64> chosen() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    HistoryModel* m_model;
    FilterBar* m_filter;
    QTableView* m_table;
    ChangeView* m_changes;
    QLabel* m_title;
    QLabel* m_lesser;
    QLabel* m_count;
    QLabel* m_saying;
    QPushButton* m_takeBack;
    bool m_stale = false;
};

/// Shows the history of the desk's book in front; one window a book, kept by `page` and gone with it.
HistoryWindow* showHistory(desk::Desk& desk, Dialogs& dialogs, QWidget* page);

} // namespace ui::history
