#include "core/rules/notifiable.h"

#include "core/base/natural_order.h"

#include <QCoreApplication>

#include <algorithm>

namespace core::rules {

namespace {

struct NotifiableWords {
    Q_DECLARE_TR_FUNCTIONS(core::rules::NotifiableWords)
};

constexpr char kBritain[] =
    "Bee Diseases and Pests Control (England) Order 2006 SI 342 and its sister orders, National "
    "Bee Unit leaflet “Statutory procedures”";
constexpr char kScotland[] = "Scottish Government, “Honey bee health: guidance”, gov.scot; sister order of the Bee "
                             "Diseases and Pests Control (England) Order 2006";
constexpr char kUnion[] = "EU Reference Laboratory for bee health, leaflet “American foulbrood” (notifiable for trade)";
constexpr char kBeetle[] = "European Commission, “Small hive beetle outbreaks”, food.ec.europa.eu: Regulation "
                           "2016/429 article 18 and 2018/1882";
constexpr char kNewZealand[] = "AFB Reporting and Destruction Form, afb.org.nz, under the Biosecurity (National AFB "
                               "Pest Management Plan) Order 1998";
constexpr char kQueensland[] = "Queensland Government, “American foulbrood”, business.qld.gov.au";
constexpr char kGermany[] = "Bienenseuchen-Verordnung § 10";

std::vector<Notifiable> shipped() {
    using enum Reportable;
    std::vector<Notifiable> lines;
    const auto add = [&](const char* place, Reportable disease, const char* source, const char* tell = "") {
        lines.push_back(
            {{}, QString::fromUtf8(place), disease, true, QString::fromUtf8(tell), QString::fromUtf8(source)});
    };
    for (const Reportable disease : {Afb, Efb, SmallHiveBeetle, Tropilaelaps}) add("England", disease, kBritain);
    add("European Union", Afb, kUnion);
    add("European Union", SmallHiveBeetle, kBeetle);
    add("Germany", Afb, kGermany);
    add("Germany", SmallHiveBeetle, kBeetle);
    add("New Zealand", Afb, kNewZealand, "the AFB Management Agency, within 7 days of becoming aware");
    add("Queensland", Afb, kQueensland);
    for (const Reportable disease : {Afb, Efb, SmallHiveBeetle, Tropilaelaps}) add("Scotland", disease, kScotland);
    for (const Reportable disease : {Afb, Efb, SmallHiveBeetle, Tropilaelaps}) add("Wales", disease, kBritain);
    return lines;
}

bool sameSubject(const Notifiable& a, const Notifiable& b) {
    return a.disease == b.disease && folded(a.place) == folded(b.place);
}

bool before(const NotifiableLine& a, const NotifiableLine& b) {
    if (folded(a.row.place) != folded(b.row.place)) return NaturalLess()(a.row.place, b.row.place);
    return a.row.disease < b.row.disease;
}

QString sourced(const QString& source) { return source.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(source); }

QString unknownText(const QString& place, Reportable disease) {
    const QString name = reportableText(disease);
    QString text = place.isEmpty()
                       ? NotifiableWords::tr("Whose rules hold here is not recorded: ask your authority "
                                             "whether %1 must be reported.")
                             .arg(name)
                       : NotifiableWords::tr("Whether %1 must be reported in %2 is not known here: ask your "
                                             "authority.")
                             .arg(name, place);
    if (disease == Reportable::Afb) text += u' ' + NotifiableWords::tr("It is notifiable nearly everywhere.");
    return text;
}

} // namespace

const std::vector<Notifiable>& shippedNotifiables() {
    static const std::vector<Notifiable> lines = shipped();
    return lines;
}

std::vector<NotifiableLine> notifiableLines(std::span<const Notifiable> own) {
    std::vector<NotifiableLine> lines;
    for (const Notifiable& n : own) lines.push_back({n, true});
    for (const Notifiable& n : shippedNotifiables())
        if (std::ranges::none_of(own, [&](const Notifiable& o) { return sameSubject(o, n); }))
            lines.push_back({n, false});
    std::ranges::stable_sort(lines, before);
    return lines;
}

std::vector<NotifiableLine> notifiableLines(const QString& place, std::span<const Notifiable> own) {
    auto lines = notifiableLines(own);
    const QString key = folded(place.trimmed());
    std::erase_if(lines, [&](const NotifiableLine& line) { return folded(line.row.place) != key; });
    return lines;
}

QStringList notifiablePlaces(std::span<const Notifiable> own) {
    QStringList places;
    for (const NotifiableLine& line : notifiableLines(own))
        if (places.isEmpty() || folded(places.back()) != folded(line.row.place)) places << line.row.place;
    return places;
}

std::optional<NotifiableLine> mustReport(const QString& place, Reportable disease, std::span<const Notifiable> own) {
    for (const NotifiableLine& line : notifiableLines(place, own))
        if (line.row.disease == disease) return line;
    return std::nullopt;
}

Reportable reportable(Disease disease) { return disease == Disease::Afb ? Reportable::Afb : Reportable::Efb; }

QString reportableText(Reportable disease) {
    switch (disease) {
    case Reportable::Afb:
        return NotifiableWords::tr("American foulbrood");
    case Reportable::Efb:
        return NotifiableWords::tr("European foulbrood");
    case Reportable::SmallHiveBeetle:
        return NotifiableWords::tr("Small hive beetle");
    case Reportable::Tropilaelaps:
        return NotifiableWords::tr("Tropilaelaps");
    case Reportable::Varroa:
        return NotifiableWords::tr("Varroa");
    }
    return {};
}

QString authorityText() { return NotifiableWords::tr("The authority decides, rules change: look it up."); }

QString reportText(const QString& place, Reportable disease, std::span<const Notifiable> own) {
    const auto line = mustReport(place, disease, own);
    if (!line) return unknownText(place.trimmed(), disease) + u' ' + authorityText();
    const Notifiable& row = line->row;
    const QString name = reportableText(disease);
    QString text = NotifiableWords::tr("%1 need not be reported in %2, as this book has it%3.")
                       .arg(name, row.place, sourced(row.source));
    if (row.must)
        text = NotifiableWords::tr("%1 must be reported in %2: tell %3%4.")
                   .arg(name, row.place, row.tell.isEmpty() ? NotifiableWords::tr("your authority, at once") : row.tell,
                        sourced(row.source));
    return text + u' ' + authorityText();
}

} // namespace core::rules
