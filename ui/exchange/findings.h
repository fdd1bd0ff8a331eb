#pragma once

#include "core/exchange/import.h"
#include "ui/exchange/foreign_draft.h"

#include <QWidget>

class QStackedWidget;
class QTableView;
class QTableWidget;

namespace ui::look {
class PageTabs;
}

namespace ui::exchange {

class RowModel;

/// What a file would bring, in three tables under tabs: its first rows, what is wrong with it, and where it says
/// otherwise than the book. Ctrl+PageDown and Ctrl+PageUp turn the tabs.
class Findings : public QWidget {
    Q_OBJECT
public:
    explicit Findings(QWidget* parent);

    void showReport(const ForeignDraft& draft, const core::exchange::ImportReport& report);
    void clear();
    void dress();
    int page() const;
    void showPage(int page);
    QTableView* rows() const { return m_rows; }
    QTableWidget* faults() const { return m_faults; }
    QTableWidget* differences() const { return m_differences; }

    static constexpr int kRows = 0;
    static constexpr int kFaults = 1;
    static constexpr int kDifferences = 2;

signals:
    void columnAsked(const QString& ours); ///< of a fault: Enter on its line

private:
    QTableWidget* table(const QString& name, const QStringList& columns);
    void addTo(QTableWidget& table, const QStringList& cells);

    look::PageTabs* m_tabs;
    QStackedWidget* m_stack;
    RowModel* m_model;
    QTableView* m_rows;
    QTableWidget* m_faults;
    QTableWidget* m_differences;
};

} // namespace ui::exchange
