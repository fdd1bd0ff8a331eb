#include "ui/bulk/visit_fields.h"

#include "ui/look/rule_words.h"
#include "ui/visit/quarters_text.h"

namespace ui::bulk {

namespace {

using core::Visit;
using core::edit::Put;
using core::edit::VisitPut;
using form::Field;
using form::Kind;

VisitFigure frames(const char* key, const QString& label, const QString& spoken,
                   std::optional<core::Quarters> Visit::*of, Put<core::Quarters> VisitPut::*put) {
    return {Field{.key = QLatin1StringView(key), .label = label, .spoken = spoken},
            [of](const Visit& v) { return v.*of ? core::framesText(*(v.*of)) : QString(); },
            [put](const QString& text, VisitPut& out) {
                const auto read = visit::parseFrames(text);
                if (!read && !text.isEmpty()) return false;
                out.*put = read;
                return true;
            },
            Bulk::tr("Frames by quarters: 3, 3.25, 3¼ or 3 1/4; — where nothing is recorded.")};
}

VisitFigure whole(const char* key, const QString& label, const QString& spoken, std::optional<int> Visit::*of,
                  Put<int> VisitPut::*put) {
    return {Field{.key = QLatin1StringView(key), .label = label, .spoken = spoken},
            [of](const Visit& v) { return v.*of ? QString::number(*(v.*of)) : QString(); },
            [put](const QString& text, VisitPut& out) {
                bool number = false;
                const int read = text.toInt(&number);
                if (!number && !text.isEmpty()) return false;
                out.*put = number ? std::optional(read) : std::nullopt;
                return true;
            },
            Bulk::tr("A whole number; — where nothing is recorded.")};
}

VisitFigure queen() {
    Field field{.key = QStringLiteral("queen"),
                .kind = Kind::Choice,
                .label = Bulk::tr("&Queen"),
                .spoken = Bulk::tr("Queen"),
                .options = {{QString(), Bulk::tr("not looked for")}}};
    for (size_t i = 0; i < core::wordsOf<core::QueenSeen>().size(); ++i)
        field.options.push_back(
            {core::word(static_cast<core::QueenSeen>(i)), look::queenText(static_cast<core::QueenSeen>(i))});
    return {field,
            [](const Visit& v) { return v.queen ? core::word(*v.queen) : QString(); },
            [](const QString& text, VisitPut& out) {
                out.queen = core::fromWord<core::QueenSeen>(text);
                return true;
            },
            {},
            [](const QString& value) {
                const auto seen = core::fromWord<core::QueenSeen>(value);
                return seen ? look::queenText(*seen) : value;
            }};
}

VisitFigure weight(core::WeightUnit unit) {
    return {Field{.key = QStringLiteral("weight"),
                  .label = Bulk::tr("&Weight, %1").arg(core::unitSign(unit)),
                  .spoken = Bulk::tr("Weight of the whole hive")},
            [unit](const Visit& v) { return v.gross ? core::weightNumber(*v.gross, unit) : QString(); },
            [unit](const QString& text, VisitPut& out) {
                const auto read = core::parseWeight(text, unit);
                if (!read && !text.isEmpty()) return false;
                out.gross = read;
                return true;
            },
            Bulk::tr("A weight in %1; — where nothing is recorded.").arg(core::unitSign(unit))};
}

VisitFigure boxes() {
    VisitFigure out = whole("boxes", Bulk::tr("Brood bo&xes"), Bulk::tr("Brood boxes from that day on"), &Visit::boxes,
                            &VisitPut::boxes);
    out.field.kind = Kind::Choice;
    out.field.options = {{QString(), Bulk::tr("as before")},
                         {QStringLiteral("1"), Bulk::tr("one")},
                         {QStringLiteral("2"), Bulk::tr("two")}};
    return out;
}

} // namespace

std::vector<VisitFigure> visitFigures(core::WeightUnit unit) {
    return {
        frames("above", Bulk::tr("Bees &above"), Bulk::tr("Frames of bees seen from above"), &Visit::beesTop,
               &VisitPut::beesTop),
        frames("below", Bulk::tr("Bees &below"), Bulk::tr("Frames of bees seen from below"), &Visit::beesBottom,
               &VisitPut::beesBottom),
        frames("upper_above", Bulk::tr("Upper box, above"), Bulk::tr("Upper box, frames of bees seen from above"),
               &Visit::upperBeesTop, &VisitPut::upperBeesTop),
        frames("upper_below", Bulk::tr("Upper box, below"), Bulk::tr("Upper box, frames of bees seen from below"),
               &Visit::upperBeesBottom, &VisitPut::upperBeesBottom),
        queen(),
        whole("brood", Bulk::tr("B&rood frames"), Bulk::tr("Brood frames"), &Visit::broodFrames,
              &VisitPut::broodFrames),
        whole("checked", Bulk::tr("Brood &checked"), Bulk::tr("Brood frames examined for disease"),
              &Visit::broodChecked, &VisitPut::broodChecked),
        frames("stores", Bulk::tr("S&tores"), Bulk::tr("Frames of stores"), &Visit::stores, &VisitPut::stores),
        frames("upper_stores", Bulk::tr("Upper box, stores"), Bulk::tr("Upper box, frames of stores"),
               &Visit::upperStores, &VisitPut::upperStores),
        whole("supers", Bulk::tr("S&upers"), Bulk::tr("Honey boxes on the hive"), &Visit::supers, &VisitPut::supers),
        weight(unit),
        whole("mites", Bulk::tr("&Mites"), Bulk::tr("Mites counted"), &Visit::mites, &VisitPut::mites),
        whole("sample", Bulk::tr("Bees in the sample"), Bulk::tr("Bees in the sample"), &Visit::miteSample,
              &VisitPut::miteSample),
        boxes()};
}

} // namespace ui::bulk
