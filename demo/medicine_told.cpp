#include "demo/medicine_told.h"

#include "core/edit/edit_context.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"

namespace demo {

namespace {

using core::Treatment;
using core::edit::EditContext;

Treatment strips() {
    Treatment t;
    t.day = core::dayOf(2025, 8, 12);
    t.product = QStringLiteral("Sedge strips");
    t.substance = QStringLiteral("formic acid");
    t.batch = QStringLiteral("SB-2507");
    t.quantity = 2;
    t.unit = QStringLiteral("strips a hive");
    t.method = QStringLiteral("laid over the brood nest");
    t.supplier = QStringLiteral("Alder farm store");
    t.supplierAddress = QStringLiteral("1 Mill Lane, Larkspur");
    t.bought = core::dayOf(2025, 7, 30);
    t.quantityBought = 40;
    t.proof = QStringLiteral("receipt 1187");
    t.days = 7;
    t.withdrawalDays = 0;
    t.by = QStringLiteral("Wren");
    t.reason = QStringLiteral("mites above the threshold");
    return t;
}

Treatment trickled() {
    Treatment t = strips();
    t.day = core::dayOf(2025, 12, 28);
    t.product = QStringLiteral("Rowan solution");
    t.substance = QStringLiteral("oxalic acid");
    t.batch = QStringLiteral("RS-31");
    t.quantity = 500;
    t.unit = QStringLiteral("ml a hive");
    t.method = QStringLiteral("trickled between the frames");
    t.bought = core::dayOf(2025, 11, 3);
    t.quantityBought = 2000;
    t.proof = QStringLiteral("receipt 1302");
    t.days = 0;
    t.reason = QStringLiteral("no brood in winter");
    return t;
}

void log(core::edit::Session& session, const Treatment& t) {
    session.apply([&](const EditContext& c) { return core::edit::logTreatment(c, t); });
}

} // namespace

void tellMedicine(core::edit::Session& session) {
    core::YardId larkspur, foxglove;
    for (const core::Yard& yard : session.yards()) {
        if (yard.name == QLatin1StringView("Larkspur Bottom")) larkspur = yard.id;
        if (yard.name == QLatin1StringView("Foxglove Rise")) foxglove = yard.id;
    }
    Treatment complete = strips();
    complete.yard = foxglove;
    complete.disposed = core::dayOf(2025, 10, 1);
    complete.disposedQuantity = 4;
    complete.disposedHow = QStringLiteral("handed in at the collecting point");
    complete.prescriber = QStringLiteral("Dr Moss");
    complete.prescriberContact = QStringLiteral("practice at Quarry Road 4");
    log(session, complete);

    Treatment wrongHive = strips();
    session.read([&](const EditContext& c) {
        if (const auto colony = c.colonyNamed(QStringLiteral("A3"), wrongHive.day)) wrongHive.colony = colony->id;
    });
    log(session, wrongHive);
    const core::edit::Correction hive{QStringLiteral("Wren"),
                                      QStringLiteral("given in the other yard, not to this hive")};
    session.apply(
        [](const EditContext& c) {
            return core::edit::takeBackTreatment(c, core::TreatmentId{c.nextId(core::Table::Treatment) - 1});
        },
        hive);

    Treatment corrected = trickled();
    corrected.yard = larkspur;
    log(session, corrected);
    const core::edit::Correction slip{QStringLiteral("Alder"), QStringLiteral("one nought too many was typed")};
    session.apply(
        [](const EditContext& c) {
            Treatment now = *c.find<Treatment>(c.nextId(core::Table::Treatment) - 1);
            now.quantity = 50;
            return core::edit::changeTreatment(c, now);
        },
        slip);
}

} // namespace demo
