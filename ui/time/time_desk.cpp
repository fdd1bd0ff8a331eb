#include "ui/time/time_desk.h"

#include "ui/form/day_edit.h"
#include "ui/look/words.h"

#include <QPushButton>
#include <QScopedValueRollback>

#include <algorithm>

namespace ui::time {

namespace {
constexpr int kYearInView = 366;
constexpr int kRestMs = 150;     // between two days that are asked for
constexpr int kEarlierDays = 30; // of a yard with nothing on record
} // namespace

TimeDesk::TimeDesk(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs, QWidget* parent)
    : QObject(parent),
      m_desk(desk),
      m_plan(plan),
      m_dialogs(dialogs),
      m_bar(new DateBar(desk.today(), parent)),
      m_veil(new DayVeil(&plan)),
      m_player(this),
      m_glance(desk.session()) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    connect(&m_soon, &QTimer::timeout, this, [this] { show(m_asked); });
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &TimeDesk::rest);
    connect(&m_desk.session(), &core::edit::Session::changed, this, [this] { m_glance.forget(); });
    connectBar();
    connect(&m_player, &Player::dayPlayed, this, &TimeDesk::show);
    connect(&m_player, &Player::ended, this, [this] {
        m_bar->setPlaying(false);
        settle();
    });
    connect(&m_desk, &desk::Desk::read, this, &TimeDesk::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, &TimeDesk::follow);
    follow();
}

void TimeDesk::connectBar() {
    connect(m_bar->strip(), &Strip::dayAsked, this, &TimeDesk::ask);
    connect(m_bar->strip(), &Strip::dropped, this, &TimeDesk::settle);
    connect(m_bar->strip(), &Strip::playAsked, this, &TimeDesk::play);
    connect(m_bar->playButton(), &QPushButton::clicked, this, &TimeDesk::play);
    connect(m_bar->todayButton(), &QPushButton::clicked, this, &TimeDesk::today);
    connect(m_bar, &DateBar::dayTyped, this, &TimeDesk::goTo);
    connect(m_bar, &DateBar::offerTaken, this, &TimeDesk::goTo);
    connect(m_bar, &DateBar::said, &m_desk, &desk::Desk::said);
    connect(m_bar, &DateBar::lockAsked, this, [this](bool open) {
        m_desk.setPastOpen(open);
        emit m_desk.said(open ? tr("What is carried or noted now is of %1.").arg(look::dayText(m_desk.day()))
                              : tr("Past days are for looking."));
    });
}

void TimeDesk::setAhead(int days) {
    if (m_ahead == days) return;
    m_ahead = days;
    showDays();
}

/// The desk shows another day, another yard, or the book has changed.
void TimeDesk::follow() {
    guarded(m_dialogs, [this] {
        m_glancing = false;
        m_soon.stop();
        m_rest.stop();
        const bool reads = m_desk.session().readOnly();
        if (!m_ownStep && (reads || m_onlyReads)) m_glance.forget(); // another may have written
        m_onlyReads = reads;
        if (!m_ownStep || m_yard != m_desk.yard()) readRecords();
        showDay(m_desk.day());
    });
}

void TimeDesk::readRecords() {
    const bool another = m_yard != m_desk.yard();
    m_yard = m_desk.yard();
    m_bar->strip()->setRecords(m_yard ? m_desk.session().recordedDays(*m_yard) : Records());
    showDays();
    if (another) m_bar->strip()->showDays(kYearInView);
    setOffer();
}

void TimeDesk::showDays() {
    const Records& records = m_bar->strip()->records();
    const core::Day today = m_desk.today();
    core::Day first = records.empty() ? today - kEarlierDays : records.front().day;
    core::Day last = today + m_ahead;
    if (!records.empty()) last = std::max(last, records.back().day);
    m_bar->strip()->setDays(std::min(first, m_desk.day()), std::max(last, m_desk.day()), today);
}

void TimeDesk::showDay(core::Day day) {
    const core::Day today = m_desk.today();
    Strip& strip = *m_bar->strip();
    if (day < strip.first() || day > strip.last()) showDays();
    strip.setDay(day);
    m_bar->setDay(day, today);
    m_bar->setWords(barText(day));
    m_bar->setLock(day < today && m_desk.onlyRead().isEmpty(), m_desk.pastOpen());
    m_veil->setText(day == today        ? QString()
                    : m_desk.pastOpen() ? tr("%1 – open to writing").arg(yardWords(day, today, {}))
                                        : yardWords(day, today, {}));
    setOffer();
}

/// Where all counts are too old to say anything, the last day of records says more.
void TimeDesk::setOffer() {
    std::optional<core::Day> offered;
    const desk::Reading& r = m_desk.reading();
    const auto yard = m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    const Records& records = m_bar->strip()->records();
    if (yard && m_desk.present() && !records.empty() && records.back().day < m_desk.day()) {
        const auto here = [&](const core::rules::ColonyFacts& f) { return f.yard == *yard; };
        const auto old = [&](const core::rules::ColonyFacts& f) { return f.counted && !f.strength; };
        if (std::ranges::none_of(r.facts, [&](const auto& f) { return here(f) && f.strength; }) &&
            std::ranges::any_of(r.facts, [&](const auto& f) { return here(f) && old(f); }))
            offered = records.back().day;
    }
    m_bar->setOffer(offered, tr("All counts here are too old to say how strong a colony is."));
}

QString TimeDesk::barText(core::Day day) const {
    if (m_bar->strip()->records().empty()) return tr("Nothing is recorded of this yard yet.");
    const QString words = recordWords(recordsIn(m_bar->strip()->records(), day, day));
    return words.isEmpty() ? tr("nothing recorded on this day") : words;
}

void TimeDesk::ask(core::Day day, bool on) {
    if (m_player.playing()) m_player.stop();
    m_asked = day;
    if (on)
        m_soon.start();
    else
        show(day);
}

void TimeDesk::goTo(core::Day day) { ask(day, false); }

void TimeDesk::today() { ask(m_desk.today(), false); }

void TimeDesk::focusField() {
    m_bar->field()->setFocus(Qt::ShortcutFocusReason);
    m_bar->field()->selectAll();
}

/// A book that is read in a moment is read whole at each step.
void TimeDesk::show(core::Day day) {
    m_soon.stop();
    m_asked = day;
    if (m_wholeMs <= m_fluentMs && m_fluentMs > 0) return showWhole(day);
    guarded(m_dialogs, [&] { glance(day); });
    if (!m_player.playing()) m_rest.start();
}

void TimeDesk::showWhole(core::Day day) {
    m_rest.stop();
    QElapsedTimer clock;
    clock.start();
    const bool same = m_desk.day() == day;
    guarded(m_dialogs, [&] {
        const QScopedValueRollback<bool> own(m_ownStep, true);
        m_desk.setDay(day);
        if (same && m_glancing) emit m_desk.read(); // back where the desk is: all is shown of it again
    });
    if (!same) m_wholeMs = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    emit m_desk.said(
        yardWords(m_desk.day(), m_desk.today(), recordWords(recordsIn(m_bar->strip()->records(), day, day))));
}

/// The yard alone: its hives, what they bear and what is held. Nothing is carried on it.
void TimeDesk::glance(core::Day day) {
    if (!m_desk.yard()) return;
    m_glancing = true;
    m_plan.setCarryBarred(tr("The yard on %1 is still being read.").arg(look::dayText(day)));
    plan::Scene scene = m_glance.sceneOf(*m_desk.yard(), day);
    scene.fixed = m_plan.scene().fixed; // the same on every day
    m_plan.setScene(std::move(scene));
    showDay(day);
}

void TimeDesk::rest() {
    if (m_bar->strip()->dragging() && m_desk.day() == m_asked) return;
    showWhole(m_asked);
}

/// What was asked for last is shown whole.
void TimeDesk::settle() {
    if (m_soon.isActive() || m_glancing) {
        m_soon.stop();
        showWhole(m_asked);
    }
}

void TimeDesk::play() {
    if (m_player.playing()) return m_player.stop();
    const TimeScale& scale = m_bar->strip()->scale();
    const core::Day to = std::min(scale.to(), std::max(m_desk.today(), m_desk.day()));
    core::Day from = m_desk.day();
    if (from >= to || from < scale.from()) {
        from = scale.from();
        show(from);
    }
    if (from >= to) return;
    m_bar->setPlaying(true);
    m_player.play(from, to);
}

} // namespace ui::time
