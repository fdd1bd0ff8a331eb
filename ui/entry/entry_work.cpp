#include "ui/entry/entry_work.h"

#include "core/base/natural_order.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/book_options.h"
#include "ui/look/words.h"
#include "ui/pick/walking_order.h"
#include "ui/records/odd.h"
#include "ui/visit/visit_place.h"

#include <algorithm>

namespace ui::entry {

namespace edit = core::edit;
using core::TallyColumn;
using visit::VisitDraft;

EntryWork::EntryWork(desk::Desk& desk, EntryDesk& entry, QObject* parent)
    : QObject(parent), m_desk(desk), m_entry(entry) {
    m_carried = {std::min(desk.day(), desk.today()), desk.author(), {}};
    connect(&m_entry, &EntryDesk::changed, this, [this](core::ColonyId colony) { follow(colony); });
}

void EntryWork::read() {
    m_rows.clear();
    m_places.clear();
    m_problems.clear();
    const auto yard = m_desk.yard();
    if (yard) {
        const core::Snapshot that = m_desk.session().yardGlance(*yard, m_carried.day);
        for (qint32 i = 0; i < static_cast<qint32>(that.yards.size()); ++i)
            if (that.yard({i}).id == *yard)
                for (const core::ColonyId colony : pick::walkingOrder(that, {i})) m_rows.push_back(rowFor(colony));
        for (const visit::HalfTyped& half : m_entry.drafts().all()) // of another day, of a hive that has left since
            if (const auto ix = m_desk.reading().find(half.colony); ix && half.was.value == 0 && !rowOf(half.colony))
                if (const auto in = m_desk.reading().find(*yard); in && m_desk.reading().factsOf(*ix).yard == *in)
                    m_rows.push_back(rowFor(half.colony));
    }
    emit rowsRead();
}

EntryRow EntryWork::rowFor(core::ColonyId colony) const {
    constexpr int kFew = 4, kAll = 1'000'000;
    const edit::Session& book = m_desk.session();
    EntryRow row{colony, {}, 1, {}, {}};
    if (const auto c = book.colony(colony)) row.label = form::nameOn(book, *c, m_carried.day);
    book.read([&](const edit::EditContext& c) { row.boxes = c.boxesAt(colony, m_carried.day); });
    for (const int most : {kFew, kAll}) {
        const auto visits = book.visitsOf(colony, most);
        for (const core::Visit& v : visits) {
            if (v.day == m_carried.day) row.onDay = v;
            if (v.day < m_carried.day && !row.last) row.last = v;
        }
        if (row.last || static_cast<int>(visits.size()) < most) break;
    }
    return row;
}

std::optional<int> EntryWork::rowOf(core::ColonyId colony) const {
    const auto it = std::ranges::find(m_rows, colony, &EntryRow::colony);
    return it == m_rows.end() ? std::nullopt : std::optional(static_cast<int>(it - m_rows.begin()));
}

std::optional<int> EntryWork::rowNamed(const QString& label) const {
    const QString asked = core::folded(label.trimmed());
    std::optional<int> begins;
    int several = 0;
    for (size_t i = 0; i < m_rows.size(); ++i) {
        const QString name = core::folded(m_rows[i].label);
        if (name == asked) return static_cast<int>(i);
        if (!name.startsWith(asked)) continue;
        begins = static_cast<int>(i);
        ++several;
    }
    return several == 1 && !asked.isEmpty() ? begins : std::nullopt;
}

void EntryWork::setCarried(const Carried& carried) {
    const bool other = carried.day != m_carried.day;
    m_carried = carried;
    if (m_entry.typingIsShown()) m_entry.carry(carried);
    if (other) read();
}

/// A new visit goes before the change of an old one: the visit of the day is changed where none is begun.
core::VisitId EntryWork::visitOf(int row) const {
    const EntryRow& r = m_rows[static_cast<size_t>(row)];
    return r.onDay && !m_entry.drafts().of(r.colony) ? r.onDay->id : core::VisitId{};
}

std::optional<core::Visit> EntryWork::changed(int row) const {
    return visitOf(row).value > 0 ? m_rows[static_cast<size_t>(row)].onDay : std::nullopt;
}

std::optional<VisitDraft> EntryWork::typed(int row) const {
    return m_entry.drafts().of(m_rows[static_cast<size_t>(row)].colony, visitOf(row));
}

VisitDraft EntryWork::base(int row) const {
    if (auto draft = typed(row)) return *std::move(draft);
    const auto was = changed(row);
    return was ? visit::draftOf(*was, m_desk.reading().snapshot.settings.showWeight) : m_entry.fresh();
}

const visit::VisitPlace& EntryWork::place(int row) const {
    const auto it = m_places.find(row);
    if (it != m_places.end()) return it->second;
    return m_places[row] = visit::visitPlaceOf(m_desk.session(), m_rows[static_cast<size_t>(row)].colony, base(row).day,
                                               changed(row));
}

const std::vector<visit::Problem>& EntryWork::problems(int row) const {
    const auto it = m_problems.find(row);
    if (it != m_problems.end()) return it->second;
    const auto draft = typed(row);
    return m_problems[row] = draft ? visit::problems(*draft, place(row)) : std::vector<visit::Problem>{};
}

RowState EntryWork::state(int row) const {
    if (!typed(row)) return m_rows[static_cast<size_t>(row)].onDay ? RowState::Saved : RowState::Blank;
    return problems(row).empty() ? RowState::Typed : RowState::Wrong;
}

int EntryWork::count(RowState s) const {
    int n = 0;
    for (int row = 0; row < static_cast<int>(m_rows.size()); ++row) n += state(row) == s;
    return n;
}

QStringList EntryWork::elsewhere() const {
    QStringList out;
    for (const visit::HalfTyped& half : m_entry.drafts().all()) {
        const auto row = rowOf(half.colony);
        const auto colony = m_desk.session().colony(half.colony);
        if ((row && visitOf(*row) == half.was) || !colony) continue;
        out << tr("%1 of %2")
                   .arg(form::nameOn(m_desk.session(), *colony, half.draft.day), look::shortDayText(half.draft.day));
    }
    return out;
}

QString EntryWork::text(int row, TallyColumn column) const {
    if (const auto draft = typed(row)) return typedIn(*draft, visit::fieldOf(column));
    const auto was = changed(row);
    return was ? typedIn(base(row), visit::fieldOf(column)) : QString();
}

QString EntryWork::lastText(int row, TallyColumn column) const {
    const auto& last = m_rows[static_cast<size_t>(row)].last;
    if (!last || column == TallyColumn::Note) return {};
    return typedIn(visit::draftOf(*last, m_desk.reading().snapshot.settings.showWeight), visit::fieldOf(column));
}

QString EntryWork::problem(int row, TallyColumn column) const {
    for (const visit::Problem& p : problems(row))
        if (p.field == visit::fieldOf(column)) return p.text;
    return {};
}

bool EntryWork::open(int row, TallyColumn column) const {
    if (column != TallyColumn::UpperTop && column != TallyColumn::UpperBottom && column != TallyColumn::UpperStores)
        return true;
    const VisitDraft draft = base(row);
    return draft.boxes.value_or(m_rows[static_cast<size_t>(row)].boxes) == 2 ||
           !typedIn(draft, visit::fieldOf(column)).isEmpty();
}

void EntryWork::type(int row, TallyColumn column, const QString& text) {
    VisitDraft draft = base(row);
    const auto stroke = column == TallyColumn::Mites ? text.indexOf(u'/') : -1;
    if (stroke >= 0) { // "3/300", as it stands on the sheet
        typeInto(draft, visit::Field::Mites, text.left(stroke));
        typeInto(draft, visit::Field::Sample, text.mid(stroke + 1));
    } else {
        typeInto(draft, visit::fieldOf(column), text);
    }
    const auto was = changed(row);
    const VisitDraft bare = was ? visit::draftOf(*was, m_desk.reading().snapshot.settings.showWeight) : m_entry.fresh();
    m_entry.type(m_rows[static_cast<size_t>(row)].colony, visitOf(row), draft, bare);
}

void EntryWork::throwAway(int row) { m_entry.drop(m_rows[static_cast<size_t>(row)].colony, visitOf(row)); }

void EntryWork::follow(core::ColonyId colony) {
    const auto row = rowOf(colony);
    if (!row) return;
    m_places.erase(*row);
    m_problems.erase(*row);
    if (!typed(*row)) // saved or thrown away: what is typed next is asked about anew
        std::erase_if(m_asked, [&](const auto& asked) { return asked.first == colony; });
    emit rowChanged(*row);
}

QStringList EntryWork::odd(int row, const core::Visit& visit) const {
    QStringList out = records::oddVisit(m_desk.session(), visit, changed(row));
    const auto was = changed(row);
    for (const auto& [sign, text] : {std::pair(core::Sign::Afb, tr("American foulbrood seen.")),
                                     std::pair(core::Sign::Efb, tr("European foulbrood seen."))})
        if (visit.signs.has(sign) && !(was && was->signs.has(sign))) out.prepend(text); // one letter holds a yard
    return out;
}

EntryWork::Answer EntryWork::save(int row, bool asks) {
    using K = Answer::Kind;
    const auto draft = typed(row);
    if (!draft) return {};
    const core::ColonyId colony = m_rows[static_cast<size_t>(row)].colony;
    m_places.erase(row); // as the book is now
    m_problems.erase(row);
    try {
        if (const auto& found = problems(row); !found.empty())
            return {K::Refused, found.front().text, found.front().field};
        const auto was = changed(row);
        const core::Visit visit = visit::visitOf(*draft, place(row));
        QStringList ask;
        for (const QString& sentence : odd(row, visit))
            if (!m_asked.contains({colony, sentence})) ask << sentence;
        if (asks)
            for (const QString& sentence : ask) m_asked.insert({colony, sentence});
        if (!ask.isEmpty()) return {K::Asked, tr("%1 Save all the same? Enter again saves.").arg(ask.join(u' ')), {}};
        const bool saved = m_desk.save(was ? tr("Change a visit") : tr("Log a visit"), [&](const edit::EditContext& c) {
            return was ? edit::changeVisit(c, visit) : edit::logVisit(c, visit);
        });
        if (!saved) return {K::Refused, tr("Nothing is saved yet: the question was not answered."), {}};
        m_entry.drop(colony, was ? was->id : core::VisitId{});
        return {K::Saved, {}, {}};
    } catch (const std::exception& e) {
        const auto* known = dynamic_cast<const core::Error*>(&e);
        return {K::Refused, known ? known->userMessage() : QString::fromUtf8(e.what()), {}};
    }
}

} // namespace ui::entry
