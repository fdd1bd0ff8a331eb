#pragma once

#include "core/edit/session.h"
#include "ui/dialogs.h"

#include <QAbstractTableModel>
#include <QColor>
#include <QTimer>

#include <optional>
#include <vector>

namespace ui::history {

enum class Column { When, What, By, Note };
constexpr int kColumns = 4;

/// The lines of the book's history that a filter lets through, newest first. Reads a piece at a time, as the view asks
/// for more; where few lines fit it goes on looking by itself, a piece each turn of the event loop.
class HistoryModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { SeqRole = Qt::UserRole, TakenBackRole };

    HistoryModel(const core::edit::Session& session, Dialogs& dialogs, QObject* parent = nullptr);

    void setFilter(const core::edit::HistoryFilter& filter);
    const core::edit::HistoryFilter& filter() const { return m_filter; }
    void setQuiet(const QColor& quiet);
    /// The book has changed: new lines come on top, and those that were taken back or done again say so.
    void refresh();
    const core::edit::HistoryLine& lineAt(int row) const { return m_lines[static_cast<size_t>(row)]; }
    std::optional<int> rowOf(qint64 seq) const;
    bool looking() const { return m_scan.isActive(); }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

signals:
    void looked(); ///< rows came, or there are no more

private:
    void startAgain();
    void lookOn();
    void takePage();
    void takeNewer();
    void mark(const std::vector<core::edit::HistoryLine>& newer);
    QString textOf(const core::edit::HistoryLine& line, Column column) const;

    const core::edit::Session& m_session;
    Dialogs& m_dialogs;
    core::edit::HistoryFilter m_filter;
    std::vector<core::edit::HistoryLine> m_lines;
    qint64 m_newest = 0; ///< of all lines, shown or not
    std::optional<qint64> m_before;
    bool m_more = false;
    size_t m_wanted = 0;
    QTimer m_scan;
    QColor m_quiet;
};

} // namespace ui::history
