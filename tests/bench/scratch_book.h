#pragma once

#include "core/edit/session.h"
#include "demo/demo_book.h"

#include <QString>

#include <memory>

namespace bench {

/// A demo book kept beside the benchmark program under this name; made when it is not there.
QString bookFile(const QString& name, const demo::DemoSize& size);
std::unique_ptr<core::edit::Session> openBook(const QString& name, const demo::DemoSize& size);

/// 20,000 colonies in 400 yards, ten years: 2 million visits, 200,000 transfers.
QString bigBookFile();
std::unique_ptr<core::edit::Session> openBigBook();

} // namespace bench
