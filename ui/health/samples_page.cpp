#include "ui/health/samples_page.h"

#include "ui/board/row_list.h"
#include "ui/close/key_foot.h"
#include "ui/health/health_words.h"
#include "ui/kit/kit_book.h"
#include "ui/life/hold_watch.h"
#include "ui/look/type.h"
#include "ui/look/words.h"
#include "ui/look/wrapped_label.h"
#include "ui/records/put_right.h"
#include "ui/records/sample_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::health {

namespace {

constexpr int kMargin = 20;
constexpr int kLookBackDays = 730; ///< for holds that were lifted

/// The same row after the list was made anew.
bool sameRow(const PaperRow& a, const PaperRow& b) {
    if (a.record || b.record)
        return a.record && b.record && a.record->kind == b.record->kind && a.record->id == b.record->id;
    return a.row.kind == b.row.kind && a.row.title == b.row.title && a.row.right == b.row.right;
}

} // namespace

SamplesPage::SamplesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_list(new board::RowList(desk, this)),
      m_what(new QComboBox(this)),
      m_everywhere(new QCheckBox(tr("&All yards"), this)),
      m_summary(new look::WrappedLabel(QStringLiteral("samplesAwaited"), this)),
      m_about(new look::WrappedLabel(QStringLiteral("samplesAbout"), this)),
      m_foot(new close::KeyFoot(this)),
      m_beside(nullptr),
      m_follow(new desk::WhileShown(*this, desk, dialogs, [this] { read(); })) {
    build();
    buildFoot();
    connect(m_everywhere, &QCheckBox::toggled, m_follow, &desk::WhileShown::again);
    connect(m_what, &QComboBox::currentIndexChanged, m_follow, &desk::WhileShown::again);
    connect(m_list, &board::RowList::rowOpened, this, &SamplesPage::openCurrent);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &SamplesPage::settle);
    connect(m_foot, &close::KeyFoot::asked, this, &SamplesPage::act);
    m_list->setKeys([this](int key) { return pressed(key); });
}

void SamplesPage::build() {
    auto* title = new QLabel(tr("Samples and papers"), this);
    title->setFont(look::headingFont(font()));
    const auto offer = [this](Shown shown, const QString& text) { m_what->addItem(text, static_cast<int>(shown)); };
    offer(Shown::Samples, tr("1 Samples"));
    offer(Shown::Results, tr("2 Results, orders and releases"));
    offer(Shown::Lifted, tr("3 Holds that have ended"));
    offer(Shown::Near, tr("4 Who stands near a source"));
    offer(Shown::Kit, tr("5 Quarantined kit and its end"));
    m_what->setObjectName(QStringLiteral("samplesWhat"));
    m_what->setAccessibleName(tr("What is listed"));
    m_what->setToolTip(tr("What is listed (1 to 5 in the list)"));
    m_everywhere->setToolTip(tr("Of all yards, not only of the one shown (A)"));
    m_summary->setProperty("warns", true);
    m_about->setProperty("quiet", true);
    m_list->setAccessibleName(tr("Samples and papers"));
    m_list->setObjectName(QStringLiteral("healthSamples"));
    auto* head = new QHBoxLayout;
    head->setContentsMargins(kMargin, 0, kMargin, 0);
    head->addWidget(title);
    head->addStretch(1);
    head->addWidget(m_what);
    head->addWidget(m_everywhere);
    for (QWidget* label : std::initializer_list<QWidget*>{m_summary, m_about})
        label->setContentsMargins(kMargin, 0, kMargin, 0);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(8);
    all->addLayout(head);
    all->addWidget(m_summary);
    all->addWidget(m_about);
    all->addWidget(m_list, 1);
    all->addWidget(m_foot);
}

void SamplesPage::buildFoot() {
    const auto add = [this](const QString& text, const QString& tip, char key) {
        constexpr size_t kInRow = 4; // a narrow window has room for so many
        m_buttons.emplace_back(key, m_foot->add(m_buttons.size() / kInRow, text, tip, key));
    };
    add(tr("Take a sample…"), tr("Of the hive of the row, or of those selected"), 'T');
    add(tr("Sent…"), tr("The sample went to its laboratory, and those with it"), 'S');
    add(tr("Write its answer…"), tr("What the laboratory found: becomes a result"), 'W');
    add(tr("Give up…"), tr("Lost or spoilt: no answer is awaited"), 'G');
    add(tr("Put right…"), tr("The record of the row in a form"), 'P');
    add(tr("Take back"), tr("The record of the row is gone from the book"), 'B');
    add(tr("Kit…"), tr("Kit of the yards and the store room"), 'K');
    m_foot->setKeys(tr("1 to 5 choose what is listed · A all yards · Enter puts right or shows the card · Del takes "
                       "back"));
}

QPushButton* SamplesPage::button(char key) const {
    const auto found = std::ranges::find(m_buttons, key, &std::pair<char, QPushButton*>::first);
    return found == m_buttons.end() ? nullptr : found->second;
}

void SamplesPage::show(Shown shown) { m_what->setCurrentIndex(m_what->findData(static_cast<int>(shown))); }
SamplesPage::Shown SamplesPage::shown() const { return static_cast<Shown>(m_what->currentData().toInt()); }
QString SamplesPage::summary() const { return m_summary->text(); }
QString SamplesPage::about() const { return m_about->text(); }

void SamplesPage::read() {
    m_beside.stop();
    m_working = false;
    const auto only = m_everywhere->isChecked() ? std::nullopt : m_desk.yard();
    auto& session = m_desk.session();
    m_book = paperBook(session, m_desk.present() ? m_desk.reading().snapshot : session.snapshot(m_desk.today()), only);
    m_summary->tell(awaitedText(m_book));
    const QString where = only ? m_book.yardName(*only) : tr("All yards");
    switch (shown()) {
    case Shown::Samples:
        return show(sampleRows(m_book), tr("%1. A sample holds and lifts nothing: its answer does.").arg(where));
    case Shown::Results:
        return show(resultRows(m_book),
                    tr("%1. What laboratories and inspectors wrote, and field kits showed.").arg(where));
    case Shown::Near:
        return show(nearRows(m_book), tr("%1. Yards and hives near a foulbrood source of today.").arg(where));
    case Shown::Kit:
        return show(kitRows(m_book, kit::pilesOf(session, m_book.snapshot)),
                    tr("%1. Kit of a foulbrood colony is counted apart and never offered.").arg(where));
    case Shown::Lifted:
        break;
    }
    workOutLifted();
}

/// Beside the window: days and days of the whole book's holds.
void SamplesPage::workOutLifted() {
    const auto lines = m_desk.session().history(1);
    const qint64 seq = lines.empty() ? 0 : lines.front().seq;
    if (m_lifted.seq == seq && m_lifted.today == m_book.today) return showLifted();
    show({}, tr("Working out which holds have ended in the last two years…"));
    m_working = true;
    auto whole = std::make_shared<const core::Snapshot>(m_desk.session().snapshotForHolds());
    const core::Day last = m_book.today;
    m_beside.start([this, whole, last, seq](const std::function<bool()>& stopped) -> desk::Beside::Found {
        const core::Day first = last - kLookBackDays;
        const int apart = life::daysApart(*whole, first, last);
        auto holds = core::rules::liftedHolds(*whole, first, last, apart, stopped);
        return [this, found = Lifted{seq, last, whole, std::move(holds), apart}] {
            m_working = false;
            m_lifted = found;
            showLifted();
        };
    });
}

void SamplesPage::showLifted() {
    show(liftedRows(m_book, *m_lifted.whole, m_lifted.holds),
         tr("Holds that ended since %1, by the days of the records; without those for a missing brood check. A hold "
            "that came and went within %2 days of no result or sign is not seen.")
             .arg(look::dayText(m_lifted.today - kLookBackDays))
             .arg(m_lifted.apart));
}

void SamplesPage::show(std::vector<PaperRow> rows, const QString& about) {
    const PaperRow* before = current();
    const std::optional<PaperRow> was = before ? std::optional(*before) : std::nullopt;
    m_about->tell(about);
    m_rows = std::move(rows);
    std::vector<board::BoardRow> shown;
    for (const PaperRow& row : m_rows) shown.push_back(row.row);
    m_list->setRows(std::move(shown));
    const auto same = std::ranges::find_if(m_rows, [&](const PaperRow& row) { return was && sameRow(row, *was); });
    if (same != m_rows.end())
        m_list->setCurrentIndex(m_list->model()->index(static_cast<int>(same - m_rows.begin()), 0));
    settle();
}

const PaperRow* SamplesPage::current() const {
    const int row = m_list->currentIndex().row();
    return row >= 0 && row < static_cast<int>(m_rows.size()) ? &m_rows[static_cast<size_t>(row)] : nullptr;
}

bool SamplesPage::fits(int key) const {
    const PaperRow* row = current();
    const core::Sample* s = row && row->sample ? &*row->sample : nullptr;
    switch (key) {
    case Qt::Key_T:
    case Qt::Key_K:
        return true;
    case Qt::Key_S:
        return s && !s->sent && !s->result && !s->lost;
    case Qt::Key_W:
        return s && !s->result;
    case Qt::Key_G:
        return s && !s->result && !s->lost;
    case Qt::Key_P:
    case Qt::Key_B:
        return row && row->record;
    default:
        return false;
    }
}

void SamplesPage::settle() {
    const bool may = m_desk.onlyRead().isEmpty();
    for (const auto& [key, button] : m_buttons) button->setEnabled(key == 'K' || (may && fits(key)));
}

bool SamplesPage::pressed(int key) {
    if (key >= Qt::Key_1 && key <= Qt::Key_5) {
        m_what->setCurrentIndex(key - Qt::Key_1);
        return true;
    }
    if (key == Qt::Key_A) {
        m_everywhere->toggle();
        return true;
    }
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace) key = Qt::Key_B;
    if (!button(static_cast<char>(key & 0x7f)) || key > 0x7f) return false;
    act(key);
    return true;
}

bool SamplesPage::mayWrite() {
    const QString barred = m_desk.writeBarred();
    if (!barred.isEmpty()) emit m_desk.said(barred);
    return barred.isEmpty();
}

void SamplesPage::act(int key) {
    if (key == Qt::Key_K) return emit kitAsked();
    if (!mayWrite() || !fits(key)) return;
    if (key == Qt::Key_T) return takeSample();
    const PaperRow row = *current();
    if (key == Qt::Key_P) return emit recordAsked(*row.record);
    if (key == Qt::Key_B) return takeBack();
    using Step = records::SampleDayForm::Step;
    emit formAsked([this, key, sample = *row.sample]() -> std::unique_ptr<form::Form> {
        if (key == Qt::Key_W) return std::make_unique<records::SampleAnswerForm>(m_desk.session(), sample);
        return std::make_unique<records::SampleDayForm>(m_desk.session(), sample,
                                                        key == Qt::Key_S ? Step::Sent : Step::GivenUp);
    });
}

void SamplesPage::takeSample() {
    std::vector<core::ColonyId> colonies = m_desk.selected();
    const PaperRow* row = current();
    if (colonies.size() < 2 && row && row->row.colony) colonies = {*row->row.colony};
    if (colonies.empty()) return emit m_desk.said(tr("Choose a hive first: of which is the sample?"));
    emit formAsked(
        [this, colonies] { return std::make_unique<records::SampleForm>(m_desk.session(), colonies, m_desk.today()); });
}

void SamplesPage::openCurrent() {
    const PaperRow* row = current();
    if (!row) return;
    if (row->record)
        act(Qt::Key_P);
    else if (row->row.colony)
        emit cardAsked(*row->row.colony);
    else if (shown() == Shown::Kit && row->row.kind == board::RowKind::Line)
        emit kitAsked();
}

void SamplesPage::takeBack() {
    const records::RecordRow record = *current()->record;
    guarded(m_dialogs, [&] { records::takeBack(m_desk, record); });
}

} // namespace ui::health
