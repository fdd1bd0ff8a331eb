#include "ui/records/feeding_form.h"

#include "core/edit/feedings.h"
#include "core/rules/feed_given.h"
#include "core/rules/season_feed.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/odd.h"
#include "ui/records/record_words.h"

#include <algorithm>

namespace ui::records {

namespace edit = core::edit;
using core::Feeding;
using core::FeedKind;
using form::Field;
using form::Kind;
using form::Values;

namespace {

const QString kFeed = QStringLiteral("what");
const QString kMix = QStringLiteral("mix");
const QString kAmount = QStringLiteral("amount");
const QString kMeasure = QStringLiteral("measure");
const QString kByVolume = QStringLiteral("volume");
const QString kByWeight = QStringLiteral("weight");

/// More at once is asked about. Common practice, no source.
constexpr core::Millilitres kMuchVolume{15'000};
constexpr core::Decagrams kMuchWeight{1'500};
/// Supers seen longer ago say nothing. Common practice, no source.
constexpr int kSupersSeenDays = 45;
constexpr int kVisitsBack = 8;
constexpr qsizetype kNamed = 5;

bool isSyrup(const Values& values) { return form::typed(values, kFeed) == core::word(FeedKind::Syrup); }

/// Fondant and the like have no mix, whatever was typed before.
QString mixTyped(const Values& values) { return isSyrup(values) ? form::typed(values, kMix) : QString(); }

QString kilogramsOf(double kg, core::WeightUnit unit) {
    return look::shortWeightOf(static_cast<qint64>(kg * 1'000'000 + 0.5), unit);
}

} // namespace

FeedingForm::FeedingForm(const edit::Session& book, std::vector<core::ColonyId> colonies, core::Day day)
    : RecordForm(book), m_colonies(std::move(colonies)), m_day(day), m_units(book.settings().shown()) {}

FeedingForm::FeedingForm(const edit::Session& book, const Feeding& was)
    : RecordForm(book), m_colonies{was.colony}, m_day(was.day), m_units(book.settings().shown()), m_was(was) {}

QString FeedingForm::someName() const {
    return m_colonies.size() == 1 ? nameOf(m_colonies.front(), m_day) : Records::tr("%1 hives").arg(m_colonies.size());
}

QString FeedingForm::title() const {
    return m_was ? Records::tr("A feeding of %1").arg(someName()) : Records::tr("Feed given to %1").arg(someName());
}

QString FeedingForm::saveText() const {
    if (m_was) return Records::tr("&Save changes");
    return m_colonies.size() == 1 ? Records::tr("&Save feeding")
                                  : Records::tr("&Save %1 feedings").arg(m_colonies.size());
}

Field FeedingForm::amountField() const {
    return {.key = kAmount,
            .kind = Kind::Decimal,
            .label = m_colonies.size() == 1 ? Records::tr("&How much") : Records::tr("&How much to each"),
            .spoken = Records::tr("How much each hive was given"),
            .note = [this](const Values& values) { return sugarText(values); }};
}

Field FeedingForm::measureField() const {
    return {.key = kMeasure,
            .kind = Kind::Choice,
            .label = Records::tr("&Measured in"),
            .spoken = Records::tr("Measured by volume or by weight"),
            .options = {{kByVolume, core::unitSign(m_units.volume)}, {kByWeight, core::unitSign(m_units.weight)}}};
}

std::vector<Field> FeedingForm::fields() const {
    std::vector<Field> out;
    out.push_back({.key = kFeed,
                   .kind = Kind::Choice,
                   .label = Records::tr("&What"),
                   .spoken = Records::tr("What was fed"),
                   .options = choices<FeedKind>(feedWord),
                   .note = [](const Values& values) {
                       if (form::typed(values, kFeed) != core::word(FeedKind::Honey)) return QString();
                       return Records::tr("Honey can carry spores of foulbrood. Stores out of another hive are noted "
                                          "as a transfer, so that holds can follow them.");
                   }});
    out.push_back({.key = kMix,
                   .label = Records::tr("Mi&x"),
                   .spoken = Records::tr("Mix, sugar to water by weight"),
                   .hint = Records::tr("sugar : water"),
                   .options = {{QStringLiteral("3:2")}, {QStringLiteral("2:1")}, {QStringLiteral("1:1")}},
                   .shown = isSyrup});
    out.push_back(amountField());
    out.push_back(measureField());
    out.push_back(dayField(Records::tr("Day of the feeding")));
    out.push_back(byField(Records::tr("B&y"), Records::tr("Who fed")));
    out.push_back(noteField());
    return out;
}

std::optional<Feeding> FeedingForm::lastOfTheDay() const {
    const auto day = book().feedingsBetween(m_day, m_day);
    return day.empty() ? std::nullopt : std::optional(day.back());
}

Values FeedingForm::start() const {
    Values v{{kDay, form::typedDay(m_day)}, {kFeed, core::word(FeedKind::Syrup)}, {kMeasure, kByVolume}};
    const auto from = m_was ? m_was : lastOfTheDay();
    if (!from) return v;
    v[kFeed] = core::word(from->what);
    v[kMix] = from->mix;
    v[kMeasure] = from->weight ? kByWeight : kByVolume;
    v[kBy] = from->by;
    if (!m_was) return v;
    v[kAmount] = m_was->volume ? core::volumeNumber(*m_was->volume, m_units.volume)
                               : core::weightNumber(m_was->weight.value_or(core::Decagrams{}), m_units.weight);
    v[kNote] = m_was->note;
    return v;
}

Feeding FeedingForm::feedingOf(const Values& values) const {
    Feeding f = m_was.value_or(Feeding{});
    f.colony = m_colonies.front();
    f.day = form::dayOf(values, kDay, today()).value_or(m_day);
    f.what = chosenOf<FeedKind>(values, kFeed);
    f.mix = mixTyped(values);
    f.by = form::typed(values, kBy);
    f.note = form::typed(values, kNote);
    const QString typed = form::typed(values, kAmount);
    const bool weighed = form::typed(values, kMeasure) == kByWeight;
    // What is shown rounded stays what it was while it is not typed anew.
    if (m_was && typed == start().at(kAmount) && weighed == m_was->weight.has_value()) return f;
    f.weight.reset();
    f.volume.reset();
    if (weighed)
        f.weight = core::parseWeight(typed, m_units.weight);
    else
        f.volume = core::parseVolume(typed, m_units.volume);
    return f;
}

/// "60 % sugar, 7.7 kg in it: about 9.4 kg of stores".
QString FeedingForm::sugarText(const Values& values) const {
    const Feeding f = feedingOf(values);
    QStringList parts;
    const auto mix = f.what == FeedKind::Syrup ? core::rules::calc::mixOf(f.mix) : std::nullopt;
    if (mix) {
        const auto syrup = core::rules::calc::syrupOf(*mix);
        parts << Records::tr("%1 % sugar").arg(QString::number(syrup.sugarPercent, 'f', 0));
        if (syrup.saturated) parts << Records::tr("not all of it dissolves at 20 °C");
    }
    const auto sugar = core::rules::sugarIn(f);
    const auto stores = core::rules::storesOf(f);
    if (sugar && stores)
        parts << (m_colonies.size() == 1 ? Records::tr("%1 of sugar, about %2 of stores")
                                         : Records::tr("%1 of sugar, about %2 of stores in each"))
                     .arg(kilogramsOf(*sugar, m_units.weight), kilogramsOf(*stores, m_units.weight));
    return parts.join(QStringLiteral(", "));
}

void FeedingForm::judge(form::Judge& judge, const Values& values) const {
    judge.needDay(kDay);
    if (const QString mix = mixTyped(values); !mix.isEmpty() && !core::rules::calc::mixOf(mix)) {
        const QString said = Records::tr("Sugar to water by weight, such as 3:2.");
        mix.contains(u':') && !mix.endsWith(u':') ? judge.add(kMix, said) : judge.addLater(kMix, said);
    }
    if (!judge.need(kAmount, Records::tr("How much of it?"))) return;
    const Feeding f = feedingOf(values);
    const bool fits = f.weight   ? f.weight->value >= 1 && f.weight->value <= 10'000
                      : f.volume ? f.volume->value >= 1 && f.volume->value <= 100'000
                                 : false;
    if (fits) return;
    const auto weight = m_units.weight;
    judge.add(kAmount,
              form::typed(values, kMeasure) == kByWeight
                  ? Records::tr("A weight above 0, at most %1.").arg(look::weightOf(core::Decagrams{10'000}, weight))
                  : Records::tr("A volume above 0, at most %1.").arg(look::feedOf(200, m_units.volume)));
}

/// Of these hives, those that had supers on when they were last looked at.
QStringList FeedingForm::supered(core::Day day) const {
    QStringList out;
    for (const core::ColonyId id : m_colonies) {
        for (const core::Visit& v : book().visitsOf(id, kVisitsBack)) {
            if (v.day > day || !v.supers) continue;
            if (*v.supers > 0 && day - v.day <= kSupersSeenDays) out << nameOf(id, day);
            break;
        }
    }
    return out;
}

QStringList FeedingForm::odd(const Values& values) const {
    const Feeding f = feedingOf(values);
    QStringList out;
    if (!m_was || m_was->volume != f.volume || m_was->weight != f.weight)
        if ((f.volume && *f.volume > kMuchVolume) || (f.weight && *f.weight > kMuchWeight))
            out << Records::tr("%1 at once is much for one hive.").arg(amountText(f, m_units));
    if (m_was && m_was->day == f.day) return out;
    if (const auto odd = longAgo(f.day, today())) out << *odd;
    if (const QStringList names = supered(f.day); !names.isEmpty() && f.what != FeedKind::Pollen) {
        const QString shown = names.mid(0, kNamed).join(QStringLiteral(", "));
        out << (names.size() > kNamed ? Records::tr("Supers were on %1 and %2 more when last looked at: feed would get "
                                                    "into the honey.")
                                            .arg(shown)
                                            .arg(names.size() - kNamed)
                                      : Records::tr("Supers were on %1 when last looked at: feed would get into the "
                                                    "honey.")
                                            .arg(shown));
    }
    return out;
}

edit::Edit FeedingForm::edit(const Values& values) const {
    const Feeding f = feedingOf(values);
    if (m_was) return [f](const edit::EditContext& c) { return edit::changeFeeding(c, f); };
    std::vector<Feeding> all;
    for (const core::ColonyId id : m_colonies) {
        all.push_back(f);
        all.back().colony = id;
    }
    return [all](const edit::EditContext& c) { return edit::logFeedings(c, all); };
}

std::optional<QString> FeedingForm::meanwhile() const { return m_was ? movedSince(book(), *m_was) : std::nullopt; }

} // namespace ui::records
