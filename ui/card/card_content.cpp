#include "ui/card/card_content.h"

#include "core/edit/edit_context.h"
#include "ui/card/card_whys.h"
#include "ui/form/book_options.h"
#include "ui/look/end_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>

namespace ui::card {

namespace {

struct Cards {
    Q_DECLARE_TR_FUNCTIONS(Cards)
};

QString strengthText(const core::rules::ColonyFacts& f, core::Day on) {
    if (f.strength) {
        QString text = Cards::tr("%1 on %2").arg(look::framesOf(*f.strength), look::dayTextFrom(*f.counted, on));
        if (f.strengthClass) text += QStringLiteral(", ") + look::classText(*f.strengthClass);
        return text;
    }
    switch (f.noStrength) {
    case core::rules::NoStrength::NoBees:
        return Cards::tr("no bees seen");
    case core::rules::NoStrength::CountOld:
        if (f.counted && f.lastCount)
            return Cards::tr("%1 on %2, too old to go by").arg(look::framesOf(*f.lastCount), look::dayText(*f.counted));
        return Cards::tr("last count too old to go by");
    case core::rules::NoStrength::NoCount:
        break;
    }
    return Cards::tr("not counted");
}

QString storesText(const core::rules::ColonyFacts& f) {
    if (!f.stores && !f.upperStores) return look::dash();
    QString text = f.stores ? look::framesOf(*f.stores) : look::dash();
    if (f.boxes == 2)
        text = Cards::tr("below %1, above %2").arg(text, f.upperStores ? look::framesOf(*f.upperStores) : look::dash());
    return text;
}

QString placeText(const desk::Reading& r, core::ColonyIx colony) {
    const core::SnapStay* stay = r.snapshot.placeOf(colony);
    if (!stay) return Cards::tr("stands nowhere");
    return Cards::tr("%1 · stand %2 · entrance %3")
        .arg(r.snapshot.yard(stay->yard).name, stay->standName, look::compassText(stay->headingDeg));
}

void addFacts(CardContent& out, const desk::Reading& r, core::ColonyIx colony) {
    const auto& f = r.factsOf(colony);
    const core::SnapColony& c = r.snapshot.colony(colony);
    out.facts.emplace_back(Cards::tr("Strength"), strengthText(f, r.snapshot.on));
    out.facts.emplace_back(cardQueenName(), look::queenText(f.queen));
    out.facts.emplace_back(Cards::tr("Stores"), storesText(f));
    out.facts.emplace_back(Cards::tr("Weight"),
                           f.gross ? look::weightOf(*f.gross, r.snapshot.settings.showWeight) : look::dash());
    const QString kind = r.snapshot.boxKindOf(colony).name;
    out.facts.emplace_back(Cards::tr("Boxes"),
                           f.boxes == 2 ? Cards::tr("two of %1").arg(kind) : Cards::tr("one of %1").arg(kind));
    out.facts.emplace_back(Cards::tr("Since"), look::dayText(c.since));
}

void addPlan(CardContent& out, const desk::Reading& r, core::ColonyIx colony) {
    const auto name = [&r](core::ColonyIx c) { return r.snapshot.colony(c).shown; };
    QString plan;
    if (const core::rules::Union* u = r.unionOf(colony))
        plan = u->moved == colony ? Cards::tr("carried to %1 and united").arg(name(u->host))
                                  : Cards::tr("%1 is united with it, here").arg(name(u->moved));
    for (const core::rules::ShakeOut& o : r.plan.shakeOuts) {
        if (o.colony == colony) plan = Cards::tr("shaken out before %1").arg(name(o.into));
        if (o.into == colony)
            plan += (plan.isEmpty() ? QString() : QStringLiteral("; ")) +
                    Cards::tr("%1 is shaken out before it").arg(name(o.colony));
    }
    for (const core::rules::Feed& f : r.plan.feed)
        if (f.colony == colony)
            plan += (plan.isEmpty() ? QString() : QStringLiteral("; ")) +
                    Cards::tr("feed %1").arg(look::feedOf(f.halfLitres, r.snapshot.settings.showVolume));
    if (!plan.isEmpty()) out.facts.emplace_back(Cards::tr("Plan"), plan);
}

void addHolds(CardContent& out, const desk::Reading& r, core::ColonyIx colony) {
    for (const core::rules::Hold& h : r.holdsOf(colony)) {
        out.holds.push_back({QString(core::rules::holdLetter(h.kind)), look::holdTitle(h.kind), h.told, h.lift});
    }
    for (const core::rules::ColonyCaution& c : r.plan.cautions)
        if (c.colony == colony) out.cautions << c.caution.because;
}

} // namespace

QString cardQueenName() { return Cards::tr("Queen"); }

CardContent cardOf(const desk::Reading& r, core::ColonyIx colony) {
    CardContent out;
    out.label = r.snapshot.colony(colony).shown;
    out.place = placeText(r, colony);
    out.side = sideOf(r, colony);
    addFacts(out, r, colony);
    addPlan(out, r, colony);
    addHolds(out, r, colony);
    out.figures = figuresOf(r, colony);
    out.whys = whysOf(r, colony);
    return out;
}

CardContent endedCardOf(const core::edit::Session& book, const core::Colony& colony) {
    CardContent out;
    out.label = form::nameOn(book, colony, book.clock().today());
    out.ended = Cards::tr("It ended: %1.").arg(look::endText(colony));
    book.read([&](const core::edit::EditContext& c) {
        const auto places = c.placementsOf(colony.id);
        const auto stand = places.empty() ? std::nullopt : c.stand(places.back().stand);
        const auto yard = stand ? c.yard(stand->yard) : std::nullopt;
        out.place =
            yard ? Cards::tr("%1 · stood last on stand %2").arg(yard->name, stand->name) : Cards::tr("stood nowhere");
        const auto kind = c.boxKind(colony.box);
        out.facts.emplace_back(Cards::tr("Box"), kind ? kind->name : look::dash());
    });
    out.facts.emplace_back(Cards::tr("Since"), look::dayText(colony.since));
    if (!colony.note.isEmpty()) out.facts.emplace_back(Cards::tr("Note"), colony.note);
    for (const records::NewRecordWords& w : records::newRecordWords())
        if (!records::isOf(w.what, colony)) out.barred.push_back(w.what);
    return out;
}

} // namespace ui::card
