#pragma once

#include "core/base/error.h"
#include "core/edit/edits.h"
#include "core/edit/session.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace tests::edit {

using namespace core;
using namespace core::edit;

struct FixedClock : Clock {
    Day day = dayOf(2026, 9, 20);
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 9, 20), QTime(12, 0), Qt::UTC); }
    Day today() const override { return day; }
};

/// A book of its own in a folder of its own.
class EditTest : public testing::Test {
protected:
    EditTest();

    QString path() const { return dir.filePath(QStringLiteral("test.yardwright")); }
    void reopen() {
        session.reset();
        session = Session::open(path(), clock);
    }

    YardId newYard(const QString& name);
    /// A colony in the yard on a new stand of the same name, since 2026-05-01 where nothing else is said.
    ColonyId newColony(YardId yard, const QString& label, MmPoint at, Day since = dayOf(2026, 5, 1));
    std::optional<HistoryLine> carry(ColonyId colony, MmPoint to, Day day);
    std::optional<HistoryLine> visit(const Visit& v);
    std::optional<HistoryLine> apply(const std::function<ChangeSet(const EditContext&)>& e) {
        return session->apply(e);
    }
    /// Where the colony's hive stands: its open placement's stand.
    Stand standOf(ColonyId colony) const;
    std::vector<Stand> stands(YardId yard) const;
    /// What check() finds wrong, a line each.
    std::string problems() const { return session->check().join(u'\n').toStdString(); }

    QTemporaryDir dir;
    FixedClock clock;
    std::unique_ptr<Session> session;
};

/// What `work` throws; fails the test when it throws nothing.
struct Thrown {
    Error::Kind kind = Error::Kind::Internal;
    std::string message;
};
Thrown thrownBy(const std::function<void()>& work);

/// Every row of every table of the book at `path`, less its history, as text: two are equal when the rows are.
std::string rowsText(const QString& path);
/// The row changes that a line of the history keeps.
std::vector<RowChange> historyRows(const QString& path, qint64 seq);
/// Runs one statement on the file, past the session.
void rawSql(const QString& path, const char* sql);

} // namespace tests::edit
