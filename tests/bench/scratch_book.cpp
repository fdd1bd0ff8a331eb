#include "tests/bench/scratch_book.h"

#include <QCoreApplication>
#include <QFile>

namespace bench {

namespace {

const core::SystemClock kClock;
const demo::DemoSize kBig{.colonies = 20'200, .years = 10, .seed = 1};

} // namespace

QString bookFile(const QString& name, const demo::DemoSize& size) {
    const QString path = QCoreApplication::applicationDirPath() + '/' + name + ".yardwright";
    if (QFile::exists(path)) return path;
    const QString making = path + ".making";
    QFile::remove(making);
    {
        const auto session = core::edit::Session::create(making, kClock);
        demo::fillDemoBook(*session, size);
    }
    QFile::rename(making, path);
    return path;
}

std::unique_ptr<core::edit::Session> openBook(const QString& name, const demo::DemoSize& size) {
    return core::edit::Session::open(bookFile(name, size), kClock, core::edit::Session::Access::ReadOnly);
}

QString bigBookFile() { return bookFile("big", kBig); }
std::unique_ptr<core::edit::Session> openBigBook() { return openBook("big", kBig); }

} // namespace bench
