#pragma once

#include "core/edit/edits.h"
#include "core/edit/merge_day.h"
#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"
#include "ui/desk/desk.h"
#include "ui/look/sheet.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QTest>
#include <QVBoxLayout>

namespace tests {

/// A step of the merge day on a desk of its own, shown and active, on the day of BookOfTest; input only by keys and
/// mouse.
template <class Page> struct StepShown : ::testing::Test {
    BookOfTest book;
    TestDialogs dialogs;
    std::unique_ptr<ui::desk::Desk> desk;
    std::unique_ptr<QWidget> window;
    Page* page = nullptr;
    QString said, did;

    void SetUp() override { open(book.path()); }
    void open(const QString& path) {
        window.reset();
        desk.reset();
        desk = std::make_unique<ui::desk::Desk>(core::edit::Session::open(path, book.clock()), dialogs);
        QObject::connect(desk.get(), &ui::desk::Desk::said, [this](const QString& s) { said = s; });
        QObject::connect(desk.get(), &ui::desk::Desk::did, [this](const QString& s) { did = s; });
        window = std::make_unique<QWidget>();
        auto* all = new QVBoxLayout(window.get());
        all->setContentsMargins(0, 0, 0, 0);
        page = new Page(*desk, dialogs, window.get());
        all->addWidget(page);
        ui::look::keepDressed(*window);
        window->resize(420, 860);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        page->setFocus();
    }
    core::edit::Session& session() const { return desk->session(); }
    void write(const core::edit::Edit& edit) const { session().apply(edit); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(QApplication::focusWidget(), key, with);
        QCoreApplication::processEvents();
    }
    void type(const char* text) const {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
        QCoreApplication::processEvents();
    }
    core::ColonyId idOf(const char* label) const { return book.idOf(QLatin1StringView(label)); }
    std::string problems() const { return session().check().join(u'\n').toStdString(); }
    QString labelled(const char* name) const {
        const auto* label = page->template findChild<QLabel*>(QLatin1StringView(name));
        return label && label->isVisible() ? label->text() : QString();
    }
    size_t historyLines() const { return session().history(1000).size(); }
};

} // namespace tests
