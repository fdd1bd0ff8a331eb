#include "tests/support/cut_disk.h"

#include <algorithm>
#include <random>
#include <utility>

namespace tests::cut {

namespace {

constexpr std::int64_t kSector = 512;

bool oneIn(std::mt19937& dice, unsigned n) { return dice() % n == 0; }

} // namespace

const char* wordOf(Reach reach) {
    switch (reach) {
    case Reach::Synced:
        return "synced only";
    case Reach::Prefix:
        return "a prefix";
    case Reach::Torn:
        return "a torn last write";
    case Reach::Scattered:
        return "scattered sectors";
    }
    return "";
}

int Disk::addFile(const std::string& name, std::string bytes) {
    const int file = static_cast<int>(m_synced.files.size());
    m_synced.files.push_back(std::move(bytes));
    m_synced.names[name] = file;
    m_names[name] = file;
    return file;
}

int Disk::create(const std::string& name) {
    const int file = static_cast<int>(m_synced.files.size());
    m_synced.files.emplace_back();
    m_pending.push_back({Kind::Link, file, 0, name});
    m_names[name] = file;
    return file;
}

void Disk::write(int file, std::int64_t offset, std::string bytes) {
    m_pending.push_back({Kind::Write, file, offset, std::move(bytes)});
}

void Disk::truncate(int file, std::int64_t size) { m_pending.push_back({Kind::Truncate, file, size, {}}); }

void Disk::remove(const std::string& name) {
    m_pending.push_back({Kind::Unlink, fileOf(name), 0, name});
    m_names.erase(name);
}

void Disk::rename(const std::string& from, const std::string& to) {
    m_pending.push_back({Kind::Rename, fileOf(from), 0, from, to});
    m_names[to] = fileOf(from);
    m_names.erase(from);
}

void Disk::exchange(const std::string& one, const std::string& other) {
    m_pending.push_back({Kind::Exchange, fileOf(one), fileOf(other), one, other});
    std::swap(m_names[one], m_names[other]);
}

void Disk::link(const std::string& there, const std::string& name) {
    m_pending.push_back({Kind::Link, fileOf(there), 0, name});
    m_names[name] = fileOf(there);
}

int Disk::fileOf(const std::string& name) const {
    const auto found = m_names.find(name);
    return found == m_names.end() ? -1 : found->second;
}

void Disk::syncFile(int file) {
    const auto rest = std::stable_partition(m_pending.begin(), m_pending.end(), [&](const Change& c) {
        return c.file == file && (c.kind == Kind::Write || c.kind == Kind::Truncate);
    });
    for (auto c = m_pending.begin(); c != rest; ++c) apply(m_synced, *c, '\0');
    m_pending.erase(m_pending.begin(), rest);
}

void Disk::syncFolder() {
    const auto rest = std::stable_partition(m_pending.begin(), m_pending.end(), [](const Change& c) {
        return c.kind != Kind::Write && c.kind != Kind::Truncate;
    });
    for (auto c = m_pending.begin(); c != rest; ++c) apply(m_synced, *c, '\0');
    m_pending.erase(m_pending.begin(), rest);
}

void Disk::apply(State& state, const Change& change, char filling) {
    switch (change.kind) {
    case Kind::Write: {
        std::string& bytes = state.files[static_cast<size_t>(change.file)];
        const size_t end = static_cast<size_t>(change.at) + change.text.size();
        if (bytes.size() < end) bytes.resize(end, filling);
        std::copy(change.text.begin(), change.text.end(), bytes.begin() + change.at);
        return;
    }
    case Kind::Truncate:
        state.files[static_cast<size_t>(change.file)].resize(static_cast<size_t>(change.at), filling);
        return;
    default:
        applyName(state, change);
    }
}

void Disk::applyName(State& state, const Change& change) {
    // Not where another file has the name by now.
    const auto forget = [&](const std::string& name) {
        if (const auto at = state.names.find(name); at != state.names.end() && at->second == change.file)
            state.names.erase(at);
    };
    switch (change.kind) {
    case Kind::Link:
        state.names[change.text] = change.file;
        return;
    case Kind::Unlink:
        forget(change.text);
        return;
    case Kind::Rename:
        forget(change.text);
        state.names[change.to] = change.file;
        return;
    case Kind::Exchange:
        state.names[change.text] = static_cast<int>(change.at);
        state.names[change.to] = change.file;
        return;
    default:
        return;
    }
}

void Disk::addScattered(State& state, unsigned seed) const {
    std::mt19937 dice(seed);
    // Space that a file was given and that nothing was written to holds what lay there before.
    const char filling = oneIn(dice, 2) ? '\0' : static_cast<char>(dice());
    for (const Change& change : m_pending) {
        if (change.kind != Kind::Write) {
            if (oneIn(dice, 2)) apply(state, change, filling);
            continue;
        }
        const auto size = static_cast<std::int64_t>(change.text.size());
        for (std::int64_t from = 0; from < size;) {
            const std::int64_t to = std::min(size, (change.at + from) / kSector * kSector + kSector - change.at);
            if (oneIn(dice, 2))
                apply(state,
                      {Kind::Write, change.file, change.at + from,
                       change.text.substr(static_cast<size_t>(from), static_cast<size_t>(to - from))},
                      filling);
            from = to;
        }
    }
}

Image Disk::after(Reach reach, unsigned seed) const {
    State state = m_synced;
    std::mt19937 dice(seed);
    const size_t count = m_pending.size();
    if (reach == Reach::Prefix) {
        const size_t most = dice() % (count + 1);
        for (size_t i = 0; i < most; ++i) apply(state, m_pending[i], '\0');
    } else if (reach == Reach::Torn) {
        const auto last =
            std::find_if(m_pending.rbegin(), m_pending.rend(), [](const Change& c) { return c.kind == Kind::Write; });
        const auto torn = last == m_pending.rend() ? m_pending.end() : std::prev(last.base());
        for (auto c = m_pending.begin(); c != m_pending.end(); ++c) {
            Change part = *c;
            if (c == torn) part.text.resize(dice() % (part.text.size() + 1));
            apply(state, part, '\0');
        }
    } else if (reach == Reach::Scattered) {
        addScattered(state, seed);
    }
    Image image;
    for (const auto& [name, file] : state.names) image[name] = state.files[static_cast<size_t>(file)];
    return image;
}

} // namespace tests::cut
