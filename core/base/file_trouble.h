#pragma once

#include <QString>

class QFileDevice;

namespace core {

/// Why a file could not be written or read, as people say it, and what they can do about it.
struct FileTrouble {
    QString why;    ///< "the disk is full": for the end of a sentence
    QString advice; ///< a sentence of its own
};

/// Of the call that has just failed on the file.
FileTrouble troubleOf(const QFileDevice& file);

/// "PATH cannot be written: the disk is full. Make room and try again."
QString cannotWriteText(const QFileDevice& file);

} // namespace core
