#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/visit/visit_form.h"
#include "ui/window/status_line.h"

#include <QFile>
#include <QLineEdit>
#include <QPushButton>

#include <csignal>

#include <sys/mount.h>
#include <sys/resource.h>

namespace {

/// No file may grow beyond a few bytes while this lives: nothing can be saved.
class NoRoom {
public:
    NoRoom() {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit small = m_before;
        small.rlim_cur = 16;
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~NoRoom() {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    NoRoom(const NoRoom&) = delete;
    NoRoom& operator=(const NoRoom&) = delete;

private:
    rlimit m_before{};
    void (*m_handler)(int) = SIG_DFL;
};

/// A visit is typed into its form and Enter pressed.
QLineEdit* typeVisit(ui::window::MainWindow& window) {
    QTest::keyClick(&window, Qt::Key_L, Qt::ControlModifier);
    auto* edit = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    if (edit) QTest::keyClicks(edit, QStringLiteral("5.25"));
    return edit;
}

struct FullDisk : tests::OpenWindow {};

TEST_F(FullDisk, KeepsWhatWasTypedAndSaysThatItIsNotSaved) {
    window->desk()->choose(book.idOf(QStringLiteral("A2")));
    QLineEdit* edit = typeVisit(*window);
    ASSERT_NE(edit, nullptr);
    dialogs.expectError = true;
    {
        const NoRoom full;
        QTest::keyClick(edit, Qt::Key_Return);
    }
    EXPECT_TRUE(window->saying().startsWith(QStringLiteral("Not saved: the disk"))) << said();
    EXPECT_FALSE(window->saying().endsWith(QStringLiteral("· saved")));
    EXPECT_EQ(window->statusLine()->savedButton()->text(), QStringLiteral("not saved"));
    EXPECT_TRUE(window->page()->form()->isVisible());
    EXPECT_EQ(edit->text(), QStringLiteral("5.25"));
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_FALSE(window->page()->form()->isVisible()) << said();
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral("· saved"))) << said();
    EXPECT_EQ(window->statusLine()->savedButton()->text(), QStringLiteral("saved"));
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u);
}

TEST_F(FullDisk, ACarriedHiveIsBackWhereItStood) {
    const core::MmPoint before = book.placeOf(QStringLiteral("A1"));
    dialogs.expectError = true;
    {
        const NoRoom full;
        drag(at("A1"), ground({0, 3000}));
    }
    EXPECT_TRUE(window->saying().startsWith(QStringLiteral("Not saved: the disk"))) << said();
    EXPECT_EQ(book.placeOf(QStringLiteral("A1")), before);
    const auto& scene = plan()->scene();
    EXPECT_EQ(scene.hives[scene.find(book.idOf(QStringLiteral("A1"))).value()].at, before);
    drag(at("A1"), ground({0, 3000}));
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral("· saved"))) << said();
}

TEST(FullDiskForReal, IsSaidInWords) {
    QTemporaryDir dir;
    const QByteArray disk = dir.path().toLocal8Bit();
    if (mount("tmpfs", disk.constData(), "tmpfs", 0, "size=2m") != 0) GTEST_SKIP() << "no right to mount a small disk";
    {
        const tests::BookOfTest book;
        tests::TestDialogs dialogs;
        const QString path = dir.filePath(QStringLiteral("test.yardwright"));
        ASSERT_TRUE(QFile::copy(book.path(), path));
        ui::window::MainWindow window(book.clock(), dialogs);
        ASSERT_TRUE(window.openBook(path));
        QFile filler(dir.filePath(QStringLiteral("filler")));
        ASSERT_TRUE(filler.open(QIODevice::WriteOnly | QIODevice::Unbuffered));
        while (filler.write(QByteArray(4096, 'x')) > 0) {
        }
        dialogs.expectError = true;
        core::Visit visit;
        visit.colony = book.idOf(QStringLiteral("A2"));
        visit.day = book.clock().day;
        visit.beesTop = core::Quarters{21};
        const auto log = [&] {
            return window.desk()->save(QStringLiteral("Log a visit"), [&visit](const core::edit::EditContext& c) {
                return core::edit::logVisit(c, visit);
            });
        };
        EXPECT_THROW(log(), core::Error);
        EXPECT_TRUE(window.saying().startsWith(QStringLiteral("Not saved: the disk is full")))
            << window.saying().toStdString();
        filler.remove();
        EXPECT_TRUE(log());
        EXPECT_TRUE(window.saying().endsWith(QStringLiteral("· saved"))) << window.saying().toStdString();
    }
    umount(disk.constData());
}

} // namespace
