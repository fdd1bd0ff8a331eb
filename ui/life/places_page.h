#pragma once

#include "ui/life/life_page.h"
#include "ui/life/stays.h"

class QListView;

namespace ui::records {
class RecordModel;
}

namespace ui::life {

class TimeRuler;

/// The stands of a colony over the years: a strip in time, and a list, the newest first.
class PlacesPage : public LifePage {
    Q_OBJECT
public:
    PlacesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);
    QWidget* keys() override;
    QListView* list() const { return m_list; }

protected:
    void fill() override;

private:
    void paintStrip(QPainter& p, const QRectF& area) const;

    TimeRuler* m_ruler;
    QListView* m_list;
    records::RecordModel* m_model;
    std::vector<Stay> m_stays;
    core::Day m_last;
};

} // namespace ui::life
