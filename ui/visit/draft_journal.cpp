#include "ui/visit/draft_journal.h"

#include "core/base/error.h"
#include "core/base/file_trouble.h"
#include "core/base/input_file.h"
#include "core/base/whole_file.h"
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

Error notKept(const QFileDevice& file) {
    return Error(Error::Kind::Book,
                 Journal::tr("What is typed cannot be kept in %1: %2. Save the visits before the program is closed.")
                     .arg(file.fileName(), core::troubleOf(file).why),
                 file.errorString());
}

} // namespace

DraftJournal::Found DraftJournal::read() const {
    QFile file(m_path);
    if (!file.exists()) return {};
    const auto bad = [&] {
        return Error(Error::Kind::Book,
                     Journal::tr("The visits that were half typed cannot be read from %1: %2. They stay there, and are "
                                 "there again once it can be read.")
                         .arg(m_path, core::troubleOf(file).why),
                     file.errorString());
    };
    if (!core::noPlainFile(m_path).isEmpty() || !file.open(QIODevice::ReadOnly)) throw bad();
    Found found;
    while (!file.atEnd()) {
        const QByteArray line = file.readLine();
        if (line.isEmpty()) throw bad();
        if (!line.trimmed().isEmpty() && !take(line, found.all) && line.endsWith('\n')) ++found.unread;
    }
    return found;
}

QString DraftJournal::putAside() const {
    for (int n = 1;; ++n) {
        const QString aside = QStringLiteral("%1.unread-%2").arg(m_path).arg(n);
        if (QFile::exists(aside)) continue;
        QFile file(m_path);
        if (file.rename(aside)) return aside;
        throw notKept(file);
    }
}

bool DraftJournal::add(const HalfTyped& now) { return append(lineOf(now)); }

bool DraftJournal::addGone(core::ColonyId colony, core::VisitId was) {
    QJsonObject o = headOf(colony, was);
    o[kGone] = true;
    return append(lineOf(o));
}

void DraftJournal::addAnyhow(const HalfTyped& now) {
    m_size = -1;
    append(lineOf(now));
}

bool DraftJournal::append(const QByteArray& line) {
    QFile file(m_path);
    if (m_size >= 0 && file.size() != m_size) return false;
    if (!core::noPlainFile(m_path).isEmpty() || !file.open(QIODevice::Append | QIODevice::Unbuffered))
        throw notKept(file);
    const qint64 before = file.size();
    // Of a file that was never read nobody knows how it ends: the line begins anew.
    const QByteArray whole = m_size < 0 && before > 0 ? '\n' + line : line;
    if (core::writeAll(file, whole)) {
        m_size = before + whole.size();
        return true;
    }
    const Error failed = notKept(file);
    file.resize(before); // where even that fails the size tells
    throw failed;
}

void DraftJournal::keepOnly(const std::vector<HalfTyped>& all) {
    if (all.empty()) {
        QFile file(m_path);
        if (file.exists() && !file.remove()) throw notKept(file);
        m_size = 0;
        return;
    }
    QByteArray lines;
    for (const HalfTyped& h : all) lines += lineOf(h);
    QSaveFile file(m_path); // a new file takes the place of the old one once it is on the disk
    if (!file.open(QIODevice::WriteOnly)) throw notKept(file);
    if (!core::writeAll(file, lines) || !core::commitWhole(file)) throw notKept(file);
    m_size = lines.size();
}

} // namespace ui::visit
