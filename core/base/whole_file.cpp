#include "core/base/whole_file.h"

#include <QSaveFile>

namespace core {

bool writeAll(QFileDevice& file, const QByteArray& bytes) {
    qint64 done = 0;
    while (done < bytes.size()) {
        const qint64 now = file.write(bytes.constData() + done, bytes.size() - done);
        if (now <= 0) return false;
        done += now;
    }
    return true;
}

bool commitWhole(QSaveFile& file) {
    const bool flushed = file.flush() || file.flush(); // the second time the system says why
    return flushed && file.commit();
}

} // namespace core
