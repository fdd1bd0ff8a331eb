#include "tests/edit/edit_fixture.h"
#include "tests/support/small_files.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"

#include <QFileInfo>

#include <sys/mount.h>

namespace tests::edit {

namespace {

ChangeSet manyYards(const EditContext& c) {
    ChangeSet change{QStringLiteral("Imported yards"), {}, {}, {}, {}};
    change.bulk.push_back({Table::Yard, c.nextId(Table::Yard), 20'000, [](qint64 i) {
                               Yard yard;
                               yard.name = QStringLiteral("yard %1").arg(i);
                               yard.note = QString(60, u'x');
                               return toRow(yard);
                           }});
    return change;
}

class FullDisk : public EditTest {};

TEST_F(FullDisk, LeavesTheBookAsItWasAndUsable) {
    newYard(QStringLiteral("North"));
    const auto before = rowsText(path());
    {
        const SmallFiles small(static_cast<rlim_t>(QFileInfo(path()).size() + 100'000));
        const Thrown thrown = thrownBy([&] { session->apply(manyYards); });
        EXPECT_EQ(thrown.kind, Error::Kind::Book);
        EXPECT_FALSE(thrown.message.empty());
    }
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(session->undoText(), "Added yard North");
    EXPECT_TRUE(session->apply(manyYards));
    EXPECT_EQ(session->check(), QStringList());
}

TEST(FullDiskForReal, LeavesTheBookAsItWasAndUsable) {
    QTemporaryDir dir;
    const QByteArray at = dir.path().toLocal8Bit();
    if (mount("tmpfs", at.constData(), "tmpfs", 0, "size=1m") != 0) GTEST_SKIP() << "no right to mount a small disk";
    {
        const FixedClock clock;
        const QString path = dir.filePath(QStringLiteral("test.yardwright"));
        const auto session = Session::create(path, clock);
        Yard yard;
        yard.name = QStringLiteral("North");
        session->apply([&](const EditContext& c) { return newYard(c, yard); });
        const auto before = rowsText(path);
        EXPECT_EQ(thrownBy([&] { session->apply(manyYards); }).kind, Error::Kind::Book);
        EXPECT_EQ(rowsText(path), before);
        yard.name = QStringLiteral("South");
        EXPECT_TRUE(session->apply([&](const EditContext& c) { return newYard(c, yard); }));
        EXPECT_EQ(session->check(), QStringList());
    }
    umount(at.constData());
}

} // namespace

} // namespace tests::edit
