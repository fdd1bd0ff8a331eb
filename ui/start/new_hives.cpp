#include "ui/start/new_hives.h"

#include "core/edit/edits.h"
#include "core/edit/hive_row.h"
#include "ui/form/book_options.h"
#include "ui/form/typed.h"
#include "ui/start/coordinates.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <set>

namespace ui::start {

namespace {

struct Starts {
    Q_DECLARE_TR_FUNCTIONS(Starts)
};

constexpr int kRowsApartMm = 3000;

/// What stands in a yard today.
std::vector<std::pair<QString, core::MmPoint>> standing(const desk::Desk& desk, core::YardId yard) {
    std::vector<std::pair<QString, core::MmPoint>> out;
    const desk::Reading& r = desk.reading();
    const auto at = r.find(yard);
    for (const core::rules::ColonyFacts& f : r.facts) {
        const core::SnapStay* stay = at && f.yard == *at ? r.snapshot.placeOf(f.colony) : nullptr;
        if (stay) out.emplace_back(r.snapshot.colony(f.colony).label, stay->at);
    }
    return out;
}

qint32 toTenth(qint32 mm) { return (mm + (mm < 0 ? -50 : 50)) / 100 * 100; }

} // namespace

std::optional<core::BoxKind> boxNamed(const core::edit::Session& session, const QString& name) {
    for (const core::BoxKind& kind : session.boxKinds())
        if (kind.name == name) return kind;
    return std::nullopt;
}

QString usualBox(const desk::Desk& desk) {
    const core::Snapshot& s = desk.reading().snapshot;
    std::map<qint32, int> count;
    for (const core::SnapColony& c : s.colonies)
        if (c.living()) ++count[c.boxKind];
    const auto most = std::ranges::max_element(count, {}, [](const auto& entry) { return entry.second; });
    return most == count.end() ? QStringLiteral("langstroth-10") : s.boxKinds[static_cast<size_t>(most->first)].name;
}

QSet<QString> labelsInUse(const desk::Desk& desk) {
    QSet<QString> out;
    for (const core::SnapColony& c : desk.reading().snapshot.colonies)
        if (c.living()) out.insert(c.label.toCaseFolded());
    return out;
}

QString nextLabel(const desk::Desk& desk, core::YardId yard) {
    const QSet<QString> used = labelsInUse(desk);
    const auto there = standing(desk, yard);
    if (!there.empty()) {
        auto label = core::edit::labelAfter(there.back().first, 1); // the greatest in natural order
        while (label && used.contains(label->toCaseFolded())) label = core::edit::labelAfter(*label, 1);
        return label.value_or(QString());
    }
    const auto ix = desk.reading().find(yard);
    const QString name = ix ? desk.reading().snapshot.yard(*ix).name : QString();
    for (int letters = 1; letters <= std::min<int>(3, static_cast<int>(name.size())); ++letters) {
        const QString label = name.left(1).toUpper() + name.mid(1, letters - 1).toLower() + u'1';
        if (!used.contains(label.toCaseFolded()) && !label.contains(u'@') && !label.contains(u' ')) return label;
    }
    return {};
}

core::MmPoint nextRowStart(const desk::Desk& desk, core::YardId yard) {
    const auto ix = desk.reading().find(yard);
    const core::MmPoint gate = ix ? desk.reading().snapshot.yard(*ix).gate : core::MmPoint{};
    const auto there = standing(desk, yard);
    if (there.empty()) return {gate.x, gate.y + kRowsApartMm};
    const auto [west, east] = std::ranges::minmax(there, {}, [](const auto& h) { return h.second.x; });
    const auto [south, north] = std::ranges::minmax(there, {}, [](const auto& h) { return h.second.y; });
    const bool gateIsNorth = gate.y > (south.second.y + north.second.y) / 2;
    const qint32 y = gateIsNorth ? south.second.y - kRowsApartMm : north.second.y + kRowsApartMm;
    return {toTenth(west.second.x), toTenth(y)};
}

std::vector<plan::StandMark> emptyStands(const desk::Desk& desk, core::YardId yard) {
    return emptyStands(desk.session(), desk.reading().snapshot, yard);
}

std::vector<plan::StandMark> emptyStands(const core::edit::Session& session, const core::Snapshot& s,
                                         core::YardId yard) {
    std::set<core::StandId> taken;
    for (size_t i = 0; i < s.livingCount(); ++i)
        if (const core::SnapStay* stay = s.placeOf({static_cast<qint32>(i)})) taken.insert(stay->stand);
    const bool past = s.on < session.clock().today();
    std::map<core::StandId, core::StandUse> uses;
    if (past)
        for (const core::StandUse& use : session.standUses(yard)) uses.emplace(use.stand, use);
    const auto there = [&](const core::Stand& stand) {
        if (!past) return !stand.removed;
        const auto use = uses.find(stand.id);
        if (use == uses.end() || use->second.first > s.on) return false;
        return !stand.removed || !use->second.last || *use->second.last > s.on;
    };
    std::vector<plan::StandMark> out;
    for (const core::Stand& stand : session.standsOf(yard))
        if (there(stand) && !taken.contains(stand.id)) out.push_back({stand.id, stand.name, stand.at});
    return out;
}

std::optional<QString> tooNear(const desk::Desk& desk, core::YardId yard, core::MmPoint at) {
    for (const auto& [label, where] : standing(desk, yard))
        if (core::squaredDistance(where, at) < qint64{core::edit::kStandApartMm} * core::edit::kStandApartMm)
            return label;
    return std::nullopt;
}

plan::HiveMark markOf(const core::BoxKind& box, const QString& label, core::MmPoint at, int headingDeg, int boxes) {
    plan::HiveMark mark;
    mark.label = label;
    mark.at = at;
    mark.headingDeg = headingDeg;
    mark.boxes = boxes;
    plan::setOutline(mark, {box.id, box.name, box.frames, box.widthMm, box.lengthMm});
    return mark;
}

form::Field boxField(const core::edit::Session& session) {
    return {.key = QStringLiteral("box"),
            .kind = form::Kind::Choice,
            .label = Starts::tr("Bo&x kind"),
            .spoken = Starts::tr("Box kind"),
            .options = form::boxOptions(session)};
}

form::Field broodBoxesField() {
    return {.key = QStringLiteral("brood"),
            .kind = form::Kind::Choice,
            .label = Starts::tr("&Brood boxes"),
            .spoken = Starts::tr("Brood boxes of each"),
            .options = {{QStringLiteral("1"), Starts::tr("one")}, {QStringLiteral("2"), Starts::tr("two")}}};
}

form::Field headingField() {
    return {.key = QStringLiteral("heading"),
            .label = Starts::tr("&Entrances look"),
            .spoken = Starts::tr("Where the entrances look: a compass word or degrees from north"),
            .hint = Starts::tr("S, SE or 135")};
}

form::Field sinceField() {
    return {.key = QStringLiteral("since"),
            .kind = form::Kind::Day,
            .label = Starts::tr("S&ince"),
            .spoken = Starts::tr("The day from which they stand there; visits can be written down from then on"),
            .hint = Starts::tr("10 May 2025"),
            .note = [](const form::Values&) { return Starts::tr("Visits can be written down from that day on."); }};
}

std::vector<form::Field> placeFields(const QString& heading) {
    return {{.key = QStringLiteral("x"),
             .label = Starts::tr("Metres e&ast"),
             .spoken = Starts::tr("Metres east of the yard's origin; west is negative"),
             .heading = heading,
             .hint = QStringLiteral("0")},
            {.key = QStringLiteral("y"),
             .label = Starts::tr("Metres n&orth"),
             .spoken = Starts::tr("Metres north of the yard's origin; south is negative"),
             .hint = QStringLiteral("0")}};
}

std::optional<core::MmPoint> placeOf(const form::Values& values) {
    const auto x = parseMetresMm(form::typed(values, QStringLiteral("x")));
    const auto y = parseMetresMm(form::typed(values, QStringLiteral("y")));
    return x && y ? std::optional(core::MmPoint{*x, *y}) : std::nullopt;
}

void putPlace(form::Values& values, core::MmPoint at) {
    values[QStringLiteral("x")] = core::metresText({at.x});
    values[QStringLiteral("y")] = core::metresText({at.y});
}

} // namespace ui::start
