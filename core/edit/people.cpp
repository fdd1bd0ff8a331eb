#include "core/edit/people.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

std::optional<Person> personNamed(const EditContext& c, const QString& name) {
    std::optional<Person> found;
    c.each<Person>([&](const Person& p) {
        if (folded(p.name) == folded(name)) found = p;
    });
    return found;
}

Person needPerson(const EditContext& c, PersonId id) {
    auto person = c.find<Person>(id.value);
    if (!person) refuse(Edits::tr("That person is no longer in the book."));
    return *std::move(person);
}

[[noreturn]] void thereAlready(const Person& person) {
    refuse(Edits::tr("%1 is among the people of the book already.").arg(person.name));
}

} // namespace

ChangeSet addPerson(const EditContext& c, const QString& typed) {
    const Person person{PersonId{c.nextId(Table::Person)}, checkedName(typed, Edits::tr("Name")), true};
    const auto same = personNamed(c, person.name);
    if (same && same->active) thereAlready(*same);
    const QString text = Edits::tr("Added %1 to the people of the book").arg(person.name);
    if (same) return {text, {changed(*same, Person{same->id, person.name, true})}, {}, {}, {}};
    return {text, {added(person)}, {}, {}, {}};
}

ChangeSet changePerson(const EditContext& c, const Person& typed) {
    const Person old = needPerson(c, typed.id);
    Person now = typed;
    now.name = checkedName(typed.name, Edits::tr("Name"));
    if (now == old) return {};
    const auto same = personNamed(c, now.name);
    if (same && same->id != now.id) thereAlready(*same);
    QString text = Edits::tr("Changed the name %1 to %2 among the people of the book").arg(old.name, now.name);
    if (now.name == old.name)
        text = (now.active ? Edits::tr("%1 is offered as one of the people of the book again")
                           : Edits::tr("%1 is no longer offered as one of the people of the book"))
                   .arg(now.name);
    return {text, {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackPerson(const EditContext& c, PersonId id) {
    const Person person = needPerson(c, id);
    return {Edits::tr("Took %1 from the people of the book").arg(person.name), {deleted(person)}, {}, {}, {}};
}

} // namespace core::edit
