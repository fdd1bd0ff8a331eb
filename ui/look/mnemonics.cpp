#include "ui/look/mnemonics.h"

#include <QAbstractButton>
#include <QAction>
#include <QLabel>
#include <QMenuBar>

#include <set>

namespace ui::look {

namespace {

/// Where the letter after a single & stands; −1 where there is none.
qsizetype markedAt(const QString& text) {
    for (qsizetype i = 0; i + 1 < text.size(); ++i) {
        if (text[i] != u'&') continue;
        if (text[i + 1] != u'&') return i + 1;
        ++i;
    }
    return -1;
}

QString unmarked(QString text) {
    const qsizetype at = markedAt(text);
    return at < 0 ? text : text.remove(at - 1, 1);
}

/// The text with a letter marked that nobody has yet; it is taken then.
QString settled(const QString& text, std::set<QChar>& taken) {
    const qsizetype at = markedAt(text);
    if (at < 0 || taken.insert(text[at].toLower()).second) return text;
    QString plain = unmarked(text);
    for (qsizetype i = 0; i < plain.size(); ++i)
        if (plain[i].isLetter() && taken.insert(plain[i].toLower()).second) return plain.insert(i, u'&');
    return plain;
}

template <class Shown> void settle(Shown& shown, std::set<QChar>& taken) {
    const QString now = settled(shown.text(), taken);
    if (now != shown.text()) shown.setText(now);
}

} // namespace

void settleMnemonics(QWidget& window) {
    std::set<QChar> taken;
    for (const QMenuBar* bar : window.findChildren<QMenuBar*>())
        for (const QAction* menu : bar->actions())
            if (const qsizetype at = markedAt(menu->text()); at >= 0) taken.insert(menu->text()[at].toLower());
    for (QWidget* w : window.findChildren<QWidget*>()) {
        if (!w->isVisible() || w->window() != &window) continue;
        if (auto* button = qobject_cast<QAbstractButton*>(w)) settle(*button, taken);
        if (auto* label = qobject_cast<QLabel*>(w); label && label->buddy()) settle(*label, taken);
    }
}

} // namespace ui::look
