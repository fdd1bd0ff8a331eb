#include "ui/records/transfer_form.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/typed.h"
#include "ui/records/odd.h"
#include "ui/records/record_words.h"

namespace ui::records {

namespace edit = core::edit;
using form::Field;
using form::Kind;
using form::Values;

namespace {

const QString kWay = QStringLiteral("way"); // of a new one: to or from the colony it is about
const QString kTo = QStringLiteral("to");
const QString kFrom = QStringLiteral("from");
const QString kOther = QStringLiteral("other");
const QString kWhat = QStringLiteral("what");
const QString kCount = QStringLiteral("count");

constexpr int kMostCount = 1000;

} // namespace

TransferForm::TransferForm(const edit::Session& book, core::ColonyId about, core::Day day)
    : RecordForm(book), m_about(about), m_day(day) {}

TransferForm::TransferForm(const edit::Session& book, const core::Transfer& was)
    : RecordForm(book), m_about(was.to), m_day(was.day), m_was(was) {}

QString TransferForm::title() const {
    return m_was ? Records::tr("A transfer to %1").arg(nameOf(m_about, m_day))
                 : Records::tr("Transfer of %1").arg(nameOf(m_about, m_day));
}

QString TransferForm::saveText() const { return m_was ? Records::tr("&Save changes") : Records::tr("&Save transfer"); }

std::vector<Field> TransferForm::fields() const {
    std::vector<Field> out;
    if (m_was) {
        out.push_back(colonyField(kFrom, Records::tr("&From"), Records::tr("From colony")));
        out.push_back(colonyField(kTo, Records::tr("&To"), Records::tr("To colony")));
    } else {
        const QString name = nameOf(m_about, m_day);
        out.push_back({.key = kWay,
                       .kind = Kind::Choice,
                       .label = Records::tr("Wh&ich way"),
                       .spoken = Records::tr("To or from %1").arg(name),
                       .options = {{kTo, Records::tr("to %1").arg(name)}, {kFrom, Records::tr("from %1").arg(name)}}});
        out.push_back(colonyField(kOther, Records::tr("&Other colony"), Records::tr("The other colony")));
    }
    out.push_back({.key = kWhat,
                   .kind = Kind::Choice,
                   .label = Records::tr("&What"),
                   .spoken = Records::tr("What was moved"),
                   .options = choices<core::TransferKind>(transferWord)});
    out.push_back({.key = kCount,
                   .kind = Kind::Whole,
                   .label = Records::tr("&How many"),
                   .spoken = Records::tr("How many frames or boxes")});
    out.push_back(dayField(Records::tr("Day of the transfer")));
    out.push_back(noteField());
    return out;
}

Values TransferForm::start() const {
    Values v{{kDay, form::typedDay(m_day)}, {kWay, kTo}};
    if (!m_was) return v;
    v[kFrom] = nameOf(m_was->from, m_day);
    v[kTo] = nameOf(m_was->to, m_day);
    v[kWhat] = core::word(m_was->what);
    v[kCount] = form::typedWhole(m_was->count);
    v[kNote] = m_was->note;
    return v;
}

void TransferForm::judge(form::Judge& judge, const Values& values) const {
    judge.whole(kCount, 1, kMostCount);
    const core::Day on = judge.needDay(kDay).value_or(m_day);
    if (m_was) {
        const auto from = judgeColony(judge, values, kFrom, on);
        const auto to = judgeColony(judge, values, kTo, on);
        if (from && to && from->id == to->id) judge.add(kTo, Records::tr("It goes from one colony to another."));
    } else if (const auto other = judgeColony(judge, values, kOther, on); other && other->id == m_about) {
        judge.add(kOther, Records::tr("It goes from one colony to another."));
    }
}

core::Transfer TransferForm::transferOf(const Values& values) const {
    core::Transfer t = m_was.value_or(core::Transfer{});
    t.day = form::dayOf(values, kDay, today()).value_or(m_day);
    t.what = chosenOf<core::TransferKind>(values, kWhat);
    t.count = form::wholeOf(values, kCount);
    t.note = form::typed(values, kNote);
    if (m_was) {
        t.from = colonyOf(values, kFrom, t.day);
        t.to = colonyOf(values, kTo, t.day);
    } else {
        const core::ColonyId other = colonyOf(values, kOther, t.day);
        const bool to = form::typed(values, kWay) == kTo;
        t.from = to ? other : m_about;
        t.to = to ? m_about : other;
    }
    return t;
}

QStringList TransferForm::odd(const Values& values) const {
    const core::Transfer t = transferOf(values);
    QStringList out;
    if (m_was && m_was->day == t.day) return out;
    if (const auto odd = longAgo(t.day, today())) out << *odd;
    for (const core::ColonyId colony : {t.from, t.to}) {
        const auto visits = book().visitsOf(colony, 1);
        const auto last = visits.empty() ? std::nullopt : std::optional(visits.front().day);
        if (const auto odd = beforeLastVisit(nameOf(colony, t.day), t.day, last)) out << *odd;
    }
    return out;
}

edit::Edit TransferForm::edit(const Values& values) const {
    const core::Transfer t = transferOf(values);
    if (m_was) return [t](const edit::EditContext& c) { return edit::changeTransfer(c, t); };
    return [t](const edit::EditContext& c) { return edit::logTransfer(c, t); };
}

std::optional<QString> TransferForm::meanwhile() const { return m_was ? movedSince(book(), *m_was) : std::nullopt; }

} // namespace ui::records
