#include "ui/card/card_figures.h"

#include "core/rules/calc/bees.h"
#include "core/rules/calc/brood.h"
#include "core/rules/calc/brood_days.h"
#include "core/rules/calc/mites.h"
#include "core/rules/calc/new_queen.h"
#include "core/rules/calc/stores.h"
#include "core/rules/limits.h"
#include "ui/look/sample_text.h"
#include "ui/look/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace ui::card {

namespace {

namespace calc = core::rules::calc;

struct Figures {
    Q_DECLARE_TR_FUNCTIONS(Figures)
};

/// "7,400": to the hundred.
QString hundreds(double n) {
    QString text = QString::number(std::lround(n / 100) * 100);
    for (qsizetype at = text.size() - 3; at > 0; at -= 3) text.insert(at, u',');
    return text;
}

QString oneDecimal(double n) { return QString::number(n, 'f', 1); }

QString assumedComb(bool assumed) {
    return assumed ? Figures::tr(" Its frames are taken as Langstroth deep ones (an assumption).") : QString();
}

/// The reading knows no heights of boxes: other than of Langstroth deeps the comb is assumed.
calc::CombShare combOf(const desk::Reading& r, core::ColonyIx colony) {
    const bool langstroth = r.snapshot.boxKindOf(colony).name.startsWith(QStringLiteral("langstroth-"));
    return {1, !langstroth};
}

void addBees(const desk::Reading& r, const core::rules::ColonyFacts& f, std::vector<CardFigure>& out) {
    if (!f.strength) return;
    const calc::Bees bees = calc::beesOn(*f.strength, combOf(r, f.colony));
    QStringList sources;
    for (const calc::BeesPerFrame& b : calc::beesPerFrame())
        sources << Figures::tr("%1 a frame: %2 (%3)")
                       .arg(QString::number(b.bees), QString::fromUtf8(b.means), QString::fromUtf8(b.source));
    out.push_back({Figures::tr("Bees"),
                   Figures::tr("about %1 to %2").arg(hundreds(bees.bees.low), hundreds(bees.bees.high)),
                   Figures::tr("The range between sources. ") + sources.join(QStringLiteral("; ")) + u'.' +
                       assumedComb(bees.combAssumed)});
}

void addBrood(const desk::Reading& r, const core::rules::ColonyFacts& f, std::vector<CardFigure>& out) {
    if (!f.broodFrames || *f.broodFrames == 0) return;
    const calc::Brood brood = calc::broodOn(core::Quarters{4 * *f.broodFrames}, combOf(r, f.colony));
    out.push_back(
        {Figures::tr("Brood"),
         Figures::tr("%1 on %2; at most %3 to %4 cells")
             .arg(look::framesOf(core::Quarters{4 * *f.broodFrames}), look::dayTextFrom(*f.broodDay, r.snapshot.on),
                  hundreds(brood.cells.low), hundreds(brood.cells.high)),
         Figures::tr("Where the frames are full on both sides: 6100 (BBKA module notes, 2015) to 6688 cells a "
                     "frame (Aurell et al. 2024).") +
             assumedComb(brood.combAssumed)});
}

void addStores(const desk::Reading& r, const core::rules::ColonyFacts& f, std::vector<CardFigure>& out) {
    if (!f.stores && !f.upperStores) return;
    const core::Quarters all = f.stores.value_or(core::Quarters{}) + f.upperStores.value_or(core::Quarters{});
    const calc::CombShare comb = combOf(r, f.colony);
    const calc::Range kg = calc::storesOn(all, comb);
    const core::WeightUnit unit = r.snapshot.settings.showWeight;
    out.push_back(
        {Figures::tr("Food"),
         Figures::tr("about %1 to %2 %3")
             .arg(oneDecimal(kg.low / core::kilogramsIn(unit)), oneDecimal(kg.high / core::kilogramsIn(unit)),
                  core::unitSign(unit)),
         Figures::tr("On full frames, the range between sources: 5 lb (Comstock 1905) to 3 kg (BBKA News 216, "
                     "2013) a frame.") +
             assumedComb(comb.assumed)});
}

void addMites(const desk::Reading& r, const core::rules::ColonyFacts& f, std::vector<CardFigure>& out) {
    if (!f.mites || f.mites->sample < 1) return;
    out.push_back(
        {Figures::tr("Mites"),
         Figures::tr("%1 in %2 bees on %3: %4")
             .arg(QString::number(f.mites->mites), QString::number(f.mites->sample),
                  look::dayTextFrom(f.mites->day, r.snapshot.on), look::sampleText(f.mites->mites, f.mites->sample)),
         look::sampleSource()});
}

QString dayRange(const calc::DayRange& days) {
    return Figures::tr("%1 to %2").arg(look::shortDayText(days.first), look::shortDayText(days.last));
}

/// While somebody still waits for her.
void addNewQueen(const desk::Reading& r, const core::rules::ColonyFacts& f, std::vector<CardFigure>& out) {
    if (!f.queenDay) return;
    const bool virgin = f.queen == core::QueenSeen::Virgin;
    if (!virgin && f.queen != core::QueenSeen::None) return;
    const auto days = calc::newQueenDays(virgin ? calc::QueenFrom::Emerged : calc::QueenFrom::QueenLost, *f.queenDay);
    if (r.snapshot.on > days.lookAgain) return;
    QString text =
        virgin ? Figures::tr("the virgin may lay from %1; look for eggs on %2, at the cappings on %3")
                     .arg(dayRange(days.mayLay), look::shortDayText(days.look), look::shortDayText(days.lookAgain))
               : Figures::tr("if they rear one: she emerges %1 and may lay %2; look on %3")
                     .arg(dayRange(days.emerges), dayRange(days.mayLay), look::shortDayText(days.look));
    if (!virgin)
        text +=
            Figures::tr("; else workers may lay from %1, and the last brood has emerged by %2")
                .arg(dayRange(calc::layingWorkersFrom(*f.queenDay)), look::shortDayText(calc::broodless(*f.queenDay)));
    out.push_back(
        {Figures::tr("New queen"), text,
         Figures::tr("Counted from the day on which that was noted. MacFawn, Making Splits, Bee Culture; "
                     "swarm-control booklet; Fell, Morse (abstract); honeybeesuite.com. The day to look is an "
                     "assumption.")});
}

} // namespace

std::vector<CardFigure> figuresOf(const desk::Reading& r, core::ColonyIx colony) {
    std::vector<CardFigure> out;
    const core::rules::ColonyFacts& f = r.factsOf(colony);
    addBees(r, f, out);
    addBrood(r, f, out);
    addStores(r, f, out);
    addMites(r, f, out);
    addNewQueen(r, f, out);
    return out;
}

QString yardMitesText(const desk::Reading& r, core::YardIx yard) {
    std::vector<calc::MiteSample> samples;
    int hives = 0;
    for (const core::rules::ColonyFacts& f : r.facts) {
        if (f.yard != yard) continue;
        ++hives;
        if (f.mites && f.mites->sample > 0 && r.snapshot.on - f.mites->day <= core::rules::fixed::kSampleDays)
            samples.push_back({f.mites->mites, f.mites->sample});
    }
    const auto mites = calc::yardMites(samples, hives);
    if (!mites) return {};
    QString text = mites->colonies == 1
                       ? Figures::tr("Mites in this yard: %1 in 100, by one colony").arg(oneDecimal(mites->mean))
                       : Figures::tr("Mites in this yard: %1 in 100 on average over %2 colonies")
                             .arg(oneDecimal(mites->mean), QString::number(mites->colonies));
    if (mites->interval)
        text += Figures::tr(" (%1 to %2)").arg(oneDecimal(mites->interval->low), oneDecimal(mites->interval->high));
    if (!mites->enough) text += Figures::tr("; %1 are to be sampled").arg(std::min(calc::kColoniesToSample, hives));
    return text + u'.';
}

QString yardMitesSource() {
    return Figures::tr("Eight colonies of a yard, 300 bees each: Lee, Moon, Burkness, Hutchison, Spivak 2010. 95 % by "
                       "Student's t over the colonies, never narrower than the exact interval of all their bees (an "
                       "assumption). Samples of the last %1 days.")
        .arg(core::rules::fixed::kSampleDays);
}

} // namespace ui::card
