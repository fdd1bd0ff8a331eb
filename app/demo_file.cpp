#include "app/demo_file.h"

#include "core/base/error.h"
#include "core/exchange/part_book.h"

#include <QFile>

namespace app {

void makeDemo(const QString& path, const core::Clock& clock, const demo::DemoSize& size,
              const core::Progress& progress) {
    if (QFile::exists(path))
        throw core::Error(core::Error::Kind::Book, QStringLiteral("%1 is there already; name a new file.").arg(path));
    core::exchange::PartBook part(path);
    {
        const auto session = core::edit::Session::create(part.path(), clock);
        demo::fillDemoBook(*session, size, progress);
    }
    part.keep();
}

} // namespace app
