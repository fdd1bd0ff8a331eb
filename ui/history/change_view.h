#pragma once

#include "core/edit/history.h"

#include <QTreeView>

class QStandardItemModel;

namespace ui::history {

/// What one line did: a branch a record, a leaf a field with what it was and what it became. Read only.
class ChangeView : public QTreeView {
    Q_OBJECT
public:
    explicit ChangeView(QWidget* parent = nullptr);
    void show(const core::edit::HistoryDetail& detail);
    void clear();

private:
    QStandardItemModel* m_model;
};

} // namespace ui::history
