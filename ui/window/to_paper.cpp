#include "ui/window/to_paper.h"

#include "core/edit/print_day.h"
#include "ui/merge/merge_place.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

namespace ui::window {

using core::report::Sheet;

namespace {

/// One way of one sheet; the reading is kept while it is shown and printed, whatever else changes meanwhile.
class OnePrint {
public:
    OnePrint(MainWindow& window, Dialogs& dialogs, core::YardIx yard, const print::PaperChoice& choice,
             const std::vector<core::ColonyId>& round = {})
        : m_window(window),
          m_dialogs(dialogs),
          m_desk(*window.desk()),
          m_reading(m_desk.reading()),
          m_yard(m_reading.snapshot.yard(yard).id),
          m_wish(wishOf(yard, choice.sheet)),
          m_job{m_desk.session(),
                m_reading,
                yard,
                choice,
                m_wish ? &*m_wish : nullptr,
                choice.sheet == Sheet::Card ? m_desk.chosen() : std::nullopt,
                choice.sheet == Sheet::Tally ? round : std::vector<core::ColonyId>()} {}

    void go(PaperWay way) {
        const Paper& paper = m_window.paper();
        if (way == PaperWay::Pdf) return pdf();
        const auto& by = way == PaperWay::Print ? paper.print : paper.preview;
        if (by && by(&m_window, m_job)) record();
    }

private:
    /// As it is saved, else as the record of this print will save it.
    std::optional<core::rules::MergeWish> wishOf(core::YardIx yard, Sheet sheet) const {
        if (const core::rules::MergeWish* saved = m_reading.wishOf(m_yard)) return *saved;
        const auto printed = core::edit::printedSheet(m_reading.snapshot, m_reading.plan, yard, {});
        if (sheet != Sheet::MergeDay || printed.empty() || !notKept(printed).isEmpty()) return std::nullopt;
        core::rules::MergeWish wish;
        wish.day.yard = m_yard;
        wish.day.day = printed.day;
        return wish;
    }

    void pdf() {
        const Paper& paper = m_window.paper();
        if (!paper.pdf) return;
        const auto path = m_dialogs.pdfToWrite(fileName());
        if (!path) return;
        paper.pdf(m_job, *path);
        record();
        const bool worksheet = m_job.choice.sheet == Sheet::MergeDay;
        m_window.say(
            (worksheet ? MainWindow::tr("The worksheet is in %1.") : MainWindow::tr("The sheet is in %1.")).arg(*path) +
            m_besides);
    }

    QString fileName() const {
        const QString& yard = m_reading.snapshot.yard(m_job.yard).name;
        const auto colony = m_job.colony ? m_reading.find(*m_job.colony) : std::nullopt;
        if (colony) return MainWindow::tr("%1, card of %2.pdf").arg(yard, m_reading.snapshot.colony(*colony).shown);
        if (!m_job.round.empty()) return MainWindow::tr("%1, brood checks.pdf").arg(yard);
        const char* const names[] = {"%1.pdf",
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, what is missing.pdf"),
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, checks.pdf"),
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, shake-outs.pdf"),
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, kit.pdf"),
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, laying workers.pdf"),
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, visits.pdf"),
                                     QT_TRANSLATE_NOOP("ui::window::MainWindow", "%1, card.pdf")};
        static_assert(std::size(names) == core::report::kSheets);
        return MainWindow::tr(names[static_cast<size_t>(m_job.choice.sheet)]).arg(yard);
    }

    void record() {
        if (m_job.choice.sheet != Sheet::MergeDay) return;
        const auto printed = core::edit::printedSheet(m_reading.snapshot, m_reading.plan, m_job.yard,
                                                      m_wish ? std::optional(m_wish->day) : std::nullopt);
        if (printed.empty()) return;
        if (const QString why = notKept(printed); !why.isEmpty()) {
            m_besides = QStringLiteral(" ") + why;
            m_window.say(why);
            return;
        }
        m_desk.saveInTurn(MainWindow::tr("The worksheet as it was printed"),
                          MainWindow::tr("Put the worksheet of %1 on %2 to paper")
                              .arg(m_reading.snapshot.yard(m_job.yard).name, core::isoText(printed.day)),
                          core::edit::recordPrint(printed));
    }

    /// Why the book does not keep what was on it; empty: it does.
    QString notKept(const core::edit::PrintedSheet& printed) const {
        if (m_desk.session().readOnly())
            return MainWindow::tr("This book is only read: it does not keep which strips were on the paper.");
        if (printed.day < m_desk.today() && !m_desk.pastOpen())
            return MainWindow::tr("That day is past: the book does not keep which strips were on the paper.");
        if (core::edit::closingBegan(m_desk.session(), printed.yard, printed.day))
            return MainWindow::tr("That day has begun to be written back: its strips stay as they were.");
        return {};
    }

    MainWindow& m_window;
    Dialogs& m_dialogs;
    desk::Desk& m_desk;
    const desk::Reading m_reading;
    const core::YardId m_yard;
    const std::optional<core::rules::MergeWish> m_wish;
    const PaperJob m_job;
    QString m_besides;
};

} // namespace

namespace {

Sheet sheetOf(merge::Step step) {
    switch (step) {
    case merge::Step::GetReady:
        return Sheet::Walk;
    case merge::Step::Afterwards:
        return Sheet::Checks;
    case merge::Step::Plan:
    case merge::Step::WriteBack:
        break;
    }
    return Sheet::MergeDay;
}

QString noHive() { return MainWindow::tr("Choose a hive first: a card is of one colony."); }

} // namespace

void toPaper(MainWindow& window, Dialogs& dialogs, PaperWay way, std::optional<Sheet> sheet) {
    guarded(dialogs, [&] {
        desk::Desk* desk = window.desk();
        const auto yard = desk && desk->yard() ? desk->reading().find(*desk->yard()) : std::nullopt;
        if (!yard) return;
        if (sheet == Sheet::Card && !desk->chosen()) return window.say(noHive());
        const bool visits = sheet && core::report::forVisits(*sheet);
        if (!visits && window.page()->place() != Place::MergeDay) window.setPlace(Place::MergeDay);
        print::PaperChoice usual = print::lastPaperChoice();
        usual.sheet = sheet.value_or(sheetOf(window.page()->merge()->step()));
        const auto choice = dialogs.paperToUse(usual);
        if (!choice) return;
        print::rememberPaperChoice(*choice);
        const auto still = desk->yard() ? desk->reading().find(*desk->yard()) : std::nullopt;
        if (choice->sheet == Sheet::Card && !desk->chosen()) return window.say(noHive());
        if (still) OnePrint(window, dialogs, *still, *choice).go(way);
    });
}

void roundToPaper(MainWindow& window, Dialogs& dialogs, PaperWay way, const std::vector<core::ColonyId>& round) {
    guarded(dialogs, [&] {
        const desk::Desk* desk = window.desk();
        const auto yard = desk && desk->yard() ? desk->reading().find(*desk->yard()) : std::nullopt;
        if (!yard || round.empty()) return;
        print::PaperChoice usual = print::lastPaperChoice();
        usual.sheet = Sheet::Tally;
        auto choice = dialogs.paperToUse(usual);
        if (!choice) return;
        choice->sheet = Sheet::Tally; // the round has no other
        print::rememberPaperChoice(*choice);
        OnePrint(window, dialogs, *yard, *choice, round).go(way);
    });
}

} // namespace ui::window
