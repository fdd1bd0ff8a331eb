#pragma once

#include "core/edit/edits.h"
#include "tests/ui/open_window.h"
#include "ui/pick/find_line.h"
#include "ui/pick/picker.h"
#include "ui/table/hive_table.h"
#include "ui/window/commands.h"
#include "ui/window/pick_commands.h"

#include <QApplication>
#include <QLineEdit>

#include <algorithm>

namespace tests {

/// The real window, with a second yard (Mill Lane: B1, B2) beside the six hives of the first.
struct Picking : OpenWindow {
    void SetUp() override {
        OpenWindow::SetUp();
        core::Yard mill;
        mill.name = QStringLiteral("Mill Lane");
        write([&](const core::edit::EditContext& c) { return core::edit::newYard(c, mill); });
        for (const core::Yard& y : session().yards())
            if (y.name == mill.name) mill.id = y.id;
        core::BoxKindId box;
        for (const core::BoxKind& kind : session().boxKinds())
            if (kind.name == QStringLiteral("langstroth-10")) box = kind.id;
        for (int i = 0; i < 2; ++i) {
            core::edit::NewColony made;
            made.colony.label = QStringLiteral("B%1").arg(i + 1);
            made.colony.since = core::dayOf(2026, 5, 10);
            made.colony.box = box;
            made.stand.yard = mill.id;
            made.stand.at = {i * 2000, 0};
            write([&](const core::edit::EditContext& c) { return core::edit::addColony(c, made); });
        }
        plan()->setFocus();
    }

    core::edit::Session& session() const { return window->desk()->session(); }
    void write(const core::edit::Edit& edit) const { session().apply(edit); }
    ui::pick::FindLine* find() const { return window->page()->picker()->line(); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(QApplication::focusWidget(), key, with);
    }
    void type(const char* text) const {
        for (const char* c = text; *c; ++c) QTest::keyClick(QApplication::focusWidget(), *c);
    }
    QString labelOf(core::ColonyId colony) const {
        const auto& r = window->desk()->reading();
        const auto ix = r.find(colony);
        return ix ? r.snapshot.colony(*ix).label : QString();
    }
    std::string labelsOf(const std::vector<core::ColonyId>& colonies) const {
        QStringList labels;
        for (const core::ColonyId colony : colonies) labels << labelOf(colony);
        labels.sort();
        return labels.join(u' ').toStdString();
    }
    std::string selected() const { return labelsOf(window->desk()->selected()); }
    std::string chosen() const {
        return window->desk()->chosen() ? labelOf(*window->desk()->chosen()).toStdString() : std::string();
    }
    std::string marked() const { return labelsOf(plan()->marked()); }
    std::string yard() const {
        const auto& r = window->desk()->reading();
        return r.snapshot.yard(*r.find(*window->desk()->yard())).name.toStdString();
    }
    ui::table::HiveTable* table() const { return window->page()->table(); }
};

} // namespace tests
