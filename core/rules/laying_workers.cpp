#include "core/rules/laying_workers.h"

#include "core/rules/calc/new_queen.h"

namespace core::rules {

std::vector<Procedure> layingWorkerProcedure() {
    return {
        {"Laying workers: a procedure of its own, never a union",
         {{"Their workers would kill a queen, given or brought along: no union, no shake-out, no divide, not even with "
           "a "
           "good colony (rules 4.7.3, 4.9, 4.13)."},
          {"All that follows is common practice, no source."}}},
        {"Make sure",
         {{"Several eggs in one cell, eggs on the walls of cells, drone brood scattered in worker cells, no queen. A "
           "young "
           "queen too may lay several eggs in a cell for some days."},
          {"One egg at the bottom of each cell and drone brood close together: a drone-laying queen. That is another "
           "case; look for her."},
          {"Eggs are seen with the sun from behind. Where you are not sure, note “unknown” and look again in a "
           "week."}}},
        {"Mind",
         {{"Check the brood for disease first. With any doubt nothing comes in or out: close it, keep its kit apart."},
          {"Give it nothing from a held colony, and give nothing of it to others while it is held."},
          {"Combs with its drone brood go to no other colony: cut or melt them."},
          {"Keep its entrance small: it defends itself badly and is robbed soon."}}},
        {"What can be done",
         {{"First weigh whether it is worth it: late in the year, or with few and old bees, it is not. Then let it "
           "end, "
           "write its end down, and take its combs only after a clean brood check."},
          {"Where it is shaken out all the same: on a mild day, far from its stand, its hive taken away the same hour. "
           "Its bees beg their way into any hive, and nobody can trace where they went: so only after a clean brood "
           "check, only where no colony of the yard is held, and never before a weak colony or one without a queen."},
          {"Else give it a comb of open brood with eggs, without bees, from a healthy colony that is not held. Again "
           "each "
           "week, about three times. Note each as a transfer."},
          {"Once its bees draw queen cells on such a comb, leave them one, or give a ripe queen cell. Do not give a "
           "queen in a cage before that."},
          {"Look for eggs, one in a cell, about four weeks later. Note what you see: from a queen, eggs or a virgin "
           "on, "
           "the plan counts with it again."}}}};
}

Sentences queenTroubleWays(Day given) {
    const auto days = calc::newQueenDays(calc::QueenFrom::QueenLost, given);
    return {
        {"Other ways than a union: give it a comb of open brood with eggs from a colony that is not held, a ripe queen "
         "cell, or a bought queen (common practice, no source)."},
        {"A queen raised from brood given on %1 may lay from %2 to %3 (Fell, Morse; MacFawn).",
         {isoText(given), isoText(days.mayLay.first), isoText(days.mayLay.last)}}};
}

} // namespace core::rules
