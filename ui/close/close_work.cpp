#include "ui/close/close_work.h"

#include "core/edit/print_day.h"
#include "ui/close/close_forms.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::close {

using core::Error;
using core::StripOutcome;
namespace edit = core::edit;

namespace {
DraftFile fileOf(const edit::Session& session) { return {session.path(), session.bookId()}; }
} // namespace

CloseWork::CloseWork(desk::Desk& desk, QObject* parent) : QObject(parent), m_desk(desk) {}

QString CloseWork::barred() const {
    if (!m_desk.onlyRead().isEmpty()) return m_desk.onlyRead();
    if (m_desk.day() > m_desk.today())
        return tr("This merge day is still to come: it is written back once it was done.");
    return {};
}

edit::StripClose CloseWork::fresh() const {
    edit::StripClose strip;
    strip.yard = m_yard;
    strip.day = m_day;
    strip.by = m_desk.author();
    return strip;
}

edit::StripClose CloseWork::stripOf(int row) const {
    const Line& line = m_lines.lines[static_cast<size_t>(row)];
    for (const Drafted& d : m_draft)
        if (line.is(d)) return d.strip;
    edit::StripClose strip = fresh();
    strip.how = line.how;
    strip.moved = line.moved;
    strip.host = line.host;
    return strip;
}

void CloseWork::read() {
    const core::YardId yard = m_desk.yard().value_or(core::YardId{});
    const bool other = yard != m_yard || m_desk.day() != m_day;
    m_yard = yard;
    m_day = m_desk.day();
    if (other) m_draft.clear();
    std::optional<Error> unread;
    try {
        if (const auto waiting = m_waiting.find({yard, m_day}); other && waiting != m_waiting.end()) {
            m_draft = waiting->second;
        } else if (other && yard.value > 0) {
            DraftFile::Notes notes = fileOf(m_desk.session()).of(m_yard, m_day);
            m_draft = std::move(notes.all);
            if (!notes.lost.isEmpty()) unread.emplace(Error::Kind::Book, notes.lost);
        }
    } catch (const Error& e) {
        unread = e; // said once the strips are shown
    }
    m_problems.clear();
    m_bad = -1;
    m_bare = yard.value > 0 ? linesOf(m_desk.session(), m_desk.reading(), m_yard) : Lines();
    show();
    for (const Drafted& d : inOrder()) judge(d); // those written meanwhile are none of them
    show();
    if (unread) throw *unread;
}

/// The lines anew, with what stands against them.
void CloseWork::show() {
    m_lines = withDrafts(m_bare, m_desk.session(), m_day, m_draft);
    for (Line& line : m_lines.lines)
        if (const auto it = m_problems.find({line.how, line.moved, line.host});
            it != m_problems.end() && line.stage == Stage::Drafted)
            line.problem = it->second;
    emit changed();
}

void CloseWork::judge(const Drafted& d) {
    m_problems.erase(keyOf(d));
    try {
        m_desk.session().read([&](const edit::EditContext& c) { editOf(d)(c); });
    } catch (const Error& e) {
        if (e.kind() == Error::Kind::Book) throw;
        m_problems[keyOf(d)] = e.userMessage();
    }
}

void CloseWork::keep() {
    m_waiting[{m_yard, m_day}] = m_draft;
    catchUp();
}

void CloseWork::catchUp() {
    const DraftFile file = fileOf(m_desk.session());
    while (!m_waiting.empty()) {
        const auto& [where, notes] = *m_waiting.begin();
        file.keep(where.first, where.second, notes);
        m_waiting.erase(m_waiting.begin());
    }
}

bool CloseWork::behind() const {
    return std::ranges::any_of(m_waiting, [](const auto& day) { return !day.second.empty(); });
}

int CloseWork::rowOf(const Drafted& d) const {
    const auto it = std::ranges::find_if(m_lines.lines, [&](const Line& l) { return l.is(d); });
    return it == m_lines.lines.end() ? -1 : static_cast<int>(it - m_lines.lines.begin());
}

int CloseWork::note(const Drafted& d) {
    const DraftFile file = fileOf(m_desk.session());
    if (d.strip.yard != m_yard || d.strip.day != m_day) { // another yard was shown while the form was open
        auto there = file.of(d.strip.yard, d.strip.day).all;
        std::erase_if(there, [&](const Drafted& x) { return keyOf(x) == keyOf(d); });
        there.push_back(d);
        file.keep(d.strip.yard, d.strip.day, there);
        return -1;
    }
    const auto same = std::ranges::find_if(m_draft, [&](const Drafted& x) { return keyOf(x) == keyOf(d); });
    if (same == m_draft.end())
        m_draft.push_back(d);
    else
        *same = d;
    judge(d);
    show();
    keep(); // where that fails it is said, and what is noted stays in the list
    return rowOf(d);
}

void CloseWork::clear(int row) {
    const Line line = m_lines.lines[static_cast<size_t>(row)];
    if (std::erase_if(m_draft, [&](const Drafted& d) { return line.is(d); }) == 0) return;
    show();
    keep();
}

void CloseWork::turnFact(int row) {
    const Line& line = m_lines.lines[static_cast<size_t>(row)];
    const auto it = std::ranges::find_if(m_draft, [&](const Drafted& d) { return line.is(d); });
    if (it == m_draft.end()) return;
    Drafted now = *it;
    now.asFact = !now.asFact;
    note(now);
}

/// As the lines stand: those before are in the book when the next is judged.
std::vector<Drafted> CloseWork::inOrder() const {
    std::vector<Drafted> out;
    for (const Line& line : m_lines.lines) {
        if (line.stage != Stage::Drafted) continue;
        const auto it = std::ranges::find_if(m_draft, [&](const Drafted& d) { return line.is(d); });
        if (it != m_draft.end()) out.push_back(*it);
    }
    return out;
}

/// `at`: which of them is being judged; −1 before the first.
std::vector<edit::Edit> CloseWork::edits(const std::vector<Drafted>& order, int& at) const {
    std::vector<edit::Edit> out;
    const desk::Reading& reading = m_desk.reading();
    const auto yard = reading.find(m_yard);
    if (yard && !m_lines.planned.empty() && !edit::closingBegan(m_desk.session(), m_yard, m_day)) {
        // What was planned stays to be gone on with: the unions and shake-outs, with their merge day.
        const core::rules::MergeWish* wish = reading.wishOf(m_yard);
        out = edit::recordPrint(
            edit::printedSheet(reading.snapshot, reading.plan, *yard, wish ? std::optional(wish->day) : std::nullopt));
        out.pop_back(); // the divides are written back by themselves
    }
    for (size_t i = 0; i < order.size(); ++i)
        out.push_back([d = order[i], i, &at](const edit::EditContext& c) {
            at = static_cast<int>(i);
            return editOf(d)(c);
        });
    return out;
}

QString CloseWork::textOf(const std::vector<Drafted>& order) const {
    const auto count = [&](StripOutcome outcome) {
        return std::ranges::count_if(order, [&](const Drafted& d) { return d.strip.outcome == outcome; });
    };
    const auto yard = m_desk.session().yard(m_yard);
    QStringList parts;
    if (const auto n = count(StripOutcome::Done)) parts << tr("%1 done").arg(n);
    if (const auto n = count(StripOutcome::Changed)) parts << tr("%1 changed").arg(n);
    if (const auto n = count(StripOutcome::NotDone)) parts << tr("%1 not done").arg(n);
    return tr("Wrote back the merge day of %1 on %2: %3")
        .arg(yard ? yard->name : QString(), core::isoText(m_day), parts.join(QStringLiteral(", ")));
}

bool CloseWork::write() {
    m_bad = -1;
    const std::vector<Drafted> order = inOrder();
    if (order.empty()) return false;
    int at = -1;
    try {
        if (!m_desk.saveInTurn(tr("Write back the merge day"), textOf(order), edits(order, at))) return false;
    } catch (const Error& e) {
        if (at < 0 || (e.kind() != Error::Kind::BadData && e.kind() != Error::Kind::Hold)) throw;
        const Drafted& bad = order[static_cast<size_t>(at)];
        m_problems[keyOf(bad)] = e.userMessage();
        show();
        m_bad = rowOf(bad);
        return false;
    }
    m_draft.clear();
    show();
    try {
        keep();
    } catch (const Error& e) {
        qWarning("%s", e.what()); // all of it is in the book: nothing of it is noted any more when it is read
    }
    return true;
}

bool CloseWork::takeBack(int row) {
    const Line line = m_lines.lines[static_cast<size_t>(row)];
    if (line.stage != Stage::Written || !line.id) return false;
    const core::MergeStripId id = *line.id;
    return m_desk.save(tr("Take back what came of %1").arg(line.title()),
                       [id](const edit::EditContext& c) { return edit::reopenStrip(c, id); });
}

} // namespace ui::close
