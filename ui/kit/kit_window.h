#pragma once

#include "core/rules/kit_piles.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"

#include <QWidget>

#include <memory>

class QLabel;
class QListWidget;
class QPushButton;
class QTableView;

namespace ui::form {
class Form;
class FormPanel;
} // namespace ui::form

namespace ui::kit {

class KitModel;

/// Kit of the yards and the store room in a window beside the book's: what is there by kind and state, counted,
/// cleaned, carried, quarantined. Worked by keys; it follows every edit.
class KitWindow : public QWidget {
    Q_OBJECT
public:
    KitWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    QListWidget* places() const { return m_places; }
    QTableView* table() const { return m_table; }
    KitModel* model() const { return m_model; }
    form::FormPanel* panel() const { return m_panel; }
    QPushButton* countButton() const { return m_count; }
    QPushButton* moveButton() const { return m_move; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    QString said() const;
    void showPlace(std::optional<core::YardId> yard);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* placesPart();
    QWidget* tablePart();
    QPushButton* button(const QString& text, const QString& tip, void (KitWindow::*act)());
    void dress();
    void follow();
    void read();
    void addYard(const core::Yard& yard);
    void showTable();
    void settle();
    void say(const QString& sentence, bool warns = false);
    std::optional<core::YardId> place() const;
    QStringList usualParts() const;
    void open(std::unique_ptr<form::Form> form);
    void count();
    void countOther();
    void move();
    void takeBack();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    KitModel* m_model;
    QListWidget* m_places;
    QTableView* m_table;
    form::FormPanel* m_panel;
    QLabel* m_apart;
    QLabel* m_saying;
    QLabel* m_ended; ///< how kit that was kept apart here ended
    QPushButton* m_count = nullptr;
    QPushButton* m_other = nullptr;
    QPushButton* m_move = nullptr;
    QPushButton* m_takeBack = nullptr;
    QWidget* m_buttons = nullptr;
    std::vector<core::rules::KitPile> m_piles;
    std::vector<std::optional<core::YardId>> m_yards; ///< as listed: the store room first
    bool m_stale = false;
};

/// In front, at the yard that is shown; one window a book, kept by `page` and gone with it.
KitWindow* showKit(desk::Desk& desk, Dialogs& dialogs, QWidget* page);

} // namespace ui::kit
