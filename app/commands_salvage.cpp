#include "app/commands.h"
#include "app/interrupt.h"
#include "core/base/progress.h"
#include "core/edit/salvage.h"

#include <memory>
#include <optional>

namespace app {

namespace {

core::edit::Salvage::Watch watching(const core::Progress& progress) {
    return [progress](double share) {
        try {
            progress.at(share);
        } catch (const core::Stopped&) {
            return false;
        }
        return true;
    };
}

} // namespace

int runSalvage(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("backup")}}, {QStringLiteral("DAMAGED"), QStringLiteral("NEW")});
    core::edit::SalvageFrom from;
    from.damaged = a.word(QStringLiteral("DAMAGED"));
    from.backup = a.value(QStringLiteral("backup")).value_or(QString());
    std::unique_ptr<core::edit::Salvage> salvage;
    std::optional<QString> text;
    {
        Interrupt interrupt;
        const core::Progress all = interrupt.progress();
        salvage = core::edit::Salvage::read(from, clock, watching(all.part(0, 0.7, QStringLiteral("reading"))));
        if (salvage)
            text = salvage->write(a.word(QStringLiteral("NEW")),
                                  watching(all.part(0.7, 1, QStringLiteral("writing the new book"))));
    }
    if (!text) throw core::Stopped(); // after the folder it was read into is gone
    io.out << core::edit::accountText(salvage->account()) << '\n'
           << a.word(QStringLiteral("NEW")) << '\n'
           << *text << '\n';
    return salvage->account().nothingLost() && salvage->account().problems.isEmpty() ? 0 : 3;
}

} // namespace app
