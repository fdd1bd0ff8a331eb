#pragma once

#include "ui/desk/reading.h"
#include "ui/hand/hand_guide.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <QWidget>

class QListView;

namespace ui::window {

/// The yards with their counts and what is to be done in each.
class YardModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;
    void show(const desk::Reading& reading);
    const desk::YardLine& at(int row) const { return m_lines[static_cast<size_t>(row)]; }
    int rowOf(core::YardId yard) const; ///< −1 where it is not
    /// The yard that hives are held over.
    void mark(std::optional<core::YardId> yard, bool refused);
    bool marked(int row) const { return m_marked == at(row).yard; }
    bool refused() const { return m_refused; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<desk::YardLine> m_lines;
    std::optional<core::YardId> m_marked;
    bool m_refused = false;
};

class YardDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

class YardList : public QWidget {
    Q_OBJECT
public:
    explicit YardList(QWidget* parent = nullptr);
    void show(const desk::Reading& reading, std::optional<core::YardId> chosen);
    const YardModel& model() const { return *m_model; }
    QListView* list() const { return m_list; }
    /// Hives can be set down on its yards.
    hand::HandGuide::Yards asTarget();

signals:
    void chosen(core::YardId yard);

protected:
    void changeEvent(QEvent* event) override;

private:
    void sizeToText();

    YardModel* m_model;
    QListView* m_list;
    bool m_telling = false;
};

} // namespace ui::window
