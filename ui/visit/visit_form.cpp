#include "ui/visit/visit_form.h"

#include "core/base/error.h"
#include "ui/form/day_edit.h"
#include "ui/form/field_editor.h"
#include "ui/form/typed.h"
#include "ui/look/colours.h"
#include "ui/look/sample_text.h"
#include "ui/look/type.h"
#include "ui/look/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::visit {

namespace {

struct QueenWord {
    std::optional<core::QueenSeen> seen;
    QString text;
};

std::vector<QueenWord> queenWords() {
    using core::QueenSeen;
    return {{std::nullopt, VisitForm::tr("not looked for")},
            {QueenSeen::Seen, VisitForm::tr("seen")},
            {QueenSeen::Eggs, VisitForm::tr("eggs seen")},
            {QueenSeen::Virgin, VisitForm::tr("a virgin")},
            {QueenSeen::DroneLayer, VisitForm::tr("a drone-layer")},
            {QueenSeen::None, VisitForm::tr("none")},
            {QueenSeen::LayingWorkers, VisitForm::tr("laying workers")},
            {QueenSeen::Unknown, VisitForm::tr("looked for, not known")}};
}

QStringList signWords() {
    return {VisitForm::tr("foulbrood (American)"),
            VisitForm::tr("foulbrood (European)"),
            VisitForm::tr("brood in doubt"),
            VisitForm::tr("chalkbrood"),
            VisitForm::tr("sacbrood"),
            VisitForm::tr("nosema"),
            VisitForm::tr("deformed wings")};
}

} // namespace

VisitForm::VisitForm(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    auto* all = new QVBoxLayout(new QWidget(this));
    all->setContentsMargins(20, 14, 20, 16);
    all->setSpacing(8);
    m_title = new QLabel(this);
    m_title->setFont(look::headingFont(font()));
    all->addWidget(m_title);
    m_step = new QLabel(this);
    m_step->setObjectName(QStringLiteral("visitStep"));
    m_step->setProperty("quiet", true);
    m_step->hide();
    all->addWidget(m_step);
    m_meanwhile = warning(QStringLiteral("meanwhile"));
    all->addWidget(m_meanwhile);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(4);
    for (int column : {1, 2, 3}) grid->setColumnStretch(column, 1);
    buildTop(grid);
    buildFrames(grid);
    buildBrood(grid);
    buildRest(grid);
    all->addLayout(grid);
    m_problem = new QLabel(this);
    m_problem->setWordWrap(true);
    all->addWidget(m_problem);
    m_answer = warning(QStringLiteral("question"));
    all->addWidget(m_answer);
    m_save = new QPushButton(tr("&Save visit"), this);
    m_save->setObjectName(QStringLiteral("saveVisit"));
    m_save->setProperty("primary", true);
    connect(m_save, &QPushButton::clicked, this, &VisitForm::save);
    all->addWidget(m_save, 0, Qt::AlignLeft);
    auto* hint = new QLabel(tr("Tab goes on, Enter saves, Escape leaves. Frames may be typed as 3, 3.25, 3¼ or 3 1/4; "
                               "what was not looked at stays empty."),
                            this);
    hint->setWordWrap(true);
    hint->setProperty("quiet", true);
    all->addWidget(hint);
    all->addStretch(1);
    setWidget(all->parentWidget());
    for (QWidget* editor : std::initializer_list<QWidget*>{m_boxes, m_queen}) form::setUpInForm(*editor);
    for (QLabel* label : findChildren<QLabel*>()) label->setWordWrap(true); // large text in a narrow window
}

QLabel* VisitForm::warning(const QString& name) {
    auto* label = new QLabel(this);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setProperty("warns", true);
    label->hide();
    return label;
}

QLineEdit* VisitForm::addEdit(Field field, const QString& accessibleName) {
    auto* edit = new QLineEdit(this);
    edit->setAccessibleName(accessibleName);
    edit->setAccessibleDescription(tr("Leave empty if not recorded"));
    edit->setObjectName(QStringLiteral("visitField%1").arg(static_cast<int>(field)));
    if (field != Field::Note && field != Field::By)
        edit->setMinimumWidth(edit->fontMetrics().averageCharWidth() * 6 + 16);
    connect(edit, &QLineEdit::textChanged, this, [this, field] { touched(field); });
    m_edits[static_cast<size_t>(field)] = edit;
    return edit;
}

QLabel* VisitForm::problemRow(QGridLayout* grid, int row, std::initializer_list<Field> fields) {
    auto* label = new QLabel(this);
    label->setProperty("warns", true);
    label->setWordWrap(true);
    label->hide();
    grid->addWidget(label, row, 1, 1, 3);
    for (Field f : fields) m_problemOf[f] = label;
    return label;
}

void VisitForm::buildTop(QGridLayout* grid) {
    m_day = new form::DayEdit({}, this);
    m_day->setAccessibleName(tr("Day of the visit"));
    m_day->setObjectName(QStringLiteral("visitDay"));
    connect(m_day, &QLineEdit::textChanged, this, [this] { touched(Field::Day); });
    auto* dayLabel = new QLabel(tr("&Day"), this);
    dayLabel->setBuddy(m_day);
    grid->addWidget(dayLabel, 0, 0);
    grid->addWidget(m_day, 0, 1, 1, 2);
    problemRow(grid, 1, {Field::Day});
    m_boxes = new QComboBox(this);
    m_boxes->addItems({tr("as before"), tr("one"), tr("two")});
    m_boxes->setAccessibleName(tr("Brood boxes from that day on"));
    connect(m_boxes, &QComboBox::currentIndexChanged, this, [this] { touched(Field::Boxes); });
    auto* boxesLabel = new QLabel(tr("&Brood boxes"), this);
    boxesLabel->setBuddy(m_boxes);
    grid->addWidget(boxesLabel, 2, 0);
    grid->addWidget(m_boxes, 2, 1, 1, 2);
    problemRow(grid, 3, {Field::Boxes});
}

void VisitForm::buildFrames(QGridLayout* grid) {
    const QStringList heads{tr("from above"), tr("from below"), tr("stores")};
    for (int i = 0; i < 3; ++i) {
        auto* head = new QLabel(heads[i], this);
        head->setProperty("quiet", true);
        grid->addWidget(head, 4, i + 1);
    }
    auto* lower = new QLabel(tr("&Frames of bees"), this);
    grid->addWidget(lower, 5, 0);
    grid->addWidget(addEdit(Field::BeesTop, tr("Frames of bees seen from above")), 5, 1);
    grid->addWidget(addEdit(Field::BeesBottom, tr("Frames of bees seen from below")), 5, 2);
    grid->addWidget(addEdit(Field::Stores, tr("Frames of stores")), 5, 3);
    lower->setBuddy(m_edits[static_cast<size_t>(Field::BeesTop)]);
    problemRow(grid, 6, {Field::BeesTop, Field::BeesBottom, Field::Stores});
    m_upperLabel = new QLabel(tr("&Upper box"), this);
    grid->addWidget(m_upperLabel, 7, 0);
    grid->addWidget(addEdit(Field::UpperTop, tr("Upper box, frames of bees seen from above")), 7, 1);
    grid->addWidget(addEdit(Field::UpperBottom, tr("Upper box, frames of bees seen from below")), 7, 2);
    grid->addWidget(addEdit(Field::UpperStores, tr("Upper box, frames of stores")), 7, 3);
    m_upperLabel->setBuddy(m_edits[static_cast<size_t>(Field::UpperTop)]);
    problemRow(grid, 8, {Field::UpperTop, Field::UpperBottom, Field::UpperStores});
}

void VisitForm::buildBrood(QGridLayout* grid) {
    m_queen = new QComboBox(this);
    for (const QueenWord& w : queenWords()) m_queen->addItem(w.text);
    m_queen->setAccessibleName(tr("Queen"));
    connect(m_queen, &QComboBox::currentIndexChanged, this, [this] { touched(Field::Queen); });
    auto* queen = new QLabel(tr("&Queen"), this);
    queen->setBuddy(m_queen);
    grid->addWidget(queen, 9, 0);
    grid->addWidget(m_queen, 9, 1, 1, 3);
    problemRow(grid, 10, {Field::Queen});
    auto* brood = new QLabel(tr("B&rood frames"), this);
    grid->addWidget(brood, 11, 0);
    grid->addWidget(addEdit(Field::Brood, tr("Brood frames")), 11, 1);
    brood->setBuddy(m_edits[static_cast<size_t>(Field::Brood)]);
    auto* checked = new QLabel(tr("&checked"), this);
    checked->setToolTip(tr("Brood frames examined for disease"));
    grid->addWidget(checked, 11, 2, Qt::AlignRight);
    grid->addWidget(addEdit(Field::Checked, tr("Brood frames examined for disease")), 11, 3);
    checked->setBuddy(m_edits[static_cast<size_t>(Field::Checked)]);
    problemRow(grid, 12, {Field::Brood, Field::Checked});
    grid->addWidget(new QLabel(tr("Signs seen"), this), 13, 0, Qt::AlignTop);
    auto* signs = new QVBoxLayout;
    signs->setSpacing(1);
    const QStringList words = signWords();
    for (size_t i = 0; i < m_signs.size(); ++i) {
        m_signs[i] = new QCheckBox(words[static_cast<qsizetype>(i)], this);
        m_signs[i]->setAccessibleName(tr("Sign: %1").arg(words[static_cast<qsizetype>(i)]));
        connect(m_signs[i], &QCheckBox::toggled, this, [this] { touched(Field::Signs); });
        signs->addWidget(m_signs[i]);
    }
    grid->addLayout(signs, 13, 1, 1, 3);
    problemRow(grid, 14, {Field::Signs});
}

void VisitForm::buildRest(QGridLayout* grid) {
    const auto pair = [&](int row, const QString& a, Field fa, const QString& spokenA, const QString& b, Field fb,
                          const QString& spokenB) {
        auto* left = new QLabel(a, this);
        grid->addWidget(left, row, 0);
        grid->addWidget(addEdit(fa, spokenA), row, 1);
        left->setBuddy(m_edits[static_cast<size_t>(fa)]);
        if (fa == Field::Gross) m_weightLabel = left;
        auto* right = new QLabel(b, this);
        grid->addWidget(right, row, 2, Qt::AlignRight);
        grid->addWidget(addEdit(fb, spokenB), row, 3);
        right->setBuddy(m_edits[static_cast<size_t>(fb)]);
        problemRow(grid, row + 1, {fa, fb});
    };
    pair(15, tr("&Weight"), Field::Gross, tr("Weight of the whole hive"), tr("s&upers"), Field::Supers,
         tr("Honey boxes on the hive"));
    pair(17, tr("&Mites"), Field::Mites, tr("Mites counted"), tr("in b&ees"), Field::Sample, tr("Bees in the sample"));
    m_sample = new QLabel(this);
    m_sample->setObjectName(QStringLiteral("sampleSays"));
    m_sample->setProperty("quiet", true);
    m_sample->setToolTip(look::sampleSource());
    grid->addWidget(m_sample, 19, 1, 1, 3);
    int row = 20;
    for (const auto& [field, text, spoken] :
         {std::tuple{Field::By, tr("B&y"), tr("Seen by")}, std::tuple{Field::Note, tr("&Note"), tr("Note")}}) {
        auto* label = new QLabel(text, this);
        grid->addWidget(label, row, 0);
        grid->addWidget(addEdit(field, spoken), row, 1, 1, 3);
        label->setBuddy(m_edits[static_cast<size_t>(field)]);
        ++row;
    }
}

void VisitForm::start(const VisitPlace& place, const VisitDraft& draft, Odd odd) {
    m_place = place;
    m_odd = std::move(odd);
    m_asked.clear();
    m_meanwhile->hide();
    m_step->hide();
    m_title->setText(place.was ? tr("A visit of %1").arg(place.label) : tr("Visit of %1").arg(place.label));
    m_save->setText(place.was ? tr("&Save changes") : tr("&Save visit"));
    const bool pounds = place.weightUnit == core::WeightUnit::Pounds;
    m_weightLabel->setText(pounds ? tr("&Weight, lb") : tr("&Weight, kg"));
    m_edits[static_cast<size_t>(Field::Gross)]->setAccessibleName(pounds ? tr("Weight of the whole hive in pounds")
                                                                         : tr("Weight of the whole hive in kilograms"));
    m_day->setToday(place.today);
    put(draft);
    m_started = this->draft();
    m_leaving = false;
    check();
    m_edits[static_cast<size_t>(Field::BeesTop)]->setFocus(Qt::OtherFocusReason);
}

/// Fields that say so already are not touched: the caret stays where it is.
void VisitForm::put(const VisitDraft& draft) {
    m_putting = true;
    m_unread = draft.unread;
    const auto badDay = draft.unread.find(Field::Day);
    if (badDay != draft.unread.end())
        m_day->setText(badDay->second);
    else if (m_day->day() != draft.day)
        m_day->setDay(draft.day);
    m_boxes->setCurrentIndex(m_unread.contains(Field::Boxes) ? -1 : draft.boxes.value_or(0));
    const auto words = queenWords();
    for (size_t i = 0; i < words.size(); ++i)
        if (words[i].seen == draft.queen) m_queen->setCurrentIndex(static_cast<int>(i));
    if (m_unread.contains(Field::Queen)) m_queen->setCurrentIndex(-1);
    for (size_t i = 0; i < m_signs.size(); ++i) m_signs[i]->setChecked(draft.signs.has(static_cast<core::Sign>(i)));
    for (size_t i = 0; i < kFields; ++i)
        if (m_edits[i]->text() != draft.text[i]) m_edits[i]->setText(draft.text[i]);
    m_putting = false;
}

void VisitForm::follow(const VisitDraft& draft) {
    if (draft == this->draft()) return;
    put(draft);
    check();
}

/// By hand, or by what is put there.
void VisitForm::touched(Field field) {
    if (m_putting) return;
    m_unread.erase(field);
    check();
    emit typed(draft());
}

void VisitForm::judgeAgain(const VisitPlace& place, const QString& meanwhile) {
    const auto was = m_place.was; // what it began with
    const core::WeightUnit unit = m_place.weightUnit;
    m_place = place;
    m_place.was = was;
    m_place.weightUnit = unit;
    m_meanwhile->setText(meanwhile);
    m_meanwhile->setVisible(!meanwhile.isEmpty());
    const bool leaving = m_leaving;
    check();
    m_leaving = leaving;
}

void VisitForm::setStep(const QString& text) {
    m_step->setText(text);
    m_step->setVisible(!text.isEmpty());
}

void VisitForm::refuse(const QString& why) {
    m_answer->setText(why);
    m_answer->show();
    emit said(why);
}

VisitDraft VisitForm::draft() const {
    VisitDraft d;
    d.unread = m_unread;
    if (const auto day = m_day->day())
        d.day = *day;
    else
        d.unread[Field::Day] = m_day->text();
    if (m_boxes->currentIndex() > 0) d.boxes = m_boxes->currentIndex();
    d.queen = queenWords()[static_cast<size_t>(std::max(m_queen->currentIndex(), 0))].seen;
    for (size_t i = 0; i < m_signs.size(); ++i)
        if (m_signs[i]->isChecked()) d.signs.add(static_cast<core::Sign>(i));
    for (size_t i = 0; i < kFields; ++i) d.text[i] = m_edits[i]->text();
    return d;
}

void VisitForm::tellSample(const VisitDraft& draft) {
    const int mites = draft[Field::Mites].isEmpty() ? -1 : draft[Field::Mites].toInt();
    const int bees = draft[Field::Sample].toInt();
    m_sample->setVisible(mites >= 0 && bees >= 1 && mites <= bees);
    if (mites >= 0 && bees >= 1 && mites <= bees) m_sample->setText(look::sampleText(mites, bees));
}

void VisitForm::check() {
    if (!m_save) return;
    m_leaving = false;
    m_answer->hide();
    const VisitDraft d = draft();
    tellSample(d);
    const bool two = d.boxes.value_or(m_place.boxesNow) == 2;
    bool anyUpper = false;
    for (Field f : {Field::UpperTop, Field::UpperBottom, Field::UpperStores}) anyUpper |= !d[f].isEmpty();
    m_upperLabel->setVisible(two || anyUpper);
    for (Field f : {Field::UpperTop, Field::UpperBottom, Field::UpperStores})
        m_edits[static_cast<size_t>(f)]->setVisible(two || anyUpper);
    const std::vector<Problem> found = problems(d, m_place);
    for (auto& [field, label] : m_problemOf) label->hide();
    QStringList whole;
    for (const Problem& p : found) {
        if (!p.field || !m_problemOf.contains(*p.field)) {
            whole << p.text;
            continue;
        }
        QLabel* label = m_problemOf.at(*p.field);
        label->setText(label->isHidden() ? p.text : label->text() + u' ' + p.text);
        label->show();
    }
    m_problem->setText(whole.join(u' '));
    m_problem->setProperty("warns", dirty());
    m_save->setEnabled(found.empty());
    m_save->setToolTip(found.empty() ? tr("Enter") : found.front().text);
}

void VisitForm::save() {
    const VisitDraft d = draft();
    const auto found = problems(d, m_place);
    if (found.empty()) {
        const core::Visit visit = visitOf(d, m_place);
        try {
            if (m_odd && !askedAbout(m_odd(visit))) return;
        } catch (const core::Error& e) { // the book cannot be read
            return refuse(e.userMessage());
        }
        return emit saveAsked(visit);
    }
    emit said(found.front().text);
    if (found.front().field) editorOf(*found.front().field)->setFocus();
}

QWidget* VisitForm::editorOf(Field field) const {
    switch (field) {
    case Field::Day:
        return m_day;
    case Field::Boxes:
        return m_boxes;
    case Field::Queen:
        return m_queen;
    case Field::Signs:
        return m_signs[0];
    default:
        return m_edits[static_cast<size_t>(field)];
    }
}

bool VisitForm::askedAbout(const QStringList& odd) {
    bool all = true;
    for (const QString& o : odd) all &= !m_asked.insert(o).second;
    if (!all) refuse(tr("%1 Save all the same? Enter again saves.").arg(odd.join(u' ')));
    return all;
}

void VisitForm::leave() {
    if (dirty() && !m_leaving) {
        m_leaving = true;
        return emit said(tr("This visit is not saved: Enter saves it, Escape again throws the typing away."));
    }
    emit leaveAsked();
}

void VisitForm::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return save();
    case Qt::Key_Escape:
        return leave();
    default:
        QScrollArea::keyPressEvent(event);
    }
}

void VisitForm::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    m_edits[static_cast<size_t>(Field::BeesTop)]->setFocus(Qt::OtherFocusReason);
}

} // namespace ui::visit
