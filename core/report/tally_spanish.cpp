#include "core/report/worksheet_spanish.h"

namespace core::report {

namespace {

constexpr SpanishPair kTally[] = {
    {"Visits, %1", "Visitas, %1"},
    {"Day", "Día"},
    {"Weather", "Tiempo"},
    {"People", "Personas"},
    {"Note:", "Nota:"},
    {"brood boxes now", "cajas de cría ahora"},
    {"nothing noted yet", "nada anotado todavía"},
    {"Look at what the divide became", "Ver qué ha sido de la división"},
    // heads of the boxes to fill in
    {"lower box", "caja de abajo"},
    {"upper box", "caja de arriba"},
    {"above", "encima"},
    {"below", "debajo"},
    {"queen", "reina"},
    {"queen: %1", "reina: %1"},
    {"workers lay", "ponen obreras"},
    {"brood", "cría"},
    {"frames", "cuadros"},
    {"of these", "de ellos"},
    {"looked at", "revisados"},
    {"signs in the brood", "signos en la cría"},
    {"AFB", "loque A."},
    {"EFB", "loque E."},
    {"doubt", "duda"},
    {"chalk", "yeso"},
    {"sac", "saco"},
    {"wings", "alas"},
    {"stores", "reservas"},
    {"lower", "abajo"},
    {"upper", "arriba"},
    {"honey", "alzas"},
    {"boxes", "de miel"},
    {"weight", "peso"},
    {"mites", "varroas"},
    {"in bees", "en abejas"},
    // the card
    {"last visits", "visitas"},
    {"No visit is noted yet.", "Todavía no hay ninguna visita anotada."},
    {"bees", "abejas"},
    {"note", "nota"},
};

} // namespace

std::span<const SpanishPair> spanishTally() { return kTally; }

} // namespace core::report
