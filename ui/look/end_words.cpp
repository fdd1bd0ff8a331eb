#include "ui/look/end_words.h"

#include "ui/look/words.h"

#include <QCoreApplication>

namespace ui::look {

namespace {
struct EndWords {
    Q_DECLARE_TR_FUNCTIONS(EndWords)
};
} // namespace

QString endWord(core::EndKind how) {
    switch (how) {
    case core::EndKind::Dead:
        return EndWords::tr("died");
    case core::EndKind::Destroyed:
        return EndWords::tr("destroyed");
    case core::EndKind::United:
        return EndWords::tr("united");
    case core::EndKind::ShakenOut:
        return EndWords::tr("shaken out");
    case core::EndKind::Sold:
        return EndWords::tr("sold");
    }
    return {};
}

QString endText(const core::Colony& colony) {
    if (!colony.ended || !colony.end) return {};
    //: "destroyed on 3 Mar 2026"
    return EndWords::tr("%1 on %2").arg(endWord(*colony.end), dayText(*colony.ended));
}

} // namespace ui::look
