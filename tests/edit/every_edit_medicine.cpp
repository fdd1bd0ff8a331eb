#include "core/edit/strips_out.h"
#include "tests/edit/every_edit.h"

// What treatments left in hives comes out, among the random edits.

namespace tests::edit {

std::pair<std::string, ChangeSet> EveryEdit::stripped(const EditContext& c) {
    const auto treatment = any<Treatment>(c);
    const auto old = any<StripsOut>(c);
    if (!treatment) return {"no treatment yet", {}};
    const Day out = near(treatment->day) + 5;
    switch (upTo(4)) {
    case 0:
        return {"logStripsOutOfAll", logStripsOutOfAll(c, treatment->id, out, {}, QStringLiteral("dry"))};
    case 1:
        if (!old) break;
        return {"takeBackStripsOut", takeBackStripsOut(c, old->id)};
    case 2: {
        if (!old) break;
        StripsOut now = *old;
        now.day = near(now.day);
        return {"changeStripsOut", changeStripsOut(c, now)};
    }
    default:
        break;
    }
    const ColonyId of = upTo(3) ? treatment->colony.value_or(colony(c)) : colony(c);
    return {"logStripsOut", logStripsOut(c, {{}, treatment->id, of, out, QStringLiteral("Ana"), {}})};
}

} // namespace tests::edit
