#pragma once

#include "core/rules/hold_span.h"

#include <QObject>

#include <atomic>
#include <memory>
#include <vector>

class QThread;

namespace ui::life {

/// Works out beside the window when a colony was held (rules/holds_over_time.h): days and days of the whole book's
/// holds, which nobody should wait for.
class HoldWatch : public QObject {
    Q_OBJECT
public:
    explicit HoldWatch(QObject* parent);
    ~HoldWatch() override; ///< waits for the day that is being judged

    /// Instead of what was asked before. `whole`: as Session::snapshotForHolds() reads it.
    void start(std::shared_ptr<const core::Snapshot> whole, core::ColonyId colony, core::Day first, core::Day last);
    void stop();

signals:
    /// `apart`: days between two that were judged without a cause.
    void found(core::ColonyId colony, const std::vector<core::rules::HoldSpan>& spans, int apart);

private:
    std::atomic<int> m_run = 0;
    std::vector<QThread*> m_threads;
};

} // namespace ui::life
