#pragma once

#include <QByteArray>

class QFileDevice;
class QSaveFile;

namespace core {

/// All of it or false. A write that stops half-way is gone on with, so that the system says why.
bool writeAll(QFileDevice& file, const QByteArray& bytes);

/// Gives the file its name where all of it was written. QSaveFile by itself keeps a file whose last write stopped
/// half-way on a full disk, and says nothing.
bool commitWhole(QSaveFile& file);

} // namespace core
