#include "tests/ui/hand.h"
#include "tests/ui/open_window.h"
#include "ui/busy/panel.h"
#include "ui/exchange/columns_panel.h"
#include "ui/exchange/findings.h"
#include "ui/exchange/forms_bar.h"
#include "ui/exchange/import_window.h"
#include "ui/exchange/kept_bar.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QStringEncoder>
#include <QTableWidget>

namespace {

using ui::exchange::Findings;

const QString kGerman = QStringLiteral("Volk;Datum;Waben oben;Gewicht;Weisel;Notiz\r\n"
                                       "A1;2.8.2026;3,25;61,5;ja;läuft\r\n"
                                       "A2;14.8.2026;4;;nein;\r\n");

/// The window that reads files, opened by its keys on a file.
struct ReadingFiles : tests::OpenWindow {
    QTemporaryDir folder;
    std::unique_ptr<tests::Hand> hand;

    void SetUp() override {
        OpenWindow::SetUp();
        hand = std::make_unique<tests::Hand>(*window);
    }
    void TearDown() override { hand.reset(); }

    QString write(const QByteArray& bytes, const char* name = "scale.csv") const {
        QFile file(folder.filePath(QLatin1StringView(name)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(bytes), bytes.size());
        return file.fileName();
    }
    ui::exchange::ImportWindow* shown() const { return window->findChild<ui::exchange::ImportWindow*>(); }
    void read(const QString& path) {
        dialogs.csv = path;
        if (shown()) {
            hand->key(Qt::Key_O, Qt::ControlModifier);
        } else {
            QTest::keyClick(window.get(), Qt::Key_I, Qt::ControlModifier | Qt::AltModifier);
            ASSERT_NE(shown(), nullptr);
            ASSERT_TRUE(QTest::qWaitForWindowExposed(shown()));
            shown()->activateWindow();
        }
        settle();
    }
    /// What waits for the last key of a word has been done.
    void settle() const { QTest::qWait(200); }
    QComboBox* source(const char* ours) const { return shown()->columns()->sourceOf(QLatin1StringView(ours)); }
    QLineEdit* words(const char* ours) const { return shown()->columns()->wordsOf(QLatin1StringView(ours)); }
    /// By Tab and the arrows.
    void choose(QComboBox* box, const QString& what) {
        hand->tabTo(box);
        hand->key(Qt::Key_Home);
        for (int i = 0; i < box->count() && box->currentText() != what && box->currentData() != what; ++i)
            hand->key(Qt::Key_Down);
        EXPECT_TRUE(box->currentText() == what || box->currentData() == what) << what.toStdString();
    }
    std::string cell(int row, int column) const {
        const auto* model = shown()->findings()->rows()->model();
        return model->index(row, column).data().toString().toStdString();
    }
    std::string counted() const { return shown()->counted().toStdString(); }
    std::string saying() const { return shown()->said().toStdString(); }
    QByteArray bookBytes() const {
        QFile file(book.path());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }
};

QByteArray visits(int count) {
    QByteArray text = "colony,date,supers\n";
    for (int i = 0; i < count; ++i)
        text += QByteArray("A1,") + core::isoText(core::dayOf(2027, 1, 1) + i).toLatin1() + ",1\n";
    return text;
}

TEST_F(ReadingFiles, NumbersOfTwoKindsAreADoubt) {
    ui::exchange::ForeignDraft draft;
    ASSERT_EQ(draft.open(write("Volk;Menge;Gewicht\nA1;1.500;61,5\nA2;2;30,5\n"), {}), QString());
    EXPECT_TRUE(draft.doubtText().contains(QStringLiteral("points and commas"))) << draft.doubtText().toStdString();
    ASSERT_EQ(draft.open(write("Volk;Menge;Gewicht\nA1;1,5;61,5\n"), {}), QString());
    EXPECT_EQ(draft.doubtText().toStdString(), "");
}

TEST_F(ReadingFiles, AForeignFileComesInByKeysAlone) {
    QStringEncoder utf16(QStringConverter::Utf16LE, QStringConverter::Flag::WriteBom);
    read(write(utf16(kGerman)));
    EXPECT_EQ(shown()->forms()->encodings()->currentText(), "UTF-16 LE");
    EXPECT_EQ(shown()->forms()->separators()->currentText(), "semicolon");
    EXPECT_EQ(shown()->forms()->decimals()->currentText(), "decimal comma");
    EXPECT_EQ(shown()->forms()->days()->currentText(), "day, month, year");
    EXPECT_FALSE(shown()->importButton()->isEnabled()) << "nothing gives colony and date";
    EXPECT_EQ(cell(0, 4), "61,5") << "the file as it is, while nothing is chosen";
    choose(source("colony"), QStringLiteral("Volk"));
    choose(source("date"), QStringLiteral("Datum"));
    choose(source("bees_top"), QStringLiteral("Waben oben"));
    choose(source("queen"), QStringLiteral("Weisel"));
    EXPECT_EQ(words("queen")->text(), "ja = ; nein = ") << "words of the file that are not ours";
    settle();
    EXPECT_EQ(counted(), "Nothing comes in yet: 2 faults");
    EXPECT_EQ(cell(0, 4), "! ja");
    hand->tabTo(words("queen"));
    hand->key(Qt::Key_A, Qt::ControlModifier);
    hand->type(QStringLiteral("ja=eggs; nein=none"));
    choose(source("gross_kg"), QStringLiteral("Gewicht"));
    choose(shown()->columns()->unitOf(QStringLiteral("gross_kg")), QStringLiteral("lb"));
    choose(source("by"), QStringLiteral("one value for all rows"));
    hand->tabTo(words("by"));
    hand->type(QStringLiteral("Me"));
    choose(source("note"), QStringLiteral("Notiz"));
    settle();
    EXPECT_EQ(counted(), "Would come in: visits: 2 new");
    EXPECT_EQ(cell(0, 2), "2026-08-02");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(counted(), "Came in: visits: 2 new");
    EXPECT_EQ(saying(), "Imported visits 2 · saved. Ctrl+Z takes it back.");
    const auto seen = book.visitsOf(QStringLiteral("A1"));
    ASSERT_EQ(seen.size(), 2U);
    EXPECT_EQ(seen[1].day, core::dayOf(2026, 8, 2));
    EXPECT_EQ(seen[1].beesTop, core::Quarters{13});
    // 61.5 lb × 0.45359237 = 27.90 kg. Source: international pound of 1959, exact by definition.
    EXPECT_EQ(seen[1].gross, core::Decagrams{2790});
    EXPECT_EQ(seen[1].queen, core::QueenSeen::Eggs);
    EXPECT_EQ(seen[1].by, "Me");
    EXPECT_EQ(seen[1].note, "läuft");
    EXPECT_FALSE(shown()->importButton()->isEnabled()) << "it is in";
    hand->key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A1")).size(), 1U);
}

TEST_F(ReadingFiles, AWayToReadIsKeptAndOfferedForTheSameHeader) {
    read(write("Hive,Day,Lid\nA1,2026-08-02,1\n"));
    choose(source("colony"), QStringLiteral("Hive"));
    choose(source("date"), QStringLiteral("Day"));
    hand->tabTo(shown()->kept()->name());
    hand->type(QStringLiteral("Scale app"));
    hand->key(Qt::Key_Return);
    EXPECT_EQ(saying(), "Kept as “Scale app”; it is offered when a file with these columns comes again.");
    read(write("Lid,Day,Hive\n2,2026-08-03,A2\n", "next.csv"));
    EXPECT_EQ(saying(), "Such a file came before: it is read as “Scale app”.");
    EXPECT_EQ(source("colony")->currentData().toString(), "Hive");
    EXPECT_EQ(counted(), "Would come in: visits: 1 new");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2U);
    read(write("Other,Day\nx,2026-08-03\n", "other.csv"));
    EXPECT_EQ(shown()->kept()->choice()->currentIndex(), 0);
    choose(shown()->kept()->choice(), QStringLiteral("Scale app"));
    settle();
    EXPECT_EQ(counted(), "Nothing comes in yet: 1 fault") << "the column Hive is not in it";
    hand->tabTo(shown()->kept()->takeBackButton());
    hand->key(Qt::Key_Space);
    EXPECT_EQ(saying(), "“Scale app” is no longer kept.");
    EXPECT_TRUE(window->desk()->session().fileMappings().empty());
}

TEST_F(ReadingFiles, RowsThatSayOtherwiseAreShownSideBySideAndLeftOutOnlyWhereAsked) {
    read(write("colony,date,bees_top,queen,brood_frames,brood_checked\n"
               "A1,2026-09-14,3,eggs,4,4\n"
               "A2,2026-09-14,9,eggs,4,4\n"
               "A3,2026-08-02,3,eggs,4,4\n"));
    EXPECT_EQ(counted(),
              "Nothing comes in yet: 1 fault · visits: 1 new, 1 passed over · 1 say otherwise than the book");
    EXPECT_FALSE(shown()->importButton()->isEnabled());
    const auto* both = shown()->findings()->differences();
    ASSERT_EQ(both->rowCount(), 1);
    QStringList cells;
    for (int i = 0; i < both->columnCount(); ++i) cells << both->item(0, i)->text();
    EXPECT_EQ(cells, QStringList({"3", "A2 2026-09-14", "bees_top", "3.5", "9"}));
    hand->tabTo(shown()->leaveOut());
    hand->key(Qt::Key_Space);
    settle();
    EXPECT_EQ(counted(), "Would come in: visits: 1 new, 1 passed over · 1 say otherwise than the book");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A3")).size(), 2U);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).front().beesTop, core::Quarters{14}) << "as the book had it";
}

TEST_F(ReadingFiles, AFaultLeadsToItsColumn) {
    read(write("Hive;Date;Bees top\nA1;2026-08-02;3.1\n"));
    choose(source("colony"), QStringLiteral("Hive"));
    settle();
    auto* faults = shown()->findings()->faults();
    ASSERT_EQ(faults->rowCount(), 1);
    EXPECT_EQ(faults->item(0, 1)->text(), "Bees top (bees_top)");
    shown()->findings()->showPage(Findings::kFaults);
    hand->tabTo(faults);
    hand->key(Qt::Key_Down);
    hand->key(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), source("bees_top"));
}

TEST_F(ReadingFiles, AStoppedImportLeavesNothing) {
    read(write(visits(5000)));
    EXPECT_EQ(counted(), "Would come in: visits: 5000 new");
    const QByteArray before = bookBytes();
    const auto lines = window->desk()->session().history(10).size();
    QMetaObject::invokeMethod(
        shown(),
        [this] {
            EXPECT_TRUE(shown()->stopButton()->isVisible());
            EXPECT_TRUE(shown()->stopButton()->hasFocus());
            QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier); // dropped
            QTest::mouseClick(shown()->chooseButton(), Qt::LeftButton);
            EXPECT_FALSE(shown()->close());
            QTest::keyClick(shown()->stopButton(), Qt::Key_Escape);
        },
        Qt::QueuedConnection);
    shown()->importButton()->click();
    EXPECT_EQ(saying(), "Stopped: nothing was written.");
    EXPECT_EQ(bookBytes(), before);
    EXPECT_EQ(window->desk()->session().history(10).size(), lines);
    EXPECT_TRUE(shown()->isVisible());
    EXPECT_FALSE(shown()->stopButton()->isVisible());
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(counted(), "Came in: visits: 5000 new");
    EXPECT_EQ(window->desk()->session().check(), QStringList());
}

TEST_F(ReadingFiles, AFolderThatIsStoppedLeavesNothing) {
    write(visits(3000), "visits.csv");
    const QByteArray before = bookBytes();
    QMetaObject::invokeMethod(
        window.get(),
        [this] {
            auto* panel = window->findChild<ui::busy::Panel*>();
            ASSERT_NE(panel, nullptr);
            QTest::mouseClick(panel->stopButton(), Qt::LeftButton);
        },
        Qt::QueuedConnection);
    EXPECT_FALSE(window->importFolder(folder.path()));
    EXPECT_EQ(said(), "Stopped: nothing was written.");
    EXPECT_EQ(bookBytes(), before);
    EXPECT_EQ(window->findChild<ui::busy::Panel*>(), nullptr);
    EXPECT_TRUE(window->importFolder(folder.path()));
    EXPECT_EQ(book.visitsOf(QStringLiteral("A1")).size(), 100U) << "as many as are asked for";
    EXPECT_EQ(said().substr(0, 16), "visits: 3000 new");
}

TEST_F(ReadingFiles, ALargeFileIsLookedThroughWhenAsked) {
    QByteArray large = "colony,date,note\n";
    for (int i = 0; i < 900; ++i)
        large += "A1," + core::isoText(core::dayOf(2027, 1, 1) + i).toLatin1() + ',' + QByteArray(2500, 'x') + '\n';
    ASSERT_GT(large.size(), ui::exchange::ImportWindow::kAtOnceBytes);
    read(write(large));
    EXPECT_TRUE(QString::fromStdString(counted()).startsWith("A large file:")) << counted();
    EXPECT_EQ(cell(0, 1), "A1");
    hand->key(Qt::Key_F5);
    EXPECT_EQ(counted(), "Would come in: visits: 900 new");
}

TEST_F(ReadingFiles, FilesThatAreNoTablesAreSaidSo) {
    read(write(""));
    EXPECT_TRUE(shown()->said().endsWith("is empty; choose a file with a row of names and rows below it."));
    EXPECT_FALSE(shown()->importButton()->isEnabled());
    QByteArray binary;
    for (int i = 0; i < 5000; ++i) binary += static_cast<char>(i * 37 % 256);
    read(write(binary));
    EXPECT_TRUE(shown()->said().endsWith("is no table as text; save it as CSV in the program that made it."));
    read(folder.filePath(QStringLiteral("none.csv")));
    EXPECT_TRUE(shown()->said().contains("cannot be opened")) << saying();
    QFile large(folder.filePath(QStringLiteral("large.csv")));
    ASSERT_TRUE(large.open(QIODevice::WriteOnly) && large.resize(qint64(300) << 20));
    read(large.fileName());
    EXPECT_TRUE(shown()->said().contains("is larger than 256 MiB")) << saying();
    read(write("colony,date\n"));
    EXPECT_EQ(counted(), "Would come in: no rows");
    read(write("Colony\tDate\rA1\t2026-08-02\rA2\t2026-08-02\r"));
    EXPECT_EQ(counted(), "Would come in: visits: 2 new") << "lines ended by CR alone, tabs";
}

TEST_F(ReadingFiles, AnEncodingThatTheFileIsNotInIsRefused) {
    read(write("Colony;Date;Note\nA1;2.8.2026;l\xE4uft\n"));
    QComboBox* encodings = shown()->forms()->encodings();
    EXPECT_EQ(encodings->currentText(), "Windows-1252");
    hand->tabTo(encodings);
    hand->key(Qt::Key_Home);
    EXPECT_EQ(encodings->currentText(), "Windows-1252");
    EXPECT_EQ(saying(), "The file is not text in UTF-8; it stays Windows-1252.");
}

TEST_F(ReadingFiles, EverythingHasANameAndIsReachedByTab) {
    read(write("colony,date,queen\nA1,2026-08-02,ja\n"));
    for (QWidget* w : shown()->findChildren<QWidget*>()) {
        if (w->focusPolicy() == Qt::NoFocus || !w->isVisible() || !w->isEnabled() || w->focusProxy()) continue;
        if (qobject_cast<QScrollBar*>(w)) continue;
        const bool named = !w->accessibleName().isEmpty() || qobject_cast<QAbstractButton*>(w);
        EXPECT_TRUE(named) << w->metaObject()->className() << " " << w->objectName().toStdString();
        if (w->focusPolicy() & Qt::TabFocus) hand->tabTo(w);
    }
}

} // namespace
