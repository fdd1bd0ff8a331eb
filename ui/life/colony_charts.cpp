#include "ui/life/colony_charts.h"

#include "core/rules/colony_over_time.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::life {

namespace {

namespace rules = core::rules;
using chart::Chart;
using chart::Kind;
using chart::Mark;
using chart::MarkKind;
using chart::Point;
using chart::Series;

struct Over {
    Q_DECLARE_TR_FUNCTIONS(Over)
};

std::optional<double> frames(std::optional<core::Quarters> q) { return q ? std::optional(q->frames()) : std::nullopt; }

class LifeCharts {
public:
    explicit LifeCharts(const ColonyLife& life)
        : m_life(life), m_boxes(rules::boxesOverTime(life.colony, life.visits, life.lineage)) {
        addHolds();
        addLineage();
    }

    std::vector<Chart> all() const { return {strength(), stores(), weight(), mites(), queen()}; }

private:
    Chart begun(const QString& title, const QString& none) const {
        Chart c;
        c.title = title;
        c.none = none;
        c.first = m_life.colony.since;
        c.last = m_life.last;
        c.marks = m_marks;
        return c;
    }

    void mark(MarkKind kind, core::Day from, std::optional<core::Day> to, const QString& sign, const QString& text) {
        m_marks.push_back({kind, from, to, sign, text});
    }

    void addHolds() {
        for (const rules::HoldSpan& h : m_life.holds)
            mark(MarkKind::Hold, h.from, h.to, QString(rules::holdLetter(h.kind)),
                 Over::tr("held: %1").arg(look::holdWithin(h.kind)));
    }

    void addLineage() {
        for (const core::Lineage& l : m_life.lineage) {
            const bool gave = l.colony == m_life.colony.id;
            const QString other = m_life.names.at(gave ? l.into : l.colony);
            switch (l.how) {
            case core::LineageHow::United:
                mark(MarkKind::Union, l.day, {}, Over::tr("U", "sign of a union"),
                     gave ? Over::tr("united into %1").arg(other) : Over::tr("%1 united into it").arg(other));
                break;
            case core::LineageHow::ShakenOut:
                mark(MarkKind::Union, l.day, {}, Over::tr("S", "sign of a shake-out"),
                     gave ? Over::tr("shaken out before %1").arg(other)
                          : Over::tr("%1 shaken out before it").arg(other));
                break;
            case core::LineageHow::Divided:
                mark(MarkKind::Divide, l.day, {}, Over::tr("D", "sign of a divide"),
                     gave ? Over::tr("divided: %1").arg(other) : Over::tr("divided from %1").arg(other));
                break;
            }
        }
    }

    Chart strength() const {
        Chart c = begun(Over::tr("Strength"), Over::tr("Its bees were never counted."));
        c.valueTitle = Over::tr("frames of bees");
        c.unit = Over::tr("frames");
        Series s{Over::tr("all boxes"), Kind::Line, {}}, part{Over::tr("one of two"), Kind::Dots, {}};
        for (const rules::StrengthThen& t : rules::strengthOverTime(m_life.visits, m_boxes, m_life.settings)) {
            Point p{t.day.number, frames(t.all), {}, {}, {}};
            if (t.boxes == 2 && t.lower && t.upper)
                p.note = Over::tr("%1 below, %2 above").arg(core::framesText(*t.lower), core::framesText(*t.upper));
            s.points.push_back(p);
            if (!t.all) addPart(part, t.day, t.lower, t.upper);
        }
        setSeries(c, s, part);
        return c;
    }

    /// Of two boxes only one was counted: no figure of the colony, but one that was written down.
    static void addPart(Series& part, core::Day day, std::optional<core::Quarters> lower,
                        std::optional<core::Quarters> upper) {
        part.points.push_back({day.number,
                               frames(lower ? lower : upper),
                               {},
                               {},
                               lower ? Over::tr("the lower box alone") : Over::tr("the upper box alone")});
    }

    static void setSeries(Chart& c, const Series& all, const Series& part) {
        c.series = {all};
        if (part.points.empty())
            c.series[0].name.clear(); // the title says it
        else
            c.series.push_back(part);
    }

    Chart stores() const {
        Chart c = begun(Over::tr("Stores"), Over::tr("Its stores were never written down."));
        c.valueTitle = Over::tr("frames of stores");
        c.unit = Over::tr("frames");
        Series s{Over::tr("all boxes"), Kind::Line, {}}, part{Over::tr("one of two"), Kind::Dots, {}};
        for (const rules::StoresThen& t : rules::storesOverTime(m_life.visits, m_boxes)) {
            Point p{t.day.number, frames(t.all), {}, {}, {}};
            if (t.lower && t.upper)
                p.note = Over::tr("%1 below, %2 above").arg(core::framesText(*t.lower), core::framesText(*t.upper));
            s.points.push_back(p);
            if (!t.all) addPart(part, t.day, t.lower, t.upper);
        }
        setSeries(c, s, part);
        return c;
    }

    Chart weight() const {
        Chart c = begun(Over::tr("Weight"), Over::tr("It was never weighed."));
        const core::WeightUnit unit = m_life.settings.showWeight;
        c.unit = core::unitSign(unit);
        c.valueTitle = Over::tr("%1, the whole hive").arg(c.unit);
        c.decimals = unit == core::WeightUnit::Kilograms ? 2 : 1;
        Series brood{Over::tr("brood boxes"), Kind::Line, {}}, supers{Over::tr("with supers"), Kind::Dots, {}};
        for (const rules::WeightThen& t : rules::weightOverTime(m_life.visits)) {
            Point p{t.day.number, t.gross.kilograms() / core::kilogramsIn(unit), {}, {}, {}};
            if (t.supers > 0) p.note = t.supers == 1 ? Over::tr("1 super") : Over::tr("%1 supers").arg(t.supers);
            (t.supers > 0 ? supers : brood).points.push_back(p);
        }
        c.series = {brood};
        if (!supers.points.empty()) c.series.push_back(supers);
        return c;
    }

    Chart mites() const {
        Chart c = begun(Over::tr("Mites"), Over::tr("No sample of mites was taken."));
        c.valueTitle = Over::tr("on 100 bees");
        c.unit = Over::tr("in 100");
        c.decimals = 1;
        Series s{QString(), Kind::Dots, {}};
        for (const rules::MitesThen& t : rules::mitesOverTime(m_life.visits)) {
            Point p{t.day.number, t.perHundred, {}, {}, Over::tr("%1 in %2 bees").arg(t.mites).arg(t.bees)};
            if (t.interval) {
                p.lower = t.interval->low;
                p.upper = t.interval->high;
            }
            s.points.push_back(p);
        }
        c.series = {s};
        addLimits(c);
        addTreatments(c);
        c.source = Over::tr("Whiskers: the exact interval of 95 %, each mite on a bee of its own (an assumption). The "
                            "limits are settings, and assumptions; labels and veterinarians decide.");
        return c;
    }

    void addLimits(Chart& c) const {
        const auto in100 = [](core::Millionths m) { return static_cast<double>(m.value) / 1e6; };
        const double spring = in100(m_life.settings.mitesSpring), fall = in100(m_life.settings.mitesFall);
        if (spring == fall) {
            c.thresholds.push_back({spring, Over::tr("caution above")});
            return;
        }
        c.thresholds.push_back(
            {spring, m_life.southern ? Over::tr("caution, July to January") : Over::tr("caution, January to July")});
        c.thresholds.push_back(
            {fall, m_life.southern ? Over::tr("caution, February to June") : Over::tr("caution, August to December")});
    }

    void addTreatments(Chart& c) const {
        for (const core::Treatment& t : m_life.treatments) {
            std::optional<core::Day> to;
            if (t.days && *t.days > 0) to = std::min(t.day + *t.days, m_life.last);
            c.marks.push_back({MarkKind::Treatment, t.day, to, Over::tr("T", "sign of a treatment"),
                               Over::tr("treated: %1").arg(t.product)});
        }
    }

    Chart queen() const {
        using core::QueenSeen;
        Chart c = begun(Over::tr("Queen"), Over::tr("Nothing was noted of a queen."));
        const auto seen = rules::queenOverTime(m_life.visits);
        std::vector<QueenSeen> levels;
        for (const QueenSeen q : {QueenSeen::None, QueenSeen::LayingWorkers, QueenSeen::DroneLayer, QueenSeen::Unknown,
                                  QueenSeen::Virgin, QueenSeen::Eggs, QueenSeen::Seen})
            if (std::ranges::find(seen, q, &rules::QueenThen::seen) != seen.end()) {
                levels.push_back(q);
                c.levels.push_back(look::queenText(q));
            }
        c.decimals = 0;
        Series s{QString(), Kind::Dots, {}};
        for (const rules::QueenThen& t : seen) {
            const auto level = std::ranges::find(levels, t.seen) - levels.begin();
            s.points.push_back({t.day.number, static_cast<double>(level), {}, {}, {}});
        }
        c.series = {s};
        for (const core::Queen& q : m_life.queens)
            c.marks.push_back({MarkKind::Queen, q.since, {}, Over::tr("Q", "sign of a queen"), queenMarkText(q)});
        return c;
    }

    static QString queenMarkText(const core::Queen& q) {
        QString text = q.born ? Over::tr("queen of %1").arg(*q.born) : Over::tr("another queen");
        if (q.born) text += QStringLiteral(", ") + look::queenMark(*q.born).name;
        return text;
    }

    const ColonyLife& m_life;
    std::vector<int> m_boxes;
    std::vector<Mark> m_marks;
};

} // namespace

std::vector<Chart> colonyCharts(const ColonyLife& life) { return LifeCharts(life).all(); }

} // namespace ui::life
