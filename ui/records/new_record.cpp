#include "ui/records/new_record.h"

#include "ui/look/end_words.h"
#include "ui/records/colony_form.h"
#include "ui/records/divide_form.h"
#include "ui/records/end_form.h"
#include "ui/records/feeding_form.h"
#include "ui/records/mite_fall_form.h"
#include "ui/records/queen_end_form.h"
#include "ui/records/queen_form.h"
#include "ui/records/result_form.h"
#include "ui/records/sample_form.h"
#include "ui/records/transfer_form.h"
#include "ui/records/treatment_form.h"
#include "ui/records/union_form.h"

namespace ui::records {

namespace edit = core::edit;

namespace {

/// The yard where it stands, or stood last.
std::optional<core::YardId> yardOf(const edit::Session& book, core::ColonyId colony) {
    std::optional<core::YardId> yard;
    book.read([&](const edit::EditContext& c) {
        const auto places = c.placementsOf(colony);
        const auto stand = places.empty() ? std::nullopt : c.stand(places.back().stand);
        if (stand) yard = stand->yard;
    });
    return yard;
}

} // namespace

std::vector<NewRecordWords> newRecordWords() {
    const auto shift = [](char letter) { return QStringLiteral("Ctrl+Shift+") + QLatin1Char(letter); };
    return {{NewRecord::Feeding, Records::tr("&Feed given…"), shift('O'),
             Records::tr("Syrup, fondant or other feed, to this hive or to all that are selected")},
            {NewRecord::Transfer, Records::tr("&Transfer…"), shift('T'),
             Records::tr("Bees, brood, comb, a box or feed given to another colony or taken from one")},
            {NewRecord::Treatment, Records::tr("T&reatment…"), shift('M'),
             Records::tr("A medicine given to the colony or its yard")},
            {NewRecord::Sample, Records::tr("Sam&ple taken…"), QStringLiteral("Ctrl+Alt+S"),
             Records::tr("A sample for a laboratory, of this hive or of all that are selected")},
            {NewRecord::MiteFall, Records::tr("&Mites fallen…"), QStringLiteral("Ctrl+Alt+M"),
             Records::tr("Mites counted on a board under the hive, and how many days it lay there")},
            {NewRecord::Result, Records::tr("Re&sult or order…"), shift('R'),
             Records::tr("What a laboratory or an inspector found; an order or a release")},
            {NewRecord::Queen, Records::tr("New &queen…"), shift('Q'),
             Records::tr("A queen begins to head the colony: born, mark, origin; what became of the one before")},
            {NewRecord::QueenEnd, Records::tr("What &became of the queen…"), shift('N'),
             Records::tr("Superseded, dead, missing, sold, or moved to another colony")},
            {NewRecord::Union, Records::tr("&Unite or shake out…"), shift('U'),
             Records::tr("The colony was joined to another, outside a plan")},
            {NewRecord::Divide, Records::tr("&Divide…"), shift('D'),
             Records::tr("A new colony was made from this one, outside a plan")},
            {NewRecord::End, Records::tr("&End…"), shift('E'), Records::tr("The colony died, was destroyed or sold")},
            {NewRecord::ColonyData, Records::tr("&Colony's data…"), shift('K'),
             Records::tr("Label, since when, box kind, year of the queen")},
            {NewRecord::NewColony, Records::tr("&New colony on an empty stand…"), shift('H'),
             Records::tr("A colony begins on a stand that is empty")}};
}

bool isOf(NewRecord what, const core::Colony& colony) {
    switch (what) {
    case NewRecord::Union:
    case NewRecord::Divide:
        return !colony.ended;
    case NewRecord::End:
        return !colony.ended || (colony.end != core::EndKind::United && colony.end != core::EndKind::ShakenOut);
    case NewRecord::Feeding:
    case NewRecord::Transfer:
    case NewRecord::Treatment:
    case NewRecord::Sample:
    case NewRecord::MiteFall:
    case NewRecord::Result:
    case NewRecord::Queen:
    case NewRecord::QueenEnd:
    case NewRecord::ColonyData:
    case NewRecord::NewColony:
        return true;
    }
    return false;
}

std::unique_ptr<form::Form> newForm(const edit::Session& book, NewRecord what, const core::Colony& colony,
                                    core::Day day, const std::vector<core::ColonyId>& selected) {
    if (!isOf(what, colony))
        throw core::Error(core::Error::Kind::BadData,
                          Records::tr("%1 has ended: %2.").arg(colony.label, look::endText(colony)));
    const auto yard = yardOf(book, colony.id);
    const core::Day begun = colony.ended ? std::min(day, *colony.ended) : day;
    switch (what) {
    case NewRecord::Feeding:
        if (selected.size() > 1) return std::make_unique<FeedingForm>(book, selected, day);
        return std::make_unique<FeedingForm>(book, std::vector{colony.id}, begun);
    case NewRecord::Transfer:
        return std::make_unique<TransferForm>(book, colony.id, begun);
    case NewRecord::Treatment:
        return std::make_unique<TreatmentForm>(book, Subject{colony.id, yard}, begun);
    case NewRecord::Sample:
        if (selected.size() > 1) return std::make_unique<SampleForm>(book, selected, day);
        return std::make_unique<SampleForm>(book, std::vector{colony.id}, day);
    case NewRecord::MiteFall:
        return std::make_unique<MiteFallForm>(book, colony.id, begun);
    case NewRecord::Result:
        return std::make_unique<ResultForm>(book, Subject{colony.id, yard}, day);
    case NewRecord::Queen:
        return std::make_unique<QueenForm>(book, colony.id, begun);
    case NewRecord::QueenEnd:
        return std::make_unique<QueenEndForm>(book, colony, begun);
    case NewRecord::Union:
        return std::make_unique<UnionForm>(book, colony.id, day);
    case NewRecord::Divide:
        return std::make_unique<DivideForm>(book, colony, day);
    case NewRecord::End:
        return std::make_unique<EndForm>(book, colony, day);
    case NewRecord::ColonyData:
        return std::make_unique<ColonyForm>(book, colony);
    case NewRecord::NewColony:
        if (!yard) break;
        return std::make_unique<NewColonyForm>(book, *yard, colony.ended ? std::optional(colony) : std::nullopt);
    }
    throw core::Error(core::Error::Kind::BadData, Records::tr("%1 stands in no yard.").arg(colony.label));
}

} // namespace ui::records
