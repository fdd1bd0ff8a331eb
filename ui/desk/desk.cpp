#include "ui/desk/desk.h"

#include "core/edit/divides_done.h"
#include "core/edit/merge_wishes.h"
#include "ui/look/words.h"

#include <algorithm>
#include <utility>

namespace ui::desk {

namespace edit = core::edit;

namespace {
constexpr int kPollMs = 1500;
constexpr int kMostRounds = 5; // of a writer that never rests; the next poll goes on
} // namespace

Desk::Desk(std::unique_ptr<edit::Session> session, Dialogs& dialogs, QString onlyRead)
    : m_session(std::move(session)), m_dialogs(dialogs), m_day(m_session->clock().today()) {
    if (m_session->readOnly())
        m_onlyRead = onlyRead.isEmpty() ? tr("This book is open for reading only.") : std::move(onlyRead);
    readAgain();
    m_poll.setInterval(kPollMs);
    connect(&m_poll, &QTimer::timeout, this, &Desk::follow);
    if (m_session->readOnly()) m_poll.start();
    connect(m_session.get(), &edit::Session::changed, this, [this] {
        guarded(m_dialogs, [this] {
            try {
                readAgain();
            } catch (const core::Error& e) {
                m_behind = true;
                m_poll.start();
                throw core::Error(e.kind(),
                                  tr("The edit is in the book, but the book cannot be read again at this "
                                     "moment: what is shown is as it was before. It is read as soon as it can "
                                     "be."),
                                  e.userMessage() + u' ' + e.detail());
            }
        });
    });
}

Desk::~Desk() = default;

core::Day Desk::today() const { return m_session->clock().today(); }

void Desk::readAgain() {
    Reading now = readingOf(m_session->snapshot(m_day), edit::mergeWishes(*m_session, m_day, m_variants));
    now.divideDue = core::rules::divideChecks(now.snapshot, edit::dividesDone(*m_session));
    askQuestions(now, m_session->questions());
    m_reading = std::move(now);
    const auto& yards = m_reading.snapshot.yards;
    if (m_yard && !m_reading.find(*m_yard)) m_yard.reset();
    if (!m_yard && !yards.empty()) m_yard = yards.front().id;
    if (m_chosen && !m_reading.find(*m_chosen)) m_chosen.reset();
    settleSelected();
    emit read();
}

core::Day Desk::likelyMergeDay() const {
    const auto last = m_session->lastDay();
    const bool fresh = !last || today() - *last <= m_session->settings().strengthMaxAgeDays;
    return fresh ? today() : *last + 1;
}

QString Desk::carryBarred() const {
    if (m_day > today() && m_onlyRead.isEmpty())
        return tr("This is the yard on %1, which is still to come. Hives are carried in the present: go back to today.")
            .arg(look::dayText(m_day));
    return writeBarred();
}

QString Desk::writeBarred() const {
    if (!m_onlyRead.isEmpty()) return m_onlyRead;
    if (m_day >= today() || m_pastOpen) return {};
    return tr("This is the yard on %1. Past days are for looking: open them to writing below the plan, or go back to "
              "today.")
        .arg(look::dayText(m_day));
}

void Desk::setPastOpen(bool open) {
    if (open == m_pastOpen) return;
    m_pastOpen = open;
    emit read();
}

void Desk::setAuthor(const QString& name) {
    if (name == m_author) return;
    m_author = name;
    m_session->setAuthor(name);
    emit authorChanged();
}

void Desk::setDay(core::Day day) {
    if (day == m_day) return;
    const core::Day before = std::exchange(m_day, day);
    const auto variants = std::exchange(m_variants, {});
    try {
        if (present()) m_pastOpen = false;
        readAgain();
    } catch (const core::Error&) { // what is shown is of the day before still
        m_day = before;
        m_variants = variants;
        throw;
    }
}

void Desk::setVariant(core::YardId yard, int variant) {
    m_variants[yard] = variant;
    readAgain();
}

void Desk::setYard(core::YardId yard) {
    if (yard == m_yard) return;
    m_yard = yard;
    if (m_chosen) {
        const auto ix = m_reading.find(*m_chosen);
        const auto at = m_reading.find(yard);
        if (!ix || !at || m_reading.factsOf(*ix).yard != *at) {
            m_chosen.reset();
            setSelected({});
            emit chosenChanged();
        }
    }
    emit yardChanged();
}

void Desk::choose(std::optional<core::ColonyId> colony) {
    take(colony, colony ? std::vector{*colony} : std::vector<core::ColonyId>());
}

void Desk::take(std::optional<core::ColonyId> lead, std::vector<core::ColonyId> together) {
    if (lead == m_chosen) return setSelected(std::move(together));
    if (lead) {
        const auto ix = m_reading.find(*lead);
        if (!ix) return;
        const core::YardIx at = m_reading.factsOf(*ix).yard;
        m_chosen = lead;
        if (at.value >= 0 && m_reading.snapshot.yard(at).id != m_yard) setYard(m_reading.snapshot.yard(at).id);
    }
    m_chosen = lead;
    setSelected(std::move(together));
    emit chosenChanged();
    follow();
}

void Desk::setSelected(std::vector<core::ColonyId> colonies) {
    if (colonies == m_selected) return;
    m_selected = std::move(colonies);
    emit selectedChanged();
}

void Desk::select(const std::vector<core::ColonyId>& colonies, core::ColonyId lead) {
    const auto first = m_reading.find(lead);
    if (!first) return;
    std::vector<core::ColonyId> together;
    for (const core::ColonyId colony : colonies)
        if (const auto ix = m_reading.find(colony); ix && m_reading.factsOf(*ix).yard == m_reading.factsOf(*first).yard)
            together.push_back(colony);
    take(lead, std::move(together));
}

/// Those that are gone, or stand in another yard than the rest now, are no longer of it.
void Desk::settleSelected() {
    std::vector<core::ColonyId> left;
    std::optional<core::YardIx> yard;
    if (m_chosen) yard = m_reading.factsOf(*m_reading.find(*m_chosen)).yard;
    for (const core::ColonyId colony : m_selected) {
        const auto ix = m_reading.find(colony);
        if (!ix || (yard && m_reading.factsOf(*ix).yard != *yard)) continue;
        yard = m_reading.factsOf(*ix).yard;
        left.push_back(colony);
    }
    if (!m_chosen && !left.empty()) m_chosen = left.front();
    setSelected(std::move(left));
}

void Desk::follow() {
    const bool writes = !m_session->readOnly();
    if (writes && !m_behind) return;
    try {
        for (int round = 0; round < kMostRounds; ++round) {
            m_behind = m_session->changedElsewhere() || m_behind;
            if (!m_behind) return;
            readAgain();
            m_behind = false;
            if (!writes) continue;
            m_poll.stop();
            return emit said(tr("The book is read again: what is shown is as it is now."));
        }
    } catch (const core::Error& e) {
        if (!writes) emit said(e.userMessage()); // whoever writes was told
    }
}

void Desk::takeOver() {
    m_session->takeOver();
    m_poll.stop();
    m_onlyRead.clear();
    readAgain();
}

void Desk::setOnlyRead(const QString& why) {
    if (why == m_onlyRead || (why.isEmpty() && m_session->readOnly())) return;
    m_onlyRead = why;
    emit read();
}

std::optional<QString>
Desk::done(const QString& what,
           const std::function<std::optional<edit::HistoryLine>(const std::optional<edit::Correction>&)>& act) {
    if (m_session->readOnly()) {
        emit said(m_onlyRead);
        return std::nullopt;
    }
    const auto written = [&](const std::optional<edit::Correction>& correction) {
        const std::shared_ptr<void> meanwhile = m_whileWritten ? m_whileWritten() : nullptr;
        return act(correction);
    };
    std::optional<edit::HistoryLine> line;
    try {
        try {
            line = written({});
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::Correction) throw;
            const auto correction = m_dialogs.correction(what, e.userMessage());
            if (!correction) return std::nullopt;
            line = written(correction);
        }
    } catch (const core::Stopped&) {
        emit said(tr("Stopped: nothing was written."));
        return std::nullopt;
    } catch (const core::Error& e) {
        if (e.kind() == core::Error::Kind::Book) emit notSaved(e.userMessage());
        throw;
    }
    return line ? line->text : QString();
}

bool Desk::save(const QString& what, const edit::Edit& edit, const QString& also) {
    const auto text = done(what, [&](const auto& correction) { return m_session->apply(edit, correction); });
    if (!text) return false;
    if (text->isEmpty())
        emit said(tr("Nothing was changed."));
    else
        emit did(also.isEmpty() ? *text : tr("%1. %2").arg(*text, also));
    return true;
}

bool Desk::saveInTurn(const QString& what, const QString& text, const std::vector<edit::Edit>& edits) {
    const auto line =
        done(what, [&](const auto& correction) { return m_session->applyInTurn(text, edits, correction); });
    if (line && !line->isEmpty()) emit did(*line);
    return line.has_value();
}

void Desk::undo() {
    const auto what = m_session->undoText();
    if (!what) return;
    const auto text =
        done(tr("Undo: %1").arg(*what), [&](const auto& correction) { return m_session->undo(correction); });
    if (text && !text->isEmpty()) emit did(*text);
}

void Desk::redo() {
    const auto what = m_session->redoText();
    if (!what) return;
    const auto text =
        done(tr("Redo: %1").arg(*what), [&](const auto& correction) { return m_session->redo(correction); });
    if (text && !text->isEmpty()) emit did(*text);
}

void Desk::takeBack(qint64 seq, const QString& text) {
    const auto back = done(tr("Take back: %1").arg(text),
                           [&](const auto& correction) { return m_session->takeBack(seq, correction); });
    if (back && !back->isEmpty()) emit did(*back);
}

} // namespace ui::desk
