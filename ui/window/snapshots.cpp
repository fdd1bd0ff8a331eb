#include "ui/window/snapshots.h"

#include "core/base/error.h"
#include "core/base/output_target.h"
#include "core/exchange/csv_writer.h"
#include "ui/board/board.h"
#include "ui/form/form_panel.h"
#include "ui/health/holds_page.h"
#include "ui/history/history_window.h"
#include "ui/look/paged.h"
#include "ui/look/sheet.h"
#include "ui/merge/merge_place.h"
#include "ui/plan/plan_view.h"
#include "ui/print/paper_choice.h"
#include "ui/print/save_file.h"
#include "ui/settings/settings_dialog.h"
#include "ui/start/start_desk.h"
#include "ui/survey/survey_desk.h"
#include "ui/time/time_desk.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QKeyEvent>
#include <QTemporaryDir>
#include <QTimeZone>

namespace ui::window {

namespace {

constexpr int kDaysBack = 75; // into the summer before a fall merge day

struct FixedClock : core::Clock {
    explicit FixedClock(core::Day day) : m_day(day) {}
    QDateTime nowUtc() const override { return QDateTime(core::toDate(m_day), QTime(9, 0), QTimeZone::utc()); }
    core::Day today() const override { return m_day; }

private:
    core::Day m_day;
};

/// Pictures are taken of what is there; a question is an error.
struct NoDialogs : Dialogs {
    void showError(const core::Error& error) override { throw error; }
    void showFaults(const QString& title, const QStringList&) override { refuse(title); }
    std::optional<QString> bookToOpen() override { return std::nullopt; }
    std::optional<QString> bookToMake() override { return std::nullopt; }
    std::optional<QString> folderOfCsv() override { return std::nullopt; }
    std::optional<QString> csvToRead() override { return std::nullopt; }
    std::optional<QString> pdfToWrite(const QString&) override { return std::nullopt; }
    std::optional<QString> fileToWrite(const QString&, const QString&) override { return std::nullopt; }
    std::optional<print::PaperChoice> paperToUse(const print::PaperChoice& usual) override { return usual; }
    std::optional<core::edit::Correction> correction(const QString& what, const QString&) override {
        refuse(what);
        return std::nullopt;
    }
    bool leaveAnyway(const QString&) override { return true; }
    static void refuse(const QString& what) { throw core::Error(core::Error::Kind::Internal, what); }
};

class Camera {
public:
    Camera(const QString& folder, QStringList& written) : m_folder(folder), m_written(written) {}

    void take(MainWindow& window, const QString& name) {
        QCoreApplication::processEvents();
        window.page()->plan()->routeNow();
        take(static_cast<QWidget&>(window), name);
    }
    void take(QWidget& window, const QString& name) {
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents();
        const QString path = QDir(m_folder).filePath(name + QStringLiteral(".png"));
        const QPixmap picture = window.grab();
        print::writeFile(path, [&picture](QIODevice& out) { return picture.save(&out, "PNG"); });
        m_written << path;
    }

private:
    QString m_folder;
    QStringList& m_written;
};

/// The yard with the most to do, a held hive of it and a host.
struct Sights {
    std::optional<core::YardId> yard;
    std::optional<core::ColonyId> held;
    std::optional<core::ColonyId> host;
};

Sights sightsOf(const desk::Reading& r) {
    Sights out;
    size_t most = 0;
    for (size_t y = 0; y < r.snapshot.yards.size(); ++y) {
        const core::YardIx yard{static_cast<qint32>(y)};
        Sights here{r.snapshot.yards[y].id, {}, {}};
        size_t things = 0;
        for (const auto& h : r.plan.holds)
            if (r.factsOf(h.colony).yard == yard) here.held = r.snapshot.colony(h.colony).id, ++things;
        for (const auto& u : r.plan.unions)
            if (u.yard == yard) here.host = r.snapshot.colony(u.host).id, things += 2;
        if (things >= most) out = here, most = things;
    }
    return out;
}

/// The drawing being put right: a hedge of it is picked.
void takeSurvey(MainWindow& window, Camera& camera, const QString& shade) {
    survey::SurveyDesk& survey = *window.page()->survey();
    survey.setOn(true);
    QKeyEvent next(QEvent::KeyPress, Qt::Key_PageDown, Qt::NoModifier);
    QCoreApplication::sendEvent(window.page()->plan(), &next);
    camera.take(window, QStringLiteral("survey-") + shade);
    survey.setOn(false);
}

/// The steps of the merge day, but for its plan.
void takeSteps(MainWindow& window, Camera& camera, const QString& shade) {
    merge::MergePlace& merge = *window.page()->merge();
    const std::pair<merge::Step, const char*> steps[] = {{merge::Step::GetReady, "get-ready-"},
                                                         {merge::Step::WriteBack, "write-back-"},
                                                         {merge::Step::Afterwards, "afterwards-"}};
    for (const auto& [step, name] : steps) {
        if (!merge.page(step)) continue;
        merge.setStep(step);
        camera.take(window, QLatin1StringView(name) + shade);
    }
    merge.setStep(merge::Step::Plan);
}

/// The contacts of the colony that they come from.
void takeHealth(MainWindow& window, Camera& camera, const QString& shade) {
    window.setPlace(Place::Health);
    const desk::Reading& reading = window.desk()->reading();
    const auto& holds = reading.plan.holds;
    const auto traced = std::ranges::find_if(holds, [](const core::rules::Hold& h) { return !h.sources.empty(); });
    if (traced == holds.end()) return;
    auto* held = window.findChild<health::HoldsPage*>();
    emit held->contactsAsked(reading.snapshot.colony(traced->sources.front()).id);
    camera.take(window, QStringLiteral("health-contacts-") + shade);
}

/// Every page of the places besides plan and merge day: "season-2-light".
void takePlaces(MainWindow& window, Camera& camera, const QString& shade) {
    const std::pair<Place, const char*> places[] = {{Place::Colonies, "colonies-"},
                                                    {Place::Visits, "visits-"},
                                                    {Place::Health, "health-"},
                                                    {Place::Season, "season-"}};
    for (const auto& [place, name] : places) {
        auto* paged = qobject_cast<look::Paged*>(window.page()->middleOf(place));
        if (!paged) continue;
        window.setPlace(place);
        int number = 0;
        for (QWidget* page : paged->pages()) {
            paged->show(page);
            camera.take(window, QLatin1StringView(name) + QStringLiteral("%1-").arg(++number) + shade);
        }
    }
}

void takeAll(const QString& book, core::Day on, Camera& camera, const QString& shade) {
    const FixedClock clock(on);
    NoDialogs dialogs;
    MainWindow window(clock, dialogs);
    if (!window.openBook(book, false)) return;
    window.show();
    const Sights sights = sightsOf(window.desk()->reading());
    if (sights.yard) window.desk()->setYard(*sights.yard);
    camera.take(window, QStringLiteral("yard-plan-") + shade);
    takeSurvey(window, camera, shade);
    if (sights.held) window.desk()->choose(sights.held);
    camera.take(window, QStringLiteral("colony-card-") + shade);
    window.setPlace(Place::MergeDay);
    window.desk()->choose(sights.host);
    camera.take(window, QStringLiteral("merge-day-") + shade);
    takeSteps(window, camera, shade);
    window.page()->setTableShown(true);
    camera.take(window, QStringLiteral("table-") + shade);
    window.page()->setTableShown(false);
    takeHealth(window, camera, shade);
    takePlaces(window, camera, shade);
    window.setPlace(Place::YardPlan);
    window.page()->time()->goTo(on - kDaysBack);
    camera.take(window, QStringLiteral("past-day-") + shade);
    window.page()->time()->today();
    window.page()->logVisit();
    camera.take(window, QStringLiteral("visit-") + shade);
    camera.take(*history::showHistory(*window.desk(), dialogs, window.page()), QStringLiteral("history-") + shade);
    settings::SettingsDialog settings(*window.desk(), dialogs, &window);
    settings.show();
    camera.take(settings, QStringLiteral("settings-") + shade);
}

/// A book begun by hand: a row of hives as it is typed, before it is made.
void takeFirstYard(core::Day on, Camera& camera, const QString& shade) {
    const QTemporaryDir folder;
    const FixedClock clock(on);
    NoDialogs dialogs;
    const QString book = folder.filePath(QStringLiteral("First.yardwright"));
    core::edit::Session::create(book, clock);
    MainWindow window(clock, dialogs);
    if (!window.openBook(book, false)) return;
    window.show();
    form::FormPanel& panel = *window.page()->panel();
    window.page()->start()->newYard();
    panel.setValue(QStringLiteral("name"), QStringLiteral("Larkspur Bottom"));
    panel.setValue(QStringLiteral("latitude"), QStringLiteral("51 N"));
    panel.save();
    window.page()->start()->hiveRow();
    panel.setValue(QStringLiteral("count"), QStringLiteral("24"));
    camera.take(window, QStringLiteral("first-row-") + shade);
}

} // namespace

QStringList saveScreenshots(const QString& book, core::Day on, const QString& folder) {
    for (const QFileInfo& old : QDir(folder).entryInfoList({QStringLiteral("*.png")}, QDir::Files | QDir::System))
        core::needOutputTarget(old.filePath());
    look::setUpStyle();
    const QTemporaryDir copies; // a copy is looked at: the book itself is left alone
    const QString copy = copies.filePath(QFileInfo(book).fileName());
    core::edit::Session::open(book, FixedClock(on), core::edit::Session::Access::ReadOnly)->backUp(copy);
    core::exchange::OutFolder out(folder);
    QStringList written;
    Camera camera(folder, written);
    const QPalette before = QApplication::palette();
    for (const bool dark : {false, true}) {
        QApplication::setPalette(look::paletteOf(look::colours(dark)));
        const QString shade = dark ? QStringLiteral("dark") : QStringLiteral("light");
        takeAll(copy, on, camera, shade);
        takeFirstYard(on, camera, shade);
    }
    QApplication::setPalette(before);
    out.keep();
    return written;
}

} // namespace ui::window
