#include "core/edit/merge_day.h"
#include "tests/ui/picking.h"
#include "ui/board/row_list.h"
#include "ui/card/colony_card.h"
#include "ui/health/contacts_page.h"
#include "ui/health/holds_page.h"

#include <QFile>
#include <QPushButton>
#include <QTableView>

namespace {

using namespace core;

/// The place Health, in the real window.
struct HealthPlace : tests::Picking {
    void SetUp() override {
        Picking::SetUp();
        write([&](const edit::EditContext& c) {
            Transfer t;
            t.day = dayOf(2026, 6, 1);
            t.from = book.idOf("A1");
            t.to = book.idOf("A4");
            t.what = TransferKind::Brood;
            return edit::logTransfer(c, t);
        });
        write([&](const edit::EditContext& c) {
            Transfer t;
            t.day = dayOf(2026, 7, 1);
            t.from = book.idOf("A4");
            t.to = idOf("B1");
            t.what = TransferKind::Frames;
            return edit::logTransfer(c, t);
        });
    }
    ColonyId idOf(const char* label) const {
        const auto& s = window->desk()->reading().snapshot;
        return s.colony(*s.livingNamed(QString::fromLatin1(label))).id;
    }
    void open() const { QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier); }
    void sign(const char* label) const {
        write([&](const edit::EditContext& c) {
            Visit v;
            v.colony = book.idOf(QLatin1StringView(label));
            v.day = book.clock().day;
            v.signs.add(Sign::Afb);
            return edit::logVisit(c, v);
        });
    }
    ui::health::HoldsPage* held() const { return window->findChild<ui::health::HoldsPage*>(); }
    ui::health::ContactsPage* contacts() const { return window->findChild<ui::health::ContactsPage*>(); }
    /// "Kiln Field: 1 of 6 hives|A3: brood not checked"
    std::string rows() const {
        QStringList titles;
        const auto& model = held()->list()->rows();
        for (int i = 0; i < model.rowCount(); ++i) titles << model.at(i).title;
        return titles.join(u'|').toStdString();
    }
    std::string list() const {
        QStringList lines;
        const auto* model = contacts()->table()->model();
        for (int r = 0; r < model->rowCount(); ++r) {
            QStringList cells;
            for (int c = 0; c < model->columnCount(); ++c) cells << model->index(r, c).data().toString();
            lines << cells.join(u' ');
        }
        return lines.join(u'|').toStdString();
    }
};

TEST_F(HealthPlace, NamesThoseHeldByTheGravestKindFirst) {
    open();
    ASSERT_TRUE(held()->isVisible());
    EXPECT_TRUE(held()->list()->hasFocus());
    EXPECT_EQ(rows(), "Kiln Field: 1 of 6 hives|A3: brood not checked");
    EXPECT_EQ(held()->summary().toStdString(), "1 of 6 hives are held on 15 Sep 2026.");
    EXPECT_TRUE(held()->alarm().isEmpty());
    sign("A1");
    EXPECT_EQ(rows().substr(0, 72), "Kiln Field: 6 of 6 hives|A1: American foulbrood suspected|A2: stood in a");
    EXPECT_TRUE(held()->alarm().startsWith(QStringLiteral("American foulbrood, suspected or confirmed: A1 in Kiln")))
        << held()->alarm().toStdString();
    EXPECT_TRUE(held()->alarm().contains(QStringLiteral("The authority decides"))) << "defers";
}

TEST_F(HealthPlace, LooksAtAllYardsByAKey) {
    open();
    QTest::keyClick(held()->list(), Qt::Key_A);
    EXPECT_TRUE(QString::fromStdString(rows()).contains(QStringLiteral("Mill Lane: 2 of 2 hives"))) << rows();
    QTest::keyClick(held()->list(), Qt::Key_A);
    EXPECT_FALSE(QString::fromStdString(rows()).contains(QStringLiteral("Mill Lane")));
}

TEST_F(HealthPlace, SaysWhichMergeDayNamesWhatMayNotBeTouched) {
    edit::MergeAsked asked;
    asked.day.yard = *window->desk()->yard();
    asked.day.day = book.clock().day + 5;
    MergeChoice pin;
    pin.colony = book.idOf("A1");
    pin.other = book.idOf("A2");
    asked.choices = {pin};
    write([&](const edit::EditContext& c) { return edit::saveMergeDay(c, asked); });
    open();
    EXPECT_TRUE(held()->broken().isEmpty());
    sign("A1");
    EXPECT_EQ(held()->broken().toStdString(),
              "The merge day of Kiln Field on 20 Sep 2026 names what may not be touched: A1, A2. Plan it anew, and put "
              "no old worksheet into the field.");
}

TEST_F(HealthPlace, TracesTheChosenHiveByEnter) {
    sign("A1");
    open();
    QTest::keyClick(held()->list(), Qt::Key_Home);
    QTest::keyClick(held()->list(), Qt::Key_Down);
    EXPECT_EQ(chosen(), "A1");
    QTest::keyClick(held()->list(), Qt::Key_Return);
    ASSERT_TRUE(contacts()->isVisible());
    EXPECT_TRUE(contacts()->table()->hasFocus());
    EXPECT_EQ(list().substr(0, 67), "2026-06-01 brood A1 A4 1|2026-07-01 frames A4 B1 2|2026-05-10 to 20");
    EXPECT_EQ(contacts()->summary().toStdString(),
              "2 colonies are linked by gifts that it passed on from 2025-09-15 to 2026-09-15; 5 stood in a yard with "
              "it.");
    key(Qt::Key_Down);
    EXPECT_EQ(contacts()->chain().toStdString(),
              "A1 to B1: A4 received brood from A1 on 2026-06-01; B1 received frames from A4 on 2026-07-01.");
    key(Qt::Key_Return);
    EXPECT_EQ(chosen(), "B1") << "its card";
    EXPECT_TRUE(window->page()->card()->isVisible());
}

TEST_F(HealthPlace, LooksBackAndWithinDaysTyped) {
    open();
    contacts();
    QTest::keyClick(held(), Qt::Key_PageDown, Qt::ControlModifier);
    ASSERT_TRUE(contacts()->isVisible());
    auto* colony = contacts()->colonyField();
    colony->setFocus();
    colony->selectAll();
    type("b1");
    key(Qt::Key_Return);
    EXPECT_EQ(list().substr(0, 14), "2026-05-10 to ") << "it passed nothing on: B2 stood with it";
    auto* way = contacts()->findChild<QWidget*>(QStringLiteral("contactWay"));
    QTest::keyClick(way, Qt::Key_Down);
    EXPECT_EQ(list().substr(0, 51), "2026-07-01 frames A4 B1 1|2026-06-01 brood A1 A4 2|");
    auto* from = contacts()->findChild<QLineEdit*>(QStringLiteral("contactFrom"));
    from->setFocus();
    from->selectAll();
    type("2026-06-15");
    key(Qt::Key_Return);
    EXPECT_EQ(list().substr(0, 26), "2026-07-01 frames A4 B1 1|");
    from->selectAll();
    type("some day");
    key(Qt::Key_Return);
    EXPECT_EQ(contacts()->summary().toStdString(), "From and until: expected a day, such as 15 Sep 2026.");
    EXPECT_EQ(list(), "");
    colony->setFocus();
    colony->selectAll();
    type("Q9");
    key(Qt::Key_Tab);
    EXPECT_EQ(contacts()->summary().toStdString(), "No colony is called Q9 up to today.");
}

TEST_F(HealthPlace, SupposesAPositiveAndWritesNothing) {
    open();
    contacts()->trace(book.idOf("A1"));
    QTest::keyClick(held(), Qt::Key_PageDown, Qt::ControlModifier);
    const auto before = session().history(1).front().seq;
    QTest::mouseClick(contacts()->whatIfButton(), Qt::LeftButton);
    EXPECT_TRUE(contacts()->supposed().startsWith(
        QStringLiteral("Supposed only, nothing is written: were A1 positive today, 7 colonies would be held")))
        << contacts()->supposed().toStdString();
    EXPECT_TRUE(contacts()->supposed().contains(QStringLiteral("Mill Lane: B1"))) << "it received of A1's";
    EXPECT_EQ(session().history(1).front().seq, before);
    EXPECT_EQ(window->desk()->reading().holdsOf(*window->desk()->reading().find(book.idOf("A1"))).size(), 0u);
}

TEST_F(HealthPlace, WritesTheContactsAsPages) {
    open();
    contacts()->trace(book.idOf("A1"));
    QTest::keyClick(held(), Qt::Key_PageDown, Qt::ControlModifier);
    QTemporaryDir folder;
    dialogs.file = folder.filePath(QStringLiteral("contacts.pdf"));
    QTest::mouseClick(contacts()->pdfButton(), Qt::LeftButton);
    EXPECT_EQ(dialogs.suggested.toStdString(), "Contacts of A1.pdf");
    QFile pdf(*dialogs.file);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_EQ(pdf.read(5), "%PDF-");
}

} // namespace
