#include "core/edit/file_mappings.h"
#include "core/edit/keeper.h"
#include "core/edit/notifiables.h"
#include "core/edit/people.h"
#include "core/edit/phrases.h"
#include "core/edit/put_right.h"
#include "core/edit/question.h"
#include "core/rules/question.h"
#include "tests/reliability/soak/hand.h"

// Small lists of the book: box kinds, people, phrases, questions, mappings, the keeper, what is notifiable.

namespace tests::soak {

namespace {

constexpr size_t kMostOfAList = 8;

void needShort(Hand& h, Table table) {
    if (h.book().rows(table).size() >= kMostOfAList) throw Nothing();
}

BoxKind boxKindOf(Hand& h) {
    BoxKind kind;
    kind.name = QStringLiteral("own-%1").arg(h.upTo(30));
    kind.frames = 10 + h.upTo(4);
    return kind;
}

/// Of the users' own.
BoxKind ownKind(Hand& h) {
    return h.such<BoxKind>([](const BoxKind& k) { return k.name.startsWith(QLatin1StringView("own-")); });
}

ChangeSet boxKindNow(Hand& h, const EditContext& c) {
    BoxKind now = ownKind(h);
    now.frames = 10 + h.upTo(4);
    if (h.oneIn(2)) now.tare = Decagrams{h.upTo(300)};
    return changeBoxKind(c, now);
}

Question questionOf(Hand& h) {
    Question q{{}, QStringLiteral("Q %1").arg(h.upTo(30)), QStringLiteral("colonies"), {}, h.oneIn(2)};
    q.ask = rules::askJson(rules::readyAsk(static_cast<rules::ReadyAsk>(h.upTo(3))));
    return q;
}

Notifiable lineOf(Hand& h) {
    return {{}, QStringLiteral("Place %1").arg(h.upTo(9)), static_cast<Reportable>(h.upTo(4)), h.oneIn(2), h.note(),
            {}};
}

ChangeSet mappingKept(Hand& h, const EditContext& c) {
    FileMapping m{{},
                  QStringLiteral("Scale %1").arg(h.upTo(7)),
                  QStringLiteral("visits"),
                  QStringLiteral("a,b%1").arg(h.upTo(9)),
                  QStringLiteral("{}")};
    return keepFileMapping(c, m);
}

ChangeSet personNow(Hand& h, const EditContext& c) {
    Person now = h.any<Person>();
    now.active = !now.active;
    return changePerson(c, now);
}

const Kind kKinds[] = {
    {"newBoxKind", 1,
     [](Hand& h, const EditContext& c) {
         if (h.book().rows(Table::BoxKind).size() > 12) throw Nothing();
         return newBoxKind(c, boxKindOf(h));
     }},
    {"changeBoxKind", 1, boxKindNow},
    {"takeBackBoxKind", 1, [](Hand& h, const EditContext& c) { return takeBackBoxKind(c, ownKind(h).id); }},
    {"addPerson", 1,
     [](Hand& h, const EditContext& c) {
         needShort(h, Table::Person);
         return addPerson(c, QStringLiteral("Keeper %1").arg(h.upTo(20)));
     }},
    {"changePerson", 1, personNow},
    {"takeBackPerson", 1, [](Hand& h, const EditContext& c) { return takeBackPerson(c, h.any<Person>().id); }},
    {"addPhrase", 1,
     [](Hand& h, const EditContext& c) {
         needShort(h, Table::Phrase);
         return addPhrase(c, QStringLiteral("q%1").arg(h.upTo(30)), QStringLiteral("Queen seen %1.").arg(h.upTo(9)));
     }},
    {"changePhrase", 1,
     [](Hand& h, const EditContext& c) {
         Phrase now = h.any<Phrase>();
         now.sentence = QStringLiteral("Eggs seen on %1 frames.").arg(h.upTo(9));
         return changePhrase(c, now);
     }},
    {"takeBackPhrase", 1, [](Hand& h, const EditContext& c) { return takeBackPhrase(c, h.any<Phrase>().id); }},
    {"keepQuestion", 1,
     [](Hand& h, const EditContext& c) {
         needShort(h, Table::Question);
         return keepQuestion(c, questionOf(h));
     }},
    {"changeQuestion", 1,
     [](Hand& h, const EditContext& c) {
         Question now = questionOf(h);
         now.id = h.any<Question>().id;
         return changeQuestion(c, now);
     }},
    {"takeBackQuestion", 1, [](Hand& h, const EditContext& c) { return takeBackQuestion(c, h.any<Question>().id); }},
    {"keepFileMapping", 1, mappingKept},
    {"takeBackFileMapping", 1,
     [](Hand& h, const EditContext& c) { return takeBackFileMapping(c, h.any<FileMapping>().id); }},
    {"setKeeper", 4,
     [](Hand& h, const EditContext& c) {
         return setKeeper(c, {{}, h.who(), h.note(), {}, {}, QStringLiteral("Place %1").arg(h.upTo(9))});
     }},
    {"takeBackKeeper", 1, [](Hand&, const EditContext& c) { return takeBackKeeper(c); }},
    {"addNotifiable", 4,
     [](Hand& h, const EditContext& c) {
         needShort(h, Table::Notifiable);
         return addNotifiable(c, lineOf(h));
     }},
    {"changeNotifiable", 1,
     [](Hand& h, const EditContext& c) {
         Notifiable now = lineOf(h);
         now.id = h.any<Notifiable>().id;
         return changeNotifiable(c, now);
     }},
    {"takeBackNotifiable", 1,
     [](Hand& h, const EditContext& c) { return takeBackNotifiable(c, h.any<Notifiable>().id); }},
};

} // namespace

std::span<const Kind> paperKinds() { return kKinds; }

} // namespace tests::soak
