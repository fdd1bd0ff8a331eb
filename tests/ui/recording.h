#pragma once

#include "tests/ui/open_window.h"
#include "ui/card/colony_card.h"
#include "ui/form/form_panel.h"
#include "ui/records/record_list.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QListView>
#include <QPushButton>

namespace tests {

/// The real window, with records noted by mouse and keys.
struct Recording : OpenWindow {
    void type(const char* text) const { QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text)); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const { QTest::keyClick(QApplication::focusWidget(), key, with); }
    void choose(const char* label) const { QTest::mouseClick(plan(), Qt::LeftButton, {}, at(label)); }
    /// Ctrl+Shift+letter for the chosen hive.
    void begin(const char* label, Qt::Key letter) {
        choose(label);
        QTest::keyClick(window.get(), letter, Qt::ControlModifier | Qt::ShiftModifier);
        ASSERT_TRUE(formShown()) << said();
    }
    ui::form::FormPanel* panel() const { return window->page()->panel(); }
    bool formShown() const { return panel()->isVisible() && panel()->form() != nullptr; }
    QWidget* field(const char* name) const {
        QWidget* found = panel()->findChild<QWidget*>(QStringLiteral("field.") + QLatin1StringView(name));
        if (!found) ADD_FAILURE() << "no field " << name;
        return found;
    }
    /// Replaces what stands in a field.
    void fill(const char* name, const char* text) const {
        QWidget* edit = field(name);
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, QString::fromUtf8(text));
    }
    /// By the down key from the top of the list.
    void pick(const char* name, int row) const {
        QWidget* box = field(name);
        box->setFocus();
        QTest::keyClick(box, Qt::Key_Home);
        for (int i = 0; i < row; ++i) QTest::keyClick(box, Qt::Key_Down);
    }
    QString shownBy(const char* name) const {
        const auto* label = panel()->findChild<QLabel*>(QLatin1StringView(name));
        return label && label->isVisible() ? label->text() : QString();
    }
    ui::records::RecordList* records() const { return window->page()->card()->records(); }
    int rowTitled(const QString& title) const {
        for (int i = 0; i < records()->model().rowCount(); ++i)
            if (records()->model().at(i).title == title) return i;
        return -1;
    }
    /// The record of that title in the card of the chosen hive, with the keys on it.
    void goTo(const QString& title) const {
        const int row = rowTitled(title);
        ASSERT_GE(row, 0) << title.toStdString();
        records()->list()->setFocus();
        records()->list()->setCurrentIndex(records()->model().index(row));
    }
    /// Straight into the book that the window holds.
    void write(const core::edit::Edit& edit) const { window->desk()->session().apply(edit); }
    QString cardText() const {
        QString all;
        for (const QLabel* label : window->page()->card()->findChildren<QLabel*>()) all += label->text() + u'\n';
        return all;
    }
};

} // namespace tests
