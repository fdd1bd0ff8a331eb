#include "ui/entry/phrase_key.h"

#include "core/base/natural_order.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>

namespace ui::entry {

namespace {

struct PhraseKeys {
    Q_DECLARE_TR_FUNCTIONS(ui::entry::PhraseKeys)
};

struct Word {
    int from = 0;
    QString text;
};

Word wordBefore(const QLineEdit& line) {
    const QString before = line.text().left(line.cursorPosition());
    qsizetype from = before.size();
    while (from > 0 && !before[from - 1].isSpace()) --from;
    return {static_cast<int>(from), before.mid(from)};
}

void put(QLineEdit& line, const Word& instead, const QString& sentence) {
    line.setSelection(instead.from, static_cast<int>(instead.text.size()));
    line.insert(sentence);
}

void list(QLineEdit& line, const Word& word, const std::vector<core::Phrase>& phrases) {
    std::vector<core::Phrase> shown;
    for (const core::Phrase& p : phrases)
        if (core::folded(p.brief).startsWith(core::folded(word.text))) shown.push_back(p);
    const bool begun = !shown.empty();
    const Word instead = begun ? word : Word{line.cursorPosition(), {}};
    auto* menu = new QMenu(&line);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->setObjectName(QStringLiteral("phrases"));
    for (const core::Phrase& p : begun ? shown : phrases) {
        QString text = PhraseKeys::tr("%1 · %2").arg(p.brief, p.sentence);
        QAction* action = menu->addAction(text.replace(u'&', QStringLiteral("&&")));
        QObject::connect(action, &QAction::triggered, &line,
                         [&line, instead, sentence = p.sentence] { put(line, instead, sentence); });
    }
    menu->popup(line.mapToGlobal(QPoint(0, line.height())));
    menu->setActiveAction(menu->actions().front());
}

class PhraseKey : public QObject {
public:
    PhraseKey(QLineEdit& line, desk::Desk& desk) : QObject(&line), m_line(line), m_desk(desk) {
        line.installEventFilter(this);
    }
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() != QEvent::KeyPress || static_cast<QKeyEvent*>(event)->key() != Qt::Key_F2) return false;
        offerPhrases(m_line, m_desk);
        return true;
    }

private:
    QLineEdit& m_line;
    desk::Desk& m_desk;
};

} // namespace

void offerPhrases(QLineEdit& line, desk::Desk& desk) {
    const std::vector<core::Phrase> phrases = desk.session().phrases();
    if (phrases.empty())
        return emit desk.said(PhraseKeys::tr("There are no quick sentences yet: Settings, Quick sentences."));
    const Word word = wordBefore(line);
    for (const core::Phrase& p : phrases)
        if (core::folded(p.brief) == core::folded(word.text)) return put(line, word, p.sentence);
    list(line, word, phrases);
}

void addPhraseKey(QLineEdit& line, desk::Desk& desk) { new PhraseKey(line, desk); }

} // namespace ui::entry
