#include "ui/records/mite_fall_form.h"

#include "core/edit/mite_falls.h"
#include "core/rules/mite_fall.h"
#include "ui/form/typed.h"
#include "ui/records/odd.h"
#include "ui/records/record_words.h"

#include <algorithm>

namespace ui::records {

namespace edit = core::edit;
using core::MiteFall;
using form::Field;
using form::Kind;
using form::Values;

namespace {

const QString kBoardDays = QStringLiteral("days");
const QString kFallen = QStringLiteral("mites");

constexpr int kMostBoardDays = 60;
constexpr int kMostFallen = 100'000;
/// More in a day is asked about. Common practice, no source.
constexpr double kManyADay = 500;

} // namespace

MiteFallForm::MiteFallForm(const edit::Session& book, core::ColonyId colony, core::Day day)
    : RecordForm(book), m_colony(colony), m_day(day) {}

MiteFallForm::MiteFallForm(const edit::Session& book, const MiteFall& was)
    : RecordForm(book), m_colony(was.colony), m_day(was.day), m_was(was) {}

QString MiteFallForm::title() const {
    return m_was ? Records::tr("Mites fallen at %1").arg(nameOf(m_colony, m_day))
                 : Records::tr("Count of mites fallen at %1").arg(nameOf(m_colony, m_day));
}

QString MiteFallForm::saveText() const { return m_was ? Records::tr("&Save changes") : Records::tr("&Save count"); }

std::vector<Field> MiteFallForm::fields() const {
    std::vector<Field> out;
    out.push_back({.key = kFallen,
                   .kind = Kind::Whole,
                   .label = Records::tr("&Mites on the board"),
                   .spoken = Records::tr("Mites that fell onto the board"),
                   .note = [this](const Values& values) { return noteOf(values); }});
    out.push_back({.key = kBoardDays,
                   .kind = Kind::Whole,
                   .label = Records::tr("Da&ys on it"),
                   .spoken = Records::tr("Days that the board lay under the hive"),
                   .hint = QString::number(core::rules::kBoardDays)});
    out.push_back(dayField(Records::tr("Day of the count")));
    out.push_back(byField(Records::tr("B&y"), Records::tr("Who counted")));
    out.push_back(noteField());
    return out;
}

Values MiteFallForm::start() const {
    Values v{{kDay, form::typedDay(m_day)}};
    if (!m_was) return v;
    v[kBoardDays] = form::typedWhole(m_was->days);
    v[kFallen] = form::typedWhole(m_was->mites);
    v[kBy] = m_was->by;
    v[kNote] = m_was->note;
    return v;
}

MiteFall MiteFallForm::fallOf(const Values& values) const {
    MiteFall f = m_was.value_or(MiteFall{});
    f.colony = m_colony;
    f.day = form::dayOf(values, kDay, today()).value_or(m_day);
    f.days = std::max(1, form::wholeOf(values, kBoardDays).value_or(1));
    f.mites = form::wholeOf(values, kFallen).value_or(0);
    f.by = form::typed(values, kBy);
    f.note = form::typed(values, kNote);
    return f;
}

/// "4.0 mites a day; not a rate per 100 bees".
QString MiteFallForm::noteOf(const Values& values) const {
    if (!form::wholeOf(values, kFallen) || !form::wholeOf(values, kBoardDays)) return {};
    const MiteFall f = fallOf(values);
    QString text = Records::tr("%1 a day. It cannot be turned into mites per 100 bees.").arg(miteDayText(f));
    if (f.days < core::rules::kBoardDays)
        text += u' ' + Records::tr("Counted over %1 days, chance weighs less.").arg(core::rules::kBoardDays);
    return text;
}

void MiteFallForm::judge(form::Judge& judge, const Values&) const {
    judge.needDay(kDay);
    if (judge.need(kFallen, Records::tr("How many mites? None is 0."))) judge.whole(kFallen, 0, kMostFallen);
    if (judge.need(kBoardDays, Records::tr("How many days did the board lie there?")))
        judge.whole(kBoardDays, 1, kMostBoardDays);
}

QStringList MiteFallForm::odd(const Values& values) const {
    const MiteFall f = fallOf(values);
    QStringList out;
    if (m_was && m_was->day == f.day && m_was->days == f.days && m_was->mites == f.mites) return out;
    if (core::rules::mitesADay(f) > kManyADay) out << Records::tr("%1 a day is very much.").arg(miteDayText(f));
    for (const MiteFall& other : book().miteFallsOf(m_colony)) {
        if (other.id == f.id || other.day <= core::rules::boardSince(f) || f.day <= core::rules::boardSince(other))
            continue;
        out << Records::tr("The mites counted on %1 fell on the same days in part.").arg(form::typedDay(other.day));
        break;
    }
    if (m_was && m_was->day == f.day) return out;
    if (const auto old = longAgo(f.day, today())) out << *old;
    return out;
}

edit::Edit MiteFallForm::edit(const Values& values) const {
    const MiteFall f = fallOf(values);
    if (m_was) return [f](const edit::EditContext& c) { return edit::changeMiteFall(c, f); };
    return [f](const edit::EditContext& c) { return edit::logMiteFall(c, f); };
}

std::optional<QString> MiteFallForm::meanwhile() const { return m_was ? movedSince(book(), *m_was) : std::nullopt; }

} // namespace ui::records
