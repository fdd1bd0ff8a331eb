#include "core/base/natural_order.h"
#include "core/edit/edit_context.h"
#include "core/exchange/kept_mapping.h"
#include "core/exchange/number.h"
#include "core/exchange/text_source.h"
#include "core/model/fixed_shape.h"
#include "core/report/page_code.h"
#include "core/rules/question.h"
#include "core/store/book_note.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"
#include "ui/visit/quarters_text.h"

// Brief texts that a book, a page or a person gives: each is read, and where it is taken it says the same again.

namespace tests::fuzz {

using namespace core;

namespace {

void readQuestion(const QString& text) {
    const auto ask = rules::readAsk(text);
    if (!ask) return;
    const auto again = rules::readAsk(rules::askJson(*ask));
    need(again && *again == *ask, "a question is read as it was written");
}

void readShape(const QString& text) {
    const auto points = parsePoints(text);
    if (!points) return;
    need(pointsText(*points) == text, "points are read as they were written");
    for (const FixedKind kind : {FixedKind::Fence, FixedKind::Shed, FixedKind::Tree}) shapeProblem(kind, *points);
}

void readCode(const QString& text) {
    const auto code = report::readPageCode(text);
    if (const auto* read = std::get_if<report::PageCode>(&code)) {
        const auto again = report::readPageCode(report::pageCodeText(*read));
        need(std::holds_alternative<report::PageCode>(again) && std::get<report::PageCode>(again) == *read,
             "a page's code is read as it was written");
    }
}

void readNumbers(const QByteArray& text) {
    const std::string_view bytes(text.constData(), static_cast<size_t>(text.size()));
    for (const int decimals : {0, 2, 6})
        if (const auto n = exchange::parseNumber(bytes, decimals, true))
            need(n->negative ? n->rounded <= n->cut : n->rounded >= n->cut, "a number is rounded away from nothing");
    exchange::parseReal(bytes, false);
    if (const auto day = parseIsoDay(text.constData(), text.size()))
        need(isoText(*day).toLatin1() == text, "a day is read as it was written");
    if (const auto q = ui::visit::parseFrames(QString::fromUtf8(text)))
        need(q->value >= 0 && q->value <= 4 * 24, "frames are 0 to 24");
}

void readNote(const QByteArray& text) {
    const BookHolder holder = store::holderIn(text);
    for (const QString& name : {holder.who, holder.host}) {
        need(name.size() <= 60, "a holder's name is no longer than a line");
        need(std::ranges::all_of(name, [](QChar c) { return c.isPrint(); }), "a holder's name can be shown");
    }
}

/// Whatever is typed is no fault of the search, nor of a name asked for.
void search(const QString& text) {
    static const auto session = copyOpened(goldenBook(7), QStringLiteral("search.yardwright"));
    session->notesFound(text, 50);
    session->historyPage({{}, {}, text, {}, {}}, {}, 20, 200);
    session->read([&](const edit::EditContext& c) {
        c.yardNamed(text);
        c.colonyNamed(text, dayOf(2026, 9, 20));
    });
    try {
        exchange::mappingNamed(*session, text);
    } catch (const Error& e) {
        need(e.kind() == Error::Kind::BadData, "an unknown name is bad data");
    }
}

void sort(const QString& text) {
    const QString half = text.left(text.size() / 2);
    need(naturalCompare(text, text) == 0, "a text is itself");
    need((naturalCompare(text, half) < 0) == (naturalCompare(half, text) > 0), "an order has two sides");
    need(folded(folded(text)) == folded(text), "a folded name stays as it is");
}

} // namespace

void wordsOne(const QByteArray& input) {
    const QString text = QString::fromUtf8(input);
    readQuestion(text);
    readShape(text);
    readCode(text);
    readNumbers(input);
    readNote(input);
    search(text);
    sort(text);
    if (const auto decoded = exchange::decode(input)) exchange::formsOf(decoded->text);
}

} // namespace tests::fuzz
