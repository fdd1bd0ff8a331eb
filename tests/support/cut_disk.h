#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace tests::cut {

/// What reaches the disk of what was written and not synced when the power goes.
enum class Reach {
    Synced,   ///< nothing of it
    Prefix,   ///< the first of it, up to some operation
    Torn,     ///< all of it, and of the last write only its first bytes
    Scattered ///< a random part, sector by sector and name by name, in any order
};
constexpr Reach kReaches[] = {Reach::Synced, Reach::Prefix, Reach::Torn, Reach::Scattered};
const char* wordOf(Reach reach);

/// The files of one folder by name, as they lie on the disk.
using Image = std::map<std::string, std::string>;

/// A folder on a disk that keeps what was synced apart from what was only written, names as well as bytes. Files are
/// numbered: a name that is made anew is another file.
class Disk {
public:
    /// A file that lies there already, synced.
    int addFile(const std::string& name, std::string bytes);
    int create(const std::string& name); ///< its name is not on the disk until the folder is synced
    void write(int file, std::int64_t offset, std::string bytes);
    void truncate(int file, std::int64_t size);
    void remove(const std::string& name);
    void rename(const std::string& from, const std::string& to); ///< whole or not at all, as any journalled disk does
    void exchange(const std::string& one, const std::string& other); ///< likewise
    void link(const std::string& there, const std::string& name);    ///< one file, one name more
    void syncFile(int file);
    void syncFolder();
    /// The file of that name, or -1.
    int fileOf(const std::string& name) const;

    /// What lies on the disk when the power goes now. The same seed gives the same.
    Image after(Reach reach, unsigned seed) const;

private:
    enum class Kind { Write, Truncate, Link, Unlink, Rename, Exchange };
    struct Change {
        Kind kind;
        int file;
        std::int64_t at;  ///< offset or size
        std::string text; ///< bytes or name
        std::string to{}; ///< the other name
    };
    /// What an image is made in.
    struct State {
        std::vector<std::string> files;
        std::map<std::string, int> names;
    };

    static void apply(State& state, const Change& change, char filling);
    static void applyName(State& state, const Change& change);
    void addScattered(State& state, unsigned seed) const;

    State m_synced;
    std::vector<Change> m_pending;
    std::map<std::string, int> m_names; ///< as programs see them
};

} // namespace tests::cut
