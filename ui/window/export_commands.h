#pragma once

#include "ui/dialogs.h"

#include <QObject>

class QAction;
class QMenu;

namespace ui::window {

class MainWindow;

/// The whole book as CSV files, in the menu Book: as they can be read in again, or for looking at in a spreadsheet.
class ExportCommands : public QObject {
    Q_OBJECT
public:
    ExportCommands(QMenu* book, QWidget* window);

    QAction* csv;
    QAction* spreadsheets;

    void setBookOpen(bool open);
    void wire(MainWindow& window, Dialogs& dialogs);
};

} // namespace ui::window
