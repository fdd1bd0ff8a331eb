#include "app/commands.h"
#include "app/interrupt.h"
#include "core/base/progress.h"
#include "core/edit/salvage.h"

#include <memory>

namespace app {

int runSalvage(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("backup")}}, {QStringLiteral("DAMAGED"), QStringLiteral("NEW")});
    core::edit::SalvageFrom from;
    from.damaged = a.word(QStringLiteral("DAMAGED"));
    from.backup = a.value(QStringLiteral("backup")).value_or(QString());
    from.to = a.word(QStringLiteral("NEW"));
    std::unique_ptr<core::edit::Salvage> salvage;
    QString text;
    {
        Interrupt interrupt;
        const core::Progress all = interrupt.progress();
        salvage = core::edit::Salvage::read(from, clock, all.part(0, 0.7, QStringLiteral("reading")));
        text = salvage->write(from.to, all.part(0.7, 1, QStringLiteral("writing the new book")));
    }
    io.out << core::edit::accountText(salvage->account()) << '\n' << from.to << '\n' << text << '\n';
    return salvage->account().nothingLost() && salvage->account().problems.isEmpty() ? 0 : 3;
}

} // namespace app
