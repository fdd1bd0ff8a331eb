#include "tests/report/print_sample.h"

#include "tests/report/page_reading.h"

namespace tests::report {

using namespace core::report;

Sample kilnField() { return workedYard("kiln-field", "Kiln Field", "2026-09-15"); }

std::vector<Page> pagesFor(const Sample& sample, Language language, Paper paper, const Print& print) {
    WorksheetOptions options;
    options.large = print.large;
    options.sheet = print.sheet;
    options.book = "north-hollow";
    options.revision = 4;
    options.language = language;
    options.paper = paper;
    return worksheetPages(sample.s, sample.plan, sample.yard, options, EvenMeasure());
}

QString allText(const std::vector<Page>& pages) {
    QString out;
    for (const Page& page : pages) out += textOf(page) + u'\n';
    return out;
}

QString flowing(const std::vector<Page>& pages) {
    return allText(pages).replace(u'\n', u' ').replace(QChar(0xa0), u' ');
}

std::vector<Zone> zonesNamed(const std::vector<Page>& pages, const QString& start) {
    std::vector<Zone> out;
    for (const Page& page : pages)
        for (const Zone& zone : page.zones)
            if (zone.name.startsWith(start)) out.push_back(zone);
    return out;
}

} // namespace tests::report
