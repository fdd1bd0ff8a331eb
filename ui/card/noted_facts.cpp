#include "ui/card/noted_facts.h"

#include "core/rules/feed_given.h"
#include "ui/look/queen_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::card {

namespace {

using core::rules::ColonyFed;

struct Noted {
    Q_DECLARE_TR_FUNCTIONS(Noted)
};

QString joined(const QStringList& parts) { return parts.join(QStringLiteral(", ")); }

/// "marked green, disc 17"
QString markWords(const core::Queen& q) {
    QStringList parts;
    if (q.mark && *q.mark != core::QueenMark::Unmarked)
        parts << (q.born && look::markMismatch(q.born, q.mark).isEmpty()
                      ? Noted::tr("marked") // in the colour that is said of her year
                      : Noted::tr("marked %1").arg(look::markText(*q.mark)));
    if (q.mark == core::QueenMark::Unmarked) parts << look::markText(*q.mark);
    if (!q.tag.isEmpty()) parts << Noted::tr("disc %1").arg(q.tag);
    return joined(parts);
}

QString ageWords(std::optional<int> born, core::Day on) {
    if (!born) return Noted::tr("year not recorded");
    return Noted::tr("%1, %2").arg(look::ageText(*born, on), look::queenMark(*born).name);
}

QString headText(const core::Queen& q, core::Day on) {
    QStringList parts{ageWords(q.born, on), markWords(q), Noted::tr("since %1").arg(look::dayTextFrom(q.since, on))};
    if (q.origin) parts << look::originText(*q.origin);
    parts.removeAll(QString());
    return joined(parts);
}

void addQueen(CardContent& card, const std::vector<core::Queen>& queens, std::optional<int> colonysYear, core::Day on) {
    const core::Queen* head = headOn(queens, on);
    if (card.side && head) {
        card.side->queenBorn = head->born;
        card.side->queenMark = head->mark;
        card.side->queenTag = head->tag;
    }
    const auto gone = std::find_if(queens.rbegin(), queens.rend(), [&](const core::Queen& q) { return q.since <= on; });
    QString text;
    if (head)
        text = headText(*head, on);
    else if (gone != queens.rend() && gone->until)
        text = Noted::tr("none is noted; the last one: %1, %2")
                   .arg(look::fateText(*gone->fate), look::dayTextFrom(*gone->until, on));
    else if (colonysYear)
        text = ageWords(colonysYear, on);
    if (text.isEmpty()) return;
    const auto after = std::find_if(card.facts.begin(), card.facts.end(),
                                    [](const auto& fact) { return fact.first == cardQueenName(); });
    card.facts.insert(after == card.facts.end() ? after : std::next(after), {Noted::tr("Her age"), text});
    if (!head) return;
    if (const QString odd = look::markMismatch(head->born, head->mark); !odd.isEmpty()) card.cautions << odd;
}

/// "4 L of syrup, 2.5 kg of fondant"
QString amountsText(const ColonyFed& fed, const core::ShownUnits& units) {
    QStringList parts;
    for (const auto& [what, amount] : fed.amounts) {
        core::Feeding f;
        f.what = what;
        QStringList of;
        if (amount.millilitres > 0) {
            f.volume = core::Millilitres{static_cast<qint32>(amount.millilitres)};
            of << records::amountText(f, units);
        }
        if (amount.decagrams > 0) {
            f.weight = core::Decagrams{static_cast<qint32>(amount.decagrams)};
            of << records::amountText(f, units);
        }
        parts << Noted::tr("%1 of %2").arg(of.join(Noted::tr(" and ")), records::feedWord(what));
    }
    return joined(parts);
}

QString sugarText(const ColonyFed& fed, core::WeightUnit unit) {
    if (fed.sugarKg <= 0) return {};
    const QString kg = look::shortWeightOf(static_cast<qint64>(fed.sugarKg * 1'000'000 + 0.5), unit);
    return fed.sugarUnknown > 0 ? Noted::tr(" (%1 of sugar where it is known)").arg(kg)
                                : Noted::tr(" (%1 of sugar)").arg(kg);
}

/// The year of bees: from the first of January, in the south from the first of July.
core::Day seasonStart(core::Day on, bool southern) {
    const QDate date = core::toDate(on);
    if (!southern) return core::dayOf(date.year(), 1, 1);
    return core::dayOf(date.month() >= 7 ? date.year() : date.year() - 1, 7, 1);
}

/// Beside what rule 4.12 still asks for: what was given since the reading that it goes by.
QString sinceText(const std::vector<core::Feeding>& feedings, const core::rules::ColonyFacts& f, core::Day on,
                  const core::ShownUnits& units) {
    const auto seen = f.gross ? f.weighed : f.storesDay;
    if (!seen) return {};
    const ColonyFed fed = core::rules::fedBetween(feedings, *seen, on);
    const QString what =
        fed.feedings > 0 ? amountsText(fed, units) + sugarText(fed, units.weight) : Noted::tr("nothing");
    return (f.gross ? Noted::tr("given since it was weighed on %1: %2")
                    : Noted::tr("given since its stores were counted on %1: %2"))
        .arg(look::dayTextFrom(*seen, on), what);
}

void addFeed(CardContent& card, const std::vector<core::Feeding>& feedings, const desk::Reading& r,
             core::ColonyIx colony) {
    const core::Day on = r.snapshot.on;
    const core::ShownUnits units = r.snapshot.settings.shown();
    const auto& f = r.factsOf(colony);
    const core::Day from = seasonStart(on, r.snapshot.yard(f.yard).southern());
    QStringList parts;
    if (const ColonyFed fed = core::rules::fedBetween(feedings, from, on); fed.feedings > 0)
        parts << Noted::tr("%1 since %2%3; last on %4")
                     .arg(amountsText(fed, units), look::dayTextFrom(from, on), sugarText(fed, units.weight),
                          look::dayTextFrom(*fed.last, on));
    for (const core::rules::Feed& need : r.plan.feed)
        if (need.colony == colony)
            parts
                << Noted::tr("still needed by its weight: %1 of syrup").arg(look::feedOf(need.halfLitres, units.volume))
                << sinceText(feedings, f, on, units);
    parts.removeAll(QString());
    if (!parts.isEmpty()) card.facts.emplace_back(Noted::tr("Feed"), parts.join(QStringLiteral("; ")));
}

} // namespace

const core::Queen* headOn(const std::vector<core::Queen>& queens, core::Day day) {
    const auto heads = [day](const core::Queen& q) { return q.since <= day && (!q.until || day < *q.until); };
    const auto found = std::find_if(queens.rbegin(), queens.rend(), heads);
    return found == queens.rend() ? nullptr : &*found;
}

void addNoted(CardContent& card, const core::edit::Session& book, const desk::Reading& r, core::ColonyIx colony) {
    const core::SnapColony& c = r.snapshot.colony(colony);
    addQueen(card, book.queensOf(c.id), c.queenBorn, r.snapshot.on);
    addFeed(card, book.feedingsOf(c.id), r, colony);
}

} // namespace ui::card
