#include "tests/reliability/figures.h"
#include "tests/reliability/troubles.h"
#include "tests/support/cut_vfs.h"
#include "tests/support/no_rights.h"
#include "tests/support/small_files.h"
#include "tests/ui/recording.h"

#include "core/edit/edits.h"
#include "core/edit/merge_day.h"
#include "ui/backup/keeping.h"
#include "ui/backup/where.h"
#include "ui/bulk/bulk.h"
#include "ui/close/close_page.h"
#include "ui/merge/merge_place.h"
#include "ui/settings/setting_line.h"
#include "ui/settings/settings_dialog.h"
#include "ui/settings/settings_page.h"
#include "ui/visit/visit_form.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/read_banner.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QListView>

#include <functional>
#include <sys/stat.h>

// The disk fails under the real window at each call in turn, while people save by keys: one sentence is shown, what was
// typed stays typed, nothing is half in the book, and the same key saves once the trouble is over.

namespace tests::reliability {

namespace {

using cut::CutVfs;

QString notSaved(const char* sentence) {
    const QString text = QString::fromLatin1(sentence);
    return QStringLiteral("Not saved: ") + text.left(1).toLower() + text.mid(1);
}

class WindowFault : public Recording {
protected:
    void SetUp() override {
        vfs = std::make_unique<CutVfs>(QFileInfo(book.path()).absolutePath().toStdString());
        Recording::SetUp();
        choose("A2");
    }
    void TearDown() override {
        vfs->mend();
        window.reset();
        vfs.reset();
    }
    core::edit::Session& session() const { return window->desk()->session(); }
    qint64 lines() const { return session().history(1).front().seq; }
    void chord(Qt::Key letter, Qt::KeyboardModifiers with = Qt::ControlModifier) const {
        QTest::keyClick(window.get(), letter, with);
    }

    /// What people do, by keys.
    struct Work {
        std::function<void()> begin;         ///< types it
        std::function<void()> press;         ///< the key that saves
        std::function<std::string()> typed;  ///< what stands typed, to stay so
        std::function<void()> atEnd = [] {}; ///< makes room for the next
    };
    /// Each call of that kind fails until it is mended, until the work meets none any more.
    void troubleAtEach(const Trouble& trouble, int stride, const Work& work);
    void expectOneSentence(const Trouble& trouble) const;
    void troubles(int stride, const Work& work) {
        for (const Trouble& trouble : kTroubles) {
            troubleAtEach(trouble, longRun() ? 1 : stride, work);
            if (HasFailure()) return;
        }
        EXPECT_EQ(session().check(), QStringList());
        EXPECT_GT(faults, 0);
    }

    std::unique_ptr<CutVfs> vfs;
    qint64 faults = 0;
    qint64 losses = 0;
    qint32 carried = 3'000; ///< where to, mm
};

/// In the status line and the form, or by itself; before anything was to be written it may be that of reading.
void WindowFault::expectOneSentence(const Trouble& trouble) const {
    QStringList expected{QString::fromLatin1(trouble.sentence)};
    if (trouble.op == Op::Read && trouble.code == SQLITE_IOERR_READ) expected << kNotRead;
    for (const QString& error : dialogs.errors) EXPECT_TRUE(expected.contains(error)) << error.toStdString();
    if (!dialogs.errors.isEmpty()) return;
    const bool inLine = said() == notSaved(trouble.sentence).toStdString();
    EXPECT_TRUE(inLine || (trouble.op == Op::Read && expected.contains(window->saying()))) << said();
}

void WindowFault::troubleAtEach(const Trouble& trouble, int stride, const Work& work) {
    for (int at = 1;; at += stride) {
        SCOPED_TRACE(std::string(trouble.name) + ", at " + std::to_string(at));
        work.begin();
        const qint64 before = lines();
        const std::string typed = work.typed();
        dialogs.errors.clear();
        dialogs.expectError = true;
        vfs->fail({trouble.op, at, trouble.code, true});
        work.press();
        const bool met = vfs->failed();
        vfs->mend();
        if (!met) {
            EXPECT_EQ(lines(), before + 1) << said();
            EXPECT_EQ(dialogs.errors, QStringList());
            work.atEnd();
            return;
        }
        ++faults;
        QCoreApplication::processEvents(); // the window rests
        window->desk()->follow();          // as it does by itself every second or so
        EXPECT_LE(dialogs.errors.size(), 1) << "said once: " << dialogs.errors.join(u'|').toStdString();
        if (lines() == before) {
            expectOneSentence(trouble);
            EXPECT_EQ(work.typed(), typed) << "what was typed";
            losses += work.typed() != typed;
            work.press();
        }
        EXPECT_EQ(lines(), before + 1) << "once the trouble is over: " << said();
        work.atEnd();
        if (HasFailure()) return;
    }
}

TEST_F(WindowFault, AVisitStaysTypedAndTheSameKeySavesIt) {
    int n = 0;
    Work visit;
    visit.begin = [&] {
        chord(Qt::Key_L);
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("5.%1").arg(++n % 2 ? 25 : 5));
    };
    visit.press = [this] { QTest::keyClick(window->page()->form(), Qt::Key_Return); };
    visit.typed = [this] {
        const auto* form = window->page()->form();
        return form->isVisible() ? form->draft()[ui::visit::Field::BeesTop].toStdString() : "closed";
    };
    visit.atEnd = [this] { chord(Qt::Key_Z); };
    troubles(11, visit);
    figure("Disk that fails under the window", "faults met by a visit", faults, Sum::Faults);
    figure("Disk that fails under the window", "visits typed and lost", losses, Sum::Losses);
}

TEST_F(WindowFault, AnUndoIsDoneByTheSameKeyOnceTheTroubleIsOver) {
    Work undo;
    undo.begin = [this] {
        session().apply([this](const core::edit::EditContext& c) {
            return core::edit::carryHive(c, book.idOf(QStringLiteral("A1")), {0, 4000}, book.clock().day);
        });
    };
    undo.press = [this] { chord(Qt::Key_Z); };
    undo.typed = [] { return std::string(); };
    troubles(17, undo);
    figure("Disk that fails under the window", "faults met by an undo", faults, Sum::Faults);
}

TEST_F(WindowFault, SeveralVisitsChangedTogetherStayTyped) {
    Work bulk;
    bulk.begin = [this] {
        std::vector<core::VisitId> visits;
        for (const char* label : {"A1", "A2", "A3", "A4", "A5", "A6"})
            visits.push_back(session().visitsOf(book.idOf(QLatin1StringView(label)), 1).front().id);
        ASSERT_TRUE(ui::bulk::changeVisits(*window->desk(), visits, [this](std::unique_ptr<ui::form::Form> form) {
            return window->page()->openForm(std::move(form)) != nullptr;
        }));
        fill("above", "3.25");
    };
    bulk.press = [this] { QTest::keyClick(panel(), Qt::Key_Return); };
    bulk.typed = [this] {
        return formShown() ? qobject_cast<QLineEdit*>(field("above"))->text().toStdString() : "closed";
    };
    bulk.atEnd = [this] { chord(Qt::Key_Z); };
    troubles(25, bulk);
    figure("Disk that fails under the window", "faults met by a change of several visits", faults, Sum::Faults);
}

TEST_F(WindowFault, ASettingStaysTyped) {
    chord(Qt::Key_Comma);
    auto* dialog = window->findChild<ui::settings::SettingsDialog*>();
    ASSERT_NE(dialog, nullptr);
    auto* edit = dialog->settings()->line(QStringLiteral("strength.max_age_days"))->findChild<QLineEdit*>();
    ASSERT_NE(edit, nullptr);
    Work setting;
    int n = 0;
    setting.begin = [&] {
        edit->selectAll();
        QTest::keyClicks(edit, ++n % 2 ? QStringLiteral("20") : QStringLiteral("25"));
    };
    setting.press = [&] { QTest::keyClick(edit, Qt::Key_Return); };
    setting.typed = [&] { return edit->text().toStdString(); };
    troubles(17, setting);
    figure("Disk that fails under the window", "faults met by a setting", faults, Sum::Faults);
}

TEST_F(WindowFault, AnImportIsAllOrNothing) {
    QTemporaryDir folder;
    Work import;
    int n = 0;
    import.begin = [&] { QFile file(folder.filePath(QStringLiteral("yards.csv")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("yard\nField " + QByteArray::number(++n) + "\n");
    dialogs.folder = folder.path();
};
import.press = [this] { window->commands()->importCsv->trigger();
}; // namespace
import.typed = [] { return std::string();
}; // namespace tests::reliability
troubles(17, import);
figure("Disk that fails under the window", "faults met by an import", faults, Sum::Faults);
}

TEST_F(WindowFault, AMergeDayStaysNotedUntilItIsWritten) {
    window->setPlace(ui::window::Place::MergeDay);
    window->page()->merge()->setStep(ui::merge::Step::WriteBack);
    auto* page = window->findChild<ui::close::ClosePage*>();
    ASSERT_NE(page, nullptr);
    Work close;
    close.begin = [&] {
        page->list()->setCurrentIndex(page->list()->model()->index(0, 0));
        page->list()->setFocus();
        QTest::keyClick(page->list(), Qt::Key_D);
    };
    close.press = [&] { QTest::keyClick(page->list(), Qt::Key_W); };
    close.typed = [&] { return std::to_string(page->work().drafted().size()); };
    close.atEnd = [this] { chord(Qt::Key_Z); };
    troubles(33, close);
    figure("Disk that fails under the window", "faults met by a merge day written back", faults, Sum::Faults);
}

// The edit is in the book, and then nothing can be read: that is said, not that it is lost; and shown once it can be.
TEST_F(WindowFault, WhatIsSavedAndCannotBeReadAgainIsSaidAndShownLater) {
    dialogs.expectError = true;
    vfs->setBefore([this](Op op) {
        if (op != Op::Delete) return;
        vfs->takeOut(); // with the journal's end the edit is in the book, and nothing that is open answers any more
        vfs->fail({Op::Read, 1, SQLITE_IOERR_READ, true});
    });
    chord(Qt::Key_L);
    type("5.25");
    key(Qt::Key_Return);
    vfs->setBefore({});
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_EQ(dialogs.errors.front(),
              QStringLiteral("The edit is in the book, but the book cannot be read again at this moment: what is shown "
                             "is as it was before. It is read as soon as it can be."));
    vfs->mend();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2U);
    window->desk()->follow();
    EXPECT_EQ(said(), "The book is read again: what is shown is as it is now.");
    chord(Qt::Key_Z);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1U);
}

// A page that reads once it is turned to, while the disk fails: one sentence, and the page shows all once it reads.
TEST_F(WindowFault, APageThatCannotReadSaysSoOnceAndShowsAllLater) {
    using ui::window::Place;
    for (const Place place : {Place::Colonies, Place::Visits, Place::Health, Place::Season}) {
        for (int at = 1;; at += longRun() ? 1 : 17) {
            SCOPED_TRACE(std::to_string(static_cast<int>(place)) + ", at " + std::to_string(at));
            window->setPlace(Place::YardPlan);
            session().apply([this](const core::edit::EditContext& c) { // all pages are to read anew
                return core::edit::carryHive(c, book.idOf(QStringLiteral("A1")), {0, ++carried}, book.clock().day);
            });
            dialogs.errors.clear();
            dialogs.expectError = true;
            vfs->fail({Op::Read, at, SQLITE_IOERR_READ, true});
            window->setPlace(place);
            const bool met = vfs->failed();
            vfs->mend();
            QCoreApplication::processEvents();
            if (!met) break;
            ++faults;
            EXPECT_LE(dialogs.errors.size(), 1) << dialogs.errors.join(u'|').toStdString();
            for (const QString& error : dialogs.errors)
                EXPECT_TRUE(error == QLatin1String(kNotRead) || error == QLatin1String(kFailed)) << error.toStdString();
            window->setPlace(Place::YardPlan);
            window->setPlace(place);
            EXPECT_EQ(window->page()->place(), place) << said();
            EXPECT_LE(dialogs.errors.size(), 1);
            if (HasFailure()) return;
        }
    }
    EXPECT_EQ(session().check(), QStringList());
    figure("Disk that fails under the window", "faults met by pages that read", faults, Sum::Faults);
}

// Each reading fails in turn, while a book is opened: one sentence, nothing written; afterwards it opens.
TEST_F(WindowFault, OfABookThatCannotBeReadIsSaidOnceAndItIsNotTouched) {
    window.reset();
    const auto bytes = [this] {
        QFile file(book.path());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    const QByteArray before = bytes();
    dialogs.expectError = true;
    for (int at = 1;; at += longRun() ? 1 : 11) {
        SCOPED_TRACE(at);
        ui::window::MainWindow fresh(book.clock(), dialogs);
        dialogs.errors.clear();
        QObject::connect(&fresh, &ui::window::MainWindow::bookDamaged,
                         [this](const QString&, const QString& why) { dialogs.errors << why; });
        vfs->fail({Op::Read, at, SQLITE_IOERR_READ, true});
        const bool opened = fresh.openBook(book.path(), false);
        const bool met = vfs->failed();
        vfs->mend();
        if (!met) break;
        ++faults;
        if (!opened) {
            ASSERT_EQ(dialogs.errors.size(), 1);
            EXPECT_TRUE(dialogs.errors.front().endsWith(kNotRead) ||
                        dialogs.errors.front().endsWith(QLatin1String(kFailed)))
                << dialogs.errors.front().toStdString();
        }
        EXPECT_EQ(bytes(), before);
        if (HasFailure()) return;
    }
    EXPECT_GT(faults, 3);
    figure("Disk that fails under the window", "faults met while a book is opened", faults, Sum::Faults);
}

/// A folder that vanishes while the window is open, as a stick that is pulled.
struct Pulled : Recording {
    QString home() const { return QFileInfo(book.path()).absolutePath(); }
    QString away() const { return home() + QStringLiteral(".pulled"); }
};

TEST_F(Pulled, EachSaveSaysSoAndOnceItIsBackTheSameKeySaves) {
    choose("A2");
    dialogs.expectError = true;
    key(Qt::Key_L, Qt::ControlModifier);
    type("5");
    ASSERT_TRUE(QDir().rename(home(), away()));
    type(".25");
    EXPECT_TRUE(said().starts_with("Not saved: what is typed cannot be kept in ")) << said();
    EXPECT_TRUE(said().ends_with(": its folder is not there. Save the visits before the program is closed.")) << said();
    for (int i = 0; i < 2; ++i) {
        key(Qt::Key_Return);
        EXPECT_EQ(said(), notSaved(kMoved).toStdString());
    }
    EXPECT_FALSE(QDir(home()).exists());
    EXPECT_EQ(window->page()->form()->draft()[ui::visit::Field::BeesTop].toStdString(), "5.25");
    ASSERT_TRUE(QDir().rename(away(), home()));
    key(Qt::Key_Return);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2U) << said();
    EXPECT_FALSE(window->page()->form()->isVisible());
    EXPECT_EQ(dialogs.errors, QStringList()) << "in the form and the status line alone";
}

// The book on a disk, or in a folder, that may only be read.
TEST(ReadOnlyDisk, TheBookOpensForReadingAndSaysWhy) {
    BookOfTest book;
    TestDialogs dialogs;
    const QByteArray file = QFile::encodeName(book.path());
    const QByteArray folder = QFile::encodeName(QFileInfo(book.path()).absolutePath());
    ASSERT_EQ(chmod(file.constData(), 0444), 0);
    ASSERT_EQ(chmod(folder.constData(), 0555), 0);
    ui::window::MainWindow window(book.clock(), dialogs);
    const QString why =
        QStringLiteral("The book %1 cannot be written: the file or its folder is read-only. Here it can "
                       "only be read.")
            .arg(book.path());
    {
        const NoRights nobody;
        ASSERT_TRUE(window.openBook(book.path(), false));
        EXPECT_EQ(window.banner()->shown(), why);
        EXPECT_EQ(window.desk()->reading().snapshot.colonies.size(), 6U) << "all of it is shown";
        window.desk()->choose(book.idOf(QStringLiteral("A2")));
        window.page()->logVisit();
        EXPECT_EQ(window.saying(), why);
        window.tryAgain();
        EXPECT_EQ(window.banner()->shown(), why);
    }
    ASSERT_EQ(chmod(folder.constData(), 0700), 0);
    ASSERT_EQ(chmod(file.constData(), 0644), 0);
    window.tryAgain();
    EXPECT_EQ(window.banner()->shown(), QString());
    EXPECT_FALSE(window.desk()->session().readOnly());
}

// What goes into files of its own: PDFs and backups.
struct OtherFiles : Recording {
    QTemporaryDir dir;
};

TEST_F(OtherFiles, APdfThatCannotBeWrittenIsSaidAndNothingIsLeft) {
    window->setPlace(ui::window::Place::MergeDay);
    dialogs.expectError = true;
    const QString path = dir.filePath(QStringLiteral("sheet.pdf"));
    dialogs.pdf = path;
    {
        const SmallFiles full(3000);
        window->commands()->pdf->trigger();
    }
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_EQ(dialogs.errors[0],
              path + QStringLiteral(" cannot be written: the disk is full. Make room and try again."));
    EXPECT_EQ(QDir(dir.path()).entryList(QDir::Files), QStringList());
    QCoreApplication::processEvents();
    const QString gone = dir.filePath(QStringLiteral("stick/sheet.pdf"));
    dialogs.pdf = gone;
    window->commands()->pdf->trigger();
    ASSERT_EQ(dialogs.errors.size(), 2);
    EXPECT_EQ(dialogs.errors[1],
              gone +
                  QStringLiteral(" cannot be written: its folder is not there. Put it back, or choose another place."));
    dialogs.pdf = path;
    window->commands()->pdf->trigger();
    EXPECT_EQ(dialogs.errors.size(), 2);
    EXPECT_GT(QFile(path).size(), 3000);
}

TEST_F(OtherFiles, ABackupThatCannotBeMadeIsSaidAndMadeLater) {
    const QString shelf = dir.filePath(QStringLiteral("shelf"));
    ui::backup::setFolder(shelf);
    auto* keeping = window->commands()->backups()->keeping();
    QFile inTheWay(shelf);
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    keeping->begin();
    EXPECT_EQ(said(), "No backup was made. The folder " + shelf.toStdString() +
                          " cannot be made: choose another one, or put its disk back.");
    inTheWay.remove();
    {
        const SmallFiles full(20'000);
        keeping->begin();
        EXPECT_TRUE(QTest::qWaitFor([&] { return !keeping->running(); }, 20'000));
    }
    EXPECT_TRUE(said().starts_with("No backup was made. The disk ")) << said();
    EXPECT_EQ(QDir(shelf).entryList(QDir::Files | QDir::Hidden), QStringList()) << "nothing half is left";
    keeping->begin();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !keeping->running(); }, 20'000));
    EXPECT_EQ(QDir(shelf).entryList(QDir::Files).size(), 1);
    ui::backup::setFolder({});
}

} // namespace

} // namespace tests::reliability
