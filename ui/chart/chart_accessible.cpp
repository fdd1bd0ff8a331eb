#include "ui/chart/chart_accessible.h"

#include "ui/chart/chart_view.h"

#include <QAccessibleWidget>

#include <mutex>

namespace ui::chart {

namespace {

class ChartAccessible : public QAccessibleWidget {
public:
    explicit ChartAccessible(ChartView* view) : QAccessibleWidget(view, QAccessible::Chart), m_view(view) {}

    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? m_view->reading() : QAccessibleWidget::text(kind);
    }

private:
    ChartView* m_view;
};

QAccessibleInterface* makeChart(const QString&, QObject* object) {
    auto* view = qobject_cast<ChartView*>(object);
    return view ? new ChartAccessible(view) : nullptr;
}

} // namespace

void installChartAccessible() {
    static std::once_flag once;
    std::call_once(once, [] { QAccessible::installFactory(makeChart); });
}

void announceReading(ChartView& view) {
    QAccessibleValueChangeEvent changed(&view, view.reading());
    QAccessible::updateAccessibility(&changed);
}

} // namespace ui::chart
