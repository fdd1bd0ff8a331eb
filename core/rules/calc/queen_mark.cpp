#include "core/rules/calc/queen_mark.h"

namespace core::rules::calc {

const char* markWord(QueenMark mark) {
    constexpr const char* kWords[] = {"white", "yellow", "red", "green", "blue"};
    return kWords[static_cast<int>(mark)];
}

} // namespace core::rules::calc
