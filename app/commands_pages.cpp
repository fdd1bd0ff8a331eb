#include "app/colony_names.h"
#include "app/commands.h"

#include "core/base/error.h"
#include "core/edit/merge_wishes.h"
#include "core/edit/session.h"
#include "core/rules/brood_round.h"
#include "core/rules/merge_request.h"
#include "ui/print/worksheet_output.h"
#include "ui/print/worksheet_paper.h"
#include "ui/window/snapshots.h"

namespace app {

namespace {

core::report::Sheet sheetOf(const Arguments& a) {
    using core::report::Sheet;
    static constexpr std::pair<const char*, Sheet> kSheets[] = {
        {"worksheet", Sheet::MergeDay},   {"walk", Sheet::Walk},       {"checks", Sheet::Checks},
        {"shake-outs", Sheet::ShakeOuts}, {"storing", Sheet::Storing}, {"laying-workers", Sheet::LayingWorkers},
        {"tally", Sheet::Tally},          {"card", Sheet::Card}};
    QStringList names;
    for (const auto& [name, sheet] : kSheets) names << QString::fromLatin1(name);
    return kSheets[names.indexOf(a.choice(QStringLiteral("sheet"), names))].second;
}

ui::print::PaperChoice choiceOf(const Arguments& a) {
    ui::print::PaperChoice choice;
    const QString language = a.choice(QStringLiteral("language"), {QStringLiteral("en"), QStringLiteral("es")});
    if (language == QLatin1StringView("es")) choice.language = core::report::Language::Spanish;
    const QString paper = a.choice(QStringLiteral("paper"), {QStringLiteral("a4"), QStringLiteral("letter")});
    if (paper == QLatin1StringView("letter")) choice.paper = core::report::Paper::Letter;
    choice.large = a.has(QStringLiteral("large"));
    choice.sheet = sheetOf(a);
    return choice;
}

/// Whose card is asked for: then its yard need not be said. Throws UsageError.
std::optional<QString> cardAsked(const Arguments& a, core::report::Sheet sheet) {
    const auto label = a.value(QStringLiteral("colony"));
    if (sheet == core::report::Sheet::Card) return a.required(QStringLiteral("colony"));
    if (label) throw UsageError(QStringLiteral("--colony goes with --sheet card alone."));
    return {};
}

/// Whose brood check does not count at the fall unions, in walking order. Throws Error(BadData) where there is none.
std::vector<core::ColonyId> toCheck(const core::Snapshot& s, core::YardIx yard) {
    std::vector<core::ColonyId> out;
    const std::vector<core::rules::Hold> holds = core::rules::holds(s);
    for (const core::rules::RoundYard& round : core::rules::broodRound(s, holds))
        if (round.yard == yard)
            for (const core::rules::RoundStop& stop : round.walk) out.push_back(s.colony(stop.colony).id);
    if (out.empty())
        throw core::Error(core::Error::Kind::BadData,
                          QStringLiteral("No hive of that yard that may be opened lacks a brood check; expected one."));
    return out;
}

/// The plan of that yard alone, as its merge day asks.
core::rules::AskedPlan planAsked(const core::Snapshot& s, core::YardIx yard,
                                 const std::optional<core::rules::MergeWish>& wish) {
    core::rules::AskedPlan out;
    if (wish) {
        core::rules::MergeRequest asked = core::rules::mergeRequest(core::rules::viewOf(s), {*wish});
        out.request = std::move(asked.request);
        out.unmet = std::move(asked.unmet);
    }
    out.request.yards = {yard};
    out.plan = core::rules::advise(s, out.request);
    return out;
}

/// The merge day saved for the yard and day: of the variant asked for, else the one that stands. Throws Error(BadData)
/// where that variant is not saved.
std::optional<core::rules::MergeWish> wishOf(const core::edit::Session& book, core::YardId yard, core::Day on,
                                             std::optional<int> variant) {
    std::map<core::YardId, int> variants;
    if (variant) variants[yard] = *variant;
    for (const core::rules::MergeWish& wish : core::edit::mergeWishes(book, on, variants))
        if (wish.day.yard == yard && (!variant || wish.day.variant == *variant)) return wish;
    if (!variant) return std::nullopt;
    throw core::Error(core::Error::Kind::BadData,
                      QStringLiteral("No merge day of variant %1 is saved for that yard on %2.")
                          .arg(QString::number(*variant), core::isoText(on)));
}

} // namespace

int runWorksheet(const QStringList& words, const core::Clock& clock, Streams) {
    constexpr int kVariants = 3;
    const Arguments a(words,
                      {{QStringLiteral("on")},
                       {QStringLiteral("yard")},
                       {QStringLiteral("pdf")},
                       {QStringLiteral("language")},
                       {QStringLiteral("paper")},
                       {QStringLiteral("large"), false},
                       {QStringLiteral("sheet")},
                       {QStringLiteral("colony")},
                       {QStringLiteral("unchecked"), false},
                       {QStringLiteral("variant")}},
                      {QStringLiteral("BOOK")});
    const ui::print::PaperChoice choice = choiceOf(a); // usage comes before the book
    const auto variant = a.count(QStringLiteral("variant"), 1, kVariants);
    const core::Day on = a.day(QStringLiteral("on"));
    const auto label = cardAsked(a, choice.sheet);
    const bool unchecked = a.has(QStringLiteral("unchecked"));
    if (unchecked && choice.sheet != core::report::Sheet::Tally)
        throw UsageError(QStringLiteral("--unchecked goes with --sheet tally alone."));
    const QString yardName = label ? QString() : a.required(QStringLiteral("yard"));
    const QString pdf = a.required(QStringLiteral("pdf"));
    const auto session =
        core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock, core::edit::Session::Access::ReadOnly);
    const core::Snapshot s = session->snapshot(on);
    std::optional<core::ColonyId> card;
    core::YardIx yard;
    if (label) {
        const core::ColonyIx colony = colonyCalled(s, *label);
        card = s.colony(colony).id;
        yard = s.placeOf(colony)->yard;
    } else {
        yard = yardCalled(s, yardName);
    }
    const auto wish = wishOf(*session, s.yard(yard).id, on, variant);
    const core::rules::AskedPlan asked = planAsked(s, yard, wish);
    auto options =
        ui::print::worksheetOptions(*session, s.yard(yard).id, on, choice, wish ? &*wish : nullptr, asked.unmet, card);
    if (unchecked) options.round = toCheck(s, yard);
    const ui::print::WorksheetPages pages(s, asked.plan, yard, options, session->fixedThingsOf(s.yard(yard).id));
    ui::print::writePdf(pages, s.yard(yard).name, pdf);
    return 0;
}

int runPictures(const QStringList& words, const core::Clock&, Streams) {
    const Arguments a(words, {{QStringLiteral("on")}, {QStringLiteral("to")}}, {QStringLiteral("BOOK")});
    const core::Day on = a.day(QStringLiteral("on"));
    ui::window::saveScreenshots(a.word(QStringLiteral("BOOK")), on, a.required(QStringLiteral("to")));
    return 0;
}

} // namespace app
