#include "ui/start/row_form.h"

#include "core/base/error.h"
#include "core/edit/edits.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/start/compass.h"
#include "ui/start/coordinates.h"
#include "ui/start/field_keys.h"

#include <QCoreApplication>

namespace ui::start {

namespace edit = core::edit;
using form::Values;

namespace {

struct Rows {
    Q_DECLARE_TR_FUNCTIONS(Rows)
};

constexpr int kMostHives = 400;
constexpr int kWidestMm = 100'000;

QString wordsOf(const Values& values, const QString& key) {
    const auto degrees = parseDirection(form::typed(values, key));
    return degrees ? directionWords(*degrees) : QString();
}

/// "K1, K2 … K24"
QString listOf(const std::vector<edit::RowSpot>& spots) {
    if (spots.size() <= 3) {
        QStringList all;
        for (const edit::RowSpot& s : spots) all << s.label;
        return all.join(QStringLiteral(", "));
    }
    return Rows::tr("%1, %2 … %3").arg(spots[0].label, spots[1].label, spots.back().label);
}

} // namespace

RowForm::RowForm(const desk::Desk& desk, core::YardId yard, const Kept& kept)
    : m_desk(desk), m_yard(desk.session().yard(yard).value_or(core::Yard{})), m_kept(kept) {}

QString RowForm::title() const { return Rows::tr("A row of hives in %1").arg(m_yard.name); }

QString RowForm::saveText() const { return Rows::tr("&Set them up"); }

std::vector<form::Field> RowForm::fields() const {
    std::vector<form::Field> out{
        {.key = kCount,
         .kind = form::Kind::Whole,
         .label = Rows::tr("Ho&w many"),
         .spoken = Rows::tr("How many hives")},
        {.key = kLabel,
         .label = Rows::tr("First &label"),
         .spoken = Rows::tr("Label of the first hive; its number or letter goes on"),
         .hint = QStringLiteral("K1"),
         .note = [this](const Values& v) { return labelsLine(v); }},
        {.key = kStep,
         .kind = form::Kind::Whole,
         .label = Rows::tr("&Counting by"),
         .spoken = Rows::tr("How the labels go on: 1 is one more each, 2 every other number, −1 downwards"),
         .hint = QStringLiteral("1")},
        {.key = kSpacing,
         .kind = form::Kind::Decimal,
         .label = Rows::tr("Metres a&part"),
         .spoken = Rows::tr("Metres from hive to hive, middle to middle")},
        {.key = kBearing,
         .label = Rows::tr("Row &runs"),
         .spoken = Rows::tr("Where the row runs: a compass word or degrees from north"),
         .hint = Rows::tr("E, NE or 90"),
         .note = [](const Values& v) { return wordsOf(v, kBearing); }}};
    out.push_back(headingField());
    out.push_back(boxField(m_desk.session()));
    out.push_back(broodBoxesField());
    out.push_back(sinceField());
    for (form::Field& f : placeFields(Rows::tr("First hive: drag the row on the plan, or type it")))
        out.push_back(std::move(f));
    return out;
}

Values RowForm::start() const {
    Values v;
    v[kCount] = QStringLiteral("12");
    v[kLabel] = nextLabel(m_desk, m_yard.id);
    v[kStep] = QStringLiteral("1");
    v[kSpacing] = m_kept.spacing;
    v[kBearing] = m_kept.bearing;
    v[kHeading] = m_kept.heading;
    v[kBox] = m_kept.box.isEmpty() ? usualBox(m_desk) : m_kept.box;
    v[kBrood] = m_kept.broodBoxes;
    v[kSince] = m_kept.since.isEmpty() || !m_desk.present() ? form::typedDay(m_desk.day()) : m_kept.since;
    putPlace(v, nextRowStart(m_desk, m_yard.id));
    return v;
}

void RowForm::keep(const Values& values, Kept& kept) {
    kept.spacing = form::typed(values, kSpacing);
    kept.bearing = form::typed(values, kBearing);
    kept.heading = form::typed(values, kHeading);
    kept.box = form::typed(values, kBox);
    kept.broodBoxes = form::typed(values, kBrood);
    kept.since = form::typed(values, kSince);
}

std::optional<edit::HiveRow> RowForm::rowOf(const Values& values) const {
    const auto count = form::wholeOf(values, kCount);
    const auto spacing = form::scaledOf(values, kSpacing, 3);
    const auto bearing = parseDirection(form::typed(values, kBearing));
    const auto heading = parseDirection(form::typed(values, kHeading));
    const auto start = placeOf(values);
    const auto box = boxNamed(m_desk.session(), form::typed(values, kBox));
    if (!count || *count < 1 || *count > kMostHives || !bearing || !heading || !start || !box) return std::nullopt;
    if (!spacing || *spacing < edit::kStandApartMm || *spacing > kWidestMm) return std::nullopt;
    edit::HiveRow row;
    row.yard = m_yard.id;
    row.count = *count;
    row.firstLabel = form::typed(values, kLabel);
    row.labelStep = form::wholeOf(values, kStep).value_or(1);
    row.start = *start;
    row.spacingMm = static_cast<int>(*spacing);
    row.bearingDeg = *bearing;
    row.headingDeg = *heading;
    row.box = box->id;
    row.broodBoxes = form::typed(values, kBrood) == QStringLiteral("2") ? 2 : 1;
    row.since = form::dayOf(values, kSince, m_desk.today()).value_or(m_desk.today());
    return row;
}

QString RowForm::labelsLine(const Values& values) const {
    const auto row = rowOf(values);
    const auto spots = row && !row->firstLabel.isEmpty() ? edit::rowSpots(*row) : std::vector<edit::RowSpot>{};
    return spots.size() > 1 ? listOf(spots) : QString();
}

std::vector<form::Problem> RowForm::problems(const Values& values) const {
    form::Judge judge(values, m_desk.today());
    if (judge.need(kCount, Rows::tr("How many hives stand in the row?"))) judge.whole(kCount, 1, kMostHives);
    judge.need(kLabel, Rows::tr("The first hive needs a label."));
    judge.whole(kStep, -1000, 1000);
    if (form::wholeOf(values, kStep) == 0) judge.add(kStep, Rows::tr("By 0 all labels would be the same."));
    if (judge.need(kSpacing, Rows::tr("How many metres are the hives apart?"))) judge.decimal(kSpacing, 0.3, 100);
    for (const QString& key : {kBearing, kHeading})
        if (judge.need(key, Rows::tr("A direction is needed.")) && !parseDirection(form::typed(values, key)))
            judge.add(key, Rows::tr("A compass word such as S or SE, or whole degrees from 0 to 359."));
    judge.needDay(kSince);
    for (const QString& key : {QStringLiteral("x"), QStringLiteral("y")})
        if (judge.need(key, Rows::tr("Where does the first hive stand?")) && !parseMetresMm(form::typed(values, key)))
            judge.add(key, Rows::tr("Metres to the millimetre, at most 10000: 3, -3 or 2.5."));
    std::vector<form::Problem> out = judge.take();
    const auto row = rowOf(values);
    if (!row) return out;
    if (!row->firstLabel.isEmpty()) judgeLabels(*row, out);
    judgePlaces(*row, out);
    if (!out.empty()) return out;
    try {
        m_desk.session().read([&](const edit::EditContext& c) { edit::addHiveRow(c, *row); });
    } catch (const core::Error& e) {
        out.push_back({{}, e.userMessage(), false});
    }
    return out;
}

void RowForm::judgeLabels(const edit::HiveRow& row, std::vector<form::Problem>& out) const {
    if (row.count > 1 && !edit::labelAfter(row.firstLabel, row.labelStep * (row.count - 1))) {
        out.push_back({kLabel,
                       Rows::tr("These labels do not reach for %1 hives: end the first with a number, as in %2.")
                           .arg(row.count)
                           .arg(row.firstLabel + u'1'),
                       false});
        return;
    }
    const QSet<QString> used = labelsInUse(m_desk);
    QStringList taken;
    for (const edit::RowSpot& spot : edit::rowSpots(row))
        if (used.contains(spot.label.toCaseFolded())) taken << spot.label;
    if (taken.isEmpty()) return;
    const QString shown = taken.size() > 4 ? taken.mid(0, 3).join(QStringLiteral(", ")) + QStringLiteral(" …")
                                           : taken.join(QStringLiteral(", "));
    out.push_back({kLabel,
                   taken.size() == 1 ? Rows::tr("%1 is in use.").arg(shown) : Rows::tr("%1 are in use.").arg(shown),
                   false});
}

void RowForm::judgePlaces(const edit::HiveRow& row, std::vector<form::Problem>& out) const {
    for (const edit::RowSpot& spot : edit::rowSpots(row))
        if (const auto other = tooNear(m_desk, row.yard, spot.at)) {
            out.push_back(
                {QStringLiteral("x"),
                 Rows::tr("%1 stands where %2 would; hives stand at least 0.3 m apart.").arg(*other, spot.label),
                 false});
            return;
        }
}

QStringList RowForm::odd(const Values& values) const {
    const auto row = rowOf(values);
    if (!row || row->spacingMm >= 600 || row->count < 2) return {};
    return {Rows::tr("Hives %1 m apart all but touch.").arg(core::metresText({row->spacingMm}))};
}

edit::Edit RowForm::edit(const Values& values) const {
    const edit::HiveRow row = rowOf(values).value_or(edit::HiveRow{});
    return [row](const edit::EditContext& c) { return edit::addHiveRow(c, row); };
}

plan::Sketch RowForm::sketch(const Values& values) const {
    plan::Sketch out;
    auto row = rowOf(values);
    const auto box = row ? boxNamed(m_desk.session(), form::typed(values, kBox)) : std::nullopt;
    if (!box) return out;
    const bool labelled = !row->firstLabel.isEmpty() &&
                          (row->count == 1 || edit::labelAfter(row->firstLabel, row->labelStep * (row->count - 1)));
    if (!labelled) row->firstLabel = QStringLiteral("1"), row->labelStep = 1;
    const QSet<QString> used = labelsInUse(m_desk);
    for (const edit::RowSpot& spot : edit::rowSpots(*row)) {
        plan::Ghost ghost;
        ghost.mark = markOf(*box, labelled ? spot.label : QString(), spot.at, row->headingDeg, row->broodBoxes);
        ghost.refused = tooNear(m_desk, row->yard, spot.at) || (labelled && used.contains(spot.label.toCaseFolded()));
        out.hives.push_back(std::move(ghost));
    }
    return out;
}

} // namespace ui::start
