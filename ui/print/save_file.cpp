#include "ui/print/save_file.h"

#include "core/base/error.h"

#include <QCoreApplication>
#include <QSaveFile>

namespace ui::print {

void writeFile(const QString& file, const std::function<bool(QSaveFile&)>& fill) {
    QSaveFile out(file);
    if (out.open(QIODevice::WriteOnly) && fill(out) && out.commit()) return;
    throw core::Error(
        core::Error::Kind::Book,
        QCoreApplication::translate("Paper", "%1 cannot be written: %2.").arg(out.fileName(), out.errorString()));
}

} // namespace ui::print
