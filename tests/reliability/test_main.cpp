#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFileInfo>

int main(int argc, char** argv) {
    // What is under test is not the disk's speed: on one in memory nothing waits for it.
    if (QFileInfo(QStringLiteral("/dev/shm")).isWritable()) qputenv("TMPDIR", "/dev/shm");
    const QCoreApplication app(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
