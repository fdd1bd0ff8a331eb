#include "ui/exchange/forms_bar.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>

namespace ui::exchange {

namespace ex = core::exchange;

namespace {

void choose(QComboBox& box, int value) { box.setCurrentIndex(box.findData(value)); }

QLabel* sentence(QWidget* parent, const char* property) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setProperty(property, true);
    return label;
}

} // namespace

FormsBar::FormsBar(ForeignDraft& draft, QWidget* parent)
    : QWidget(parent),
      m_draft(draft),
      m_grid(new QGridLayout(this)),
      m_kind(choice(tr("Its &rows are"), QStringLiteral("importKind"))),
      m_encoding(choice(tr("&Encoding"), QStringLiteral("importEncoding"))),
      m_separator(choice(tr("&Separator"), QStringLiteral("importSeparator"))),
      m_decimal(choice(tr("Decimal &mark"), QStringLiteral("importDecimal"))),
      m_days(choice(tr("Da&ys are written"), QStringLiteral("importDays"))),
      m_found(sentence(this, "quiet")),
      m_doubt(sentence(this, "warns")) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(3);
    m_grid->addWidget(m_found, 2, 0, 1, m_grid->columnCount());
    m_grid->addWidget(m_doubt, 3, 0, 1, m_grid->columnCount());
    fill();
    connect(m_kind, &QComboBox::activated, this, [this] {
        m_draft.setKind(static_cast<ex::FileKind>(m_kind->currentData().toInt()));
        emit changed();
    });
    connect(m_encoding, &QComboBox::activated, this, [this] {
        const QString trouble = m_draft.setEncoding(static_cast<ex::Encoding>(m_encoding->currentData().toInt()));
        showDraft(m_draft);
        trouble.isEmpty() ? emit changed() : emit refused(trouble);
    });
    for (QComboBox* box : {m_separator, m_decimal, m_days})
        connect(box, &QComboBox::activated, this, &FormsBar::takeForms);
}

QComboBox* FormsBar::choice(const QString& text, const QString& name) {
    const int column = m_grid->count() / 2;
    auto* label = new QLabel(text, this);
    auto* box = new QComboBox(this);
    box->setObjectName(name);
    box->setAccessibleName(QString(text).remove(u'&'));
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(11);
    label->setBuddy(box);
    label->setProperty("quiet", true);
    m_grid->addWidget(label, 0, column);
    m_grid->addWidget(box, 1, column);
    m_grid->setColumnStretch(column, 1);
    return box;
}

void FormsBar::fill() {
    for (const ex::FileKind kind : ex::kReadKinds) m_kind->addItem(ex::kindWords(kind), static_cast<int>(kind));
    for (const ex::Encoding e :
         {ex::Encoding::Utf8, ex::Encoding::Utf16Little, ex::Encoding::Utf16Big, ex::Encoding::Windows1252})
        m_encoding->addItem(shownEncoding(e), static_cast<int>(e));
    for (const char separator : {',', ';', '\t', '|'})
        m_separator->addItem(shownSeparator(separator), static_cast<int>(separator));
    for (const ex::DecimalMark mark : {ex::DecimalMark::Point, ex::DecimalMark::Comma})
        m_decimal->addItem(shownDecimal(mark), static_cast<int>(mark));
    for (const ex::DayOrder order :
         {ex::DayOrder::YearMonthDay, ex::DayOrder::DayMonthYear, ex::DayOrder::MonthDayYear})
        m_days->addItem(shownDays(order), static_cast<int>(order));
}

void FormsBar::takeForms() {
    m_draft.setForms({static_cast<char>(m_separator->currentData().toInt()),
                      static_cast<ex::DecimalMark>(m_decimal->currentData().toInt()),
                      static_cast<ex::DayOrder>(m_days->currentData().toInt())});
    emit changed();
}

void FormsBar::showDraft(const ForeignDraft& draft) {
    choose(*m_kind, static_cast<int>(draft.kind()));
    choose(*m_encoding, static_cast<int>(draft.encoding()));
    choose(*m_separator, static_cast<int>(draft.forms().separator));
    choose(*m_decimal, static_cast<int>(draft.forms().decimal));
    choose(*m_days, static_cast<int>(draft.forms().days));
    m_found->setText(draft.isOpen() ? draft.foundText() : QString());
    m_doubt->setText(draft.isOpen() ? draft.doubtText() : QString());
    m_doubt->setVisible(!m_doubt->text().isEmpty());
}

} // namespace ui::exchange
