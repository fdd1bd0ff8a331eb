#pragma once

#include "core/rules/ledger.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace ui::ledger {

/// The ledger of colonies in a window beside the book: by yard, year and season what was given up, lost, divided and
/// counted; as a page and as a CSV file too. It follows every edit; nothing in it can be edited.
class LedgerWindow : public QWidget {
    Q_OBJECT
public:
    LedgerWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    QTableWidget* table() const { return m_table; }
    QComboBox* yards() const { return m_yards; }
    QLabel* sentences() const { return m_sentences; }
    QPushButton* pdfButton() const { return m_pdf; }
    QPushButton* csvButton() const { return m_csv; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void follow();
    void showTable();
    void showSentences();
    void fitLabels();
    void writePdf();
    void writeCsv();
    std::vector<core::rules::LedgerYear> shownYears() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    core::Snapshot m_snapshot; ///< of today, whatever day is shown
    std::vector<core::rules::LedgerYear> m_years;
    std::vector<size_t> m_yearOfRow; ///< positions in m_years
    QComboBox* m_yards;
    QTableWidget* m_table;
    QLabel* m_sentences;
    QLabel* m_key;
    QLabel* m_said;
    QPushButton *m_pdf, *m_csv;
    bool m_stale = false;
};

/// Shows the ledger of the desk's book in front; one window a book, kept by `page` and gone with it.
LedgerWindow* showLedger(desk::Desk& desk, Dialogs& dialogs, QWidget* page);

} // namespace ui::ledger
