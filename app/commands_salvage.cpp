#include "app/commands.h"
#include "core/edit/salvage.h"

namespace app {

int runSalvage(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("backup")}}, {QStringLiteral("DAMAGED"), QStringLiteral("NEW")});
    core::edit::SalvageFrom from;
    from.damaged = a.word(QStringLiteral("DAMAGED"));
    from.backup = a.value(QStringLiteral("backup")).value_or(QString());
    const auto salvage = core::edit::Salvage::read(from, clock);
    const auto text = salvage->write(a.word(QStringLiteral("NEW")));
    io.out << core::edit::accountText(salvage->account()) << '\n'
           << a.word(QStringLiteral("NEW")) << '\n'
           << text.value_or(QString()) << '\n';
    return salvage->account().nothingLost() && salvage->account().problems.isEmpty() ? 0 : 3;
}

} // namespace app
