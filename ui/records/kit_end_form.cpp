#include "ui/records/kit_end_form.h"

#include "core/model/kit_words.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

namespace ui::records {

namespace edit = core::edit;
using core::KitEndHow;
using form::Field;
using form::Kind;
using form::Values;

namespace {

const QString kHowBurned = QStringLiteral("how-burned");
const QString kHowClean = QStringLiteral("how-sterilised");
const QString kEndPaper = QStringLiteral("end-paper");
const QString kEndState = QStringLiteral("end-state");

bool burns(const Values& values, const QString& stateKey) {
    return form::typed(values, stateKey) == core::kit::kBurned;
}

bool endsHere(const Values& values, const QString& stateKey) {
    return burns(values, stateKey) || form::typed(values, stateKey) == core::kit::kSterilised;
}

KitEndHow howOf(const Values& values, const QString& stateKey) {
    const bool burned = burns(values, stateKey);
    return core::fromWord<KitEndHow>(form::typed(values, burned ? kHowBurned : kHowClean))
        .value_or(burned ? KitEndHow::Burned : KitEndHow::Irradiated);
}

Field howField(const QString& key, const std::vector<KitEndHow>& ways, const QString& stateKey, bool burned) {
    Field field{
        .key = key,
        .kind = Kind::Choice,
        .label = Records::tr("Ho&w"),
        .spoken = Records::tr("How it was done"),
        .shown = [stateKey, burned](const Values& v) { return endsHere(v, stateKey) && burns(v, stateKey) == burned; },
        .note = [stateKey](const Values& v) { return kitEndCaution(howOf(v, stateKey)); }};
    for (const KitEndHow way : ways) field.options.push_back({core::word(way), kitEndWord(way)});
    return field;
}

} // namespace

QString kitEndCaution(KitEndHow how) {
    const QString decides = Records::tr("The inspector decides what may be done.");
    switch (how) {
    case KitEndHow::Dipped:
        // DPIRD Western Australia, "Preventing spread of American foulbrood disease".
        return Records::tr("Western Australia, for one, asks for cleaned boxes in wax of 160 °C for 10 minutes at "
                           "least, half microcrystalline and half paraffin (DPIRD). %1")
            .arg(decides);
    case KitEndHow::Irradiated:
        // De Guzman et al. 2011, Appl. Radiat. Isot. 69:1374-1379; Can. J. Microbiol. 8:175-179 (1962).
        return Records::tr("As examples: hives were sterile after 15 kGy of gamma rays (De Guzman and others 2011), "
                           "comb and honey after 15 to 20 kGy (Can. J. Microbiol. 1962). %1")
            .arg(decides);
    case KitEndHow::Burned:
        return Records::tr("Where and how it may be burned, and who must see it, the authority says. %1").arg(decides);
    case KitEndHow::Other:
        break;
    }
    return Records::tr("Say in the note how. %1").arg(decides);
}

std::vector<Field> kitEndFields(const QString& stateKey) {
    const auto shown = [stateKey](const Values& v) { return endsHere(v, stateKey); };
    return {howField(kHowBurned, {KitEndHow::Burned, KitEndHow::Other}, stateKey, true),
            howField(kHowClean, {KitEndHow::Irradiated, KitEndHow::Dipped, KitEndHow::Other}, stateKey, false),
            {.key = kEndPaper,
             .label = Records::tr("&Paper"),
             .spoken = Records::tr("Number of the order or certificate"),
             .hint = Records::tr("number of the order or certificate"),
             .shown = shown}};
}

void judgeKitEnd(form::Judge& judge, const Values& values, const QString& stateKey) {
    if (!endsHere(values, stateKey)) return;
    judge.need(kBy, Records::tr("Who did it, or saw to it?"));
    judge.needDay(kDay);
    if (howOf(values, stateKey) == KitEndHow::Other)
        judge.need(kNote, Records::tr("How was it done? It is none of the known ways."));
}

edit::KitEnding kitEndingOf(const Values& values, const QString& stateKey, core::Day today) {
    return {howOf(values, stateKey), form::dayOf(values, kDay, today).value_or(today), form::typed(values, kBy),
            form::typed(values, kEndPaper), form::typed(values, kNote)};
}

Values kitEndValues(const core::KitEnd& end) {
    return {{kHowBurned, core::word(end.how)},
            {kHowClean, core::word(end.how)},
            {kDay, form::typedDay(end.day)},
            {kBy, end.by},
            {kEndPaper, end.paper},
            {kNote, end.note}};
}

KitEndForm::KitEndForm(const edit::Session& book, const core::KitEnd& was) : RecordForm(book), m_was(was) {}

QString KitEndForm::title() const {
    const QString kit = QStringLiteral("%1 × %2").arg(QString::number(m_was.count), m_was.part);
    return m_was.colony ? Records::tr("End of %1 off %2").arg(kit, nameOf(*m_was.colony, m_was.day))
                        : Records::tr("End of %1").arg(kit);
}

QString KitEndForm::saveText() const { return Records::tr("&Save changes"); }

/// Irradiated and dipped kit is there still, burned kit is gone: the fields are those of what it is.
Values KitEndForm::withState(const Values& values) const {
    Values out = values;
    out[kEndState] = m_was.how == KitEndHow::Burned ? core::kit::kBurned : core::kit::kSterilised;
    return out;
}

std::vector<Field> KitEndForm::fields() const {
    std::vector<Field> out = kitEndFields(kEndState);
    for (Field& field : out) {
        if (field.shown) field.shown = [this, was = field.shown](const Values& v) { return was(withState(v)); };
        if (field.note) field.note = [this, was = field.note](const Values& v) { return was(withState(v)); };
    }
    out.push_back(dayField(Records::tr("Day on which it was done")));
    out.push_back(byField(Records::tr("&By"), Records::tr("Who did it or saw to it")));
    out.push_back(noteField());
    return out;
}

Values KitEndForm::start() const { return kitEndValues(m_was); }

void KitEndForm::judge(form::Judge& judge, const Values& values) const {
    judgeKitEnd(judge, withState(values), kEndState);
}

edit::Edit KitEndForm::edit(const Values& values) const {
    const edit::KitEnding said = kitEndingOf(withState(values), kEndState, today());
    core::KitEnd now = m_was;
    now.how = said.how;
    now.day = said.day;
    now.by = said.by;
    now.paper = said.paper;
    now.note = said.note;
    return [now](const edit::EditContext& c) { return edit::changeKitEnd(c, now); };
}

std::optional<QString> KitEndForm::meanwhile() const { return movedSince(book(), m_was); }

} // namespace ui::records
