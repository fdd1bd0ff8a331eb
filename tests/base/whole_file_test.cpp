#include "core/base/whole_file.h"

#include "core/base/file_trouble.h"
#include "tests/support/no_rights.h"
#include "tests/support/small_files.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QTemporaryDir>

#include <sys/stat.h>

namespace {

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// The disk is full at each byte in turn: the file of before stands, and why is said.
TEST(WholeFile, IsKeptWholeOrNotAtAll) {
    const QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("notes"));
    for (const qsizetype size : {40, 100'000}) {
        const QByteArray bytes(size, 'x');
        for (qsizetype room = 0; room <= size; room += size / 40) {
            SCOPED_TRACE(room);
            QFile before(path);
            ASSERT_TRUE(before.open(QIODevice::WriteOnly));
            before.write("before");
            before.close();
            QSaveFile file(path);
            bool kept = false;
            {
                const tests::SmallFiles small(static_cast<rlim_t>(room));
                kept = file.open(QIODevice::WriteOnly) && core::writeAll(file, bytes) && core::commitWhole(file);
            }
            EXPECT_EQ(kept, room == size);
            EXPECT_EQ(bytesOf(path), kept ? bytes : QByteArray("before"));
            const QString said = kept ? QString() : core::cannotWriteText(file);
            EXPECT_TRUE(kept || said == path + QStringLiteral(" cannot be written: the disk is full. Make room and try "
                                                              "again."))
                << said.toStdString();
            file.cancelWriting();
        }
    }
}

std::string refusalOf(const QString& path) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && core::commitWhole(file)) return "written";
    return core::cannotWriteText(file).toStdString();
}

TEST(WholeFile, WhyItCannotBeWrittenIsSaidInOneSentenceAndWhatToDo) {
    const QTemporaryDir dir;
    const QString gone = dir.filePath(QStringLiteral("stick/notes"));
    EXPECT_EQ(refusalOf(gone), gone.toStdString() + " cannot be written: its folder is not there. Put it back, or "
                                                    "choose another place.");
    EXPECT_EQ(refusalOf(dir.path()), dir.path().toStdString() + " cannot be written: a folder of that name stands "
                                                                "there. Rename it, or choose another name.");
    const QString closed = dir.filePath(QStringLiteral("closed"));
    ASSERT_TRUE(QDir().mkpath(closed));
    ASSERT_EQ(chmod(dir.path().toLocal8Bit().constData(), 0755), 0);
    ASSERT_EQ(chmod(closed.toLocal8Bit().constData(), 0555), 0);
    const tests::NoRights nobody;
    EXPECT_EQ(refusalOf(closed + QStringLiteral("/notes")),
              closed.toStdString() + "/notes cannot be written: access to it is denied. Allow it, or choose another "
                                     "place.");
}

} // namespace
