#include "core/report/worksheet_spanish.h"

namespace core::report {

namespace {

// The rules' own sentences (core/rules/finding_words.cpp, given_up.cpp) and what stands in them.
constexpr SpanishPair kReasonPairs[] = {
    // left alone
    {"%1 frames of bees, counted on %2: the shake-out class (up to %3).",
     "%1 cuadros de abejas, contados el %2: clase para sacudir (hasta %3)."},
    {"%1 frames of bees, counted on %2: weak (above %3, below %4).",
     "%1 cuadros de abejas, contados el %2: débil (más de %3, menos de %4)."},
    {"%1 frames of bees, counted on %2: medium (from %3, below %4).",
     "%1 cuadros de abejas, contados el %2: mediana (desde %3, menos de %4)."},
    {"%1 frames of bees, counted on %2: strong (from %3).", "%1 cuadros de abejas, contados el %2: fuerte (desde %3)."},
    {"Of counts from above and from below the one from the top is taken (a setting).",
     "De los recuentos por arriba y por abajo se toma el de arriba (un ajuste)."},
    {"Of counts from above and from below the one from the bottom is taken (a setting).",
     "De los recuentos por arriba y por abajo se toma el de abajo (un ajuste)."},
    {"Of counts from above and from below the mean is taken (a setting).",
     "De los recuentos por arriba y por abajo se toma la media (un ajuste)."},
    {"By value tables that are an assumption, %1 in 1000 of such are alive in spring, and %2 in 1000 of those are then "
     "divided.",
     "Según tablas de valor que son un supuesto, %1 de cada 1000 así viven en primavera, y %2 de cada 1000 de esas se "
     "dividen después."},
    {"More than %1 frames are valued as %1.", "Más de %1 cuadros se valoran como %1."},
    // unresolved
    {"On %1 only one of its two boxes was counted.", "El %1 se contó solo una de sus dos cajas."},
    {"Its bees were not counted since it was united or divided on %1.",
     "No se contaron sus abejas desde que se unió o dividió el %1."},
    {"Its bees were never counted.", "Nunca se contaron sus abejas."},
    {"The last count, of %1, is %2 days old; more than %3 is too old.",
     "El último recuento, del %1, tiene %2 días; más de %3 es demasiado."},
    {"No bees were seen at the count of %1.", "En el recuento del %1 no se vieron abejas."},
    {"%1 of bees are the shake-out class (up to %2), and no colony of the yard is free to take them: not held, with a "
     "queen, above that class, and at most %3 a host.",
     "%1 de abejas son la clase para sacudir (hasta %2), y en el colmenar no queda libre ninguna que las reciba: no "
     "retenida, con reina, por encima de esa clase, y como mucho %3 por receptora."},
    {"It lacks a queen (%1, %2), and no union with another of its yard that is allowed gains %3; queens are given from "
     "%4 "
     "to %5.",
     "Le falta reina (%1, %2), y ninguna unión permitida con otra del colmenar gana %3; se dan reinas del %4 al "
     "%5."},
    {"Laying workers, noted on %1: they would kill a queen. No union, shake-out or divide until a queen, eggs or a "
     "virgin "
     "is seen.",
     "Obreras ponedoras, anotadas el %1: matarían a una reina. Ni unir, ni sacudir, ni dividir hasta ver reina, huevos "
     "o "
     "virgen."},
    // brought down to one box
    {"Keep the upper box: %1 of %2 frames of bees are there. Hang brood and stores of the lower one into it.",
     "Deje la caja de arriba: allí están %1 de %2 cuadros de abejas. Cuelgue en ella la cría y las reservas de la de "
     "abajo."},
    {"Keep the lower box: %1 of %2 frames of bees are there. Hang brood and stores of the upper one into it.",
     "Deje la caja de abajo: allí están %1 de %2 cuadros de abejas. Cuelgue en ella la cría y las reservas de la de "
     "arriba."},
    {"Brood and stores fill %1 of %2 frames.", "La cría y las reservas llenan %1 de %2 cuadros."},
    {"Whether brood and stores fit is not known: look first.",
     "No se sabe si caben la cría y las reservas: mire primero."},
    {"The box that comes away is closed at once: open comb starts robbing.",
     "La caja que sobra se cierra en seguida: el panal abierto provoca pillaje."},
    // feed, divides, checks
    {"The two weigh %1 together, less %2 for floor and lid and %3 for each of %4 boxes taken away (assumptions); a "
     "hive "
     "of two boxes is ready for winter at %5.",
     "Las dos pesan %1 juntas, menos %2 de fondo y tapa y %3 por cada una de %4 cajas retiradas (supuestos); una "
     "colmena "
     "de dos cajas está lista para el invierno con %5."},
    {"The two weigh %1 together, less %2 for floor and lid (an assumption); a hive of two boxes is ready for winter at "
     "%3.",
     "Las dos pesan %1 juntas, menos %2 de fondo y tapa (un supuesto); una colmena de dos cajas está lista para el "
     "invierno con %3."},
    {"It weighed %1 on %2; a hive of two boxes is ready for winter at %3.",
     "Pesaba %1 el %2; una colmena de dos cajas está lista para el invierno con %3."},
    {"It weighed %1 on %2; a hive of one box is ready for winter at %3.",
     "Pesaba %1 el %2; una colmena de una caja está lista para el invierno con %3."},
    {"Syrup of two parts of sugar to one of water makes stores of %1.",
     "El jarabe de dos partes de azúcar por una de agua da reservas de %1."},
    {"A weight counts for %1; feed is advised from %2 to %3.", "Un peso vale %1; se aconseja alimentar del %2 al %3."},
    {"%1 frames of brood, noted on %2, and %3 frames of bees: each part needs %4 and %5 of bees (assumptions), and "
     "there "
     "are %6 at least.",
     "%1 cuadros de cría, anotados el %2, y %3 cuadros de abejas: cada parte pide %4 y %5 de abejas (supuestos), y son "
     "%6 como mínimo."},
    {"Divides are advised from %1 to %2; brood counts for %3.", "Se aconseja dividir del %1 al %2; la cría vale %3."},
    {"United on %1; it is looked at after %2, and listed from %3 before that day to %4 after the union.",
     "Unida el %1; se mira a los %2, y figura desde %3 antes de ese día hasta %4 después de la unión."},
    {"%1 was given on %2 for %3 days; listed from %4 before its end to %5 past it.",
     "Se dio %1 el %2 por %3 días; figura desde %4 antes de acabar hasta %5 después."},
    {"It ended on %1 under suspicion, by a sign of %2; a result is awaited for %3 more.",
     "Terminó el %1 bajo sospecha, por un signo del %2; se espera un resultado %3 más."},
    {"It is under suspicion, by a sign of %1, until a result answers it.",
     "Está bajo sospecha, por un signo del %1, hasta que responda un resultado."},
    // what is missing
    {"Bees not counted.", "Abejas sin contar."},
    {"Bees or comb came or went on %1, after the count of %2.",
     "Entraron o salieron abejas o panal el %1, después del recuento del %2."},
    {"Brood not checked for disease.", "Cría sin revisar por enfermedad."},
    {"Brood last checked on %1: that does not count on the day.",
     "Cría revisada por última vez el %1: no vale para ese día."},
    {"A virgin queen on %1: does she lay?", "Reina virgen el %1: ¿pone?"},
    {"Queen or eggs seen last on %1, %2 days before; more than %3 is too old.",
     "Reina o huevos vistos por última vez el %1, %2 días antes; más de %3 es demasiado."},
    {"Whether it has a queen is not known.", "No se sabe si tiene reina."},
    {"Brood frames not counted: they decide on a divide.", "Cuadros de cría sin contar: deciden si se divide."},
    {"Brood frames counted on %1, %2 days before; more than %3 is too old.",
     "Cuadros de cría contados el %1, %2 días antes; más de %3 es demasiado."},
    {"Not weighed: no feed can be reckoned.", "Sin pesar: no se puede calcular el alimento."},
    {"Weighed on %1 with honey boxes on: that does not count.", "Pesada el %1 con alzas: no vale."},
    {"Weighed on %1, %2 days before; more than %3 is too old.", "Pesada el %1, %2 días antes; más de %3 es demasiado."},
    {"Seen: %1, on %2. Look again.", "Visto: %1, el %2. Volver a mirar."},
    {"Bees counted on %1, %2 days before; more than %3 is too old.",
     "Abejas contadas el %1, %2 días antes; más de %3 es demasiado."},
    {"No bees seen on %1: does it live?", "El %1 no se vieron abejas: ¿vive?"},
    {"Brood frames and the stores of both boxes not all noted on %1: does it fit into one box?",
     "Cuadros de cría y reservas de las dos cajas no anotados todos el %1: ¿cabe en una caja?"},
    // what was given up
    {"The best union it could have had: with %1, gain %2; all the others would then gain %3 less, so that %4 "
     "thousandths "
     "of a spring colony would be lost in all (by value tables that are an assumption).",
     "La mejor unión que pudo tener: con %1, ganancia %2; todas las demás ganarían entonces %3 menos, y en total se "
     "perderían %4 milésimas de colonia de primavera (según tablas de valor que son un supuesto)."},
    {"No other colony stands in its yard.", "No hay otra colonia en su colmenar."},
    {"No union was possible.", "No era posible ninguna unión."},
    {"Not with %1: not as you asked.", "No con %1: no como se pidió."},
    {"Not with %1: another yard.", "No con %1: otro colmenar."},
    {"Not with %1: one of the two is held.", "No con %1: una de las dos está retenida."},
    {"Not with %1: one of the two has laying workers.", "No con %1: una de las dos tiene obreras ponedoras."},
    {"Not with %1: one of the two has no count to go by, or too few bees.",
     "No con %1: una de las dos no tiene recuento válido, o muy pocas abejas."},
    {"Not with %1: both lack a queen.", "No con %1: a las dos les falta reina."},
    {"Not with %1: other boxes.", "No con %1: otro tipo de caja."},
    {"Not with %1: one of the two does not fit into one box.", "No con %1: una de las dos no cabe en una caja."},
    {"Not with %1: together more than two boxes hold.", "No con %1: juntas, más de lo que cabe en dos cajas."},
    {"Not with %1: not the season, or neither is weak, or one is strong or has a virgin.",
     "No con %1: no es la temporada, o ninguna es débil, o una es fuerte o tiene virgen."},
    {"Not with %1: too little gain.", "No con %1: ganancia demasiado pequeña."},
    // what stands in the sentences
    {"none", "ninguna"},
    {"drone-layer", "zanganera"},
    {"chalkbrood", "cría yesificada"},
    {"sacbrood", "cría ensacada"},
    {"nosema", "nosema"},
    {"deformed-wings", "alas deformadas"},
    {"frame", "cuadro"},
    {"frames", "cuadros"},
    {"brood frame", "cuadro de cría"},
    {"brood frames", "cuadros de cría"},
    {"day", "día"},
    {"days", "días"},
    {"colony", "colonia"},
    {"colonies", "colonias"},
    {"parts", "partes"},
    {"thousandth", "milésima"},
    {"thousandths", "milésimas"},
    {"in 100", "por 100"},
    {"kg a litre", "kg por litro"},
    {"lb a litre", "lb por litro"},
    {"kg a quart", "kg por cuarto"},
    {"lb a quart", "lb por cuarto"},
    {"January", "de enero"},
    {"February", "de febrero"},
    {"March", "de marzo"},
    {"April", "de abril"},
    {"May", "de mayo"},
    {"June", "de junio"},
    {"July", "de julio"},
    {"August", "de agosto"},
    {"September", "de septiembre"},
    {"October", "de octubre"},
    {"November", "de noviembre"},
    {"December", "de diciembre"},
    {"January to July", "de enero a julio"},
    {"August to December", "de agosto a diciembre"},
    {"July to January", "de julio a enero"},
    {"February to June", "de febrero a junio"},
};

} // namespace

std::span<const SpanishPair> spanishReasons() { return kReasonPairs; }

} // namespace core::report
