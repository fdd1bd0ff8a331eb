#include "core/base/output_target.h"

#include "core/base/error.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <optional>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core {

namespace {

struct Targets {
    Q_DECLARE_TR_FUNCTIONS(Targets)
};

/// nullopt: it cannot be read through this descriptor.
std::optional<bool> beginsAsBook(int file) {
    constexpr std::array<char, 16> kSqlite{"SQLite format 3"}; // the zero at its end belongs to it
    std::array<char, kSqlite.size()> first{};
    const ssize_t count = pread(file, first.data(), first.size(), 0);
    if (count < 0) return {};
    return count == std::ssize(first) && first == kSqlite;
}

/// Closing any descriptor of a file drops all locks that SQLite, in this process, has on it: what is open here already
/// is read through the descriptor it has. nullopt: it is not open here.
std::optional<bool> openBook(const struct stat& target) {
    namespace fs = std::filesystem;
    std::error_code error;
    for (auto entry = fs::directory_iterator("/proc/self/fd", error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        const int file = std::atoi(entry->path().filename().c_str());
        struct stat found {};
        if (fstat(file, &found) != 0 || found.st_dev != target.st_dev || found.st_ino != target.st_ino) continue;
        if (const auto book = beginsAsBook(file)) return book;
    }
    return {};
}

bool closedBook(const QByteArray& path) {
    const int file = open(path.constData(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY);
    if (file < 0) return false;
    const bool book = beginsAsBook(file).value_or(false);
    close(file);
    return book;
}

bool namedAsBook(const QString& path) { return path.endsWith(QStringLiteral(".yardwright"), Qt::CaseInsensitive); }

bool isBook(const QString& path, const struct stat& target) {
    const QString real = QFileInfo(path).canonicalFilePath();
    if (namedAsBook(path) || namedAsBook(real)) return true;
    for (const QString& name : {path, real})
        if (QFileInfo::exists(name + QStringLiteral("-lock"))) return true;
    const auto held = openBook(target);
    return held ? *held : closedBook(QFile::encodeName(path));
}

} // namespace

void needOutputTarget(const QString& path) {
    struct stat target {};
    if (stat(QFile::encodeName(path).constData(), &target) != 0) return; // nothing there, or the write will say why
    const QString shown = QDir::toNativeSeparators(path);
    if (!S_ISREG(target.st_mode))
        throw Error(Error::Kind::Book,
                    Targets::tr("%1 is no ordinary file: choose another name. Nothing was written.").arg(shown));
    if (isBook(path, target))
        throw Error(Error::Kind::Book,
                    Targets::tr("%1 is a book: choose another name. Nothing was written.").arg(shown));
}

} // namespace core
