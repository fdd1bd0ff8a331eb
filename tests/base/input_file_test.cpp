#include "core/base/input_file.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

namespace {

TEST(InputFile, SaysWhatIsNoPlainFileBeforeItIsOpened) {
    const QTemporaryDir dir;
    const auto at = [&dir](const char* name) { return dir.filePath(QLatin1StringView(name)); };
    QFile file(at("plain"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.close();
    ASSERT_EQ(mkfifo(QFile::encodeName(at("pipe")).constData(), 0600), 0);
    ASSERT_TRUE(QFile::link(at("pipe"), at("link")));
    ASSERT_TRUE(QFile::link(at("plain"), at("plain link")));
    const int ear = socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un name{};
    name.sun_family = AF_UNIX;
    QFile::encodeName(at("socket")).toStdString().copy(name.sun_path, sizeof name.sun_path - 1);
    ASSERT_EQ(bind(ear, reinterpret_cast<const sockaddr*>(&name), sizeof name), 0);
    EXPECT_EQ(core::noPlainFile(at("plain")), QString());
    EXPECT_EQ(core::noPlainFile(at("plain link")), QString());
    EXPECT_EQ(core::noPlainFile(at("none")), QString());
    EXPECT_EQ(core::noPlainFile(dir.path()), QStringLiteral("a folder"));
    EXPECT_EQ(core::noPlainFile(at("pipe")), QStringLiteral("a pipe"));
    EXPECT_EQ(core::noPlainFile(at("link")), QStringLiteral("a pipe"));
    EXPECT_EQ(core::noPlainFile(at("socket")), QStringLiteral("a socket"));
    EXPECT_EQ(core::noPlainFile(QStringLiteral("/dev/zero")), QStringLiteral("a device"));
    close(ear);
}

} // namespace
