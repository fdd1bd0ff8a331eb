#include "ui/print/save_file.h"

#include <QCoreApplication>
#include <QSaveFile>

namespace ui::print {

core::Error cannotWrite(const QSaveFile& out) {
    return core::Error(
        core::Error::Kind::Book,
        QCoreApplication::translate("Paper", "%1 cannot be written: %2.").arg(out.fileName(), out.errorString()));
}

} // namespace ui::print
