#pragma once

#include "core/edit/session.h"

#include <QString>
#include <QTemporaryDir>

namespace tests {

struct FixedClock : core::Clock {
    core::Day day = core::dayOf(2026, 9, 15);
    QDateTime nowUtc() const override;
    core::Day today() const override { return day; }
};

/// A book of its own in a fresh folder: one yard of six hives, A1 to A6, in a row two metres apart, counted and checked
/// the day before the clock's day; A3's brood was not checked.
class BookOfTest {
public:
    BookOfTest();
    const FixedClock& clock() const { return m_clock; }
    QString path() const;
    /// Where the hive stands, read from the file by a session of its own.
    core::MmPoint placeOf(const QString& label) const;
    core::ColonyId idOf(const QString& label) const;
    std::vector<core::Visit> visitsOf(const QString& label) const;
    std::vector<QString> history() const; ///< newest first

private:
    std::unique_ptr<core::edit::Session> reader() const;
    QTemporaryDir m_folder;
    FixedClock m_clock;
};

} // namespace tests
