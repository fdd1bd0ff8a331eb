#include "ui/records/put_right.h"

#include "core/edit/feedings.h"
#include "core/edit/kit_end.h"
#include "core/edit/mite_falls.h"
#include "core/edit/put_right.h"
#include "core/edit/queens.h"
#include "core/edit/samples.h"
#include "ui/look/words.h"
#include "ui/records/colony_form.h"
#include "ui/records/end_form.h"
#include "ui/records/feeding_form.h"
#include "ui/records/kit_end_form.h"
#include "ui/records/mite_fall_form.h"
#include "ui/records/place_form.h"
#include "ui/records/queen_form.h"
#include "ui/records/result_form.h"
#include "ui/records/sample_form.h"
#include "ui/records/transfer_form.h"
#include "ui/records/treatment_form.h"
#include "ui/records/union_form.h"

namespace ui::records {

namespace edit = core::edit;

namespace {

template <class T> T needed(const edit::Session& book, qint64 id) {
    std::optional<T> found;
    book.read([&](const edit::EditContext& c) { found = c.find<T>(id); });
    if (!found) throw core::Error(core::Error::Kind::BadData, Records::tr("That record is no longer in the book."));
    return *std::move(found);
}

} // namespace

std::unique_ptr<form::Form> formOf(const edit::Session& book, const RecordRow& record) {
    switch (record.kind) {
    case RecordKind::Visit:
        return nullptr;
    case RecordKind::Carry:
        return std::make_unique<PlaceForm>(book, needed<core::Placement>(book, record.id));
    case RecordKind::Began:
        return std::make_unique<ColonyForm>(book, needed<core::Colony>(book, record.id));
    case RecordKind::End: {
        const auto colony = needed<core::Colony>(book, record.id);
        return std::make_unique<EndForm>(book, colony, record.day);
    }
    case RecordKind::Transfer:
        return std::make_unique<TransferForm>(book, needed<core::Transfer>(book, record.id));
    case RecordKind::Feeding:
        return std::make_unique<FeedingForm>(book, needed<core::Feeding>(book, record.id));
    case RecordKind::MiteFall:
        return std::make_unique<MiteFallForm>(book, needed<core::MiteFall>(book, record.id));
    case RecordKind::Queen:
    case RecordKind::QueenEnd:
        return std::make_unique<QueenForm>(book, needed<core::Queen>(book, record.id));
    case RecordKind::Sample:
        return std::make_unique<SampleForm>(book, needed<core::Sample>(book, record.id));
    case RecordKind::KitEnd:
        return std::make_unique<KitEndForm>(book, needed<core::KitEnd>(book, record.id));
    case RecordKind::Result:
        return std::make_unique<ResultForm>(book, needed<core::Result>(book, record.id));
    case RecordKind::Treatment:
        return std::make_unique<TreatmentForm>(book, needed<core::Treatment>(book, record.id));
    case RecordKind::Lineage:
        return std::make_unique<LineageForm>(book, needed<core::Lineage>(book, record.id));
    }
    return nullptr;
}

edit::Edit takingBack(const RecordRow& record) {
    const qint64 id = record.id;
    using edit::EditContext;
    switch (record.kind) {
    case RecordKind::Began:
        return [id](const EditContext& c) { return edit::takeBackColony(c, {id}); };
    case RecordKind::Carry:
        return [id](const EditContext& c) { return edit::takeBackCarry(c, {id}); };
    case RecordKind::Visit:
        return [id](const EditContext& c) { return edit::takeBackVisit(c, {id}); };
    case RecordKind::Transfer:
        return [id](const EditContext& c) { return edit::takeBackTransfer(c, {id}); };
    case RecordKind::Feeding:
        return [id](const EditContext& c) { return edit::takeBackFeeding(c, {id}); };
    case RecordKind::MiteFall:
        return [id](const EditContext& c) { return edit::takeBackMiteFall(c, {id}); };
    case RecordKind::Queen:
        return [id](const EditContext& c) { return edit::takeBackQueen(c, {id}); };
    case RecordKind::QueenEnd:
        return [id](const EditContext& c) { return edit::takeBackQueenEnd(c, {id}); };
    case RecordKind::Sample:
        return [id](const EditContext& c) { return edit::takeBackSample(c, {id}); };
    case RecordKind::KitEnd:
        return [id](const EditContext& c) { return edit::takeBackKitEnd(c, {id}); };
    case RecordKind::Result:
        return [id](const EditContext& c) { return edit::takeBackResult(c, {id}); };
    case RecordKind::Treatment:
        return [id](const EditContext& c) { return edit::takeBackTreatment(c, {id}); };
    case RecordKind::Lineage:
        return [id](const EditContext& c) { return edit::takeBackLineage(c, {id}); };
    case RecordKind::End:
        return [id](const EditContext& c) { return edit::takeBackEnd(c, {id}); };
    }
    return {};
}

QString takingBackText(const RecordRow& record) {
    return Records::tr("Take back: %1, %2").arg(record.title, look::dayText(record.day));
}

void takeBack(desk::Desk& desk, const RecordRow& record) {
    try {
        const bool done = desk.save(takingBackText(record), takingBack(record));
        if (!done) emit desk.said(Records::tr("It stays: a correction needs a reason and a name."));
    } catch (const core::Error& e) {
        if (e.kind() != core::Error::Kind::BadData && e.kind() != core::Error::Kind::Hold) throw;
        emit desk.said(e.userMessage());
    }
}

} // namespace ui::records
