#include "core/edit/edits.h"
#include "tests/ui/open_window.h"
#include "ui/entry/entry_desk.h"
#include "ui/visit/visit_form.h"

#include <QApplication>
#include <QFile>
#include <QLineEdit>

namespace {

using ui::visit::DraftJournal;
using ui::visit::Field;

/// Visits half typed into the form at the right.
struct HalfTypedVisits : tests::OpenWindow {
    ui::visit::VisitForm* form() const { return window->page()->form(); }
    QLineEdit* field(Field f) const {
        return form()->findChild<QLineEdit*>(QStringLiteral("visitField%1").arg(static_cast<int>(f)));
    }
    void type(const char* text) const { QTest::keyClicks(QApplication::focusWidget(), QLatin1StringView(text)); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(QApplication::focusWidget(), key, with);
    }
    void begin(const char* label) const {
        QTest::mouseClick(plan(), Qt::LeftButton, {}, at(label));
        QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
        ASSERT_TRUE(form()->isVisible()) << said();
    }
    QString journalPath() const { return DraftJournal(book.path(), window->desk()->session().bookId()).path(); }
    /// As after a crash: nothing was asked, nothing saved, the file beside the book is as it was.
    void crash() {
        const QString file = journalPath();
        ASSERT_TRUE(QFile::exists(file));
        QFile::copy(file, file + QStringLiteral(".then"));
        window.reset();
        QFile::remove(file);
        QFile::rename(file + QStringLiteral(".then"), file);
        SetUp();
        QCoreApplication::sendPostedEvents();
    }
};

TEST_F(HalfTypedVisits, AreThereAgainAfterACrash) {
    begin("A2");
    type("5 1/");
    key(Qt::Key_Tab);
    type("x");
    crash();
    EXPECT_EQ(said(), "A visit that was half typed is there again: Visits, Write down.");
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
    begin("A2");
    EXPECT_EQ(field(Field::BeesTop)->text().toStdString(), "5 1/");
    EXPECT_EQ(field(Field::BeesBottom)->text().toStdString(), "x");
    EXPECT_TRUE(form()->dirty());
    field(Field::BeesTop)->setFocus();
    field(Field::BeesTop)->end(false);
    type("4");
    field(Field::BeesBottom)->setFocus();
    key(Qt::Key_Backspace);
    key(Qt::Key_Return);
    ASSERT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u) << said();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2"))[0].beesTop, core::Quarters{21});
    EXPECT_FALSE(QFile::exists(journalPath()));
}

TEST_F(HalfTypedVisits, ThrownAwayAreGone) {
    begin("A2");
    type("5");
    key(Qt::Key_Escape);
    EXPECT_TRUE(QFile::exists(journalPath())) << "Escape asks once";
    key(Qt::Key_Escape);
    EXPECT_FALSE(QFile::exists(journalPath()));
    begin("A2");
    EXPECT_FALSE(form()->dirty());
}

TEST_F(HalfTypedVisits, OneThatWasSavedBeforeTheCrashIsNotOfferedAgain) {
    begin("A2");
    type("5");
    const QString file = journalPath();
    ASSERT_TRUE(QFile::copy(file, file + QStringLiteral(".then")));
    key(Qt::Key_Return);
    ASSERT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u) << said();
    window.reset();
    ASSERT_TRUE(QFile::rename(file + QStringLiteral(".then"), file));
    SetUp();
    EXPECT_TRUE(window->page()->entry()->drafts().all().empty());
}

TEST_F(HalfTypedVisits, ADayIsTypedAndAWrongOneStays) {
    begin("A2");
    type("5");
    auto* day = form()->findChild<QLineEdit*>(QStringLiteral("visitDay"));
    ASSERT_NE(day, nullptr);
    day->setFocus();
    day->selectAll();
    type("31.2.");
    key(Qt::Key_Return);
    EXPECT_TRUE(form()->isVisible());
    EXPECT_EQ(day->text().toStdString(), "31.2.");
    EXPECT_EQ(said(), "A day: 2026-09-15, 15 Sep 2026, 15.9. or yesterday.");
    day->selectAll();
    type("12.9.");
    key(Qt::Key_Return);
    const auto visits = book.visitsOf(QStringLiteral("A2"));
    ASSERT_EQ(visits.size(), 2u) << said();
    EXPECT_EQ(visits[1].day, core::dayOf(2026, 9, 12));
}

} // namespace
