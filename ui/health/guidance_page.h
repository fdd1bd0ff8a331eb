#pragma once

#include "ui/desk/while_shown.h"
#include "ui/health/notifiable_panel.h"

#include <QWidget>

class QLineEdit;
class QListWidget;
class QStackedWidget;
class QTextBrowser;

namespace ui::health {

/// Short texts on foulbrood and what looks like it, each with its source, found by words; and what must be reported
/// where the keeper is. It replaces no inspector and no law.
class GuidancePage : public QWidget {
    Q_OBJECT
public:
    GuidancePage(desk::Desk& desk, Dialogs& dialogs, NotifiablePanel::OpenForm open, QWidget* parent = nullptr);

    QLineEdit* search() const { return m_search; }
    QListWidget* topics() const { return m_topics; }
    NotifiablePanel* notifiable() const { return m_notifiable; }
    QString shown() const; ///< the text of the topic shown; of the table: what it says above it

protected:
    void changeEvent(QEvent* event) override;

private:
    void build();
    void find();
    void tell();

    QLineEdit* m_search;
    QListWidget* m_topics;
    QTextBrowser* m_text;
    NotifiablePanel* m_notifiable;
    QStackedWidget* m_stack;
    desk::WhileShown* m_follow;
};

} // namespace ui::health
