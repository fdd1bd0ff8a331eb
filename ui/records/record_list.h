#pragma once

#include "ui/records/record_model.h"

#include <QWidget>

#include <optional>

class QListView;
class QPushButton;

namespace ui::records {

/// All records of one colony, newest first: Enter opens one, Delete takes it back; buttons do the same.
class RecordList : public QWidget {
    Q_OBJECT
public:
    explicit RecordList(QWidget* parent = nullptr);

    /// Of the same colony as before, the chosen record stays chosen; of one taken back its neighbour is.
    void show(core::ColonyId colony, std::vector<RecordRow> rows);
    /// Has the keys at that record, where it is listed.
    void choose(RecordKind kind, qint64 id);
    void setWritable(bool writable); ///< else nothing is taken back
    const RecordModel& model() const { return *m_model; }
    QListView* list() const { return m_list; }

signals:
    void openAsked(const ui::records::RecordRow& record);
    void takeBackAsked(const ui::records::RecordRow& record);

private:
    void settle();
    void open();
    void takeBack();

    RecordModel* m_model;
    QListView* m_list;
    QPushButton* m_open;
    QPushButton* m_takeBack;
    std::optional<core::ColonyId> m_colony;
    bool m_writable = true;
};

} // namespace ui::records
