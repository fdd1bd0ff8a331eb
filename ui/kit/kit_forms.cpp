#include "ui/kit/kit_forms.h"

#include "core/model/kit_words.h"
#include "ui/form/book_options.h"
#include "ui/form/typed.h"
#include "ui/kit/kit_book.h"
#include "ui/records/kit_end_form.h"

namespace ui::kit {

namespace edit = core::edit;
using core::rules::KitPlace;
using form::Field;
using form::Kind;
using form::Values;

namespace {

constexpr int kMost = 1'000'000;
const QString kPart = QStringLiteral("part");
const QString kState = QStringLiteral("state");
const QString kCount = QStringLiteral("count");
const QString kStoreRoom = QStringLiteral("/"); // a value, never a name that is looked up

std::vector<form::Option> stateOptions() {
    std::vector<form::Option> out;
    for (const QString& state : core::kit::states()) out.push_back({state, stateText(state)});
    return out;
}

class KitForm : public records::RecordForm {
protected:
    KitForm(const edit::Session& book, KitPlace pile) : RecordForm(book), m_pile(std::move(pile)) {}

    bool quick() const override { return false; } // holds are of the whole book
    const KitPlace& pile() const { return m_pile; }
    QString placeText() const {
        const auto yard = m_pile.yard ? book().yard(*m_pile.yard) : std::nullopt;
        return yard ? yard->name : KitWords::tr("the store room");
    }
    QString colonyName() const { return m_pile.colony ? nameOf(*m_pile.colony, today()) : QString(); }
    static bool keeps(const Values& values) { return core::kit::keepsColony(form::typed(values, kState)); }
    Field countField(const QString& label) const {
        return {.key = kCount, .kind = Kind::Whole, .label = label, .spoken = KitWords::tr("How many")};
    }
    Field offField(std::function<bool(const Values&)> shown) const {
        Field field =
            colonyField(records::kColony, KitWords::tr("&Off colony"), KitWords::tr("The colony it came off"));
        field.shown = std::move(shown);
        return field;
    }
    std::optional<core::ColonyId> off(const Values& values) const {
        if (!keeps(values) || form::typed(values, records::kColony).isEmpty()) return std::nullopt;
        return colonyOf(values, records::kColony, today());
    }
    /// Quarantined kit names its colony; burned and sterilised may.
    void judgeOff(form::Judge& judge, const Values& values) const {
        const bool needed = form::typed(values, kState) == core::kit::kQuarantined;
        if (keeps(values) && (needed || !form::typed(values, records::kColony).isEmpty()))
            judgeColony(judge, values, records::kColony, today());
    }

private:
    KitPlace m_pile;
};

class CountForm : public KitForm {
public:
    CountForm(const edit::Session& book, KitPlace pile, std::optional<int> count)
        : KitForm(book, std::move(pile)), m_was(count) {}

    QString title() const override { return KitWords::tr("Count kit in %1").arg(placeText()); }
    QString saveText() const override { return KitWords::tr("&Save the count"); }
    QString what() const override { return KitWords::tr("Count kit"); }
    std::vector<Field> fields() const override {
        Field part{.key = kPart, .label = KitWords::tr("&Kind of kit"), .spoken = KitWords::tr("Kind of kit")};
        part.hint = KitWords::tr("floor, lid, a kind of box, …");
        for (const QString& name : core::kit::commonParts()) part.options.push_back({name, {}});
        for (const core::BoxKind& kind : book().boxKinds()) part.options.push_back({kind.name, {}});
        return {part,
                {.key = kState,
                 .kind = Kind::Choice,
                 .label = KitWords::tr("S&tate"),
                 .spoken = KitWords::tr("State"),
                 .options = stateOptions()},
                offField(keeps),
                countField(KitWords::tr("&How many are there"))};
    }
    Values start() const override {
        return {{kPart, pile().part},
                {kState, pile().state},
                {records::kColony, colonyName()},
                {kCount, form::typedWhole(m_was)}};
    }
    edit::Edit edit(const Values& values) const override {
        const KitPlace place{pile().yard, form::typed(values, kPart), form::typed(values, kState), off(values)};
        const int count = form::wholeOf(values, kCount).value_or(0);
        return [=](const edit::EditContext& c) { return edit::countKit(c, place, count); };
    }

protected:
    void judge(form::Judge& judge, const Values& values) const override {
        judge.need(kPart, KitWords::tr("Which kind of kit: floor, lid, a kind of box?"));
        judgeOff(judge, values);
        if (judge.need(kCount, KitWords::tr("How many are there? 0 where there is none.")))
            judge.whole(kCount, 0, kMost);
    }

private:
    std::optional<int> m_was;
};

class MoveForm : public KitForm {
public:
    MoveForm(const edit::Session& book, KitPlace pile, int count) : KitForm(book, std::move(pile)), m_there(count) {}

    QString title() const override {
        return KitWords::tr("%1, %2, in %3").arg(pile().part, stateText(pile().state), placeText());
    }
    QString saveText() const override { return KitWords::tr("&Save"); }
    QString what() const override { return KitWords::tr("Change or carry kit"); }
    std::vector<Field> fields() const override {
        Field to{.key = records::kYard,
                 .kind = Kind::Choice,
                 .label = KitWords::tr("&Where"),
                 .spoken = KitWords::tr("Where it is then"),
                 .options = {{kStoreRoom, KitWords::tr("the store room")}}};
        for (const core::Yard& yard : book().yards()) to.options.push_back({yard.name, {}});
        Field state{.key = kState,
                    .kind = Kind::Choice,
                    .label = KitWords::tr("Is &now"),
                    .spoken = KitWords::tr("State that it has then"),
                    .options = stateOptions()};
        const bool known = pile().colony.has_value();
        if (known)
            state.note = [](const Values& values) {
                return keeps(values) ? QString()
                                     : KitWords::tr("Out of quarantine: only once no hold stands, with a reason and a "
                                                    "name. Inspectors and local rules decide.");
            };
        std::vector<Field> out{countField(KitWords::tr("&How many of %1").arg(m_there)), state,
                               offField([known](const Values& values) { return !known && keeps(values); }), to};
        if (apart()) addEnd(out);
        return out;
    }
    Values start() const override {
        const auto yard = pile().yard ? book().yard(*pile().yard) : std::nullopt;
        return {{kCount, QString::number(m_there)},
                {kState, usualNext()},
                {records::kYard, yard ? yard->name : kStoreRoom},
                {records::kDay, form::typedDay(today())}};
    }
    edit::Edit edit(const Values& values) const override {
        edit::KitMove move{pile(),
                           form::wholeOf(values, kCount).value_or(0),
                           yardOf(values, records::kYard),
                           form::typed(values, kState),
                           pile().colony ? std::nullopt : off(values),
                           {}};
        if (ends(values)) move.end = records::kitEndingOf(values, kState, today());
        return [=](const edit::EditContext& c) { return edit::moveKit(c, move); };
    }

protected:
    void judge(form::Judge& judge, const Values& values) const override {
        if (judge.need(kCount, KitWords::tr("How many?"))) judge.whole(kCount, 1, m_there);
        if (!pile().colony) judgeOff(judge, values);
        if (ends(values)) records::judgeKitEnd(judge, values, kState);
    }

private:
    bool apart() const { return pile().state == core::kit::kQuarantined; }
    /// Kit that is kept apart comes to its end.
    bool ends(const Values& values) const {
        const QString state = form::typed(values, kState);
        return apart() && (state == core::kit::kBurned || state == core::kit::kSterilised);
    }
    /// How, who, when and by which paper.
    void addEnd(std::vector<Field>& out) const {
        for (Field& field : records::kitEndFields(kState)) out.push_back(std::move(field));
        for (Field field : {dayField(KitWords::tr("Day on which it was done")),
                            byField(KitWords::tr("&By"), KitWords::tr("Who did it or saw to it")), noteField()}) {
            field.shown = [this](const Values& values) { return ends(values); };
            out.push_back(std::move(field));
        }
    }
    /// What becomes of such kit most often.
    QString usualNext() const {
        if (pile().state == core::kit::kToClean) return core::kit::kUsable;
        return pile().state == core::kit::kQuarantined ? core::kit::kBurned : pile().state;
    }
    int m_there;
};

} // namespace

std::unique_ptr<form::Form> countForm(const edit::Session& book, const KitPlace& pile, std::optional<int> count) {
    return std::make_unique<CountForm>(book, pile, count);
}

std::unique_ptr<form::Form> moveForm(const edit::Session& book, const KitPlace& pile, int count) {
    return std::make_unique<MoveForm>(book, pile, count);
}

} // namespace ui::kit
