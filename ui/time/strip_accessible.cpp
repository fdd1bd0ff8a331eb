#include "ui/time/strip_accessible.h"

#include "ui/time/strip.h"

#include <QAccessibleWidget>

#include <mutex>

namespace ui::time {

namespace {

/// Values are days counted from the first of the strip.
class StripAccessible : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    explicit StripAccessible(Strip* strip) : QAccessibleWidget(strip, QAccessible::Slider), m_strip(strip) {}

    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
        return QAccessibleWidget::interface_cast(type);
    }
    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? m_strip->spoken(m_strip->day()) : QAccessibleWidget::text(kind);
    }
    QVariant currentValue() const override { return m_strip->day() - m_strip->first(); }
    void setCurrentValue(const QVariant& value) override { m_strip->askFor(m_strip->first() + value.toInt()); }
    QVariant minimumValue() const override { return 0; }
    QVariant maximumValue() const override { return m_strip->last() - m_strip->first(); }
    QVariant minimumStepSize() const override { return 1; }

private:
    Strip* m_strip;
};

QAccessibleInterface* make(const QString&, QObject* object) {
    auto* strip = qobject_cast<Strip*>(object);
    return strip ? new StripAccessible(strip) : nullptr;
}

} // namespace

void installStripAccessible() {
    static std::once_flag once;
    std::call_once(once, [] { QAccessible::installFactory(make); });
}

void announceDay(Strip& strip) {
    QAccessibleValueChangeEvent changed(&strip, strip.day() - strip.first());
    QAccessible::updateAccessibility(&changed);
}

} // namespace ui::time
