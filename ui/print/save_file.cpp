#include "ui/print/save_file.h"

#include "core/base/error.h"
#include "core/base/file_trouble.h"
#include "core/base/output_target.h"
#include "core/base/whole_file.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QSaveFile>

namespace ui::print {

using core::Error;

// Filled in memory: those who paint pages do not look whether each write was whole.
void writeFile(const QString& file, const std::function<bool(QIODevice&)>& fill) {
    core::needOutputTarget(file);
    QBuffer filled;
    filled.open(QIODevice::WriteOnly);
    if (!fill(filled))
        throw Error(Error::Kind::Internal,
                    QCoreApplication::translate("Paper", "%1 cannot be written: it could not be drawn.").arg(file));
    QSaveFile out(file);
    if (out.open(QIODevice::WriteOnly) && core::writeAll(out, filled.data()) && core::commitWhole(out)) return;
    throw Error(Error::Kind::Book, core::cannotWriteText(out), out.errorString());
}

} // namespace ui::print
