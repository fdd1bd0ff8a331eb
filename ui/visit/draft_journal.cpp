#include "ui/visit/draft_journal.h"

#include "core/base/error.h"
#include "ui/visit/draft_cells.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <algorithm>

namespace ui::visit {

using core::Error;

namespace {

struct Journal {
    Q_DECLARE_TR_FUNCTIONS(ui::visit::Journal)
};

const QString kColony = QStringLiteral("colony");
const QString kWas = QStringLiteral("was");
const QString kGone = QStringLiteral("gone");
const QString kDay = QStringLiteral("day");

struct Named {
    Field field;
    const char* name;
};

constexpr Named kNamed[] = {{Field::BeesTop, "bees_top"},
                            {Field::BeesBottom, "bees_bottom"},
                            {Field::UpperTop, "upper_bees_top"},
                            {Field::UpperBottom, "upper_bees_bottom"},
                            {Field::Stores, "stores_frames"},
                            {Field::UpperStores, "upper_stores_frames"},
                            {Field::Brood, "brood_frames"},
                            {Field::Checked, "brood_checked"},
                            {Field::Supers, "supers"},
                            {Field::Gross, "gross"},
                            {Field::Mites, "mites"},
                            {Field::Sample, "mite_sample"},
                            {Field::By, "by"},
                            {Field::Note, "note"},
                            {Field::Boxes, "boxes"},
                            {Field::Queen, "queen"},
                            {Field::Signs, "signs"}};

QJsonObject headOf(core::ColonyId colony, core::VisitId was) { return {{kColony, colony.value}, {kWas, was.value}}; }

QByteArray lineOf(const QJsonObject& o) { return QJsonDocument(o).toJson(QJsonDocument::Compact) + '\n'; }

QByteArray lineOf(const HalfTyped& h) {
    QJsonObject o = headOf(h.colony, h.was);
    o[kDay] = core::isoText(h.draft.day);
    for (const Named& n : kNamed)
        if (const QString text = typedIn(h.draft, n.field); !text.isEmpty()) o[QLatin1StringView(n.name)] = text;
    return lineOf(o);
}

std::optional<HalfTyped> halfTypedOf(const QJsonObject& o) {
    HalfTyped h{{o[kColony].toInteger()}, {o[kWas].toInteger()}, {}};
    const auto day = core::parseIsoDay(o[kDay].toString());
    if (h.colony.value <= 0 || !day) return std::nullopt;
    h.draft.day = *day;
    for (const Named& n : kNamed) typeInto(h.draft, n.field, o[QLatin1StringView(n.name)].toString());
    return h;
}

/// Takes one line over into what was read before it; false: it says nothing.
bool take(const QByteArray& line, std::vector<HalfTyped>& out) {
    const QJsonDocument document = QJsonDocument::fromJson(line);
    if (!document.isObject()) return false;
    const QJsonObject o = document.object();
    const auto about = [&](const HalfTyped& h) { return h.about({o[kColony].toInteger()}, {o[kWas].toInteger()}); };
    if (o[kGone].toBool()) {
        std::erase_if(out, about);
        return true;
    }
    auto h = halfTypedOf(o);
    if (!h) return false;
    const auto same = std::ranges::find_if(out, about);
    if (same == out.end())
        out.push_back(*std::move(h));
    else
        *same = *std::move(h);
    return true;
}

Error notKept(const QString& path, const QString& why) {
    return Error(Error::Kind::Book,
                 Journal::tr("What is typed cannot be kept in %1 (%2). Save the visits before the program is closed.")
                     .arg(path, why));
}

} // namespace

std::vector<HalfTyped> DraftJournal::all() const {
    QFile file(m_path);
    if (!file.exists()) return {};
    const auto bad = [&] {
        return Error(Error::Kind::Book, Journal::tr("The visits that were half typed cannot be read from %1. Put the "
                                                    "file elsewhere to begin anew; nothing else is lost.")
                                            .arg(m_path));
    };
    if (!file.open(QIODevice::ReadOnly)) throw bad();
    std::vector<HalfTyped> out;
    while (!file.atEnd()) {
        const QByteArray line = file.readLine();
        if (!take(line, out) && line.endsWith('\n')) throw bad();
    }
    return out;
}

void DraftJournal::add(const HalfTyped& now) { append(lineOf(now)); }

void DraftJournal::addGone(core::ColonyId colony, core::VisitId was) {
    QJsonObject o = headOf(colony, was);
    o[kGone] = true;
    append(lineOf(o));
}

void DraftJournal::append(const QByteArray& line) const {
    QFile file(m_path);
    if (!file.open(QIODevice::Append) || file.write(line) != line.size() || !file.flush())
        throw notKept(m_path, file.errorString());
}

void DraftJournal::keepOnly(const std::vector<HalfTyped>& all) {
    if (all.empty()) {
        QFile file(m_path);
        if (file.exists() && !file.remove()) throw notKept(m_path, file.errorString());
        return;
    }
    QSaveFile file(m_path); // a new file takes the place of the old one once it is on the disk
    if (!file.open(QIODevice::WriteOnly)) throw notKept(m_path, file.errorString());
    for (const HalfTyped& h : all) file.write(lineOf(h));
    if (!file.commit()) throw notKept(m_path, file.errorString());
}

} // namespace ui::visit
