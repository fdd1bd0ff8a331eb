#pragma once

#include "core/rules/hold_span.h"
#include "ui/desk/beside.h"

#include <QObject>

#include <memory>
#include <vector>

namespace core {
struct Snapshot;
}

namespace ui::life {

/// Works out beside the window when a colony was held (rules/holds_over_time.h): days and days of the whole book's
/// holds, which nobody should wait for.
class HoldWatch : public QObject {
    Q_OBJECT
public:
    explicit HoldWatch(QObject* parent);

    /// Instead of what was asked before. `whole`: as Session::snapshotForHolds() reads it.
    void start(std::shared_ptr<const core::Snapshot> whole, core::ColonyId colony, core::Day first, core::Day last);
    void stop() { m_beside.stop(); }

signals:
    /// `apart`: days between two that were judged without a cause.
    void found(core::ColonyId colony, const std::vector<core::rules::HoldSpan>& spans, int apart);

private:
    desk::Beside m_beside;
};

/// So many days apart that a look through them takes some seconds: as far as the book is large.
int daysApart(const core::Snapshot& whole, core::Day first, core::Day last);

} // namespace ui::life
