#include "ui/close/draft_file.h"

#include "core/base/error.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

namespace ui::close {

using core::Error;

namespace {

struct Drafts {
    Q_DECLARE_TR_FUNCTIONS(Drafts)
};

const QString kYard = QStringLiteral("yard");
const QString kDay = QStringLiteral("day");
const QString kHow = QStringLiteral("how");
const QString kMovedName = QStringLiteral("moved");
const QString kHost = QStringLiteral("host");
const QString kOutcome = QStringLiteral("outcome");
const QString kNote = QStringLiteral("note");
const QString kBy = QStringLiteral("by");
const QString kInstead = QStringLiteral("instead");
const QString kFact = QStringLiteral("fact");

QJsonObject unionJson(core::LineageHow how, core::ColonyId moved, core::ColonyId host) {
    return {{kHow, core::word(how)}, {kMovedName, moved.value}, {kHost, host.value}};
}

QJsonObject jsonOf(const Drafted& d) {
    QJsonObject out = unionJson(d.strip.how, d.strip.moved, d.strip.host);
    out[kYard] = d.strip.yard.value;
    out[kDay] = core::isoText(d.strip.day);
    out[kOutcome] = core::word(d.strip.outcome);
    out[kNote] = d.strip.note;
    out[kBy] = d.strip.by;
    out[kFact] = d.asFact;
    if (const auto& x = d.strip.instead) out[kInstead] = unionJson(x->how, x->moved, x->host);
    return out;
}

std::optional<core::edit::DoneInstead> unionOf(const QJsonObject& o) {
    const auto how = core::fromWord<core::LineageHow>(o[kHow].toString());
    if (!how || *how == core::LineageHow::Divided) return std::nullopt;
    return core::edit::DoneInstead{*how, {o[kMovedName].toInteger()}, {o[kHost].toInteger()}};
}

std::optional<Drafted> draftedOf(const QJsonObject& o) {
    const auto strip = unionOf(o);
    const auto day = core::parseIsoDay(o[kDay].toString());
    const auto outcome = core::fromWord<core::StripOutcome>(o[kOutcome].toString());
    if (!strip || !day || !outcome) return std::nullopt;
    Drafted d;
    d.strip = {{o[kYard].toInteger()}, *day, strip->how, strip->moved, strip->host, *outcome, o[kNote].toString(),
               o[kBy].toString()};
    d.asFact = o[kFact].toBool();
    if (o.contains(kInstead)) d.strip.instead = unionOf(o[kInstead].toObject());
    return d;
}

} // namespace

std::vector<Drafted> DraftFile::all() const {
    QFile file(m_path);
    if (!file.exists()) return {};
    const auto bad = [&] {
        return Error(Error::Kind::Book, Drafts::tr("What was noted and not written yet cannot be read from %1. Put the "
                                                   "file elsewhere to begin anew; nothing else is lost.")
                                            .arg(m_path));
    };
    if (!file.open(QIODevice::ReadOnly)) throw bad();
    const QJsonDocument document = QJsonDocument::fromJson(file.readAll());
    if (!document.isArray()) throw bad();
    std::vector<Drafted> out;
    for (const auto& value : document.array()) {
        auto d = draftedOf(value.toObject());
        if (!d) throw bad();
        out.push_back(*std::move(d));
    }
    return out;
}

std::vector<Drafted> DraftFile::of(core::YardId yard, core::Day day) const {
    std::vector<Drafted> out = all();
    std::erase_if(out, [&](const Drafted& d) { return d.strip.yard != yard || d.strip.day != day; });
    return out;
}

void DraftFile::keep(core::YardId yard, core::Day day, const std::vector<Drafted>& now) const {
    std::vector<Drafted> whole = all();
    std::erase_if(whole, [&](const Drafted& d) { return d.strip.yard == yard && d.strip.day == day; });
    whole.insert(whole.end(), now.begin(), now.end());
    const auto refused = [&](const QString& why) {
        return Error(Error::Kind::Book, Drafts::tr("What was noted cannot be kept in %1 (%2). Write the day before the "
                                                   "program is closed.")
                                            .arg(m_path, why));
    };
    if (whole.empty()) {
        QFile file(m_path);
        if (file.exists() && !file.remove()) throw refused(file.errorString());
        return;
    }
    QJsonArray array;
    for (const Drafted& d : whole) array.append(jsonOf(d));
    QSaveFile file(m_path); // a new file takes the place of the old one once it is on the disk
    const bool written = file.open(QIODevice::WriteOnly) && file.write(QJsonDocument(array).toJson()) > 0;
    if (!written || !file.commit()) throw refused(file.errorString());
}

} // namespace ui::close
