#include "core/report/worksheet_spanish.h"

#include <QHash>

namespace core::report {

namespace {

using Pair = SpanishPair;

constexpr Pair kPairs[] = {
    // heads
    {"Merge day, %1", "Día de uniones, %1"},
    {"1 colony", "1 colonia"},
    {"%1 colonies", "%1 colonias"},
    {"1 union", "1 unión"},
    {"%1 unions", "%1 uniones"},
    {"1 shaken out", "1 sacudida"},
    {"%1 shaken out", "%1 sacudidas"},
    {"1 held", "1 retenida"},
    {"%1 held", "%1 retenidas"},
    {"page %1 of %2", "página %1 de %2"},
    {"(continued)", "(sigue)"},
    {"revision %1", "revisión %1"},
    {"printed %1", "impreso %1"},
    {"A full box can pass %1. Bee law, inspectors and labels decide.",
     "Una caja llena puede pasar de %1. Deciden la ley, el inspector y la etiqueta."},
    {"No colony of this yard is held on this day.", "Este día no hay ninguna colonia retenida en este colmenar."},
    {"No union and no shake-out is advised here on this day.", "Este día no se aconseja aquí unir ni sacudir nada."},
    // words
    {"and", "y"},
    {"each", "cada una"},
    {"1 frame", "1 cuadro"},
    {"%1 frames", "%1 cuadros"},
    {"Hatched: held · number: union · dotted: shake-out · L: laying workers · ?: not counted",
     "Rayada: retenida · número: unión · puntos: sacudir · L: obreras ponedoras · ?: sin contar"},
    {"the north", "el norte"},
    {"the north-east", "el noreste"},
    {"the east", "el este"},
    {"the south-east", "el sureste"},
    {"the south", "el sur"},
    {"the south-west", "el suroeste"},
    {"the west", "el oeste"},
    {"the north-west", "el noroeste"},
    {"to shake out", "para sacudir"},
    {"weak", "débil"},
    {"medium", "mediana"},
    {"strong", "fuerte"},
    // holds
    {"Do not unite these, and take nothing from them", "No unir estas ni sacar nada de ellas"},
    {"The reasons below are kept in the book in English.", "Los motivos de abajo están en inglés."},
    {"What may still be done:", "Lo que aún se puede hacer:"},
    {"it stays closed where it stands; only the inspector says what more. It is not fed.",
     "queda cerrada donde está; solo el inspector dice qué más. No se alimenta."},
    {"it stays where it stands; look at it or feed it only as far as the order allows.",
     "queda donde está; mirarla o alimentarla solo hasta donde permita la orden."},
    {"it may be looked at, fed, and stay where it stands; its combs, boxes and tools go to no other.",
     "se puede mirar, alimentar y dejar donde está; sus panales, cajas y útiles no van a ninguna otra."},
    {"An inspector's order", "Orden de un inspector"},
    {"American foulbrood, confirmed", "Loque americana, confirmada"},
    {"American foulbrood, suspected", "Loque americana, sospecha"},
    {"Contact with American foulbrood", "Contacto con loque americana"},
    {"Stood in a yard with American foulbrood", "Estuvo en un colmenar con loque americana"},
    {"European foulbrood", "Loque europea"},
    {"Brood in doubt", "Cría dudosa"},
    {"Brood not checked", "Cría sin revisar"},
    // unions
    {"Unite, in this order", "Unir, en este orden"},
    {"Thick lines: combs with bees. Small squares: combs of stores.",
     "Líneas gruesas: panales con abejas. Cuadritos: panales de reservas."},
    {"carry %1 to stand %2", "llevar %1 al asiento %2"},
    {"%1 + %2 = %3 frames", "%1 + %2 = %3 cuadros"},
    {"Queen:", "Reina:"},
    {"leave both", "dejar las dos"},
    {"remove that of %1", "quitar la de %1"},
    {"keep that of %1; %2 has none", "conservar la de %1; %2 no tiene"},
    {"Entrances:", "Piqueras:"},
    {"both to %1", "las dos hacia %1"},
    {"This pair was asked for.", "Esta pareja se pidió."},
    {"%1 on top", "%1 arriba"},
    {"%1 below", "%1 abajo"},
    {"bees %1", "abejas %1"},
    {"stores %1", "reservas %1"},
    {"newspaper", "periódico"},
    {"done", "hecho"},
    {"not done", "no hecho"},
    {"changed:", "cambiado:"},
    // steps
    {"First find and remove the drone-laying queen of %1.", "Primero buscar y quitar la reina zanganera de %1."},
    {"Find and remove the queen of %1.", "Buscar y quitar la reina de %1."},
    {"First look for the queen of %1: nobody knows whether there is one. Without her, stop.",
     "Primero buscar la reina de %1: no se sabe si la hay. Sin ella, parar."},
    {"First look for the queen of %1: she was a virgin. Without her, stop.",
     "Primero buscar la reina de %1: era virgen. Sin ella, parar."},
    {"Bring %1 down to one box: %2 of bees, with brood and stores.",
     "Reducir %1 a una caja: %2 de abejas, con cría y reservas."},
    {"Carry %1 to stand %2, %3.", "Llevar %1 al asiento %2, %3."},
    {"%1's box off its floor, %2's box on it.", "Quitar la caja de %1 de su fondo y poner ahí la de %2."},
    {"Leave %1's box on its floor; open it.", "Dejar la caja de %1 en su fondo y abrirla."},
    {"Slit newspaper over %1, then %2's box; lid.", "Periódico con cortes sobre %1, luego la caja de %2; tapa."},
    {"Both entrances to %1.", "Las dos piqueras hacia %1."},
    {"Look again on %1.", "Volver a mirar el %1."},
    {"Shake the bees out before %1, after its union is made.",
     "Sacudir las abejas delante de %1, después de hecha su unión."},
    {"Shake the bees out before the entrance of %1.", "Sacudir las abejas delante de la piquera de %1."},
    {"Take the emptied hive of %1 away.", "Retirar la colmena vacía de %1."},
    {"Shake out", "Sacudir"},
    {"%1, carried %2", "%1, llevar %2"},
    // cautions
    {"Mites high", "Muchas varroas"},
    {"Check may be masked", "Revisión quizá enmascarada"},
    {"Signs of illness", "Signos de enfermedad"},
    {"Counted before a transfer", "Contada antes de un traspaso"},
    {"Queen not known", "Reina desconocida"},
    {"Room not known", "Espacio desconocido"},
    {"American foulbrood near by", "Loque americana cerca"},
    {"Drift to a held hive", "Deriva hacia una colmena retenida"},
    {"Lower box heavier", "Caja de abajo más pesada"},
    {"%1: %2 in 100 bees", "%1: %2 por 100 abejas"},
    {"%1: an antibiotic may have hidden foulbrood at the last clean check.",
     "%1: un antibiótico pudo ocultar la loque en la última revisión limpia."},
    {"%1: chalkbrood, sacbrood, nosema or deformed wings at the last visit.",
     "%1: cría yesificada, cría sacciforme, nosema o alas deformes en la última visita."},
    {"%1: bees or comb went in or out since the count.", "%1: desde el recuento entraron o salieron abejas o panales."},
    {"%1: no laying queen is known.", "%1: no se conoce reina ponedora."},
    {"%1: brood and stores were not noted; whether all fits into one box is not known.",
     "%1: no se anotaron cría y reservas; no se sabe si todo cabe en una caja."},
    {"Limit: %1.", "Límite: %1."},
    {"Another yard with American foulbrood lies within %1.", "Hay otro colmenar con loque americana a menos de %1."},
    {"Foragers may drift from the emptied stand to a held hive within %1.",
     "Las pecoreadoras pueden ir del asiento vacío a una colmena retenida a menos de %1."},
    {"The box below holds at least 2 frames of stores more.",
     "La caja de abajo tiene al menos 2 cuadros más de reservas."},
    // lists
    {"Keep apart", "Mantener aparte"},
    {"Laying workers: no ordinary union. They would kill a queen.",
     "Obreras ponedoras: no sirve una unión corriente. Matarían a la reina."},
    {"Not decided, at risk, left alone", "Sin decidir, en riesgo, como están"},
    {"Bees not counted: count them, then plan again", "Abejas sin contar: contarlas y volver a planear"},
    {"Count too old: count the bees, then plan again", "Recuento viejo: contar las abejas y volver a planear"},
    {"No bees seen at the last count: look, and clear the hive",
     "Sin abejas en el último recuento: mirar y recoger la colmena"},
    {"To be shaken out, but no colony can take the bees", "Para sacudir, pero ninguna colonia puede recibirla"},
    {"No queen, and no union fits: give one a queen, or plan again",
     "Sin reina y sin unión posible: darle reina o volver a planear"},
    {"At risk over winter: %1, %2; in no union.", "En riesgo en invierno: %1, %2; en ninguna unión."},
    {"Left as they are.", "Se dejan como están."},
    {"Boxes and divides", "Cajas y divisiones"},
    {"Reverse the two boxes: the bees sit in the upper one alone. Advised from %1 to %2.",
     "Invertir las dos cajas: las abejas están solo en la de arriba. Se aconseja del %1 al %2."},
    {"Set the heavier box on top: the lower one holds more stores. Advised from %1 to %2.",
     "Poner arriba la caja más pesada: la de abajo tiene más reservas. Se aconseja del %1 al %2."},
    {"Divide into %1.", "Dividir en %1."},
    {"Feed", "Alimentar"},
    {"Syrup of two parts of sugar to one of water by mass. Each held colony from its own can.",
     "Jarabe de dos partes de azúcar por una de agua, en peso. Cada retenida, de su propio recipiente."},
    {"Ready for winter: %1 with one box, %2 with two; syrup makes stores of %3.",
     "Lista para el invierno: %1 con una caja, %2 con dos; el jarabe da reservas de %3."},
    {"(%1 short)", "(faltan %1)"},
    {"Mind, with the other colonies", "Cuidado con las demás colonias"},
    {"Look afterwards", "Mirar después"},
    {"%1: %2.", "%1: %2."},
    {"look whether the union took", "ver si la unión prendió"},
    {"take the treatment out", "retirar el tratamiento"},
    {"a result on American foulbrood is awaited", "se espera un resultado de loque americana"},
    // kit
    {"Kit", "Material"},
    {"1 sheet of newspaper", "1 hoja de periódico"},
    {"%1 sheets of newspaper, one a union", "%1 hojas de periódico, una por unión"},
    {"1 strap for the hive that is carried", "1 cincha para la colmena que se lleva"},
    {"straps for %1 hives that are carried, and a barrow or a second pair of hands",
     "cinchas para las %1 colmenas que se llevan, y carretilla u otra persona"},
    {"a cage: 1 queen is to be removed", "una jaula: hay que quitar 1 reina"},
    {"cages: %1 queens are to be removed", "jaulas: hay que quitar %1 reinas"},
    {"smoker with fuel, water, hive tool, brush, pencil, spare gloves",
     "ahumador con combustible, agua, palanca, cepillo, lápiz, guantes de repuesto"},
    {"comes free: lids %1, floors %1, boxes %2", "queda libre: tapas %1, fondos %1, cajas %2"},
    {"syrup: %1 in all, of %2 of sugar and %3 of water", "jarabe: %1 en total, de %2 de azúcar y %3 de agua"},
    // care
    {"Take care", "Cuidado"},
    {"Lifting.", "Peso."},
    {"A full box can pass %3 %4: two people or a barrow. Your local rules for lifting by hand decide. To lift: "
     "the hive that is carried, with floor and lid, and the other's box, by your weights and the tares of your "
     "settings (an assumption). Over %1, %2, %3 %4: where common guidance (%1 and %3: from memory) says to stop "
     "and think, for one person at best; none of these is a safe weight.",
     "Una caja llena puede pasar de %3 %4: dos personas o carretilla. Deciden las normas locales de carga a "
     "mano. Para levantar: la colmena que se lleva, con fondo y tapa, y la caja de la otra, según los pesos y "
     "las taras de los ajustes (un supuesto). Más de %1, %2, %3 %4: donde las guías corrientes (%1 y %3: de "
     "memoria) piden pararse a pensar, para una persona en el mejor caso; ninguno es un peso seguro."},
    {"To lift:", "Para levantar:"},
    {"%1 %2", "%1 %2"},
    {"%1 up to %2", "%1 hasta %2"},
    {"; over %1", "; más de %1"},
    {"Stings.", "Picaduras."},
    {"Never work alone. Keep the emergency number at hand, and adrenaline where it is prescribed.",
     "Nunca trabajar a solas. Tener a mano el número de urgencias, y adrenalina si está recetada."},
    {"Smoke.", "Humo."},
    {"Mind dry grass; keep water by the smoker, and put it out before you leave.",
     "Cuidado con la hierba seca; agua junto al ahumador, y apagarlo antes de irse."},
    {"Robbing.", "Pillaje."},
    {"Keep kit and combs closed, spill no syrup, work fast; reduce entrances.",
     "Material y panales cerrados, no derramar jarabe, trabajar deprisa; reducir piqueras."},
    {"Medicines.", "Medicamentos."},
    {"The label and the veterinarian decide.", "Deciden la etiqueta y el veterinario."},
    {"Foulbrood.", "Loque."},
    {"It is notifiable nearly everywhere. Sunken, perforated or smelling brood: stop, close up, clean tools and hands, "
     "call the inspector.",
     "Es de declaración obligatoria casi en todas partes. Cría hundida, perforada o con olor: parar, cerrar, limpiar "
     "útiles y manos, llamar al inspector."},
    {"This paper advises.", "Este papel aconseja."},
    {"Apiary law, inspectors, veterinarians and labels decide. Which colonies to unite was reckoned with value tables "
     "that are an assumption, not from your own winters.",
     "Deciden la ley apícola, los inspectores, los veterinarios y las etiquetas. Qué colonias unir se calculó con "
     "tablas de valor que son un supuesto, no con sus propios inviernos."},
    // the drawing
    {"not counted", "sin contar"},
    {"no bees", "sin abejas"},
    {"gate", "entrada"},
    {"fence", "valla"},
    {"hedge", "seto"},
    {"shed", "cobertizo"},
    {"water", "agua"},
    {"track", "camino"},
    {"tree", "árbol"},
};

QHash<QString, const char*> table() {
    QHash<QString, const char*> out;
    for (const Pair& pair : kPairs) out.insert(QString::fromUtf8(pair.english), pair.spanish);
    for (const SpanishPair& pair : spanishReasons()) out.insert(QString::fromUtf8(pair.english), pair.spanish);
    return out;
}

} // namespace

const char* spanishOf(const QString& english) {
    static const QHash<QString, const char*> kTable = table();
    return kTable.value(english, nullptr);
}

} // namespace core::report
