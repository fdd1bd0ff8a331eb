#include "ui/life/hold_watch.h"

#include "core/rules/holds_over_time.h"
#include "core/rules/holds_then.h"

#include <QElapsedTimer>

#include <algorithm>

namespace ui::life {

namespace {

constexpr int kLeastApart = 7, kMostApart = 90;
constexpr qint64 kWork = 15'000; // milliseconds, about

} // namespace

int daysApart(const core::Snapshot& whole, core::Day first, core::Day last) {
    QElapsedTimer timer;
    timer.start();
    core::rules::holdsThen(whole, last);
    const qint64 all = std::max<qint64>(timer.elapsed(), 1) * (last - first);
    return static_cast<int>(std::clamp<qint64>(all / kWork, kLeastApart, kMostApart));
}

HoldWatch::HoldWatch(QObject* parent) : QObject(parent), m_beside(nullptr) {}

void HoldWatch::start(std::shared_ptr<const core::Snapshot> whole, core::ColonyId colony, core::Day first,
                      core::Day last) {
    m_beside.start([this, whole = std::move(whole), colony, first,
                    last](const std::function<bool()>& stopped) -> desk::Beside::Found {
        const int apart = daysApart(*whole, first, last);
        auto spans = core::rules::holdsOverTime(*whole, colony, first, last, apart, stopped);
        return [this, colony, spans = std::move(spans), apart] { emit found(colony, spans, apart); };
    });
}

} // namespace ui::life
