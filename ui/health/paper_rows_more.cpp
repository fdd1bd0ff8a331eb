#include "core/model/kit_words.h"
#include "core/rules/kit_piles.h"
#include "core/rules/limits.h"
#include "core/rules/near_sources.h"
#include "ui/health/health_words.h"
#include "ui/health/paper_rows.h"
#include "ui/kit/kit_book.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

#include <algorithm>
#include <cmath>

// The rows of the page Samples that are no samples: who stands near, kit, holds that were lifted.

namespace ui::health {

namespace rules = core::rules;

namespace {

PaperRow headed(const QString& title) {
    PaperRow out;
    out.row.kind = board::RowKind::Section;
    out.row.title = title;
    return out;
}

PaperRow said(const QString& text) {
    PaperRow out;
    out.row.kind = board::RowKind::Note;
    out.row.lines << text;
    return out;
}

PaperRow line(const QString& title, const QString& right, const QString& text) {
    PaperRow out;
    out.row.title = title;
    out.row.right = right;
    out.row.lines << text;
    return out;
}

QString wayText(double metres, core::LengthUnit unit) {
    return QStringLiteral("%1 %2").arg(QString::number(std::lround(metres * 1000 / core::millimetresIn(unit))),
                                       core::unitSign(unit));
}

QString sentence(QString words) {
    words[0] = words[0].toUpper();
    return words + u'.';
}

QString hivesText(int hives) { return hives == 1 ? Health::tr("1 hive") : Health::tr("%1 hives").arg(hives); }

/// "afb.near_m 1000 m: ... (source)".
QString limitSentence(const core::Settings& settings, const char* name, const QString& says) {
    const rules::Limit limit = rules::limitOf(settings, name);
    return Health::tr("%1: %2. Source: %3").arg(says, limit.value, limit.source);
}

void addNear(const PaperBook& book, const rules::NearSource& n, std::vector<PaperRow>& out) {
    const core::Snapshot& s = book.snapshot;
    const core::LengthUnit unit = s.settings.showLength;
    out.push_back(
        headed(Health::tr("%1 in %2: American foulbrood %3, last day %4")
                   .arg(s.colony(n.source).shown, s.yard(n.yard).name,
                        n.confirmed ? Health::tr("confirmed") : Health::tr("suspected"), look::dayText(n.last))));
    for (const rules::NearYard& y : n.yards)
        out.push_back(line(Health::tr("%1, %2").arg(s.yard(y.yard).name, hivesText(y.hives)), wayText(y.metres, unit),
                           y.near
                               ? y.robbing ? Health::tr("Near, and its bees may rob the source.") : Health::tr("Near.")
                               : Health::tr("Its bees may rob the source.")));
    for (const core::YardIx y : n.unknown)
        out.push_back(line(s.yard(y).name, Health::tr("unknown"),
                           Health::tr("Not known how far: coordinates are not recorded of it or of %1. That does not "
                                      "mean far.")
                               .arg(s.yard(n.yard).name)));
    for (const rules::NearHive& h : n.hives) {
        out.push_back(line(s.colony(h.colony).shown, look::distanceOf(n.at, h.at, unit),
                           Health::tr("Within drift of the source's stand, in the same yard.")));
        out.back().row.colony = s.colony(h.colony).id;
    }
    if (n.yards.empty() && n.unknown.empty() && n.hives.empty())
        out.push_back(said(Health::tr("No other yard with hives, and no hive of its yard, stands within the limits.")));
}

QString causeText(const PaperBook& book, const core::Snapshot& whole, const rules::LiftedHold& h) {
    const QString day = look::dayText(h.to + 1);
    const auto withPaper = [&](const QString& what) {
        const core::SnapResult& r = whole.results[*h.result];
        const QString said = Health::tr("%1 of %2, by %3").arg(what, day, r.by);
        return r.paper.isEmpty() ? said : Health::tr("%1, paper %2").arg(said, r.paper);
    };
    switch (h.by) {
    case rules::LiftedBy::Release:
        return Health::tr("Ended by %1.").arg(withPaper(Health::tr("the release")));
    case rules::LiftedBy::OfYard:
        return Health::tr("Ended by %1.").arg(withPaper(Health::tr("the release of its yard")));
    case rules::LiftedBy::Negative:
        return Health::tr("Ended by %1.").arg(withPaper(Health::tr("the negative")));
    case rules::LiftedBy::Check:
        return Health::tr("Ended by the brood check of %1.").arg(day);
    case rules::LiftedBy::Ended:
        return Health::tr("Nothing lifted it: %1 ended.").arg(book.name(h.colony));
    case rules::LiftedBy::Elsewhere:
        break;
    }
    return Health::tr("Free from %1 on by what is recorded of another colony: the answer of a source, say.").arg(day);
}

} // namespace

std::vector<PaperRow> nearRows(const PaperBook& book) {
    std::vector<PaperRow> out;
    const core::Settings& settings = book.snapshot.settings;
    for (const rules::NearSource& n : rules::nearSources(rules::Evidence(book.snapshot)))
        if (!book.only || book.snapshot.yard(n.yard).id == *book.only) addNear(book, n, out);
    if (out.empty())
        out.push_back(said(book.only
                               ? Health::tr("No source of American foulbrood stands, or stood last, in this yard.")
                               : Health::tr("No source of American foulbrood is in the book.")));
    out.push_back(headed(Health::tr("The limits")));
    out.push_back(said(limitSentence(settings, "afb.near_m", Health::tr("Near, between yards"))));
    out.push_back(said(limitSentence(settings, "afb.rob_m", Health::tr("Robbing, between yards"))));
    out.push_back(said(limitSentence(settings, "move.drift_m", Health::tr("Drift, within the yard"))));
    out.push_back(said(Health::tr("Where a zone begins and ends, the authority says.")));
    return out;
}

std::vector<PaperRow> kitRows(const PaperBook& book, const std::vector<rules::KitPile>& piles) {
    std::vector<PaperRow> out;
    const auto place = [&](std::optional<core::YardId> yard) {
        return yard ? book.yardName(*yard) : Health::tr("the store room");
    };
    std::vector<PaperRow> apart;
    for (const rules::KitPile& pile : piles) {
        const bool here = !book.only || pile.place.yard == book.only;
        if (!here || pile.count == 0 || pile.place.state != core::kit::kQuarantined) continue;
        apart.push_back(line(Health::tr("%1 × %2").arg(QString::number(pile.count), pile.place.part),
                             place(pile.place.yard), sentence(kit::apartText(book.snapshot, pile))));
    }
    if (!apart.empty()) out.push_back(headed(Health::tr("In quarantine: never offered, and waiting for its end")));
    out.insert(out.end(), apart.begin(), apart.end());
    std::vector<PaperRow> ended;
    for (auto e = book.kitEnds.rbegin(); e != book.kitEnds.rend(); ++e) {
        if (!book.shows(e->colony, e->yard)) continue;
        QString kit = Health::tr("%1 × %2").arg(QString::number(e->count), e->part);
        if (e->colony) kit = Health::tr("%1 off %2").arg(kit, book.name(*e->colony));
        QStringList parts{Health::tr("by %1").arg(e->by)};
        if (!e->paper.isEmpty()) parts << Health::tr("paper %1").arg(e->paper);
        parts << Health::tr("lay in %1").arg(place(e->yard));
        if (!e->note.isEmpty()) parts << e->note;
        PaperRow row = line(kit, Health::tr("%1, %2").arg(records::kitEndWord(e->how), look::dayText(e->day)),
                            parts.join(QStringLiteral(", ")));
        row.row.colony = e->colony;
        row.record =
            records::RecordRow{records::RecordKind::KitEnd, e->id.value, e->day, Health::tr("End of kit"), {}, false};
        ended.push_back(std::move(row));
    }
    if (!ended.empty()) out.push_back(headed(Health::tr("Ended: irradiated, dipped, burned")));
    out.insert(out.end(), ended.begin(), ended.end());
    if (out.empty()) out.push_back(said(Health::tr("No kit is kept apart, and none has ended.")));
    out.push_back(said(Health::tr("What may be done with kit of a foulbrood colony, the inspector decides.")));
    return out;
}

std::vector<PaperRow> liftedRows(const PaperBook& book, const core::Snapshot& whole,
                                 const std::vector<rules::LiftedHold>& lifted) {
    std::vector<PaperRow> out;
    for (const rules::LiftedHold& h : lifted) {
        if (!book.shows(h.colony, {})) continue;
        const auto yard = book.only ? std::nullopt : book.yardOf(h.colony);
        const QString name =
            yard ? Health::tr("%1 in %2").arg(book.name(h.colony), book.yardName(*yard)) : book.name(h.colony);
        const QString from = h.before ? Health::tr("before %1").arg(look::dayText(h.from)) : look::dayText(h.from);
        PaperRow row = line(Health::tr("%1: %2").arg(name, look::holdWithin(h.kind)),
                            Health::tr("%1 to %2").arg(from, look::dayText(h.to)), causeText(book, whole, h));
        row.row.colony = h.colony;
        out.push_back(std::move(row));
    }
    if (out.empty()) out.push_back(said(Health::tr("No hold has ended in these days.")));
    return out;
}

} // namespace ui::health
