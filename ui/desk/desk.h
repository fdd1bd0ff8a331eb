#pragma once

#include "core/edit/session.h"
#include "ui/desk/reading.h"
#include "ui/dialogs.h"

#include <QObject>
#include <QTimer>

#include <functional>
#include <map>
#include <memory>
#include <optional>

namespace ui::desk {

/// The open book as the window sees it: the day shown, the yard shown, the one chosen hive, and the edits that the
/// window makes. All that is shown follows its signals.
class Desk : public QObject {
    Q_OBJECT
public:
    /// Throws Error where the book cannot be read.
    /// `onlyRead`: why, where the session only reads; said when something is to be changed.
    Desk(std::unique_ptr<core::edit::Session> session, Dialogs& dialogs, QString onlyRead = {});
    ~Desk() override;

    core::edit::Session& session() { return *m_session; }
    const core::edit::Session& session() const { return *m_session; }
    const Reading& reading() const { return m_reading; }
    core::Day today() const;
    core::Day day() const { return m_day; }
    bool present() const { return m_day == today(); }
    std::optional<core::YardId> yard() const { return m_yard; }
    std::optional<core::ColonyId> chosen() const { return m_chosen; }
    /// Hives of the yard shown that something is to be done with together; the chosen one among them. Choosing one
    /// selects it alone.
    const std::vector<core::ColonyId>& selected() const { return m_selected; }
    /// Where merge day begins: today while counts can still be in force, else the day after the last record.
    core::Day likelyMergeDay() const;
    /// Why nothing can be changed here; empty: it can.
    QString onlyRead() const { return m_onlyRead; }
    /// Empty where hives may be carried on the day shown; else why not. Past days are only looked at until they are
    /// opened, days to come always.
    QString carryBarred() const;
    /// The same of records. On a day to come they are of today.
    QString writeBarred() const;
    /// Whether past days can be written; never when a book is opened, and no more once today is shown.
    bool pastOpen() const { return m_pastOpen; }
    void setPastOpen(bool open);

    /// What lives while an edit is written, and is gone before anything is asked or said of it.
    using WhileWritten = std::function<std::shared_ptr<void>()>;
    void setWhileWritten(WhileWritten begin) { m_whileWritten = std::move(begin); }

    /// Who writes: the "by" of the history's lines and what is proposed for the "by" of records; empty: nobody named.
    QString author() const { return m_author; }
    void setAuthor(const QString& name);

    /// Of the merge days with several variants, the one that is shown and planned by.
    void setVariant(core::YardId yard, int variant);

    void setDay(core::Day day);
    void setYard(core::YardId yard);
    void choose(std::optional<core::ColonyId> colony);
    /// `lead` is the one chosen. Those that do not stand in the lead's yard are passed over.
    void select(const std::vector<core::ColonyId>& colonies, core::ColonyId lead);

    /// Writes what the edit returns and says it, with `also` after it; `what` names it where the book wants a
    /// correction. False: that was not given, and nothing was written. Throws Error as Session::apply.
    bool save(const QString& what, const core::edit::Edit& edit, const QString& also = {});
    /// Several edits as one, each judged after those before it, under `text` (Session::applyInTurn).
    bool saveInTurn(const QString& what, const QString& text, const std::vector<core::edit::Edit>& edits);
    void undo();
    void redo();
    /// Takes the edit of a past line back (`text`: its sentence). Throws Error as Session::takeBack.
    void takeBack(qint64 seq, const QString& text);

    /// Where another may be writing: reads the book again if it was changed, until all that is shown is of one state.
    /// Done by itself every second and a half, and after each choice.
    void follow();
    /// Tries to become the one who writes. Throws Error as Session::takeOver.
    void takeOver();
    void setOnlyRead(const QString& why);

signals:
    void read(); ///< the reading is a new one
    void yardChanged();
    void chosenChanged();
    void selectedChanged();
    void authorChanged();
    void said(const QString& sentence);
    void did(const QString& sentence); ///< an edit is made and saved
    void notSaved(const QString& why); ///< an edit failed: the disk, the file

private:
    void readAgain();
    void setSelected(std::vector<core::ColonyId> colonies);
    void settleSelected();
    void take(std::optional<core::ColonyId> lead, std::vector<core::ColonyId> together);
    /// Runs an edit; asks for a correction where the book wants one. The sentence of what was done, empty where that
    /// was nothing; nullopt: the correction was not given.
    std::optional<QString> done(
        const QString& what,
        const std::function<std::optional<core::edit::HistoryLine>(const std::optional<core::edit::Correction>&)>& act);

    std::unique_ptr<core::edit::Session> m_session;
    Dialogs& m_dialogs;
    Reading m_reading;
    QString m_onlyRead;
    bool m_pastOpen = false;
    bool m_behind = false; ///< another changed the book, and it could not be read since
    QTimer m_poll;
    WhileWritten m_whileWritten;
    QString m_author;
    core::Day m_day;
    std::map<core::YardId, int> m_variants; ///< of the day shown, where another than the standing one is chosen
    std::optional<core::YardId> m_yard;
    std::optional<core::ColonyId> m_chosen;
    std::vector<core::ColonyId> m_selected;
};

} // namespace ui::desk
