#include "core/rules/guidance.h"

#include "core/base/natural_order.h"

#include <QCoreApplication>

#include <algorithm>

namespace core::rules {

namespace {

struct GuidanceWords {
    Q_DECLARE_TR_FUNCTIONS(core::rules::Guidance)
};

struct GuidanceRow {
    const char* text;
    const char* source;
};

struct GuidanceText {
    const char* title;
    std::vector<GuidanceRow> lines;
};

constexpr char kOfQueensland[] = "Queensland Government, “American foulbrood”, business.qld.gov.au";
constexpr char kFlottum[] = "Flottum, The Backyard Beekeeper, page at what-when-how.com";
constexpr char kWoah[] = "WOAH Terrestrial Animal Health Code, article 9.2.1";
constexpr char kNzManual[] = "Goodwin and Van Eaton, Elimination of AFB without the use of drugs, beekeeping.co.nz";
constexpr char kNzMoving[] = "NZ AFB Management Agency, “Transferring frames”, afb.org.nz";
constexpr char kNzLaw[] = "NZ AFB Management Agency, “Contaminated colonies”, afb.org.nz";
constexpr char kNzShaking[] = "NZ AFB Management Agency, “Shaking bees off frames before inspecting”, afb.org.nz";
constexpr char kOxytetracycline[] =
    "Australian Journal of Agricultural Research 40:691-697 (1989), four to five colonies "
    "a group, doi 10.1071/ar9890691";
constexpr char kCramp[] = "Cramp, A Practical Manual of Beekeeping";
constexpr char kLindstrom[] = "Lindström, Korpela, Fries 2008, Apidologie 39:515-522";
constexpr char kOfCode[] = "Australian Honey Bee Industry Biosecurity Code of Practice, part B 4.2 to 4.4";
constexpr char kOfGermany[] = "Bienenseuchen-Verordnung § 11(1)";
constexpr char kOfThisProgram[] = "how this program works";

const GuidanceText kGuidanceTexts[] = {
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "Ropiness and how it is tested"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Put a matchstick into a suspicious cell, stir, and draw it out slowly. Where the contents follow "
           "as a brown thread, the cell ropes."),
       kOfQueensland},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Any roping is a suspicion: never decide on how long the thread gets. One source speaks of up to "
           "30 mm, another of 13 to 25 mm (half an inch to an inch); they do not agree."),
       "Queensland Government, “American foulbrood”, business.qld.gov.au; Flottum, The Backyard Beekeeper"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "A test at the hive is a suspicion and no more. An inspector or a laboratory confirms it."),
       kFlottum},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "In this book a field kit that finds foulbrood counts as a sign, and one that finds none changes "
           "nothing: only a laboratory's or an inspector's negative answers a suspicion."),
       kOfThisProgram}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "What brood with American foulbrood looks like"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Patchy brood; cappings that are sunken, dark, greasy or pierced; a brown, glue-like larva that "
           "ropes; scale stuck fast to the lower wall of the cell; sometimes the tongue of a pupa across the "
           "cell; a foul smell."),
       "WOAH Terrestrial Animal Health Code, article 9.2.1; EU Reference Laboratory for bee health, leaflet “American "
       "foulbrood”; Ohio State University, “Symptoms of AFB”; PLOS ONE 2019, table 1 (PMC6615611)"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "In New Zealand one diseased larva or pupa is enough to make the colony a case."),
       kNzLaw}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "What brood with European foulbrood looks like"),
     {{QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "Patchy brood; larvae in open cells lie twisted or slumped and turn from yellow to brown; the "
                         "scale is loose and rubbery; it smells sour and does not rope as American foulbrood does."),
       "PLOS ONE 2019, table 1 (PMC6615611); Texas Apiary Inspection Service, comparison sheet"}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "What brood with sacbrood looks like"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "The larva lies in a sac of fluid, its head dark; what dries is a loose scale shaped like a "
           "gondola. There is no medicine: a strong colony, another queen; it often clears when honey comes "
           "in."),
       kCramp}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "What brood with chalkbrood looks like"),
     {{QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "Hard mummies, white, grey or black, in cells, on the floor and at the entrance. There is no "
                         "medicine: air, a strong colony, new comb, another queen."),
       "Cramp, A Practical Manual of Beekeeping; Flottum, The Backyard Beekeeper"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance", "It rarely kills a colony."), "beekeep.info, “Chalkbrood”"}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "No signs is not free of disease"),
     {{QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "Colonies that carry spores and show no signs are common. “No signs seen” says what was seen, "
                         "never that a colony is free of foulbrood."),
       kWoah},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Spores without a diseased larva make a colony contaminated, which New Zealand keeps apart from "
           "diseased."),
       kNzLaw},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "One diseased larva or pupa holds up to 2,500 million spores; about 5 million fed to a colony may "
           "start an infection."),
       kNzMoving},
      {QT_TRANSLATE_NOOP("core::rules::Guidance", "Spores stay alive for decades, at least 35 years."),
       "Goodwin and Van Eaton, Detection of American Foulbrood Using Bacterial Cultures, NZ Ministry of Agriculture "
       "and "
       "Fisheries 1992"}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "What antibiotics hide"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "After one treatment with oxytetracycline at the time of infection, signs came two months to a "
           "year later: a treated colony can look healthy and be infected."),
       kOxytetracycline},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "The next season signs came back in three of five colonies that had been lightly infected, and in "
           "nearly all others."),
       kOxytetracycline},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "In this book a check soon after an antibiotic is marked as one that may be masked, and lifts no "
           "foulbrood hold."),
       kOfThisProgram}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "How to inspect brood"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Look at all brood frames, with the bees shaken off: the more frames, the better the chance to "
           "see the one sick cell."),
       kNzManual},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "A colony with fewer than 50 sick cells is called lightly infected there: bees that stay on the "
           "comb hide them."),
       kNzShaking},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "At least once in spring and once in autumn, and before any part leaves a hive."),
       kNzManual},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Where brood is not plainly healthy: close up, write it down, clean hands and tools before the "
           "next hive."),
       kOfThisProgram}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "Kit of a colony with foulbrood: what may be done, and who decides"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "The authority decides what is done with such kit. Until it has said so: count it, keep it apart and "
           "closed to bees."),
       kOfThisProgram},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Western Australia lets cleaned boxes be dipped in hot wax (half microcrystalline, half paraffin) "
           "of 160 °C, at least ten minutes."),
       "Department of Primary Industries and Regional Development, Western Australia, “Preventing spread of American "
       "foulbrood disease”, agric.wa.gov.au"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "Infected hives were found sterile after at least 15 kGy of gamma rays, at a works for that."),
       "De Guzman et al. 2011, Applied Radiation and Isotopes 69:1374-1379"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance", "For infected comb and honey a study of 1962 names 15 to 20 kGy."),
       "Canadian Journal of Microbiology 8:175-179 (1962)"}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "Quarantine and robbing"),
     {{QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Bees or brood whose health is not known are kept apart until it is, and never given to healthy "
           "colonies."),
       "USDA booklet on bee diseases, “Preventing the spread of bee diseases”"},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "The surest way to carry American foulbrood is to move brood frames; a hidden case papered onto "
           "another hive makes one case more."),
       "NZ AFB Management Agency, “Transferring frames” and “Changes in management practices”, afb.org.nz"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "After a find every hive gets a number of its own, and no part changes hives."),
       kNzManual},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "Weak or dead hives are kept under watch, removed or closed to bees, so that they cannot be "
                         "robbed; a hive with foulbrood is isolated at once."),
       kOfCode},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "Where dead colonies were robbed out, foulbrood spread likely within 1 km, and clearly less at "
           "2 km or more."),
       kLindstrom},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "In a restricted area in Germany hives, bees, comb, wax, honey, stores and used gear stay where "
           "they are, and no colony comes in."),
       kOfGermany}}},
    {QT_TRANSLATE_NOOP("core::rules::Guidance", "Laying workers"),
     {{QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "Several eggs in a cell, eggs on the wall of the cell or on pollen, drone brood scattered in "
                         "worker cells, no queen."),
       "Norfolk Beekeepers' Association, “Drone laying queen or laying workers”; theapiarist.org, “Drone laying "
       "workers”"},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "A young queen may lay several eggs in a cell for some hours, too; hers stand at the bottom of "
           "it. Look again after a few days; cappings decide after about eight."),
       "pbka.info, “Multiple eggs in a cell” (2010)"},
      {QT_TRANSLATE_NOOP("core::rules::Guidance",
                         "It takes about two to three weeks without queen and open brood before workers lay."),
       "honeybeesuite.com, “Save a laying worker colony”; sustainablebees.blog"},
      {QT_TRANSLATE_NOOP(
           "core::rules::Guidance",
           "No one way is sure, and a queen put in is often killed: shake the bees out, or set a colony with "
           "a queen above them over newspaper. It is not the ordinary union."),
       "honeybeesuite.com, “Save a laying worker colony”; richmondhoneybee.com, “Drone laying worker or queen”"}}},
};

std::vector<GuidanceTopic> made() {
    std::vector<GuidanceTopic> topics;
    for (const GuidanceText& topic : kGuidanceTexts) {
        GuidanceTopic one{GuidanceWords::tr(topic.title), {}};
        for (const GuidanceRow& line : topic.lines)
            one.lines.push_back({GuidanceWords::tr(line.text), QString::fromUtf8(line.source)});
        topics.push_back(std::move(one));
    }
    return topics;
}

} // namespace

const std::vector<GuidanceTopic>& guidance() {
    static const std::vector<GuidanceTopic> topics = made();
    return topics;
}

std::vector<size_t> guidanceWith(const QString& words) {
    const QStringList asked = folded(words).split(u' ', Qt::SkipEmptyParts);
    std::vector<size_t> found;
    for (size_t i = 0; i < guidance().size(); ++i) {
        QString all = guidance()[i].title;
        for (const GuidanceLine& line : guidance()[i].lines) all += u' ' + line.text + u' ' + line.source;
        all = folded(all);
        if (std::ranges::all_of(asked, [&](const QString& word) { return all.contains(word); })) found.push_back(i);
    }
    return found;
}

} // namespace core::rules
