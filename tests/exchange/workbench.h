#pragma once

#include "core/base/clock.h"
#include "core/exchange/import.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <map>
#include <memory>

namespace tests::exchange {

/// A clock that stands still.
struct StillClock : core::Clock {
    QDateTime nowUtc() const override;
    core::Day today() const override;
};

inline QString f(const char* name) { return QString::fromLatin1(name); }

/// Texts by file name ("visits.csv").
using Texts = std::map<QString, QByteArray>;

/// Two yards, four colonies (A in one box, B in two, C on Hill with all at its defaults, D dead since 2026-03-01).
Texts smallYard();
/// smallYard() with these in place of, or besides, its own files.
Texts smallYardWith(const Texts& others);

/// A folder of its own with files, and a book.
class Workbench {
public:
    Workbench();

    QString folder(const QString& name = {}) const; ///< made where it is missing
    QString book() const { return folder() + QStringLiteral("/b.yardwright"); }
    bool bookThere() const;
    /// Writes the files into a folder and names them for an import.
    core::exchange::ImportFiles write(const Texts& texts, const QString& name = QStringLiteral("in")) const;
    /// Imports into the book, which is made where it is missing.
    core::exchange::ImportReport import(const Texts& texts, bool dryRun = false) const;
    /// The ten files of an export of the book, and any further ones but its history and the guide.
    Texts exported() const;
    /// What a check of the book finds.
    QStringList check() const;
    std::unique_ptr<core::edit::Session> open() const;
    const core::Clock& clock() const { return m_clock; }

private:
    QTemporaryDir m_dir;
    StillClock m_clock;
};

/// "visits.csv:3: date" of each fault.
QStringList placesOf(const core::exchange::ImportReport& report);
/// The files of a folder by name.
Texts textsOf(const QString& folder);

} // namespace tests::exchange
