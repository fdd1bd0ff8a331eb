#include "core/store/part_file.h"

#include <QDir>
#include <QFile>
#include <QUuid>

namespace core::store {

namespace {

QString hiddenIn(const QString& folder) {
    const QString token = QUuid::createUuid().toString(QUuid::Id128).left(12);
    return folder + QStringLiteral("/.new-") + token + QStringLiteral(".yardwright");
}

} // namespace

QString partOf(const QString& path) { return path + QStringLiteral(".part"); }

QStringList namesInTheMaking() { return {QStringLiteral(".new-*.yardwright"), QStringLiteral("*.yardwright.part")}; }

bool inTheMaking(const QString& name) { return QDir::match(namesInTheMaking(), name); }

PartFile::PartFile(const QString& folder) : path(hiddenIn(folder)) {}

PartFile::~PartFile() {
    for (const char* end : {"", "-journal", "-lock"}) QFile::remove(path + QLatin1StringView(end));
}

} // namespace core::store
