#include "tests/report/print_sample.h"

#include "tests/report/page_reading.h"

namespace tests::report {

using namespace core::report;

Print cardOf(const Sample& sample, core::ColonyIx colony) {
    Print print;
    print.sheet = Sheet::Card;
    print.card = sample.s.colony(colony).id;
    for (int i = 0; i < 7; ++i) {
        core::Visit v;
        v.day = sample.s.on - 9 * i;
        v.beesTop = core::Quarters{21 - i};
        v.beesBottom = core::Quarters{18 - i};
        if (i < 3) v.upperBeesTop = core::Quarters{9};
        v.stores = core::Quarters{13 + i};
        v.queen = i % 2 == 0 ? core::QueenSeen::LayingWorkers : core::QueenSeen::DroneLayer;
        v.broodFrames = 6;
        v.broodChecked = 6;
        if (i == 1) v.signs.add(core::Sign::Chalkbrood);
        v.gross = core::Decagrams{3210};
        v.mites = 4;
        v.miteSample = 300;
        v.note = QStringLiteral("Moved the outer comb to the middle, and the entrance to three fingers; calm.");
        print.visits.push_back(v);
    }
    return print;
}

Sample kilnField() { return workedYard("kiln-field", "Kiln Field", "2026-09-15"); }

std::vector<Page> pagesFor(const Sample& sample, Language language, Paper paper, const Print& print) {
    WorksheetOptions options;
    options.large = print.large;
    options.sheet = print.sheet;
    options.book = "north-hollow";
    options.revision = 4;
    options.language = language;
    options.paper = paper;
    options.colony = print.card;
    options.visits = print.visits;
    options.round = print.round;
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
