#include "ui/look/sample_text.h"

#include "core/rules/calc/mites.h"
#include "core/rules/calc/sample_size.h"

#include <QCoreApplication>

namespace ui::look {

namespace {

namespace calc = core::rules::calc;

struct Samples {
    Q_DECLARE_TR_FUNCTIONS(Samples)
};

QString oneDecimal(double n) { return QString::number(n, 'f', 1); }

/// How many bees would say more.
QString precisionText(const calc::MiteSample& sample) {
    const double found = calc::mitesPerHundred(sample);
    if (found <= 0 || found >= 100) {
        const auto bees = calc::beesToFind(1);
        return bees ? Samples::tr("; a wash of %1 shows 1 in 100 nearly always").arg(*bees) : QString();
    }
    const auto bees = calc::beesForPrecision(found, 1);
    return bees && *bees > sample.bees ? Samples::tr("; for ± 1 in 100 wash %1 bees").arg(*bees) : QString();
}

} // namespace

QString sampleText(int mites, int bees) {
    const calc::MiteSample sample{mites, bees};
    QString text = Samples::tr("%1 in 100").arg(oneDecimal(calc::mitesPerHundred(sample)));
    if (const auto range = calc::mitesInterval(sample))
        text += Samples::tr(" (%1 to %2)").arg(oneDecimal(range->low), oneDecimal(range->high));
    return text + precisionText(sample);
}

QString sampleSource() {
    return Samples::tr("Exact interval of 95 % (Clopper, Pearson 1934), each mite on a bee of its own (an assumption); "
                       "COLOSS BEEBOOK, varroa. Size of a sample: Oliver 2020 and own calculation.");
}

} // namespace ui::look
