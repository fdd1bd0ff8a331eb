#pragma once

#include "core/edit/edits.h"
#include "core/edit/merge_day.h"
#include "tests/ui/open_window.h"
#include "ui/board/ask_line.h"
#include "ui/board/board.h"
#include "ui/board/notices.h"
#include "ui/board/questions.h"
#include "ui/board/why_not.h"
#include "ui/look/words.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>

#include <algorithm>

namespace tests {

/// The real window at Merge day, on the six hives A1 to A6: 3, 3.5, 4, 4.5, 5 and 5.5 frames, of which A3 is held.
struct Arguing : OpenWindow {
    void SetUp() override {
        OpenWindow::SetUp();
        window->setPlace(ui::window::Place::MergeDay);
        QCoreApplication::processEvents();
    }
    ui::board::Board* board() const { return window->page()->board(); }
    ui::board::BoardList* list() const { return board()->list(); }
    core::edit::Session& session() const { return window->desk()->session(); }
    core::ColonyId id(const char* label) const { return book.idOf(QLatin1StringView(label)); }

    /// "A1>A2 A4>A5", in the order of work.
    std::string unions() const {
        const auto& r = window->desk()->reading();
        QStringList out;
        for (const auto& u : r.plan.unions)
            out << r.snapshot.colony(u.moved).label + u'>' + r.snapshot.colony(u.host).label;
        return out.join(u' ').toStdString();
    }
    int rowOf(ui::board::RowKind kind, const char* contains) const {
        for (int i = 0; i < list()->rows().rowCount(); ++i)
            if (list()->rows().at(i).kind == kind && list()->rows().at(i).title.contains(QLatin1StringView(contains)))
                return i;
        return -1;
    }
    /// The board's text, a row a line: title and what was asked of it.
    std::string rows() const {
        QString out;
        for (int i = 0; i < list()->rows().rowCount(); ++i) {
            const auto& row = list()->rows().at(i);
            out += row.title + (row.askedText.isEmpty() ? QString() : u' ' + row.askedText) + u'\n';
        }
        return out.toStdString();
    }
    void goTo(int row) const {
        ASSERT_GE(row, 0) << rows();
        list()->setFocus();
        list()->setCurrentIndex(list()->rows().index(row));
        list()->scrollTo(list()->rows().index(row));
    }
    void press(int row, core::MergeAsk ask) const {
        ASSERT_GE(row, 0) << rows();
        list()->scrollTo(list()->rows().index(row));
        const QRect chip = list()->chipOf(row, ask);
        ASSERT_FALSE(chip.isNull()) << rows();
        QTest::mouseClick(list()->viewport(), Qt::LeftButton, {}, chip.center());
    }
    void selectTwo(const char* a, const char* b) const {
        QTest::mouseClick(plan(), Qt::LeftButton, {}, at(a));
        QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at(b));
        ASSERT_EQ(window->desk()->selected().size(), 2U);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(QApplication::focusWidget(), key, with);
    }
    void type(const char* text) const { QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text)); }
    std::string difference() const {
        const QLabel* label = board()->notices()->difference();
        return label->isVisible() ? label->text().toStdString() : std::string();
    }
    const core::edit::MergeAsked& asked() const { return board()->merge().asked(); }
    /// What the file says is asked, by a session of its own.
    std::vector<core::MergeChoice> kept() const {
        const auto reader = core::edit::Session::open(book.path(), book.clock(), core::edit::Session::Access::ReadOnly);
        const auto days = reader->mergeDays(*window->desk()->yard());
        return days.empty() ? std::vector<core::MergeChoice>() : reader->choicesOf(days.front().id);
    }
};

} // namespace tests
