#include "ui/records/treatment_form.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/rules/label_examples.h"
#include "ui/form/typed.h"
#include "ui/records/odd.h"

#include <algorithm>
#include <array>

namespace ui::records {

namespace edit = core::edit;
using core::Treatment;
using form::Kind;
using form::Values;

namespace {

const QString kAntibiotic = QStringLiteral("antibiotic");
constexpr int kMostDays = 1000;
constexpr double kMostQuantity = 1e9;
constexpr int kDecimals = 6;

struct TextCell {
    const char* key;
    QString Treatment::*cell;
};
constexpr std::array kTexts{TextCell{"product", &Treatment::product},
                            TextCell{"substance", &Treatment::substance},
                            TextCell{"batch", &Treatment::batch},
                            TextCell{"unit", &Treatment::unit},
                            TextCell{"method", &Treatment::method},
                            TextCell{"supplier", &Treatment::supplier},
                            TextCell{"supplier_address", &Treatment::supplierAddress},
                            TextCell{"proof", &Treatment::proof},
                            TextCell{"prescriber", &Treatment::prescriber},
                            TextCell{"prescriber_contact", &Treatment::prescriberContact},
                            TextCell{"disposed_how", &Treatment::disposedHow},
                            TextCell{"by", &Treatment::by},
                            TextCell{"reason", &Treatment::reason}};

struct NumberCell {
    const char* key;
    std::optional<double> Treatment::*cell;
};
constexpr std::array kNumbers{NumberCell{"quantity", &Treatment::quantity},
                              NumberCell{"quantity_bought", &Treatment::quantityBought},
                              NumberCell{"disposed_quantity", &Treatment::disposedQuantity}};

struct WholeCell {
    const char* key;
    std::optional<int> Treatment::*cell;
};
constexpr std::array kWholes{WholeCell{"days", &Treatment::days},
                             WholeCell{"withdrawal_days", &Treatment::withdrawalDays}};

struct DayCell {
    const char* key;
    std::optional<core::Day> Treatment::*cell;
};
constexpr std::array kDays{DayCell{"bought", &Treatment::bought}, DayCell{"disposed", &Treatment::disposed}};

QString keyOf(const char* key) { return QString::fromLatin1(key); }

form::Field plain(const char* key, const QString& label, const QString& spoken, Kind kind = Kind::Text) {
    return {.key = keyOf(key), .kind = kind, .label = label, .spoken = spoken};
}

std::vector<form::Field> medicineFields() {
    std::vector<form::Field> out{
        plain("product", Records::tr("&Product"), Records::tr("Product, as its label says")),
        plain("substance", Records::tr("Su&bstance"), Records::tr("Active substance")),
        {.key = kAntibiotic,
         .kind = Kind::Tick,
         .label = Records::tr("It is an &antibiotic"),
         .spoken = Records::tr("It is an antibiotic")},
        plain("method", Records::tr("&Method"), Records::tr("How it was given")),
        plain("quantity", Records::tr("&Quantity"), Records::tr("Quantity given"), Kind::Decimal),
        plain("unit", Records::tr("&Unit"), Records::tr("Unit of the quantity")),
        plain("batch", Records::tr("Ba&tch"), Records::tr("Batch of the product")),
        plain("days", Records::tr("&Days in the hive"), Records::tr("Days until it is taken out"), Kind::Whole),
        plain("withdrawal_days", Records::tr("&Withdrawal, days"), Records::tr("Withdrawal period in days"),
              Kind::Whole),
        plain("reason", Records::tr("&Reason"), Records::tr("Why it was treated")),
    };
    out.front().heading = Records::tr("What was given");
    out[1].note = [](const Values& values) {
        return core::rules::labelExamplesText(form::typed(values, QStringLiteral("substance")));
    };
    const auto withdrawal = std::find_if(
        out.begin(), out.end(), [](const form::Field& f) { return f.key == QLatin1StringView("withdrawal_days"); });
    withdrawal->note = [](const Values& values) {
        return form::typed(values, QStringLiteral("withdrawal_days")).isEmpty()
                   ? Records::tr("Blank is not 0: where the label says 0, type 0.")
                   : QString();
    };
    return out;
}

std::vector<form::Field> boughtFields() {
    std::vector<form::Field> out{
        plain("supplier", Records::tr("Supplier"), Records::tr("Supplier of the product")),
        plain("supplier_address", Records::tr("Address"), Records::tr("Address of the supplier")),
        plain("bought", Records::tr("Bought on"), Records::tr("Day it was bought"), Kind::Day),
        plain("quantity_bought", Records::tr("Quantity"), Records::tr("Quantity bought"), Kind::Decimal),
        plain("proof", Records::tr("Receipt"), Records::tr("Number of the receipt or proof of purchase")),
        plain("prescriber", Records::tr("Prescribed by"), Records::tr("Veterinarian who prescribed it")),
        plain("prescriber_contact", Records::tr("Contact"), Records::tr("Contact of the prescriber")),
        plain("disposed", Records::tr("Disposed on"), Records::tr("Day the rest was disposed of"), Kind::Day),
        plain("disposed_quantity", Records::tr("Quantity"), Records::tr("Quantity disposed of"), Kind::Decimal),
        plain("disposed_how", Records::tr("How"), Records::tr("How it was disposed of")),
    };
    out[0].heading = Records::tr("Where it comes from");
    out[5].heading = Records::tr("Prescription");
    out[7].heading = Records::tr("What was left over");
    return out;
}

} // namespace

TreatmentForm::TreatmentForm(const edit::Session& book, const Subject& about, core::Day day)
    : SubjectForm(book, about, day) {}

TreatmentForm::TreatmentForm(const edit::Session& book, const Treatment& was)
    : SubjectForm(book, {was.colony, was.yard}, was.day), m_was(was) {}

QString TreatmentForm::title() const {
    return m_was ? Records::tr("A treatment of %1").arg(subjectName())
                 : Records::tr("Treatment of %1").arg(subjectName());
}

QString TreatmentForm::saveText() const {
    return m_was ? Records::tr("&Save changes") : Records::tr("&Save treatment");
}

std::vector<form::Field> TreatmentForm::fields() const {
    std::vector<form::Field> out = subjectFields();
    out.push_back(dayField(Records::tr("Day of the treatment")));
    out.push_back(byField(Records::tr("B&y"), Records::tr("Who gave it")));
    for (form::Field& f : medicineFields()) out.push_back(std::move(f));
    for (form::Field& f : boughtFields()) out.push_back(std::move(f));
    return out;
}

Values TreatmentForm::start() const {
    Values v{{kDay, form::typedDay(day())}};
    putSubject(v);
    if (!m_was) return v;
    for (const TextCell& c : kTexts) v[keyOf(c.key)] = (*m_was).*c.cell;
    for (const NumberCell& c : kNumbers) v[keyOf(c.key)] = form::typedDecimal((*m_was).*c.cell);
    for (const WholeCell& c : kWholes) v[keyOf(c.key)] = form::typedWhole((*m_was).*c.cell);
    for (const DayCell& c : kDays) v[keyOf(c.key)] = form::typedDay((*m_was).*c.cell);
    if (m_was->antibiotic) v[kAntibiotic] = form::kTicked;
    return v;
}

void TreatmentForm::judge(form::Judge& judge, const Values& values) const {
    judge.need(QStringLiteral("product"), Records::tr("The product's name is needed."));
    judge.need(QStringLiteral("substance"), Records::tr("The active substance is needed; the label names it."));
    for (const NumberCell& c : kNumbers) judge.decimal(keyOf(c.key), 0, kMostQuantity, kDecimals);
    for (const WholeCell& c : kWholes) judge.whole(keyOf(c.key), 0, kMostDays);
    judge.day(QStringLiteral("bought"));
    judge.day(QStringLiteral("disposed"));
    const auto on = judge.needDay(kDay);
    judgeSubject(judge, values, on.value_or(day()));
}

Treatment TreatmentForm::treatmentOf(const Values& values) const {
    Treatment t = m_was.value_or(Treatment{});
    t.day = form::dayOf(values, kDay, today()).value_or(day());
    const Subject of = subjectOf(values, t.day);
    t.colony = of.colony;
    t.yard = of.yard;
    for (const TextCell& c : kTexts) t.*c.cell = form::typed(values, keyOf(c.key));
    for (const NumberCell& c : kNumbers) t.*c.cell = form::decimalOf(values, keyOf(c.key));
    for (const WholeCell& c : kWholes) t.*c.cell = form::wholeOf(values, keyOf(c.key));
    for (const DayCell& c : kDays) t.*c.cell = form::dayOf(values, keyOf(c.key), today());
    t.antibiotic = form::ticked(values, kAntibiotic);
    return t;
}

QStringList TreatmentForm::odd(const Values& values) const {
    const Treatment t = treatmentOf(values);
    QStringList out;
    if (!(m_was && m_was->day == t.day))
        if (const auto odd = longAgo(t.day, today())) out << *odd;
    if (t.bought && *t.bought > t.day) out << Records::tr("It was bought after it was given.");
    // Labels of thymol products in the UK ask for it; summaries of product characteristics, imedi.co.uk and
    // studylib.net/doc/7514825.
    if (!m_was && t.colony && t.substance.contains(QLatin1StringView("thymol"), Qt::CaseInsensitive))
        out << Records::tr("Labels of thymol products ask for all colonies of the stand at the same time; this is one "
                           "alone.");
    if (t.disposed && *t.disposed < t.day) out << Records::tr("The rest was disposed of before it was given.");
    return out;
}

edit::Edit TreatmentForm::edit(const Values& values) const {
    const Treatment t = treatmentOf(values);
    if (m_was) return [t](const edit::EditContext& c) { return edit::changeTreatment(c, t); };
    return [t](const edit::EditContext& c) { return edit::logTreatment(c, t); };
}

std::optional<QString> TreatmentForm::meanwhile() const { return m_was ? movedSince(book(), *m_was) : std::nullopt; }

} // namespace ui::records
