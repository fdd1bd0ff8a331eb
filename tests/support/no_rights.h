#pragma once

#include <unistd.h>

namespace tests {

/// The superuser may write anywhere: while this lives the process is nobody in particular, so that what is forbidden
/// is.
class NoRights {
public:
    NoRights() {
        if (m_root && setresuid(kNobody, kNobody, 0) != 0) m_root = false;
    }
    ~NoRights() {
        if (m_root && setresuid(0, 0, 0) != 0) _exit(1);
    }
    NoRights(const NoRights&) = delete;
    NoRights& operator=(const NoRights&) = delete;

private:
    static constexpr uid_t kNobody = 65534;
    bool m_root = geteuid() == 0;
};

} // namespace tests
