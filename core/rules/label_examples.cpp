#include "core/rules/label_examples.h"

#include <QStringList>

namespace core::rules {

namespace {

constexpr LabelExample kExamples[] = {
    {"formic", "formic acid strip, UK and Ireland", "10 to 29.5 °C daytime high on the day it is given",
     "label text, UK authorisation Vm 40476/4000"},
    {"formic", "formic acid strip, UK and Ireland", "above 33 °C in the first 3 days brood and queens are lost",
     "maker's questions and answers, nodeurope.eu"},
    {"formic", "formic acid strip, UK and Ireland",
     "7 days; bees on at least 6 brood frames; bottom entrance full width and at least 1.3 cm high; withdrawal 0 days",
     "label text, UK authorisation Vm 40476/4000"},
    {"formic", "formic acid strip, USA", "50 to 85 °F on the day; 92 °F or more in the first 3 days does harm",
     "as told at betterbee.com"},
    {"formic", "formic acid gel, USA, an older product", "45 to 95 °F; no honey supers",
     "archived label, webarchive.library.unt.edu"},
    {"formic", "oxalic and formic acid, trickled, EU", "not while nectar is flowing", "package leaflet 5, vetxed.com"},
    {"thymol", "thymol gel, UK 2015", "daily maximum not below 15 and not above 40 °C",
     "summary of product characteristics 4.5, imedi.co.uk"},
    {"thymol", "thymol strip or wafer, UK 2011 and 2014", "not above 30 °C; little effect below 15 °C on average",
     "summary of product characteristics 4.3 to 4.5, studylib.net/doc/7514825"},
    {"thymol", "thymol tablet, USA",
     "59 to 69 °F on average, not above 90 °F; no honey supers; 30 days from taking it "
     "out to the harvest",
     "label text at millerbeesupply.com"},
    {"thymol", "thymol gel, strip and wafer, UK", "all colonies of the stand at the same time",
     "summaries of product characteristics, imedi.co.uk and studylib.net/doc/7514825"},
    {"oxalic", "oxalic acid, USA since 23 February 2021",
     "honey supers only where the package itself carries the amended label",
     "EPA tolerance exemption, as reported at hontaylorhoneybees.com"},
    {"oxalic", "oxalic and formic acid, trickled, EU", "not while nectar is flowing", "package leaflet 5, vetxed.com"},
    {"amitraz", "amitraz fumigation tablet, Poland", "above 10 °C; not while honey for people is made",
     "maker's page, biowet.pl"},
    {"fluvalinate", "tau-fluvalinate strip, UK 2014", "6 to 8 weeks, then the strips come out",
     "summary of product characteristics 4.9, studylib.net/doc/7531802"},
};

} // namespace

std::vector<LabelExample> labelExamples(const QString& substance) {
    std::vector<LabelExample> found;
    for (const LabelExample& example : kExamples)
        if (substance.contains(QLatin1StringView(example.substance), Qt::CaseInsensitive)) found.push_back(example);
    return found;
}

QString labelExamplesText(const QString& substance) {
    QStringList lines;
    for (const LabelExample& e : labelExamples(substance))
        lines << QStringLiteral("%1: %2 (%3).")
                     .arg(QString::fromUtf8(e.product), QString::fromUtf8(e.says), QString::fromUtf8(e.source));
    if (lines.isEmpty()) return {};
    return QStringLiteral("The label of your product decides. Examples of what labels say: %1").arg(lines.join(u' '));
}

} // namespace core::rules
