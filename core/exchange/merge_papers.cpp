#include "core/base/natural_order.h"
#include "core/exchange/cell_text.h"
#include "core/exchange/same_as_book.h"

#include <algorithm>
#include <map>

namespace core::exchange {

namespace {

QString yesNoText(bool yes) { return yes ? QStringLiteral("yes") : QStringLiteral("no"); }

} // namespace

/// A book has one keeper: a second row of the files is one too many; one that says otherwise than the book, too.
void mergeKeepers(Ledger& ledger) {
    std::optional<Keeper> stored;
    ledger.c.each<Keeper>([&](const Keeper& k) { stored = k; });
    const KeeperDraft* first = nullptr;
    for (const KeeperDraft& draft : ledger.drafts.keepers) {
        if (first) {
            ledger.fault(draft.at, "name", Say::tr("“%1” is a second keeper, expected one").arg(draft.row.name));
            continue;
        }
        first = &draft;
        if (!stored) {
            ledger.keepers.push_back(draft.row);
            ++ledger.count(FileKind::Keeper).added;
            continue;
        }
        const Keeper& given = draft.row;
        const std::vector<Field> fields = {{"name", given.name, stored->name},
                                           {"address", given.address, stored->address},
                                           {"contact", given.contact, stored->contact},
                                           {"registration", given.registration, stored->registration},
                                           {"place", given.place, stored->place}};
        if (sameAsBook(ledger, draft.at, Say::tr("Keeper"), fields)) ++ledger.count(FileKind::Keeper).passedOver;
    }
}

void mergeNotifiables(Ledger& ledger) {
    using Key = std::pair<QString, Reportable>;
    std::map<Key, Notifiable> inBook;
    ledger.c.each<Notifiable>([&](const Notifiable& n) { inBook.emplace(Key{folded(n.place), n.disease}, n); });
    std::map<Key, Origin> seen;
    for (const NotifiableDraft& draft : ledger.drafts.notifiables) {
        const Notifiable& given = draft.row;
        const Key key{folded(given.place), given.disease};
        const QString name = given.place + u' ' + word(given.disease);
        const auto [before, once] = seen.emplace(key, draft.at);
        if (!once) {
            faultTwice(ledger, draft.at, "disease", name, before->second);
            continue;
        }
        const auto stored = inBook.find(key);
        if (stored == inBook.end()) {
            ledger.notifiables.push_back(given);
            ++ledger.count(FileKind::Notifiables).added;
            continue;
        }
        const Notifiable& old = stored->second;
        const std::vector<Field> fields = {{"must", yesNoText(given.must), yesNoText(old.must)},
                                           {"tell", given.tell, old.tell},
                                           {"source", given.source, old.source}};
        if (sameAsBook(ledger, draft.at, name, fields)) ++ledger.count(FileKind::Notifiables).passedOver;
    }
    std::ranges::sort(ledger.notifiables, {}, [](const Notifiable& n) { return Key{folded(n.place), n.disease}; });
}

} // namespace core::exchange
