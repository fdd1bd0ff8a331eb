#pragma once

#include <QObject>

class QAction;
class QMenu;

namespace ui {
struct Dialogs;
}

namespace ui::window {

class MainWindow;

/// The tally sheet of the yard shown and the card of the chosen hive, to preview, printer and PDF: in the menu Book.
class VisitPaper : public QObject {
    Q_OBJECT
public:
    VisitPaper(QMenu* book, QWidget* window);

    QAction *previewTally, *printTally, *pdfTally, *previewCard, *printCard, *pdfCard;

    void setBookOpen(bool open);
    void wire(MainWindow& window, Dialogs& dialogs);

private:
    QMenu* m_menu;
};

} // namespace ui::window
