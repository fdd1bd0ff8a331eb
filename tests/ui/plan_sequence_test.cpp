#include "tests/support/rounds.h"
#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/form_panel.h"
#include "ui/start/new_hives.h"

#include <QApplication>

#include <algorithm>
#include <numeric>
#include <random>

// After any seeded sequence of edits and undos, by hand and by others, the scene in the window is the one built anew
// from the file, and what was chosen, selected and had the keys is so still. Source of the expectation: the file, read
// by a session of its own.

namespace {

namespace edit = core::edit;
using core::ColonyId;
using core::MmPoint;

QString text(const MmPoint& at) { return QStringLiteral("%1,%2").arg(at.x).arg(at.y); }

/// All that a scene draws, a line each.
QStringList linesOf(const ui::plan::Scene& scene) {
    QStringList out{QStringLiteral("%1 gate %2").arg(scene.yard, text(scene.gate))};
    for (const ui::plan::HiveMark& h : scene.hives)
        out << QStringLiteral("%1 #%2 at %3 look %4 boxes %5 bees %6 held %7 feed %8 size %9")
                   .arg(h.spoken)
                   .arg(h.colony.value)
                   .arg(text(h.at))
                   .arg(h.headingDeg)
                   .arg(h.boxes)
                   .arg(h.bees ? h.bees->value : -1)
                   .arg(h.holdLetters)
                   .arg(h.feedHalfLitres)
                   .arg(h.widthMm * 10000 + h.lengthMm);
    for (const ui::plan::UnionMark& u : scene.unions)
        out << QStringLiteral("union %1: %2 > %3 %4").arg(u.order).arg(u.moved).arg(u.host).arg(u.metres);
    for (const ui::plan::ShakeMark& s : scene.shakes) out << QStringLiteral("shake %1 > %2").arg(s.colony).arg(s.into);
    for (const ui::plan::StandMark& s : scene.stands) out << QStringLiteral("stand %1 at %2").arg(s.name, text(s.at));
    return out;
}

struct Sequence : tests::OpenWindow, ::testing::WithParamInterface<unsigned> {
    std::mt19937 dice{GetParam()};
    QString did; ///< the last step, for the reader of a failure
    int refused = 0;
    int written = 0;

    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(dice); }
    ui::desk::Desk& desk() const { return *window->desk(); }
    qint64 lines() const {
        const auto newest = desk().session().history(1);
        return newest.empty() ? 0 : newest.front().seq;
    }
    const ui::plan::Scene& scene() const { return plan()->scene(); }

    /// The same yard and day from the file alone.
    ui::plan::Scene fresh() const {
        tests::TestDialogs none;
        auto reader = edit::Session::open(book.path(), book.clock(), edit::Session::Access::ReadOnly);
        ui::desk::Desk other(std::move(reader), none);
        const auto& r = other.reading();
        const auto yard = r.find(*desk().yard());
        ui::plan::Scene out = ui::plan::sceneOf(r.snapshot, *yard, r.facts, r.plan.holds, nullptr);
        out.stands = ui::start::emptyStands(other, *desk().yard());
        return out;
    }

    std::optional<ColonyId> anyHive() {
        if (scene().hives.empty()) return std::nullopt;
        return scene().hives[static_cast<size_t>(upTo(static_cast<int>(scene().hives.size()) - 1))].colony;
    }
    MmPoint anyGround() { return {upTo(120) * 100, upTo(60) * 100 - 3000}; }
    QPoint viewOf(ColonyId id) const { return plan()->viewPointOf(id).toPoint(); }
    bool inView(const QPoint& p) const { return plan()->rect().contains(p); }

    void dragHive() {
        const auto id = anyHive();
        if (!id) return;
        did = QStringLiteral("drag");
        const QPoint to = ground(anyGround());
        if (inView(viewOf(*id)) && inView(to)) drag(viewOf(*id), to);
    }
    void nudge() {
        if (const auto id = anyHive()) QTest::mouseClick(plan(), Qt::LeftButton, {}, viewOf(*id));
        did = QStringLiteral("nudge");
        constexpr Qt::Key kWays[] = {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down};
        for (int i = 0; i <= upTo(4); ++i) QTest::keyClick(plan(), kWays[upTo(3)]);
        QTest::keyClick(plan(), upTo(4) ? Qt::Key_Return : Qt::Key_Escape);
    }
    void select(int many) {
        for (int i = 0; i < many; ++i)
            if (const auto id = anyHive())
                QTest::mouseClick(plan(), Qt::LeftButton, i ? Qt::ControlModifier : Qt::NoModifier, viewOf(*id));
    }
    void carrySeveral() {
        select(2 + upTo(2));
        did = QStringLiteral("several");
        for (int i = 0; i <= upTo(3); ++i) QTest::keyClick(plan(), upTo(1) ? Qt::Key_Up : Qt::Key_Right);
        QTest::keyClick(plan(), Qt::Key_Return);
    }
    void swapTwo() {
        select(2);
        did = QStringLiteral("swap");
        QTest::keyClick(plan(), Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    }
    /// Past the window: what another hand wrote.
    void other() {
        const auto id = anyHive();
        if (!id) return;
        const core::Day day = book.clock().day - upTo(3);
        const auto apply = [&](const char* what, const edit::Edit& edit) {
            did = QLatin1StringView(what);
            try {
                desk().session().apply(edit);
            } catch (const core::Error&) {
                ++refused;
            }
        };
        switch (upTo(4)) {
        case 0: {
            core::Visit v;
            v.colony = *id;
            v.day = day;
            v.beesTop = core::Quarters{upTo(36)};
            v.broodFrames = v.broodChecked = 4;
            if (upTo(6) == 0) v.signs.add(core::Sign::BroodDoubt);
            return apply("visit", [v](const edit::EditContext& c) { return edit::logVisit(c, v); });
        }
        case 1: {
            edit::NewColony fresh;
            fresh.colony.label = QStringLiteral("N%1").arg(upTo(30));
            fresh.colony.since = day;
            fresh.colony.box = desk().session().boxKinds().front().id;
            fresh.stand.yard = *desk().yard();
            fresh.stand.at = anyGround();
            return apply("colony", [fresh](const edit::EditContext& c) { return edit::addColony(c, fresh); });
        }
        case 2:
            if (scene().hives.size() < 4) return;
            return apply("end", [id, day](const edit::EditContext& c) {
                return edit::endColony(c, *id, day, core::EndKind::Dead);
            });
        case 3: {
            const MmPoint at = anyGround();
            const core::YardId yard = *desk().yard();
            return apply("stand", [yard, at](const edit::EditContext& c) { return edit::addStand(c, yard, {}, at); });
        }
        default: {
            const MmPoint to = anyGround();
            return apply("carry",
                         [id, to, day](const edit::EditContext& c) { return edit::carryHive(c, *id, to, day); });
        }
        }
    }
    void step() {
        switch (upTo(11)) {
        case 0:
        case 1:
            return dragHive();
        case 2:
            return nudge();
        case 3:
            return carrySeveral();
        case 4:
            return swapTwo();
        case 5:
        case 6:
        case 7:
            did = QStringLiteral("undo");
            QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
            return;
        case 8:
            did = QStringLiteral("redo");
            QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
            return;
        default:
            return other();
        }
    }
};

TEST_P(Sequence, TheSceneIsTheOneBuiltFreshFromTheFile) {
    dialogs.expectCorrection = true;
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("I. Berg"), QStringLiteral("a slip")};
    const int steps = tests::rounds(500);
    for (int i = 0; i < steps; ++i) {
        const qint64 before = lines();
        step();
        written += lines() > before ? 1 : 0;
        if (window->page()->panel()->form()) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        ASSERT_FALSE(plan()->carrying()) << "step " << i;
        ASSERT_EQ(linesOf(scene()), linesOf(fresh())) << "step " << i << ": " << did.toStdString() << "\n"
                                                      << linesOf(scene()).join(u'\n').toStdString() << "\nfresh:\n"
                                                      << linesOf(fresh()).join(u'\n').toStdString();
        ASSERT_EQ(plan()->chosenHive(), desk().chosen());
        ASSERT_EQ(QApplication::focusWidget(), plan()) << "step " << i << ": " << did.toStdString();
    }
    EXPECT_GT(written, steps / 3) << "most steps are to change something";
    RecordProperty("refused", refused);
}

TEST_P(Sequence, WhatWasChosenAndSelectedIsSoAfterTheEditsOfOthers) {
    dialogs.expectCorrection = true;
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("I. Berg"), QStringLiteral("a slip")};
    for (int i = 0; i < 60; ++i) {
        select(1 + upTo(3));
        const auto chosen = desk().chosen();
        auto selected = desk().selected();
        if (upTo(2))
            other();
        else
            QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
        const auto lives = [&](ColonyId id) { return scene().find(id).has_value(); };
        std::erase_if(selected, [&](ColonyId id) { return !lives(id); });
        ASSERT_EQ(desk().selected(), selected) << "step " << i << ": " << did.toStdString();
        const auto lead = selected.empty() ? std::nullopt : std::optional(selected.front());
        ASSERT_EQ(desk().chosen(), chosen && lives(*chosen) ? chosen : lead) << "the next of them leads";
        ASSERT_EQ(QApplication::focusWidget(), plan());
    }
}

/// One by default; YW_SEQUENCES=N tries N.
std::vector<unsigned> seeds() {
    std::vector<unsigned> out(static_cast<size_t>(std::max(1, qEnvironmentVariableIntValue("YW_SEQUENCES"))));
    std::iota(out.begin(), out.end(), 1u);
    return out;
}

INSTANTIATE_TEST_SUITE_P(Seeds, Sequence, ::testing::ValuesIn(seeds()));

} // namespace
