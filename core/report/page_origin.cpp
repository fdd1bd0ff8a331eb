#include "core/report/page_origin.h"

namespace core::report {

PageTexts textsFrom(const PageOrigin& origin, const QString& title, const QString& summary) {
    PageTexts texts;
    texts.title = texts.running = title;
    texts.summary = summary;
    texts.page = QStringLiteral("page %1 of %2");
    texts.continued = QStringLiteral("(continued)");
    texts.book = origin.book;
    texts.revision = QStringLiteral("revision %1").arg(origin.revision);
    if (origin.printedOn) texts.revision += QStringLiteral(" · printed %1").arg(isoText(*origin.printedOn));
    return texts;
}

} // namespace core::report
