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

/// The big book in a bad year: 400 colonies in 400 yards with American foulbrood, confirmed, suspected or released from
/// it, 200 with European foulbrood, brood brought to 2,000 colonies from other yards. A copy of its own.
std::unique_ptr<core::edit::Session> openTroubledBook();

} // namespace bench
