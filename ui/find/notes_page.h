#pragma once

#include "core/model/note_found.h"
#include "ui/desk/desk.h"

#include <QTimer>
#include <QWidget>

class QLabel;
class QLineEdit;
class QListView;

namespace ui::find {

class NoteModel;

/// Words typed are looked for in all notes of the book, as they are typed; Enter opens where one was written.
class NotesPage : public QWidget {
    Q_OBJECT
public:
    NotesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    QLineEdit* line() const { return m_line; }
    QListView* list() const { return m_list; }
    NoteModel* model() const { return m_model; }
    QLabel* foot() const { return m_foot; }

signals:
    void opened(const core::NoteFound& note);

protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void look();
    void toList();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    QLineEdit* m_line;
    QListView* m_list;
    NoteModel* m_model;
    QLabel* m_foot;
    QTimer m_typing;
};

} // namespace ui::find
