#include "core/report/worksheet_spanish.h"

namespace core::report {

namespace {

// Divides, queen trouble, laying workers: the worksheet's phrases and the rules' own sentences
// (core/rules/divide_work.cpp, divide_dates.cpp, laying_workers.cpp).
constexpr SpanishPair kSpringPairs[] = {
    // divides
    {"Divide", "Dividir"},
    {"What a part needs is an assumption. Held colonies are never divided.",
     "Lo que necesita cada parte es un supuesto. Las colonias retenidas no se dividen nunca."},
    {"Queens:", "Reinas:"},
    {"not chosen yet; the steps and days are those of queens that the bees raise",
     "aún sin elegir; los pasos y días son los de reinas que crían las abejas"},
    {"a sealed queen cell for each new hive", "una celda real sellada para cada colmena nueva"},
    {"a bought queen for each new hive", "una reina comprada para cada colmena nueva"},
    {"the bees of each new hive raise their own", "las abejas de cada colmena nueva crían la suya"},
    {"Look at the new hives", "Mirar las colmenas nuevas"},
    {"%1: divide into %2", "%1: dividir en %2"},
    {"on stand %1, %2 away", "en el puesto %1, a %2"},
    {"on a new stand, %1 away", "en un puesto nuevo, a %1"},
    {"A held colony is near: better carry it elsewhere.",
     "Hay cerca una colonia retenida: mejor llevarla a otro sitio."},
    {"label", "rótulo"},
    {"Bees that have flown before go back to the old stand: give each new hive the bees of a brood frame more, shaken "
     "in, and close its entrance down to a bee's width (common practice, no source).",
     "Las abejas que ya han volado vuelven al puesto viejo: dar a cada colmena nueva las abejas de un cuadro de cría "
     "más, sacudidas dentro, y cerrar su piquera al ancho de una abeja (práctica común, sin fuente)."},
    {"Check the brood of the mother colony for disease first: with any doubt, stop and close it.",
     "Revisar antes la cría de la colonia madre por enfermedad: con cualquier duda, parar y cerrarla."},
    {"Find the queen. She stays in the old hive, on the old stand.",
     "Buscar la reina. Se queda en la colmena vieja, en su puesto."},
    {"Put brood in all stages, combs of stores and bees from at least three combs into each new hive.",
     "Poner en cada colmena nueva cría de todas las edades, panales de reservas y abejas de al menos tres panales."},
    {"Each new hive gets a sealed queen cell between two brood combs, its tip down and free.",
     "Cada colmena nueva recibe una celda real sellada entre dos panales de cría, con la punta abajo y libre."},
    {"Each new hive gets its bought queen in her cage, a day later, once it feels queenless.",
     "Cada colmena nueva recibe su reina comprada en su jaula, un día después, cuando se nota huérfana."},
    {"Each new hive needs eggs and larvae of a day or two, to raise a queen from.",
     "Cada colmena nueva necesita huevos y larvas de uno o dos días, para criar una reina."},
    {"Set it on its stand, entrance small, lid on, and write its label on it.",
     "Ponerla en su puesto, piquera pequeña, tapa puesta, y escribirle su rótulo."},
    {"look whether the queen cell has opened at its tip", "mirar si la celda real se ha abierto por la punta"},
    {"look whether the bought queen is out of her cage", "mirar si la reina comprada ha salido de su jaula"},
    {"from here on she may be mated and lay: leave her alone until the next look",
     "desde aquí puede estar fecundada y poner: no molestarla hasta la próxima revisión"},
    {"look for eggs, one in a cell", "buscar huevos, uno por celda"},
    {"look whether her brood is capped flat, as a worker's", "mirar si su cría está operculada plana, como de obrera"},
    {"%1; between %2 and %3 (%4).", "%1; entre el %2 y el %3 (%4)."},
    {"cell: MacFawn, Making Splits; swarm-control booklet",
     "celda: MacFawn, Making Splits; folleto sobre la enjambrazón"},
    {"raised by the bees: Fell, Morse (abstract); MacFawn, Making Splits",
     "criada por las abejas: Fell, Morse (resumen); MacFawn, Making Splits"},
    {"emerged to laying: MacFawn, Making Splits; the day to look is an assumption",
     "de nacer a poner: MacFawn, Making Splits; el día de mirar es un supuesto"},
    {"egg to capped worker: life-stage tables; the day to look is an assumption",
     "de huevo a obrera operculada: tablas de desarrollo; el día de mirar es un supuesto"},
    {"common practice, no source", "práctica común, sin fuente"},
    // queen trouble
    {"Other ways than a union: give it a comb of open brood with eggs from a colony that is not held, a ripe queen "
     "cell, or a bought queen (common practice, no source).",
     "Otras maneras, sin unir: darle un panal de cría abierta con huevos de una colonia no retenida, una celda real "
     "madura o una reina comprada (práctica común, sin fuente)."},
    {"A queen raised from brood given on %1 may lay from %2 to %3 (Fell, Morse; MacFawn).",
     "Una reina criada de cría dada el %1 puede poner entre el %2 y el %3 (Fell, Morse; MacFawn)."},
    // laying workers
    {"Laying workers: a procedure of its own, never a union",
     "Obreras ponedoras: procedimiento aparte, nunca una unión"},
    {"Their workers would kill a queen, given or brought along: no union, no shake-out, no divide, not even with a "
     "good "
     "colony (rules 4.7.3, 4.9, 4.13).",
     "Sus obreras matarían a una reina, dada o traída: ni unir, ni sacudir, ni dividir, ni siquiera con una buena "
     "colonia (reglas 4.7.3, 4.9, 4.13)."},
    {"All that follows is common practice, no source.", "Todo lo que sigue es práctica común, sin fuente."},
    {"Make sure", "Asegurarse"},
    {"Several eggs in one cell, eggs on the walls of cells, drone brood scattered in worker cells, no queen. A young "
     "queen too may lay several eggs in a cell for some days.",
     "Varios huevos en una celda, huevos en las paredes de las celdas, cría de zángano dispersa en celdas de obrera, "
     "sin "
     "reina. También una reina joven puede poner varios huevos por celda unos días."},
    {"One egg at the bottom of each cell and drone brood close together: a drone-laying queen. That is another case; "
     "look for her.",
     "Un huevo en el fondo de cada celda y cría de zángano agrupada: una reina zanganera. Es otro caso; buscarla."},
    {"Eggs are seen with the sun from behind. Where you are not sure, note “unknown” and look again in a week.",
     "Los huevos se ven con el sol por detrás. Sin seguridad, anotar «desconocida» y mirar otra vez en una semana."},
    {"Mind", "Cuidado"},
    {"Check the brood for disease first. With any doubt nothing comes in or out: close it, keep its kit apart.",
     "Revisar antes la cría por enfermedad. Con cualquier duda nada entra ni sale: cerrarla, su material aparte."},
    {"Give it nothing from a held colony, and give nothing of it to others while it is held.",
     "No darle nada de una colonia retenida, ni dar nada suyo a otras mientras esté retenida."},
    {"Combs with its drone brood go to no other colony: cut or melt them.",
     "Los panales con su cría de zángano no van a otra colonia: cortarlos o fundirlos."},
    {"Keep its entrance small: it defends itself badly and is robbed soon.",
     "Mantener la piquera pequeña: se defiende mal y pronto la saquean."},
    {"What can be done", "Qué se puede hacer"},
    {"First weigh whether it is worth it: late in the year, or with few and old bees, it is not. Then let it end, "
     "write "
     "its end down, and take its combs only after a clean brood check.",
     "Pensar primero si vale la pena: tarde en el año, o con pocas abejas y viejas, no. Entonces dejar que acabe, "
     "anotar "
     "su fin, y tomar sus panales solo tras una revisión limpia de la cría."},
    {"Where it is shaken out all the same: on a mild day, far from its stand, its hive taken away the same hour. Its "
     "bees "
     "beg their way into any hive, and nobody can trace where they went: so only after a clean brood check, only where "
     "no colony of the yard is held, and never before a weak colony or one without a queen.",
     "Si se sacude de todos modos: en un día templado, lejos de su puesto, retirando su colmena en la misma hora. Sus "
     "abejas entran en cualquier colmena y nadie puede seguir adónde fueron: así que solo tras una revisión limpia de "
     "la "
     "cría, solo donde ninguna colonia del colmenar esté retenida, y nunca ante una débil o una sin reina."},
    {"Else give it a comb of open brood with eggs, without bees, from a healthy colony that is not held. Again each "
     "week, about three times. Note each as a transfer.",
     "Si no, darle un panal de cría abierta con huevos, sin abejas, de una colonia sana no retenida. Otra vez cada "
     "semana, unas tres veces. Anotar cada uno como traspaso."},
    {"Once its bees draw queen cells on such a comb, leave them one, or give a ripe queen cell. Do not give a queen in "
     "a "
     "cage before that.",
     "Cuando sus abejas hagan celdas reales en ese panal, dejarles una, o dar una celda real madura. No dar antes una "
     "reina en jaula."},
    {"Look for eggs, one in a cell, about four weeks later. Note what you see: from a queen, eggs or a virgin on, the "
     "plan counts with it again.",
     "Buscar huevos, uno por celda, unas cuatro semanas después. Anotar lo que se ve: desde una reina, huevos o una "
     "virgen, el plan vuelve a contar con ella."},
};

} // namespace

std::span<const SpanishPair> spanishSpring() { return kSpringPairs; }

} // namespace core::report
