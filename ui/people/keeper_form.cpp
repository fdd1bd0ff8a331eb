#include "ui/people/keeper_form.h"

#include "core/base/error.h"
#include "core/edit/keeper.h"
#include "core/rules/notifiable.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"

#include <QCoreApplication>

namespace ui::people {

namespace {

struct KeeperWords {
    Q_DECLARE_TR_FUNCTIONS(ui::people::Keeper)
};

const QString kKeeperName = QStringLiteral("name");
const QString kKeeperAddress = QStringLiteral("address");
const QString kKeeperContact = QStringLiteral("contact");
const QString kKeeperRegistration = QStringLiteral("registration");
const QString kKeeperPlace = QStringLiteral("place");

core::Keeper keeperOf(const form::Values& values) {
    const auto address = values.find(kKeeperAddress);
    return {{},
            form::typed(values, kKeeperName),
            address == values.end() ? QString() : address->second,
            form::typed(values, kKeeperContact),
            form::typed(values, kKeeperRegistration),
            form::typed(values, kKeeperPlace)};
}

} // namespace

KeeperForm::KeeperForm(const core::edit::Session& book) : m_book(book), m_was(book.keeper()) {}

QString KeeperForm::title() const { return KeeperWords::tr("Keeper of this book"); }

QString KeeperForm::saveText() const { return KeeperWords::tr("&Save"); }

std::vector<form::Field> KeeperForm::fields() const {
    std::vector<form::Option> places;
    for (const QString& place : core::rules::notifiablePlaces(m_book.notifiables())) places.push_back({place});
    return {
        {.key = kKeeperName, .label = KeeperWords::tr("&Name"), .spoken = KeeperWords::tr("Name of the keeper")},
        {.key = kKeeperAddress,
         .kind = form::Kind::LongText,
         .label = KeeperWords::tr("&Address"),
         .spoken = KeeperWords::tr("Address of the keeper")},
        {.key = kKeeperContact,
         .label = KeeperWords::tr("C&ontact"),
         .spoken = KeeperWords::tr("Telephone or mail of the keeper"),
         .hint = KeeperWords::tr("Telephone, mail")},
        {.key = kKeeperRegistration,
         .label = KeeperWords::tr("&Registration"),
         .spoken = KeeperWords::tr("Registration number of the keeper or apiary")},
        {.key = kKeeperPlace,
         .label = KeeperWords::tr("&Place"),
         .spoken = KeeperWords::tr("Country or state whose rules hold"),
         .hint = KeeperWords::tr("Country or state whose rules hold"),
         .options = std::move(places),
         .note =
             [this](const form::Values& values) {
                 const QString place = form::typed(values, kKeeperPlace);
                 if (place.isEmpty()) return QString();
                 return core::rules::reportText(place, core::Reportable::Afb, m_book.notifiables());
             }},
    };
}

form::Values KeeperForm::start() const {
    if (!m_was) return {};
    return {{kKeeperName, m_was->name},
            {kKeeperAddress, m_was->address},
            {kKeeperContact, m_was->contact},
            {kKeeperRegistration, m_was->registration},
            {kKeeperPlace, m_was->place}};
}

std::vector<form::Problem> KeeperForm::problems(const form::Values& values) const {
    form::Judge judge(values, m_book.clock().today());
    if (!judge.need(kKeeperName, KeeperWords::tr("A name, as the papers print it."))) return judge.take();
    try {
        core::edit::checkedKeeper(keeperOf(values));
    } catch (const core::Error& e) {
        judge.add({}, e.userMessage());
    }
    return judge.take();
}

core::edit::Edit KeeperForm::edit(const form::Values& values) const {
    return [now = keeperOf(values)](const core::edit::EditContext& c) { return core::edit::setKeeper(c, now); };
}

std::optional<QString> KeeperForm::meanwhile() const {
    if (m_book.keeper() == m_was) return std::nullopt;
    return KeeperWords::tr("The keeper was changed meanwhile. What is typed here stays; saving writes it over that.");
}

} // namespace ui::people
