#include "ui/close/draft_file.h"

#include "core/base/error.h"
#include "core/base/file_trouble.h"
#include "core/base/input_file.h"
#include "core/base/whole_file.h"

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
const QString kBook = QStringLiteral("book");

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

Error unread(const QFileDevice& file) {
    return Error(
        Error::Kind::Book,
        Drafts::tr("What was noted and not written yet cannot be read from %1: %2. It stays there, and is there "
                   "again once it can be read.")
            .arg(file.fileName(), core::troubleOf(file).why),
        file.errorString());
}

Error notKept(const QFileDevice& file) {
    return Error(Error::Kind::Book,
                 Drafts::tr("What was noted cannot be kept in %1: %2. Write the day before the program is closed.")
                     .arg(file.fileName(), core::troubleOf(file).why),
                 file.errorString());
}

} // namespace

/// One note a line, so that a file of which a part is spoilt can be read for the rest.
QByteArray DraftFile::textOf(const std::vector<Kept>& all) {
    QByteArray text = "[";
    for (const Kept& kept : all) {
        QJsonObject note = jsonOf(kept.note);
        if (!kept.book.isEmpty()) note[kBook] = kept.book;
        text += (text.size() > 1 ? ",\n" : "\n") + QJsonDocument(note).toJson(QJsonDocument::Compact);
    }
    return text + "\n]\n";
}

/// False where something was passed over.
bool DraftFile::take(const QByteArray& text, std::vector<Kept>& out) {
    QJsonArray objects;
    const QJsonDocument whole = QJsonDocument::fromJson(text);
    bool all = whole.isArray();
    if (all)
        objects = whole.array();
    else
        for (const QByteArray& line : text.split('\n'))
            objects.append(QJsonDocument::fromJson(line.endsWith(',') ? line.chopped(1) : line).object());
    for (const auto& object : objects) {
        auto d = draftedOf(object.toObject());
        if (d)
            out.push_back({*std::move(d), object.toObject()[kBook].toString()});
        else
            all = false;
    }
    return all;
}

bool DraftFile::ours(const Kept& kept, core::YardId yard, core::Day day) const {
    const bool book = kept.book.isEmpty() || kept.book == m_bookId;
    return book && kept.note.strip.yard == yard && kept.note.strip.day == day;
}

DraftFile::Found DraftFile::all() const {
    QFile file(m_path);
    if (!file.exists()) return {};
    if (!core::noPlainFile(m_path).isEmpty() || !file.open(QIODevice::ReadOnly)) throw unread(file);
    const QByteArray text = file.readAll();
    if (text.size() != file.size()) throw unread(file);
    Found notes;
    if (take(text, notes.all)) return notes;
    const QString aside = putAside();
    notes.lost = Drafts::tr("Of what was noted and not written yet something could not be read. What could is there "
                            "again; the file of before is kept as %1.")
                     .arg(aside);
    write(notes.all);
    return notes;
}

QString DraftFile::putAside() const {
    for (int n = 1;; ++n) {
        const QString aside = QStringLiteral("%1.unread-%2").arg(m_path).arg(n);
        if (QFile::exists(aside)) continue;
        QFile file(m_path);
        if (!file.copy(aside)) throw unread(file);
        return aside;
    }
}

DraftFile::Notes DraftFile::of(core::YardId yard, core::Day day) const {
    Found found = all();
    Notes notes{{}, found.lost};
    bool older = false;
    for (Kept& kept : found.all) {
        if (!ours(kept, yard, day)) continue;
        older = older || kept.book.isEmpty();
        notes.all.push_back(std::move(kept.note));
    }
    if (older && notes.lost.isEmpty())
        notes.lost =
            Drafts::tr("What is noted here and not written yet was kept by an older version, which did not say "
                       "of which book it is: look at each line before you write the day.");
    return notes;
}

void DraftFile::keep(core::YardId yard, core::Day day, const std::vector<Drafted>& now) const {
    std::vector<Kept> whole = all().all;
    std::erase_if(whole, [&](const Kept& kept) { return ours(kept, yard, day); });
    for (const Drafted& note : now) whole.push_back({note, m_bookId});
    write(whole);
}

void DraftFile::write(const std::vector<Kept>& all) const {
    if (all.empty()) {
        QFile file(m_path);
        if (file.exists() && !file.remove()) throw notKept(file);
        return;
    }
    QSaveFile file(m_path); // a new file takes the place of the old one once it is on the disk
    if (!file.open(QIODevice::WriteOnly)) throw notKept(file);
    if (!core::writeAll(file, textOf(all)) || !core::commitWhole(file)) throw notKept(file);
}

} // namespace ui::close
