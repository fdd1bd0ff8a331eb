#pragma once

#include "ui/records/new_record.h"
#include "ui/window/top_bar.h"

#include <QObject>
#include <QStringList>

#include <utility>
#include <vector>

class QAction;
class QMenu;
class QMenuBar;

namespace ui::window {

class BackupCommands;
class ExportCommands;
class FindCommands;
class PickCommands;
class PlanPaper;
class SalvageCommands;
class TimeCommands;
class VisitPaper;
class YardCommands;

/// The window's commands by name, with keys and menus; the window connects them.
class Commands : public QObject {
    Q_OBJECT
public:
    Commands(QMenuBar* bar, QWidget* window);

    QAction *makeBook, *openBook, *tryAgain, *importCsv, *readFile, *preview, *print, *pdf, *settings, *people, *close;
    QAction *undo, *redo, *findColony, *logVisit;
    std::vector<std::pair<records::NewRecord, QAction*>> notes; ///< another record of the chosen hive
    QAction *yardPlan, *mergeDay, *colonies, *visits, *season, *health, *zoomIn, *zoomOut, *fit, *table, *history,
        *larger, *smaller, *usual, *nextPane, *paneBefore;
    QMenu* columns; ///< of the table, filled when it opens
    QMenu* steps;   ///< of the merge day and what each can do, filled when it opens

    void setBookOpen(bool open, bool writable);
    QAction* placeAction(Place place) const;
    void setUndo(const QString& undoText, const QString& redoText);
    void setRecent(const QStringList& paths);
    /// Who may write, and who does (empty: nobody named).
    void setAuthors(const QStringList& names, const QString& author);

    YardCommands* yards() const { return m_yards; }
    PickCommands* pick() const { return m_pick; }
    FindCommands* find() const { return m_find; }
    BackupCommands* backups() const { return m_backups; }
    SalvageCommands* salvage() const { return m_salvage; }
    ExportCommands* exports() const { return m_exports; }
    PlanPaper* planPaper() const { return m_planPaper; }
    VisitPaper* visitPaper() const { return m_visitPaper; }
    TimeCommands* time() const { return m_time; }

signals:
    void recentAsked(const QString& path);
    void authorAsked(const QString& name);

private:
    void addFiles(QMenu* book);
    void addPaper(QMenu* book);
    void addKeeping(QMenu* book);
    void addEdit(QMenu* edit);
    void addRecord(QMenu* record);
    void addPlaces(QMenu* view);
    void addPlan(QMenu* view);
    void addText(QMenu* view);
    QAction* add(QMenu* menu, const QString& text, const QString& keys, const QString& tip);

    QWidget* m_window;
    PickCommands* m_pick;
    FindCommands* m_find;
    BackupCommands* m_backups;
    SalvageCommands* m_salvage;
    ExportCommands* m_exports;
    PlanPaper* m_planPaper;
    VisitPaper* m_visitPaper;
    YardCommands* m_yards;
    TimeCommands* m_time;
    QMenu* m_recent;
    QMenu* m_authors;
};

} // namespace ui::window
