#include "ui/visit/visit_draft.h"

#include "ui/look/words.h"
#include "ui/visit/quarters_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::visit {

namespace {

struct Drafts {
    Q_DECLARE_TR_FUNCTIONS(Drafts)
};

bool blank(const VisitDraft& d, Field f) { return d[f].trimmed().isEmpty(); }

std::optional<int> wholeOf(const VisitDraft& d, Field f) {
    if (blank(d, f)) return std::nullopt;
    const auto n = core::parseDecimal(d[f].trimmed(), 0);
    return n && *n >= 0 && *n <= 1'000'000 ? std::optional<int>(static_cast<int>(*n)) : std::nullopt;
}

std::optional<core::Decagrams> weightOf(const VisitDraft& d, core::WeightUnit unit) {
    constexpr core::Decagrams kMost{30000};
    const auto weight = core::parseWeight(d[Field::Gross], unit);
    return weight && *weight <= kMost ? weight : std::nullopt;
}

std::optional<core::Quarters> framesOf(const VisitDraft& d, Field f) {
    return blank(d, f) ? std::nullopt : parseFrames(d[f]);
}

class Judge {
public:
    Judge(const VisitDraft& d, const VisitPlace& place) : m_d(d), m_place(place) {}

    std::vector<Problem> all() {
        day();
        unread(Field::Boxes, Drafts::tr("Brood boxes: 1 or 2."));
        unread(Field::Queen, Drafts::tr("One letter: s seen, e eggs seen, v a virgin, d a drone-layer, n none, "
                                        "l laying workers, u looked for, not known."));
        unread(Field::Signs, Drafts::tr("Letters: a American, e European foulbrood, d brood in doubt, c chalkbrood, "
                                        "s sacbrood, n nosema, w deformed wings."));
        for (Field f : {Field::BeesTop, Field::BeesBottom, Field::UpperTop, Field::UpperBottom, Field::Stores,
                        Field::UpperStores})
            frames(f);
        upper();
        whole(Field::Brood, 0, 24);
        whole(Field::Checked, 0, 24);
        whole(Field::Supers, 0, 10);
        whole(Field::Mites, 0, 10000);
        whole(Field::Sample, 1, 10000);
        together();
        if (!blank(m_d, Field::Gross) && !weightOf(m_d, m_place.weightUnit))
            add(Field::Gross, m_place.weightUnit == core::WeightUnit::Pounds
                                  ? Drafts::tr("A weight in pounds, 0 to 661.3, to 0.1.")
                                  : Drafts::tr("A weight in kilograms, 0 to 300, to 0.01."));
        if (m_out.empty() && nothingSeen()) add({}, Drafts::tr("Nothing is filled in yet."));
        return std::move(m_out);
    }

private:
    void add(std::optional<Field> field, const QString& text) { m_out.push_back({field, text}); }

    bool unread(Field f, const QString& expected) {
        if (!m_d.unread.contains(f)) return false;
        add(f, expected);
        return true;
    }

    void day() {
        constexpr Field f = Field::Day;
        if (unread(f, Drafts::tr("A day: 2026-09-15, 15 Sep 2026, 15.9. or yesterday."))) return;
        if (m_d.day > m_place.today) add(f, Drafts::tr("The day has not come yet."));
        if (m_d.day < m_place.since)
            add(f, Drafts::tr("%1 began on %2.").arg(m_place.label, look::dayText(m_place.since)));
        if (m_place.ended && m_d.day > *m_place.ended)
            add(f, Drafts::tr("%1 ended on %2.").arg(m_place.label, look::dayText(*m_place.ended)));
        if (std::ranges::find(m_place.visited, m_d.day) != m_place.visited.end())
            add(f, Drafts::tr("%1 has a visit of that day already.").arg(m_place.label));
    }

    void frames(Field f) {
        if (blank(m_d, f)) return;
        const auto q = parseFrames(m_d[f]);
        if (!q)
            add(f, Drafts::tr("Frames by quarters: 3, 3.25, 3¼ or 3 1/4."));
        else if (q->value > 4 * m_place.frames)
            add(f, Drafts::tr("The box has %1 frames.").arg(m_place.frames));
    }

    void upper() {
        if (m_d.boxes.value_or(m_place.boxesNow) == 2) return;
        for (Field f : {Field::UpperTop, Field::UpperBottom, Field::UpperStores})
            if (!blank(m_d, f)) return add(f, Drafts::tr("%1 is in one box.").arg(m_place.label));
    }

    void whole(Field f, int least, int most) {
        if (blank(m_d, f)) return;
        const auto n = wholeOf(m_d, f);
        if (!n || *n < least || *n > most) add(f, Drafts::tr("A whole number, %1 to %2.").arg(least).arg(most));
    }

    void together() {
        if (blank(m_d, Field::Mites) != blank(m_d, Field::Sample))
            add(blank(m_d, Field::Mites) ? Field::Mites : Field::Sample,
                Drafts::tr("Mites and bees: both or neither."));
        const auto brood = wholeOf(m_d, Field::Brood);
        const auto checked = wholeOf(m_d, Field::Checked);
        if (brood && checked && *checked > *brood) add(Field::Checked, Drafts::tr("More checked than there is brood."));
    }

    bool nothingSeen() const {
        if (m_d.boxes || m_d.queen || !m_d.signs.empty()) return false;
        for (size_t i = 0; i < kFields; ++i) // who looked is nothing seen
            if (static_cast<Field>(i) != Field::By && !blank(m_d, static_cast<Field>(i))) return false;
        return true;
    }

    const VisitDraft& m_d;
    const VisitPlace& m_place;
    std::vector<Problem> m_out;
};

} // namespace

std::vector<Problem> problems(const VisitDraft& draft, const VisitPlace& place) { return Judge(draft, place).all(); }

VisitDraft draftOf(const core::Visit& v, core::WeightUnit unit) {
    const auto frames = [](std::optional<core::Quarters> q) { return q ? core::framesText(*q) : QString(); };
    const auto whole = [](std::optional<int> n) { return n ? QString::number(*n) : QString(); };
    VisitDraft d;
    d.day = v.day;
    d.boxes = v.boxes;
    d.queen = v.queen;
    d.signs = v.signs;
    d[Field::BeesTop] = frames(v.beesTop);
    d[Field::BeesBottom] = frames(v.beesBottom);
    d[Field::UpperTop] = frames(v.upperBeesTop);
    d[Field::UpperBottom] = frames(v.upperBeesBottom);
    d[Field::Stores] = frames(v.stores);
    d[Field::UpperStores] = frames(v.upperStores);
    d[Field::Brood] = whole(v.broodFrames);
    d[Field::Checked] = whole(v.broodChecked);
    d[Field::Supers] = whole(v.supers);
    d[Field::Gross] = v.gross ? core::weightNumber(*v.gross, unit) : QString();
    d[Field::Mites] = whole(v.mites);
    d[Field::Sample] = whole(v.miteSample);
    d[Field::By] = v.by;
    d[Field::Note] = v.note;
    return d;
}

core::Visit visitOf(const VisitDraft& d, const VisitPlace& place) {
    core::Visit v;
    if (place.was) v.id = place.was->id;
    v.colony = place.colony;
    v.day = d.day;
    v.boxes = d.boxes;
    v.beesTop = framesOf(d, Field::BeesTop);
    v.beesBottom = framesOf(d, Field::BeesBottom);
    v.upperBeesTop = framesOf(d, Field::UpperTop);
    v.upperBeesBottom = framesOf(d, Field::UpperBottom);
    v.stores = framesOf(d, Field::Stores);
    v.upperStores = framesOf(d, Field::UpperStores);
    v.queen = d.queen;
    v.broodFrames = wholeOf(d, Field::Brood);
    v.broodChecked = wholeOf(d, Field::Checked);
    v.signs = d.signs;
    v.supers = wholeOf(d, Field::Supers);
    if (!blank(d, Field::Gross)) v.gross = weightOf(d, place.weightUnit);
    if (place.was && d[Field::Gross] == draftOf(*place.was, place.weightUnit)[Field::Gross])
        v.gross = place.was->gross; // what is kept is finer than a tenth of a pound
    v.mites = wholeOf(d, Field::Mites);
    v.miteSample = wholeOf(d, Field::Sample);
    v.by = d[Field::By].trimmed();
    v.note = d[Field::Note].trimmed();
    return v;
}

} // namespace ui::visit
