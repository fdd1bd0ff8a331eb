#include "ui/settings/setting_groups.h"

#include <QCoreApplication>
#include <QHash>

namespace ui::settings {

namespace {

struct Says {
    Q_DECLARE_TR_FUNCTIONS(Settings)
};

QHash<QString, QString> titles() {
    return {
        {"strength.judge", Says::tr("Two counts of one box")},
        {"strength.max_age_days", Says::tr("A count of bees counts for")},
        {"class.shake_out_max", Says::tr("Shake-out class, up to")},
        {"class.medium_min", Says::tr("Medium, from")},
        {"class.strong_min", Says::tr("Strong, from")},
        {"queen.max_age_days", Says::tr("A queen seen counts for")},
        {"weigh.max_age_days", Says::tr("Weights and stores count for")},
        {"season.fall_start", Says::tr("Season for strength, first day")},
        {"season.fall_end", Says::tr("Season for strength, last day")},
        {"season.start", Says::tr("The season begins")},
        {"check.min_frames", Says::tr("Clean brood check, frames at least")},
        {"check.full_frames", Says::tr("Full brood check, frames at least")},
        {"check.max_age_days", Says::tr("A brood check counts for")},
        {"check.grace_days", Says::tr("A check from before the season counts for")},
        {"trace.days", Says::tr("Gifts are traced back")},
        {"trace.masked_days", Says::tr("An antibiotic may hide foulbrood for")},
        {"afb.own_result_days", Says::tr("American foulbrood: a negative answers after")},
        {"afb.recheck_days", Says::tr("American foulbrood: a check answers after")},
        {"afb.yard_back_days", Says::tr("American foulbrood: the yard is held back to")},
        {"afb.yard_after_days", Says::tr("American foulbrood: newcomers are held for")},
        {"efb.clear_days", Says::tr("European foulbrood is answered after")},
        {"efb.back_days", Says::tr("European foulbrood: gifts are suspect back to")},
        {"doubt.recheck_days", Says::tr("Doubtful brood is answered after")},
        {"doubt.back_days", Says::tr("Doubtful brood: gifts are in doubt back to")},
        {"mites.spring", Says::tr("Mites high, January to July")},
        {"mites.fall", Says::tr("Mites high, August to December")},
        {"drop.summer", Says::tr("Mites falling a day, July to October")},
        {"drop.late", Says::tr("Mites falling a day, November and December")},
        {"afb.near_m", Says::tr("Foulbrood near by, within")},
        {"afb.rob_m", Says::tr("Foulbrood may be robbed, within")},
        {"move.drift_m", Says::tr("Drift to a held hive, within")},
        {"move.step_m", Says::tr("A hive is found again, carried up to")},
        {"move.far_m", Says::tr("Foragers do not return, carried from")},
        {"value.winter", Says::tr("Alive in spring")},
        {"value.divide", Says::tr("Then divided in two")},
        {"gain.min", Says::tr("Least gain, for strength")},
        {"gain.min_queen", Says::tr("Least gain, for a queen")},
        {"carry.per_m", Says::tr("A metre carried takes")},
        {"order", Says::tr("Upper box of a union")},
        {"queen.weaker", Says::tr("Where both have a queen")},
        {"shake.per_host", Says::tr("Shaken out into one host, at most")},
        {"stores.single_kg", Says::tr("Ready for winter, one box")},
        {"stores.double_kg", Says::tr("Ready for winter, two boxes")},
        {"syrup.stores_kg_per_l", Says::tr("Stores made by a litre of syrup")},
        {"tare.floor_lid_kg", Says::tr("Weight of floor and lid")},
        {"tare.box_kg", Says::tr("Weight of an empty brood box")},
        {"divide.brood_per_part", Says::tr("Brood for each part")},
        {"divide.bees_per_part", Says::tr("Bees for each part")},
        {"follow.union_days", Says::tr("A union is looked at after")},
        {"records.years", Says::tr("The medicine book is kept for")},
        {"sample.late_days", Says::tr("An answer to a sample is late after")},
        {"crew.minutes_per_union", Says::tr("A union takes two people")},
        {"crew.people", Says::tr("People on a merge day")},
        {"show.weight", Says::tr("Weights")},
        {"show.volume", Says::tr("Feed")},
        {"show.length", Says::tr("Distances")},
    };
}

QHash<QString, QString> choices() {
    return {
        {"strength.judge mean", Says::tr("the mean of both")},
        {"strength.judge top", Says::tr("that from above, where there is one")},
        {"strength.judge bottom", Says::tr("that from below, where there is one")},
        {"order better-on-top", Says::tr("the better colony's")},
        {"order weaker-on-top", Says::tr("the weaker colony's")},
        {"queen.weaker leave", Says::tr("leave both to the bees")},
        {"queen.weaker remove", Says::tr("remove that of the colony moved")},
        {"show.weight kg", Says::tr("kilograms (kg)")},
        {"show.weight lb", Says::tr("pounds (lb)")},
        {"show.volume l", Says::tr("litres (L)")},
        {"show.volume qt", Says::tr("US liquid quarts (qt)")},
        {"show.length m", Says::tr("metres (m)")},
        {"show.length ft", Says::tr("feet (ft)")},
    };
}

} // namespace

std::vector<SettingGroup> settingGroups() {
    return {
        {Says::tr("Strength and seasons"),
         Says::tr("What counts as seen, and when the year turns. In southern yards every day moves by six months."),
         {"strength.judge", "strength.max_age_days", "class.shake_out_max", "class.medium_min", "class.strong_min",
          "queen.max_age_days", "weigh.max_age_days", "season.fall_start", "season.fall_end", "season.start"}},
        {Says::tr("Holds"),
         Says::tr("Only stricter: a hold is never made laxer by a setting. Local law and inspectors decide."),
         {"check.min_frames", "check.full_frames", "check.max_age_days", "check.grace_days", "trace.days",
          "trace.masked_days", "afb.own_result_days", "afb.recheck_days", "afb.yard_back_days", "afb.yard_after_days",
          "efb.clear_days", "efb.back_days", "doubt.recheck_days", "doubt.back_days"}},
        {Says::tr("Cautions"),
         Says::tr("A caution warns and does not bar."),
         {"mites.spring", "mites.fall", "drop.summer", "drop.late", "afb.near_m", "afb.rob_m", "move.drift_m",
          "move.step_m", "move.far_m"}},
        {Says::tr("Value tables"),
         Says::tr("What a colony is expected to give, in thousandths, at 0 to 12 frames of bees. Assumptions, not your "
                  "own winters."),
         {"value.winter", "value.divide"}},
        {Says::tr("Gains and carrying"),
         Says::tr("When a union is worth its work. A gain is counted in thousandths of a spring colony."),
         {"gain.min", "gain.min_queen", "carry.per_m"}},
        {Says::tr("Unions and boxes"), Says::tr("Handbooks disagree about both."), {"order", "queen.weaker"}},
        {Says::tr("Shake-outs"), {}, {"shake.per_host"}},
        {Says::tr("Feed"),
         Says::tr("Weights here are kept in kilograms, whatever unit is shown elsewhere."),
         {"stores.single_kg", "stores.double_kg", "syrup.stores_kg_per_l", "tare.floor_lid_kg", "tare.box_kg"}},
        {Says::tr("Divides"), {}, {"divide.brood_per_part", "divide.bees_per_part"}},
        {Says::tr("Checks due"), {}, {"follow.union_days"}},
        {Says::tr("Papers and samples"),
         Says::tr("Local law says how long records are kept."),
         {"records.years", "sample.late_days"}},
        {Says::tr("Crew of a merge day"),
         Says::tr("How many unions fit into the hours that the crew has."),
         {"crew.minutes_per_union", "crew.people"}},
        {Says::tr("Units shown"),
         Says::tr("On screen, in the plan and on the worksheet. The book itself keeps kilograms, litres and metres."),
         {"show.weight", "show.volume", "show.length"}},
    };
}

QString settingTitle(const QString& name) {
    static const QHash<QString, QString> all = titles();
    return all.value(name, name);
}

QString unitWords(const QString& unit) {
    if (unit == QLatin1StringView("thousandths per m")) return Says::tr("thousandths");
    return unit;
}

QString choiceText(const QString& name, const QString& word) {
    static const QHash<QString, QString> all = choices();
    return all.value(name + u' ' + word, word);
}

} // namespace ui::settings
