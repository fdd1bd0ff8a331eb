#include "ui/records/record_rows.h"

#include "core/edit/edit_context.h"
#include "ui/form/book_options.h"
#include "ui/look/end_words.h"
#include "ui/look/queen_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::records {

namespace edit = core::edit;

namespace {

struct Rows {
    Q_DECLARE_TR_FUNCTIONS(Rows)
};

constexpr int kAllVisits = 1'000'000;

/// Collects the rows of one colony.
class Collector {
public:
    Collector(const edit::Session& book, const core::Colony& colony) : m_book(book), m_colony(colony) {}

    std::vector<RecordRow> all() {
        places();
        const core::WeightUnit unit = m_book.settings().showWeight;
        for (const core::Visit& v : m_book.visitsOf(m_colony.id, kAllVisits))
            add(RecordKind::Visit, v.id.value, v.day, Rows::tr("Visit"), visitText(v, unit));
        transfers();
        feedings();
        miteFalls();
        queens();
        for (const core::Sample& s : m_book.samplesOf(m_colony.id))
            add(RecordKind::Sample, s.id.value, s.day, Rows::tr("Sample"), sampleText(s));
        for (const core::Result& r : m_book.resultsOf(m_colony.id)) result(r, false);
        for (const core::Treatment& t : m_book.treatmentsOf(m_colony.id)) treatment(t, false);
        yards();
        lineage();
        const bool joined = m_colony.end == core::EndKind::United || m_colony.end == core::EndKind::ShakenOut;
        if (m_colony.ended && !joined)
            add(RecordKind::End, m_colony.id.value, *m_colony.ended, Rows::tr("End"), look::endText(m_colony));
        for (const core::KitEnd& e : m_book.kitEnds())
            if (e.colony == m_colony.id)
                add(RecordKind::KitEnd, e.id.value, e.day, Rows::tr("End of its kit"), kitEndText(e));
        std::ranges::stable_sort(m_out, [](const RecordRow& a, const RecordRow& b) {
            if (a.day != b.day) return b.day < a.day;
            if (a.kind != b.kind) return b.kind < a.kind;
            return b.id < a.id;
        });
        return std::move(m_out);
    }

private:
    struct Stay {
        core::YardId yard;
        core::Day since;
        std::optional<core::Day> until;
    };

    RecordRow& add(RecordKind kind, qint64 id, core::Day day, const QString& title, const QString& words) {
        m_out.push_back({kind, id, day, title, words, false});
        return m_out.back();
    }

    QString nameOf(core::ColonyId colony, core::Day on) const {
        const auto found = m_book.colony(colony);
        return found ? form::nameOn(m_book, *found, on) : look::dash();
    }

    QString placeText(const core::Stand& stand, std::optional<int> heading) {
        const auto yard = m_book.yard(stand.yard);
        QString text = Rows::tr("stand %1 of %2").arg(stand.name, yard ? yard->name : look::dash());
        if (heading) text += QStringLiteral(", ") + Rows::tr("entrance %1").arg(look::compassText(*heading));
        return text;
    }

    void places() {
        m_book.read([&](const edit::EditContext& c) {
            for (const core::Placement& p : c.placementsOf(m_colony.id)) {
                const auto stand = c.stand(p.stand);
                if (!stand) continue;
                m_stays.push_back({stand->yard, p.since, p.until});
                m_places.emplace_back(p, *stand);
            }
        });
        for (const auto& [p, stand] : m_places) {
            const QString place = placeText(stand, p.headingDeg);
            if (p.first)
                add(RecordKind::Began, m_colony.id.value, p.since, Rows::tr("Began"), beganText(place));
            else
                add(RecordKind::Carry, p.id.value, p.since, Rows::tr("Carried"), Rows::tr("to %1").arg(place));
        }
    }

    QString beganText(const QString& place) const {
        QString text = Rows::tr("on %1").arg(place);
        if (m_colony.queenBorn) text += Rows::tr(", queen of %1").arg(QString::number(*m_colony.queenBorn));
        if (!m_colony.note.isEmpty()) text += QStringLiteral(", ") + m_colony.note;
        return text;
    }

    void transfers() {
        for (const core::Transfer& t : m_book.transfersOf(m_colony.id)) {
            const bool given = t.from == m_colony.id;
            const QString other = nameOf(given ? t.to : t.from, t.day);
            const QString title = given ? Rows::tr("Given to %1").arg(other) : Rows::tr("Taken from %1").arg(other);
            add(RecordKind::Transfer, t.id.value, t.day, title, transferText(t));
        }
    }

    void feedings() {
        const core::ShownUnits units = m_book.settings().shown();
        for (const core::Feeding& f : m_book.feedingsOf(m_colony.id))
            add(RecordKind::Feeding, f.id.value, f.day, Rows::tr("Fed"), feedingText(f, units));
    }

    void miteFalls() {
        for (const core::MiteFall& f : m_book.miteFallsOf(m_colony.id))
            add(RecordKind::MiteFall, f.id.value, f.day, Rows::tr("Mites fallen"), miteFallText(f));
    }

    void queens() {
        for (const core::Queen& q : m_book.queensOf(m_colony.id)) {
            QString words = queenRowText(q);
            if (q.mother) {
                const QString from = Rows::tr("raised from %1").arg(nameOf(*q.mother, q.since));
                words = words.isEmpty() ? from : words + QStringLiteral(", ") + from;
            }
            add(RecordKind::Queen, q.id.value, q.since, Rows::tr("New queen"), words);
            if (q.until)
                add(RecordKind::QueenEnd, q.id.value, *q.until, Rows::tr("Queen gone"), look::fateText(*q.fate));
        }
    }

    void result(const core::Result& r, bool ofYard) {
        const QString title = ofYard ? Rows::tr("Result of the yard") : Rows::tr("Result");
        add(RecordKind::Result, r.id.value, r.day, title, resultText(r)).ofYard = ofYard;
    }

    void treatment(const core::Treatment& t, bool ofYard) {
        const QString title = ofYard ? Rows::tr("Treatment of the yard") : Rows::tr("Treatment");
        add(RecordKind::Treatment, t.id.value, t.day, title, treatmentText(t)).ofYard = ofYard;
    }

    /// On the day of a carry it stands in both yards.
    bool stoodIn(core::YardId yard, core::Day day) const {
        return std::ranges::any_of(
            m_stays, [&](const Stay& s) { return s.yard == yard && s.since <= day && (!s.until || day <= *s.until); });
    }

    void yards() {
        std::vector<core::YardId> seen;
        for (const Stay& s : m_stays)
            if (std::ranges::find(seen, s.yard) == seen.end()) seen.push_back(s.yard);
        for (const core::YardId yard : seen) {
            for (const core::Result& r : m_book.resultsOf(yard))
                if (stoodIn(yard, r.day)) result(r, true);
            for (const core::Treatment& t : m_book.treatmentsOf(yard))
                if (stoodIn(yard, t.day)) treatment(t, true);
        }
    }

    void lineage() {
        for (const core::Lineage& l : m_book.lineageOf(m_colony.id)) {
            const bool gave = l.colony == m_colony.id;
            const QString other = nameOf(gave ? l.into : l.colony, l.day);
            add(RecordKind::Lineage, l.id.value, l.day, lineageTitle(l.how, gave, other), noteText(l));
        }
    }

    static QString lineageTitle(core::LineageHow how, bool gave, const QString& other) {
        switch (how) {
        case core::LineageHow::United:
            return gave ? Rows::tr("United into %1").arg(other) : Rows::tr("%1 united into it").arg(other);
        case core::LineageHow::ShakenOut:
            return gave ? Rows::tr("Shaken out into %1").arg(other) : Rows::tr("%1 shaken out into it").arg(other);
        case core::LineageHow::Divided:
            return gave ? Rows::tr("%1 divided from it").arg(other) : Rows::tr("Divided from %1").arg(other);
        }
        return {};
    }

    static QString noteText(const core::Lineage& l) {
        QStringList parts;
        if (!l.by.isEmpty()) parts << Rows::tr("by %1").arg(l.by);
        if (!l.note.isEmpty()) parts << l.note;
        return parts.join(QStringLiteral(", "));
    }

    const edit::Session& m_book;
    const core::Colony& m_colony;
    std::vector<Stay> m_stays;
    std::vector<std::pair<core::Placement, core::Stand>> m_places;
    std::vector<RecordRow> m_out;
};

} // namespace

std::vector<RecordRow> recordsOf(const edit::Session& book, core::ColonyId id) {
    const auto colony = book.colony(id);
    return colony ? Collector(book, *colony).all() : std::vector<RecordRow>{};
}

} // namespace ui::records
