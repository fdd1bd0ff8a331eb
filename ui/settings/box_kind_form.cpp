#include "ui/settings/box_kind_form.h"

#include "core/edit/put_right.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::settings {

namespace {

struct Boxes {
    Q_DECLARE_TR_FUNCTIONS(BoxKinds)
};

const QString kName = QStringLiteral("name");
const QString kFrames = QStringLiteral("frames");
const QString kWidth = QStringLiteral("width");
const QString kLength = QStringLiteral("length");
const QString kHeight = QStringLiteral("height");
const QString kTare = QStringLiteral("tare");
constexpr int kMostFrames = 24;
constexpr int kLongestMm = 2000;
constexpr core::Decagrams kHeaviest{10'000};

std::optional<core::Decagrams> tareOf(const form::Values& values, core::WeightUnit unit) {
    const auto tare = core::parseWeight(form::typed(values, kTare), unit);
    return tare && *tare <= kHeaviest ? tare : std::nullopt;
}

} // namespace

BoxKindForm::BoxKindForm(const core::edit::Session& book, std::optional<core::BoxKind> was)
    : m_book(book), m_was(std::move(was)), m_unit(book.settings().showWeight) {}

QString BoxKindForm::title() const {
    return m_was ? Boxes::tr("Change box kind %1").arg(m_was->name) : Boxes::tr("A box kind of your own");
}

QString BoxKindForm::saveText() const { return m_was ? Boxes::tr("&Save the change") : Boxes::tr("&Add box kind"); }

std::vector<form::Field> BoxKindForm::fields() const {
    const bool pounds = m_unit == core::WeightUnit::Pounds;
    const auto size = [](const QString& key, const QString& label, const QString& spoken) {
        return form::Field{.key = key, .kind = form::Kind::Whole, .label = label, .spoken = spoken};
    };
    return {{.key = kName, .label = Boxes::tr("&Name"), .spoken = Boxes::tr("Name of the box kind")},
            size(kFrames, Boxes::tr("&Frames"), Boxes::tr("Frames it holds")),
            size(kWidth, Boxes::tr("&Width, mm"), Boxes::tr("Outside width across the combs in millimetres")),
            size(kLength, Boxes::tr("&Length, mm"), Boxes::tr("Outside length along the combs in millimetres")),
            size(kHeight, Boxes::tr("&Height, mm"), Boxes::tr("Outside height in millimetres")),
            {.key = kTare,
             .kind = form::Kind::Decimal,
             .label = pounds ? Boxes::tr("&Empty weight, lb") : Boxes::tr("&Empty weight, kg"),
             .spoken = pounds ? Boxes::tr("Weight of the empty box in pounds")
                              : Boxes::tr("Weight of the empty box in kilograms")}};
}

form::Values BoxKindForm::start() const {
    if (!m_was) return {{kFrames, QStringLiteral("10")}};
    return {{kName, m_was->name},
            {kFrames, form::typedWhole(m_was->frames)},
            {kWidth, form::typedWhole(m_was->widthMm)},
            {kLength, form::typedWhole(m_was->lengthMm)},
            {kHeight, form::typedWhole(m_was->heightMm)},
            {kTare, m_was->tare ? core::weightNumber(*m_was->tare, m_unit) : QString()}};
}

std::vector<form::Problem> BoxKindForm::problems(const form::Values& values) const {
    form::Judge judge(values, m_book.clock().today());
    judge.need(kName, Boxes::tr("A name, such as “Deep of 9”."));
    if (judge.need(kFrames, Boxes::tr("How many frames it holds."))) judge.whole(kFrames, 1, kMostFrames);
    for (const QString& key : {kWidth, kLength, kHeight}) judge.whole(key, 1, kLongestMm);
    if (!form::typed(values, kTare).isEmpty() && !tareOf(values, m_unit))
        judge.add(kTare, m_unit == core::WeightUnit::Pounds ? Boxes::tr("A weight in pounds, 0 to 220.4, to 0.1.")
                                                            : Boxes::tr("A weight in kilograms, 0 to 100, to 0.01."));
    return judge.take();
}

core::BoxKind BoxKindForm::kindOf(const form::Values& values) const {
    core::BoxKind kind = m_was.value_or(core::BoxKind{});
    kind.name = form::typed(values, kName);
    kind.frames = form::wholeOf(values, kFrames).value_or(kind.frames);
    kind.widthMm = form::wholeOf(values, kWidth);
    kind.lengthMm = form::wholeOf(values, kLength);
    kind.heightMm = form::wholeOf(values, kHeight);
    const bool untouched =
        m_was && start().at(kTare) == form::typed(values, kTare); // what is kept is finer than 0.1 lb
    if (!untouched) kind.tare = tareOf(values, m_unit);
    return kind;
}

core::edit::Edit BoxKindForm::edit(const form::Values& values) const {
    const core::BoxKind kind = kindOf(values);
    if (m_was) return [kind](const core::edit::EditContext& c) { return core::edit::changeBoxKind(c, kind); };
    return [kind](const core::edit::EditContext& c) { return core::edit::newBoxKind(c, kind); };
}

std::optional<QString> BoxKindForm::meanwhile() const {
    if (!m_was) return std::nullopt;
    const auto kinds = m_book.boxKinds();
    const auto now = std::ranges::find(kinds, m_was->id, &core::BoxKind::id);
    if (now == kinds.end()) return Boxes::tr("This box kind was taken back meanwhile.");
    if (*now == *m_was) return std::nullopt;
    return Boxes::tr(
        "This box kind was changed meanwhile. What is typed here stays; saving writes it over that change.");
}

} // namespace ui::settings
