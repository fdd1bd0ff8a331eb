#pragma once

#include <QString>
#include <QStringList>

namespace core::store {

// Names of books in the making. What bears one may be thrown away: it is another's for a moment, or was left by a
// program that was killed.

/// The copy of a backup, until its name is known.
QString partOf(const QString& path);
/// Whether a file of this name is no book of anybody's yet.
bool inTheMaking(const QString& name);
/// Those, as filters of a folder's list.
QStringList namesInTheMaking();

/// A hidden name in a folder, of a book until it gets its own; what is there then still goes with this.
class PartFile {
public:
    explicit PartFile(const QString& folder);
    ~PartFile();
    PartFile(const PartFile&) = delete;
    PartFile& operator=(const PartFile&) = delete;

    const QString path;
};

} // namespace core::store
