#include "ui/health/guidance_page.h"

#include "core/base/natural_order.h"
#include "core/rules/guidance.h"
#include "ui/look/colours.h"
#include "ui/look/type.h"
#include "ui/look/wrapped_label.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTextBrowser>
#include <QTextDocument>
#include <QTimer>
#include <QVBoxLayout>

namespace ui::health {

namespace rules = core::rules;

namespace {

constexpr int kNotifiableTopic = -1;

} // namespace

GuidancePage::GuidancePage(desk::Desk& desk, Dialogs& dialogs, NotifiablePanel::OpenForm open, QWidget* parent)
    : QWidget(parent),
      m_search(new QLineEdit(this)),
      m_topics(new QListWidget(this)),
      m_text(new QTextBrowser(this)),
      m_notifiable(new NotifiablePanel(desk, dialogs, std::move(open), this)),
      m_stack(new QStackedWidget(this)),
      m_follow(new desk::WhileShown(*this, desk, dialogs, [this] { m_notifiable->read(); })) {
    build();
    connect(m_search, &QLineEdit::textChanged, this, &GuidancePage::find);
    connect(m_search, &QLineEdit::returnPressed, this, [this] { m_topics->setFocus(Qt::OtherFocusReason); });
    connect(m_topics, &QListWidget::currentRowChanged, this, &GuidancePage::tell);
    auto* slash = new QShortcut(QKeySequence(Qt::Key_Slash), this);
    slash->setContext(Qt::WidgetWithChildrenShortcut);
    connect(slash, &QShortcut::activated, this, [this] {
        m_search->setFocus(Qt::ShortcutFocusReason);
        m_search->selectAll();
    });
    find();
}

void GuidancePage::build() {
    auto* title = new QLabel(tr("Guidance"), this);
    title->setFont(look::headingFont(font()));
    auto* about = new look::WrappedLabel(QStringLiteral("guidanceAbout"), this);
    about->setProperty("quiet", true);
    about->tell(
        tr("Short texts of our own, each with its source. Labels, inspectors, veterinarians and local law decide. "
           "/ finds words."));
    m_search->setObjectName(QStringLiteral("guidanceSearch"));
    m_search->setPlaceholderText(tr("Find words"));
    m_search->setAccessibleName(tr("Find guidance by words of its text or source"));
    m_search->setClearButtonEnabled(true);
    m_topics->setObjectName(QStringLiteral("guidanceTopics"));
    m_topics->setAccessibleName(tr("Topics of guidance"));
    m_topics->setWordWrap(true);
    m_text->setObjectName(QStringLiteral("guidanceText"));
    m_text->setAccessibleName(tr("Text of the chosen topic"));
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setOpenLinks(false);
    m_text->viewport()->setAutoFillBackground(false); // it lies on the page
    m_topics->setSpacing(3);
    m_stack->addWidget(m_text);
    m_stack->addWidget(m_notifiable);
    auto* left = new QWidget(this);
    auto* down = new QVBoxLayout(left);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(m_search);
    down->addWidget(m_topics, 1);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->addWidget(left);
    across->addWidget(m_stack);
    across->setChildrenCollapsible(false);
    across->setStretchFactor(0, 0);
    across->setStretchFactor(1, 1);
    const int letter = fontMetrics().averageCharWidth();
    across->setSizes({letter * 34, letter * 80});
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 14, 20, 14);
    all->setSpacing(8);
    all->addWidget(title);
    all->addWidget(about);
    all->addWidget(across, 1);
}

void GuidancePage::find() {
    const QString words = m_search->text();
    const QString table = tr("What must be reported, and to whom");
    const auto was = m_topics->currentItem() ? m_topics->currentItem()->data(Qt::UserRole) : QVariant();
    const QSignalBlocker quiet(m_topics);
    m_topics->clear();
    const auto add = [&](const QString& text, int topic) {
        auto* item = new QListWidgetItem(text, m_topics);
        item->setData(Qt::UserRole, topic);
        if (was == QVariant(topic)) m_topics->setCurrentItem(item);
    };
    if (words.simplified().isEmpty() || core::folded(table).contains(core::folded(words.simplified())))
        add(table, kNotifiableTopic);
    for (const size_t topic : rules::guidanceWith(words)) add(rules::guidance()[topic].title, static_cast<int>(topic));
    if (m_topics->currentRow() < 0 && m_topics->count() > 0)
        m_topics->setCurrentRow(words.simplified().isEmpty() && m_topics->count() > 1 ? 1 : 0);
    tell();
}

void GuidancePage::tell() {
    const QListWidgetItem* item = m_topics->currentItem();
    if (item && item->data(Qt::UserRole).toInt() == kNotifiableTopic) return m_stack->setCurrentWidget(m_notifiable);
    m_stack->setCurrentWidget(m_text);
    if (!item) return m_text->setPlainText(tr("No text holds all of these words."));
    const look::Colours c = look::coloursOf(*this);
    const auto& topic = rules::guidance()[static_cast<size_t>(item->data(Qt::UserRole).toInt())];
    QString html = QStringLiteral("<h3 style='color:%1'>%2</h3>").arg(c.ink.name(), topic.title.toHtmlEscaped());
    for (const rules::GuidanceLine& line : topic.lines)
        html += QStringLiteral("<p style='color:%1; margin-bottom:2px'>%2</p>"
                               "<p style='color:%3; margin-top:0px; margin-bottom:14px'><small>%4</small></p>")
                    .arg(c.ink.name(), line.text.toHtmlEscaped(), c.quiet.name(),
                         tr("Source: %1").arg(line.source).toHtmlEscaped());
    m_text->document()->setDefaultFont(font());
    m_text->document()->setDocumentMargin(fontMetrics().averageCharWidth() * 2);
    m_text->setHtml(html);
}

QString GuidancePage::shown() const {
    return m_stack->currentWidget() == m_notifiable ? m_notifiable->said() : m_text->toPlainText();
}

/// Colours and letters are the window's.
void GuidancePage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        QTimer::singleShot(0, this, &GuidancePage::tell); // once the window itself has changed
}

} // namespace ui::health
