#include "tests/ui/shown_text.h"

#include "ui/card/colony_card.h"
#include "ui/desk/desk.h"
#include "ui/plan/plan_view.h"
#include "ui/records/record_list.h"
#include "ui/table/hive_table.h"
#include "ui/window/work_page.h"
#include "ui/window/yard_list.h"

#include <QAbstractItemModel>

namespace tests {

namespace {

QString pointText(core::MmPoint p) { return QStringLiteral("%1/%2").arg(p.x).arg(p.y); }

void addModel(const QString& name, const QAbstractItemModel& model, QStringList& out) {
    for (int r = 0; r < model.rowCount(); ++r) {
        QStringList cells;
        for (int c = 0; c < model.columnCount(); ++c)
            cells << model.index(r, c).data(Qt::DisplayRole).toString()
                  << model.index(r, c).data(Qt::AccessibleTextRole).toString();
        out << name + u' ' + cells.join(u'|');
    }
}

void addScene(const ui::plan::Scene& scene, QStringList& out) {
    out << QStringLiteral("yard %1 %2").arg(scene.yard, pointText(scene.gate));
    for (const ui::plan::HiveMark& h : scene.hives)
        out << QStringLiteral("hive %1 %2 %3 %4 %5 %6 %7 %8")
                   .arg(h.label, pointText(h.at), h.holdLetters, h.line, h.spoken)
                   .arg(h.headingDeg)
                   .arg(h.boxes)
                   .arg(h.bees ? h.bees->value : -1);
    for (const ui::plan::UnionMark& u : scene.unions)
        out << QStringLiteral("union %1 %2 %3 %4").arg(u.order).arg(u.moved).arg(u.host).arg(u.metres);
    for (const ui::plan::StandMark& s : scene.stands) out << QStringLiteral("stand %1 %2").arg(s.name, pointText(s.at));
}

} // namespace

QStringList shownIn(const ui::window::MainWindow& window) {
    const ui::window::WorkPage& page = *window.page();
    QStringList out;
    addModel(QStringLiteral("yard"), page.yards()->model(), out);
    addModel(QStringLiteral("row"), *page.table()->model(), out);
    addScene(page.plan()->scene(), out);
    const ui::records::RecordModel& records = page.card()->records()->model();
    for (int i = 0; i < records.rowCount(); ++i) {
        const ui::records::RecordRow& r = records.at(i);
        out << QStringLiteral("record %1 %2 %3").arg(core::isoText(r.day), r.title, r.words);
    }
    return out;
}

} // namespace tests
