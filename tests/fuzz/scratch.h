#pragma once

#include "core/base/clock.h"
#include "core/base/error.h"
#include "core/edit/session.h"
#include "core/exchange/import.h"

#include <QByteArray>
#include <QString>

#include <map>
#include <memory>

namespace tests::fuzz {

/// A clock that stands still at noon of 2026-09-20.
struct NoonClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 9, 20), QTime(12, 0), Qt::UTC); }
    core::Day today() const override { return core::dayOf(2026, 9, 20); }
};
const core::Clock& clock();

/// A file or folder of this name in the process's own folder (in memory, or where TMPDIR says), which goes with the
/// process.
QString scratch(const QString& name);
/// The folder of this name, empty.
QString emptyFolder(const QString& name);

void writeFile(const QString& path, const QByteArray& bytes);
QByteArray fileBytes(const QString& path);

/// The bytes of a book with the three worked yards of tests/data/yards in it; made once.
const QByteArray& yardsBook();
/// The golden book of a version, 1 to 7.
const QByteArray& goldenBook(int version);

/// A fresh copy of a book under this name, opened.
std::unique_ptr<core::edit::Session> copyOpened(const QByteArray& book, const QString& name);

/// Texts by file name ("visits.csv").
using Texts = std::map<QString, QByteArray>;
/// "== visits.csv", then its lines, and so on; what comes before the first such line is a file of visits.
Texts textsIn(const QByteArray& input);
/// Written into the folder, those that an import reads named for it.
core::exchange::ImportFiles writeTexts(const Texts& texts, const QString& folder);
/// All files that an export of the book makes.
Texts exported(const core::edit::Session& session, const QString& folder);

/// Each message is one line that says where and what: FILE:LINE: COLUMN: what is wrong, what was expected.
void needWellSaid(const core::exchange::Faults& faults);
/// One sentence, or a few, for people: no bytes, no SQL, not endless.
void needWellSaid(const core::Error& e);

} // namespace tests::fuzz
